// Counters, benches and offices, and the real scales that stand at them.
import { and, asc, eq, isNull } from 'drizzle-orm';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { station, stationScale, stationScaleRemoved } from './schema-people.ts';

export type Station = Row<typeof station>;
export type StationScale = Row<typeof stationScale>;

const all = prepared((orm) => orm.select().from(station).orderBy(asc(station.code)).prepare());
const byId = prepared((orm) =>
  orm
    .select()
    .from(station)
    .where(eq(station.id, given('id')))
    .prepare(),
);
const byCode = prepared((orm) =>
  orm
    .select()
    .from(station)
    .where(eq(station.code, given('code')))
    .prepare(),
);

export const insertStation: (tx: Writing, row: Station) => void = inserting(station);
export const findStation = (tx: Reading, id: string): Station | undefined => byId(tx).get({ id });
export const findStationByCode = (tx: Reading, code: string): Station | undefined => byCode(tx).get({ code });
export const listStations = (tx: Reading): readonly Station[] => all(tx).all();

const scalesThere = prepared((orm) =>
  orm
    .select({ scale: stationScale })
    .from(stationScale)
    .leftJoin(stationScaleRemoved, eq(stationScaleRemoved.scaleId, stationScale.id))
    .where(and(eq(stationScale.stationId, given('stationId')), isNull(stationScaleRemoved.scaleId)))
    .orderBy(asc(stationScale.code))
    .prepare(),
);

export const insertStationScale: (tx: Writing, row: StationScale) => void = inserting(stationScale);
export const insertStationScaleRemoved: (tx: Writing, row: Row<typeof stationScaleRemoved>) => void = inserting(stationScaleRemoved);

/** The scales that stand at a station now, by code. */
export const listStationScales = (tx: Reading, stationId: string): readonly StationScale[] =>
  scalesThere(tx)
    .all({ stationId })
    .map(({ scale }) => scale);
