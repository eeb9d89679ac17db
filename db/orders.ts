// Orders with the facts that say where each stands. The stage is read from the facts every time; nothing stores it.
import type { SQL } from 'drizzle-orm';
import { and, asc, desc, eq, gte, isNull, max, notExists } from 'drizzle-orm';
import type { LocalDay } from '#lib/units/time.ts';
import type { Orm, Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { jar, mend, orderLink } from './schema-bench.ts';
import { customerOrder, orderClaim, orderClaimEnd, orderEnd, orderHold, orderHoldEnd } from './schema-orders.ts';
import { holdDecision, jarRelease } from './schema-release.ts';

export type Order = Row<typeof customerOrder>;
export type OrderEnd = Row<typeof orderEnd>;
export type OrderClaim = Row<typeof orderClaim>;
export type ClaimEnding = Pick<Row<typeof orderClaimEnd>, 'byAccountId' | 'reason' | 'atMs'>;
export type OrderHold = Row<typeof orderHold>;
export type OrderLink = Row<typeof orderLink>;

export type OrderView = ReturnType<ReturnType<typeof byId>['all']>[number];

/** `ready`: released and waiting for the customer. `jar-held`: made, and not yet decided. */
export type OrderStage = 'placed' | 'held' | 'claimed' | 'mixing' | 'jar-held' | 'ready' | 'jar-discarded' | OrderEnd['kind'];

export function orderStage({ end, hold, claim, jar: bound, release, decision, discard }: OrderView): OrderStage {
  if (end) return end.kind;
  if (discard || decision?.decision === 'discarded') return 'jar-discarded';
  if (release) return release.outcome === 'released' || decision ? 'ready' : 'jar-held';
  if (hold) return 'held';
  if (bound) return 'mixing';
  return claim ? 'claimed' : 'placed';
}

const stillHeld = (orm: Orm): SQL => notExists(orm.select().from(orderHoldEnd).where(eq(orderHoldEnd.holdId, orderHold.id)));

/** In somebody's hands now; a claim that ended is history. */
export const stillClaimed = (orm: Orm): SQL =>
  notExists(
    orm
      .select()
      .from(orderClaimEnd)
      .where(and(eq(orderClaimEnd.orderId, orderClaim.orderId), eq(orderClaimEnd.claimNo, orderClaim.claimNo))),
  );

/** `discard` is a jar thrown away at the bench; `decision` is what became of a held one. */
const views = (orm: Orm) =>
  orm
    .select({
      order: customerOrder,
      end: orderEnd,
      hold: orderHold,
      claim: orderClaim,
      jar,
      release: { outcome: jarRelease.outcome, findings: jarRelease.findings, useByDay: jarRelease.useByDay, atMs: jarRelease.atMs },
      decision: { decision: holdDecision.decision, reason: holdDecision.reason, atMs: holdDecision.atMs },
      discard: { reason: mend.reason, atMs: mend.atMs },
      link: { kind: orderLink.kind, jarCode: orderLink.jarCode },
    })
    .from(customerOrder)
    .leftJoin(orderEnd, eq(orderEnd.orderId, customerOrder.id))
    .leftJoin(orderHold, and(eq(orderHold.orderId, customerOrder.id), stillHeld(orm)))
    .leftJoin(orderClaim, and(eq(orderClaim.orderId, customerOrder.id), stillClaimed(orm)))
    .leftJoin(jar, eq(jar.orderId, customerOrder.id))
    .leftJoin(jarRelease, eq(jarRelease.jarCode, jar.batchCode))
    .leftJoin(holdDecision, eq(holdDecision.jarCode, jar.batchCode))
    .leftJoin(mend, and(eq(mend.jarCode, jar.batchCode), eq(mend.kind, 'discard')))
    .leftJoin(orderLink, eq(orderLink.orderId, customerOrder.id));

const byId = prepared((orm) =>
  views(orm)
    .where(eq(customerOrder.id, given('id')))
    .prepare(),
);
const byJar = prepared((orm) =>
  views(orm)
    .where(eq(jar.batchCode, given('batchCode')))
    .prepare(),
);
const byShortCode = prepared((orm) =>
  views(orm)
    .where(eq(customerOrder.shortCode, given('shortCode')))
    .orderBy(desc(customerOrder.localDay))
    .limit(1)
    .prepare(),
);
const byRequestKey = prepared((orm) =>
  views(orm)
    .where(eq(customerOrder.requestKey, given('requestKey')))
    .prepare(),
);
const open = prepared((orm) =>
  views(orm)
    .where(and(gte(customerOrder.localDay, given('sinceDay')), isNull(orderEnd.orderId)))
    .orderBy(asc(customerOrder.localDay), asc(customerOrder.dayNo))
    .prepare(),
);
const ofDay = prepared((orm) =>
  views(orm)
    .where(eq(customerOrder.localDay, given('day')))
    .orderBy(asc(customerOrder.dayNo))
    .prepare(),
);

export const findOrder = (tx: Reading, id: string): OrderView | undefined => byId(tx).get({ id });
export const findOrderByJar = (tx: Reading, batchCode: string): OrderView | undefined => byJar(tx).get({ batchCode });
/** The newest order with this code: a code may come again on another day. */
export const findOrderByShortCode = (tx: Reading, shortCode: string): OrderView | undefined => byShortCode(tx).get({ shortCode });
export const findOrderByRequestKey = (tx: Reading, requestKey: string): OrderView | undefined => byRequestKey(tx).get({ requestKey });

/** Every order since a day that has not ended, oldest first. */
export const listOpenOrders = (tx: Reading, sinceDay: LocalDay): readonly OrderView[] => open(tx).all({ sinceDay });
export const listOrdersOfDay = (tx: Reading, day: LocalDay): readonly OrderView[] => ofDay(tx).all({ day });

const lastNo = prepared((orm) =>
  orm
    .select({ dayNo: max(customerOrder.dayNo) })
    .from(customerOrder)
    .where(eq(customerOrder.localDay, given('day')))
    .prepare(),
);
const orderedKeys = prepared((orm) =>
  orm
    .selectDistinct({ key: customerOrder.variantKey })
    .from(customerOrder)
    .where(gte(customerOrder.localDay, given('sinceDay')))
    .prepare(),
);

const remakeOf = prepared((orm) =>
  orm
    .select({ orderId: orderLink.orderId })
    .from(orderLink)
    .where(and(eq(orderLink.jarCode, given('jarCode')), eq(orderLink.kind, 'remake')))
    .orderBy(desc(orderLink.orderId))
    .limit(1)
    .prepare(),
);

/** The order that was made in the place of a jar's. */
export const findOrderRemakeOf = (tx: Reading, jarCode: string): string | undefined => remakeOf(tx).get({ jarCode })?.orderId;

/** The number that the next order of a day gets. */
export const nextDayNo = (tx: Reading, day: LocalDay): number => (lastNo(tx).get({ day })?.dayNo ?? 0) + 1;

/** Every variant that somebody ordered since a day. */
export const listOrderedVariantKeys = (tx: Reading, sinceDay: LocalDay): readonly string[] =>
  orderedKeys(tx)
    .all({ sinceDay })
    .map(({ key }) => key);

export const insertOrder: (tx: Writing, row: Order) => void = inserting(customerOrder);
export const insertOrderEnd: (tx: Writing, row: OrderEnd) => void = inserting(orderEnd);

const lastClaim = prepared((orm) =>
  orm
    .select({ claimNo: max(orderClaim.claimNo) })
    .from(orderClaim)
    .where(eq(orderClaim.orderId, given('orderId')))
    .prepare(),
);
const insertClaim = inserting(orderClaim);
const insertClaimEnd = inserting(orderClaimEnd);

/** Adds the next claim of an order. */
export const insertOrderClaim = (tx: Writing, row: Omit<OrderClaim, 'claimNo'>): void =>
  insertClaim(tx, { ...row, claimNo: (lastClaim(tx).get({ orderId: row.orderId })?.claimNo ?? 0) + 1 });

/** Takes an order out of the hands that hold it; nothing where nobody does. */
export function endOrderClaim(tx: Writing, claim: OrderClaim | null, { byAccountId, reason, atMs }: ClaimEnding): void {
  if (claim) insertClaimEnd(tx, { orderId: claim.orderId, claimNo: claim.claimNo, byAccountId, reason, atMs });
}

export const insertOrderHold: (tx: Writing, row: OrderHold) => void = inserting(orderHold);
export const insertOrderHoldEnd: (tx: Writing, row: Row<typeof orderHoldEnd>) => void = inserting(orderHoldEnd);
export const insertOrderLink: (tx: Writing, row: OrderLink) => void = inserting(orderLink);
