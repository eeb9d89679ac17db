// A new edition meets orders that nobody has begun: same plan, label and cautions go on under it with a new card; the others are held until the customer was asked.

import { findCard } from '#db/cards.ts';
import type { Writing } from '#db/connection.ts';
import type { OrderView } from '#db/orders.ts';
import { insertOrderHold, listOpenOrders, orderStage } from '#db/orders.ts';
import { freeReservations } from '#db/reservations.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { Finding } from '#lib/base/finding.ts';
import { composePlan } from '#lib/composition/compose.ts';
import { labelIngredients } from '#lib/law/label-order.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { Plan } from '#lib/rulebook/variant.ts';
import { addDays } from '#lib/units/time.ts';
import { findingsOf, judge } from '#lib/verdict/judge.ts';
import type { OpenEdition } from './edition-in-force.ts';
import { editionByHash, editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import { record, stampOf } from './flow.ts';
import { cardHere, issueCard } from './issue-card.ts';
import type { ShopStand } from './shop-context.ts';
import { readShopStand, shopChecks } from './shop-context.ts';

/** How far back an order can still be open. */
const OPEN_DAYS = 30;

/** Called inside the publishing transaction, after the new edition is written. */
export function rejudgeOpenOrders(tx: Writing, flow: Flow): void {
  const edition = editionInForce(tx, flow);
  if (!edition) return;
  const stand = readShopStand(tx, flow, edition.book);
  const open = listOpenOrders(tx, addDays(stampOf(tx, flow.now).localDay, -OPEN_DAYS)).filter((view) =>
    ['placed', 'claimed'].includes(orderStage(view)),
  );
  for (const view of open) rejudge(tx, flow, { view, edition, stand });
}

interface Asked {
  readonly view: OrderView;
  readonly edition: OpenEdition;
  readonly stand: ShopStand;
}

function rejudge(tx: Writing, flow: Flow, { view, edition, stand }: Asked): void {
  const { order } = view;
  const { book, head } = edition;
  if ((findCard(tx, order.id)?.editionHash ?? order.editionHash) === head.hash) return;
  const jarSize = book.jarSizes.get(order.jarSizeId);
  const before = editionByHash(tx, flow, order.editionHash);
  if (!jarSize || !before || !isSameLabel(before.book, book, order.plan)) return void hold(tx, flow, order.id, []);
  const verdict = judge(book, order.plan, { day: stand.day, ...shopChecks(book, stand, jarSize) });
  const cautions = verdict.kind === 'permitted' ? [...new Set(verdict.cautions.map((owed) => owed.cautionId))].sort() : [];
  if (canonicalJson(cautions) !== canonicalJson([...order.variantCautionIds].sort()))
    return void hold(tx, flow, order.id, findingsOf(verdict));
  freeReservations(tx, { orderId: order.id, reason: 'planned-anew', atMs: flow.now });
  const card = cardHere(tx, readShopStand(tx, flow, book), { book, plan: order.plan, jarSize });
  if (!card.ok) return void hold(tx, flow, order.id, card.refusal);
  issueCard(tx, flow, { orderId: order.id, editionHash: head.hash, card: card.value, reason: `edition ${head.editionNo}` });
  record(tx, flow, { kind: 'card-issued', body: { orderId: order.id, editionNo: head.editionNo }, editionHash: head.hash });
}

/** Everything that the label prints from the recipe is the same in both editions. */
function isSameLabel(before: Book, after: Book, plan: Plan): boolean {
  const known = plan.lines.every((line) => after.stocks.has(line.stockId)) && after.shades.has(plan.variant.shadeId);
  const printed = (book: Book): string =>
    canonicalJson(
      book.rulebook.markets.map((market) =>
        labelIngredients(book, composePlan(book, plan), market).map(({ name, nano }) => ({ name, nano })),
      ),
    );
  return known && printed(before) === printed(after);
}

function hold(tx: Writing, flow: Flow, orderId: string, findings: readonly Finding[]): void {
  insertOrderHold(tx, {
    id: flow.newId(),
    orderId,
    reason: 'A new edition no longer makes this jar in the same way',
    findings,
    byAccountId: null,
    atMs: flow.now,
  });
  record(tx, flow, { kind: 'order-held', body: { orderId } });
}
