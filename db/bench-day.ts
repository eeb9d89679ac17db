// What makes a bench fit for the day: its scales and its pH meter checked, and its last clearance.
import { and, asc, desc, eq } from 'drizzle-orm';
import type { LocalDay } from '#lib/units/time.ts';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { clearance } from './schema-bench.ts';
import { fitness } from './schema-release.ts';

export type Fitness = Row<typeof fitness>;

const ofDay = prepared((orm) =>
  orm
    .select()
    .from(fitness)
    .where(and(eq(fitness.stationId, given('stationId')), eq(fitness.validDay, given('day'))))
    .orderBy(asc(fitness.atMs))
    .prepare(),
);
const last = prepared((orm) =>
  orm
    .select()
    .from(clearance)
    .where(eq(clearance.stationId, given('stationId')))
    .orderBy(desc(clearance.atMs))
    .limit(1)
    .prepare(),
);

export const insertFitness: (tx: Writing, row: Fitness) => void = inserting(fitness);

/** The day's checks of a station, oldest first; the last one of each scale and meter counts. */
export const listFitness = (tx: Reading, stationId: string, day: LocalDay): readonly Fitness[] => ofDay(tx).all({ stationId, day });
export const findLastClearance = (tx: Reading, stationId: string): Row<typeof clearance> | undefined => last(tx).get({ stationId });
