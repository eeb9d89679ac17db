// A jar was thrown away: its order ends, and another with the same mask takes its place in the queue, judged under the edition in force now.
import type { Writing } from '#db/connection.ts';
import { insertOrder, insertOrderClaim, insertOrderEnd, insertOrderHold, insertOrderLink, nextDayNo } from '#db/orders.ts';
import { freeReservations } from '#db/reservations.ts';
import type { Finding } from '#lib/base/finding.ts';
import { invariant } from '#lib/base/invariant.ts';
import { findingsOf, judge } from '#lib/verdict/judge.ts';
import type { BenchOrder } from './bench-order.ts';
import type { OpenEdition } from './edition-in-force.ts';
import { editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import { record, staffOf, stampOf } from './flow.ts';
import { cardHere, issueCard } from './issue-card.ts';
import { agreedUnder, cautionIdsOf, isSameJar } from './same-jar.ts';
import { readShopStand, shopChecks } from './shop-context.ts';

export interface Remake {
  /** The request that threw the jar away stands behind the new order too. */
  readonly requestKey: string;
  readonly orderId: string;
  readonly reason: string;
  /** The bench is free for it at once: it stays in the hands that threw the jar away. Else it waits in the queue. */
  readonly isInHand: boolean;
}

/** Ends the order and writes the one that follows it: in the same hands or in the queue, or on hold where the mask can no longer be made. */
export function remakeOrder(
  tx: Writing,
  flow: Flow,
  { view, edition: before }: BenchOrder,
  { requestKey, orderId, reason, isInHand }: Remake,
): void {
  const { order, jar, claim } = view;
  invariant(jar && claim, 'only a bound jar is thrown away');
  const stamp = stampOf(tx, flow.now);
  const { accountId } = staffOf(flow);
  freeReservations(tx, { orderId: order.id, reason: 'discarded', atMs: flow.now });
  insertOrderEnd(tx, { orderId: order.id, kind: 'discarded', reason, byAccountId: accountId, ...stamp });
  const edition = editionInForce(tx, flow);
  invariant(edition, 'an order is never older than the first edition');
  const dayNo = nextDayNo(tx, stamp.localDay);
  const again = { id: orderId, requestKey, dayNo, localDay: stamp.localDay, isoWeek: stamp.isoWeek, editionHash: edition.head.hash };
  insertOrder(tx, { ...order, ...again, shortCode: nextCode(order.shortCode) });
  insertOrderLink(tx, { orderId, kind: 'remake', jarCode: jar.batchCode });
  record(tx, flow, { kind: 'order-remade', body: { orderId, ofOrderId: order.id, ofJar: jar.batchCode }, editionHash: edition.head.hash });
  const { stationId } = claim;
  const held = issueAnew(tx, flow, { orderId, order, before, edition, stationId });
  if (held === null && isInHand) insertOrderClaim(tx, { orderId, byAccountId: accountId, stationId, atMs: flow.now });
  if (held !== null)
    insertOrderHold(tx, {
      id: flow.newId(),
      orderId,
      reason: 'It cannot be made again here now',
      findings: held,
      byAccountId: null,
      atMs: flow.now,
    });
}

type Anew = {
  readonly orderId: string;
  readonly order: BenchOrder['view']['order'];
  /** Under which the jar was begun. */
  readonly before: OpenEdition;
  readonly edition: OpenEdition;
  readonly stationId: string;
};

/** A new card from what stands on the shelves now; else why there is none. Without findings: it would be another jar than was agreed. */
function issueAnew(
  tx: Writing,
  flow: Flow,
  { orderId, order, before, edition: { book, head }, stationId }: Anew,
): readonly Finding[] | null {
  const jarSize = book.jarSizes.get(order.jarSizeId);
  if (!jarSize) return [];
  const stand = readShopStand(tx, flow, book, stationId);
  const verdict = judge(book, order.plan, { day: stand.day, ...shopChecks(book, stand, jarSize) });
  if (verdict.kind !== 'permitted') return findingsOf(verdict);
  if (!isSameJar(order, agreedUnder(before, order, stand.day), { book, cautionIds: cautionIdsOf(verdict) })) return [];
  const card = cardHere(tx, stand, { book, plan: order.plan, jarSize });
  if (!card.ok) return card.refusal;
  issueCard(tx, flow, { orderId, editionHash: head.hash, card: card.value, reason: 'made again' });
  return null;
}

/** K204, K204b, K204c: the customer's slip still leads to the jar. */
function nextCode(shortCode: string): string {
  const [, stem = shortCode, letter] = /^(.*?)([b-z])?$/.exec(shortCode) ?? [];
  return `${stem}${letter === undefined ? 'b' : String.fromCharCode(letter.charCodeAt(0) + 1)}`;
}
