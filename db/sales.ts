// What was sold, for the review: a jar counts in the week in which its customer collected it.
import { and, asc, count, countDistinct, eq, gte, lte, sql, sum } from 'drizzle-orm';
import type { IsoWeek } from '#lib/units/time.ts';
import type { Reading } from './connection.ts';
import { stillClaimed } from './orders.ts';
import { given, prepared } from './query.ts';
import { complaint } from './schema-afterwards.ts';
import { jar, mend, orderLink } from './schema-bench.ts';
import { customerOrder, orderClaim, orderEnd } from './schema-orders.ts';
import { jarRelease } from './schema-release.ts';

/** Weeks as YYYYWW, both included. */
export interface WeekRange {
  readonly fromWeek: IsoWeek;
  readonly toWeek: IsoWeek;
}

const collectedWithin = and(
  eq(orderEnd.kind, 'collected'),
  gte(orderEnd.isoWeek, given('fromWeek')),
  lte(orderEnd.isoWeek, given('toWeek')),
);

const byCombination = prepared((orm) =>
  orm
    .select({
      isoWeek: orderEnd.isoWeek,
      variantKey: customerOrder.variantKey,
      jarSizeId: customerOrder.jarSizeId,
      jarsCount: count(),
      revenueMinor: sum(customerOrder.priceMinor).mapWith(Number),
      /** Of the jars whose cost is known. */
      materialCostMinor: sql`coalesce(sum(${jarRelease.materialCostMinor}), 0)`.mapWith(Number),
      costedCount: count(jarRelease.materialCostMinor),
      remakesCount: sql`sum(${orderLink.kind} is 'remake')`.mapWith(Number),
    })
    .from(orderEnd)
    .innerJoin(customerOrder, eq(customerOrder.id, orderEnd.orderId))
    .innerJoin(jar, eq(jar.orderId, customerOrder.id))
    .innerJoin(jarRelease, eq(jarRelease.jarCode, jar.batchCode))
    .leftJoin(orderLink, eq(orderLink.orderId, customerOrder.id))
    .where(collectedWithin)
    .groupBy(orderEnd.isoWeek, customerOrder.variantKey, customerOrder.jarSizeId)
    .orderBy(asc(orderEnd.isoWeek), asc(customerOrder.variantKey), asc(customerOrder.jarSizeId))
    .prepare(),
);

export type SoldCombination = ReturnType<ReturnType<typeof byCombination>['all']>[number];

/** Collected jars by week, variant (shade, actives and levels are in its key) and size. */
export const listSoldCombinations = (tx: Reading, range: WeekRange): readonly SoldCombination[] => byCombination(tx).all({ ...range });

const jarByJar = prepared((orm) =>
  orm
    .select({
      jarCode: jar.batchCode,
      isoWeek: orderEnd.isoWeek,
      variantKey: customerOrder.variantKey,
      jarSizeId: customerOrder.jarSizeId,
      stationId: customerOrder.stationId,
      priceMinor: customerOrder.priceMinor,
      materialCostMinor: jarRelease.materialCostMinor,
      claimedAtMs: orderClaim.atMs,
      releasedAtMs: jarRelease.atMs,
      link: orderLink.kind,
      mendsCount: countDistinct(mend.id),
      complaintsCount: countDistinct(complaint.id),
    })
    .from(orderEnd)
    .innerJoin(customerOrder, eq(customerOrder.id, orderEnd.orderId))
    .innerJoin(orderClaim, and(eq(orderClaim.orderId, customerOrder.id), stillClaimed(orm)))
    .innerJoin(jar, eq(jar.orderId, customerOrder.id))
    .innerJoin(jarRelease, eq(jarRelease.jarCode, jar.batchCode))
    .leftJoin(orderLink, eq(orderLink.orderId, customerOrder.id))
    .leftJoin(mend, eq(mend.jarCode, jar.batchCode))
    .leftJoin(complaint, eq(complaint.jarCode, jar.batchCode))
    .where(collectedWithin)
    .groupBy(jar.batchCode)
    .orderBy(asc(jar.batchCode))
    .prepare(),
);

export type SoldJar = ReturnType<ReturnType<typeof jarByJar>['all']>[number];

/** One row a collected jar, for whatever the review folds. */
export const listSoldJars = (tx: Reading, range: WeekRange): readonly SoldJar[] => jarByJar(tx).all({ ...range });

const unsold = prepared((orm) =>
  orm
    .select({ isoWeek: orderEnd.isoWeek, kind: orderEnd.kind, ordersCount: count() })
    .from(orderEnd)
    .where(and(gte(orderEnd.isoWeek, given('fromWeek')), lte(orderEnd.isoWeek, given('toWeek'))))
    .groupBy(orderEnd.isoWeek, orderEnd.kind)
    .orderBy(asc(orderEnd.isoWeek), asc(orderEnd.kind))
    .prepare(),
);

export type EndedOrders = ReturnType<ReturnType<typeof unsold>['all']>[number];

/** How orders ended, by week. */
export const listEndedOrders = (tx: Reading, range: WeekRange): readonly EndedOrders[] => unsold(tx).all({ ...range });
