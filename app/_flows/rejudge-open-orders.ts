// A new edition meets orders that nobody has begun: same plan, label and cautions go on under it with a new card; the others are held until the customer was asked.

import { findCard } from '#db/cards.ts';
import type { Writing } from '#db/connection.ts';
import type { OrderView } from '#db/orders.ts';
import { insertOrderHold, listOpenOrders, orderStage } from '#db/orders.ts';
import { freeReservations } from '#db/reservations.ts';
import type { Finding } from '#lib/base/finding.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { Result } from '#lib/base/result.ts';
import { refuse } from '#lib/base/result.ts';
import { addDays } from '#lib/units/time.ts';
import { findingsOf, judge } from '#lib/verdict/judge.ts';
import type { Card } from '#lib/weighing/card.ts';
import type { OpenEdition } from './edition-in-force.ts';
import { editionByHash, editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import { record, stampOf } from './flow.ts';
import { cardHere, issueCard } from './issue-card.ts';
import { agreedUnder, cautionIdsOf, isSameJar } from './same-jar.ts';
import { readShopStand, shopChecks } from './shop-context.ts';

/** How far back an order can still be open. */
const OPEN_DAYS = 30;

/** For whoever finds that the hour of a waiting edition may have come. Orders that stand under the edition in force stay as they are. */
export const rejudgeOrders = (flow: Flow): void => flow.db.write((tx) => rejudgeOpenOrders(tx, flow));

/** Within a unit of work that has more to do, such as publishing. */
export function rejudgeOpenOrders(tx: Writing, flow: Flow): void {
  const edition = editionInForce(tx, flow);
  if (!edition) return;
  const open = listOpenOrders(tx, addDays(stampOf(tx, flow.now).localDay, -OPEN_DAYS)).filter((view) =>
    ['placed', 'claimed'].includes(orderStage(view)),
  );
  for (const view of open) {
    const before = editionByHash(tx, flow, findCard(tx, view.order.id)?.editionHash ?? view.order.editionHash);
    invariant(before, `the edition of order ${view.order.id} is gone`);
    if (before.head.hash !== edition.head.hash) rejudge(tx, flow, { view, before, edition });
  }
}

interface Asked {
  readonly view: OrderView;
  /** Under which the order stands: that of its card. */
  readonly before: OpenEdition;
  readonly edition: OpenEdition;
}

/** What was promised to the order is freed first, or it would stand in its own way; a card that is issued anew promises anew. */
function rejudge(tx: Writing, flow: Flow, asked: Asked): void {
  const { id: orderId } = asked.view.order;
  const { hash, editionNo } = asked.edition.head;
  freeReservations(tx, { orderId, reason: 'planned-anew', atMs: flow.now });
  const card = cardUnder(tx, flow, asked);
  if (!card.ok) return void hold(tx, flow, { orderId, findings: card.refusal, editionHash: hash });
  issueCard(tx, flow, { orderId, editionHash: hash, card: card.value, reason: `edition ${editionNo}` });
  record(tx, flow, { kind: 'card-issued', body: { orderId, editionNo }, editionHash: hash });
}

/** The card of the very jar that was ordered, or why there is none; without findings where it would be another jar. */
function cardUnder(tx: Writing, flow: Flow, { view, before, edition: { book } }: Asked): Result<Card, readonly Finding[]> {
  const { order, claim } = view;
  const { plan } = order;
  const jarSize = book.jarSizes.get(order.jarSizeId);
  if (!jarSize || plan.lines.some((line) => !book.stocks.has(line.stockId))) return refuse([]);
  const stand = readShopStand(tx, flow, book, claim?.stationId ?? null);
  const verdict = judge(book, plan, { day: stand.day, ...shopChecks(book, stand, jarSize) });
  if (verdict.kind !== 'permitted') return refuse(findingsOf(verdict));
  if (!isSameJar(order, agreedUnder(before, order, stand.day), { book, cautionIds: cautionIdsOf(verdict) })) return refuse([]);
  return cardHere(tx, stand, { book, plan, jarSize });
}

interface Held {
  readonly orderId: string;
  readonly findings: readonly Finding[];
  readonly editionHash: string;
}

function hold(tx: Writing, flow: Flow, { orderId, findings, editionHash }: Held): void {
  insertOrderHold(tx, {
    id: flow.newId(),
    orderId,
    reason: 'A new edition no longer makes this jar in the same way',
    findings,
    byAccountId: null,
    atMs: flow.now,
  });
  record(tx, flow, { kind: 'order-held', body: { orderId }, editionHash });
}
