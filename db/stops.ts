// Stops: in force from the moment one person sets them until two lift them.
import { asc, desc, eq, isNull } from 'drizzle-orm';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { stop, stopLifted } from './schema-afterwards.ts';

export type Stop = Row<typeof stop>;
export type StopLifted = Row<typeof stopLifted>;

const withEnd = eq(stopLifted.stopId, stop.id);
const inForce = prepared((orm) =>
  orm.select({ stop }).from(stop).leftJoin(stopLifted, withEnd).where(isNull(stopLifted.stopId)).orderBy(asc(stop.atMs)).prepare(),
);
const byId = prepared((orm) =>
  orm
    .select({ stop, lifted: stopLifted })
    .from(stop)
    .leftJoin(stopLifted, withEnd)
    .where(eq(stop.id, given('id')))
    .prepare(),
);
const all = prepared((orm) =>
  orm.select({ stop, lifted: stopLifted }).from(stop).leftJoin(stopLifted, withEnd).orderBy(desc(stop.atMs)).prepare(),
);

export interface StopView {
  readonly stop: Stop;
  readonly lifted: StopLifted | null;
}

export const insertStop: (tx: Writing, row: Stop) => void = inserting(stop);
export const insertStopLifted: (tx: Writing, row: StopLifted) => void = inserting(stopLifted);
export const findStop = (tx: Reading, id: string): StopView | undefined => byId(tx).get({ id });
export const listStopsInForce = (tx: Reading): readonly Stop[] =>
  inForce(tx)
    .all()
    .map((row) => row.stop);
/** Lifted ones too, newest first. */
export const listStops = (tx: Reading): readonly StopView[] => all(tx).all();
