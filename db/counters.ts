// Anonymous counters of visits, written in buckets so large that no visit can be found in them.
import { and, asc, eq, gte, lte, sum } from 'drizzle-orm';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import type { WeekRange } from './sales.ts';
import { counter, counterBucket } from './schema-afterwards.ts';

export type CounterBucket = Row<typeof counterBucket>;
export type Counted = Omit<Row<typeof counter>, 'bucketId'>;

const insertBucket = inserting(counterBucket);
const insertCounter = inserting(counter);

/** A bucket with its counters, at once. @throws when it holds fewer than five visits */
export function insertCounterBucket(tx: Writing, bucket: CounterBucket, counted: readonly Counted[]): void {
  insertBucket(tx, bucket);
  for (const one of counted) insertCounter(tx, { ...one, bucketId: bucket.id });
}

const within = and(gte(counterBucket.isoWeek, given('fromWeek')), lte(counterBucket.isoWeek, given('toWeek')));
const sums = prepared((orm) =>
  orm
    .select({
      isoWeek: counterBucket.isoWeek,
      kind: counter.kind,
      subject: counter.subject,
      visitsCount: sum(counter.visitsCount).mapWith(Number),
    })
    .from(counter)
    .innerJoin(counterBucket, eq(counterBucket.id, counter.bucketId))
    .where(within)
    .groupBy(counterBucket.isoWeek, counter.kind, counter.subject)
    .orderBy(asc(counterBucket.isoWeek), asc(counter.kind), asc(counter.subject))
    .prepare(),
);
const visits = prepared((orm) =>
  orm
    .select({ isoWeek: counterBucket.isoWeek, visitsCount: sum(counterBucket.visitsCount).mapWith(Number) })
    .from(counterBucket)
    .where(within)
    .groupBy(counterBucket.isoWeek)
    .orderBy(asc(counterBucket.isoWeek))
    .prepare(),
);

export const listCounters = (tx: Reading, range: WeekRange) => sums(tx).all({ ...range });
/** All visits by week: the denominators. */
export const listVisits = (tx: Reading, range: WeekRange) => visits(tx).all({ ...range });
