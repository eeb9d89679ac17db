// Taking an order on. One person gets it; whoever comes second is told so, and a bench holds one jar at a time. What was left from
// earlier days lapses first, so that its lots are free; orders meet an edition whose hour has come; and the card is planned anew for this bench, with the lots that stand here now.
import type { Reading, Writing } from '#db/connection.ts';
import { insertOrderClaim, listOpenOrders, orderStage } from '#db/orders.ts';
import { freeReservations } from '#db/reservations.ts';
import type { Json } from '#lib/base/canonical-json.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { need } from '#lib/rulebook/book.ts';
import { addDays } from '#lib/units/time.ts';
import type { Card } from '#lib/weighing/card.ts';
import type { BenchAsked, BenchDecision } from './bench-act.ts';
import { actAtBench, stoppedBy } from './bench-act.ts';
import type { BenchOrder } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';
import { cardHere, issueCard } from './issue-card.ts';
import { lapseOrders } from './lapse-orders.ts';
import { rejudgeOrders } from './rejudge-open-orders.ts';
import type { ShopStand } from './shop-context.ts';
import { standFor, withoutStopped } from './shop-context.ts';
import { OPEN_DAYS } from './show-queue.ts';

export function claimOrder(flow: Flow, asked: BenchAsked): Result<null, BenchRefusal> {
  lapseOrders(flow);
  rejudgeOrders(flow);
  return actAtBench(flow, { ...asked, content: 'claim', isShared: true, decide: (tx, bench) => claimed(tx, flow, bench) });
}

function claimed(tx: Writing, flow: Flow, bench: BenchOrder): BenchDecision {
  const { view, stage, stand } = bench;
  if (stage === 'held') return refuse({ kind: 'order-held', reason: view.hold?.reason ?? '' });
  if (stage !== 'placed') return refuse({ kind: view.claim ? 'already-claimed' : 'not-ready' });
  const stationId = stand.bench?.stationId;
  if (stationId === undefined) return refuse({ kind: 'no-bench' });
  const barred = busyWith(tx, bench, stationId);
  if (barred) return refuse(barred);
  const planned = plannedHere(tx, bench);
  if (!planned.ok) return planned;
  const card = planned.value;
  const isSame = canonicalJson(card as unknown as Json) === canonicalJson(bench.card as unknown as Json);
  return accept({
    kind: 'order-claimed',
    body: { stationId },
    save: (writing) => {
      if (!isSame) planAnew(writing, flow, bench, card);
      insertOrderClaim(writing, { orderId: view.order.id, byAccountId: staffOf(flow).accountId, stationId, atMs: flow.now });
    },
  });
}

function busyWith(tx: Reading, { stand, view }: BenchOrder, stationId: string): BenchRefusal | null {
  const inHand = listOpenOrders(tx, addDays(stand.day, -OPEN_DAYS)).find(
    (other) =>
      other.claim?.stationId === stationId && other.order.id !== view.order.id && ['claimed', 'mixing'].includes(orderStage(other)),
  );
  return inHand ? { kind: 'bench-busy', shortCode: inHand.order.shortCode } : null;
}

/** The card for this bench. A stop on a lot is no more than a reason to take another; where there is none, the stop is what is told. */
function plannedHere(tx: Reading, bench: BenchOrder): Result<Card, BenchRefusal> {
  const { view, edition, stops, stand } = bench;
  const { plan, jarSizeId, id } = view.order;
  const stopped = stoppedBy(bench);
  if (stopped && stops.some((stop) => stop.subjectKind !== 'lot')) return refuse(stopped);
  const { book } = edition;
  const own = standFor(tx, stand, id);
  const card = cardHere(tx, own, { book, plan, jarSize: need(book.jarSizes, jarSizeId) });
  if (card.ok) return card;
  if (isGoodHere(bench.card, own)) return accept(bench.card);
  return refuse(stopped ?? { kind: 'cannot-make', findings: [...new Set(card.refusal.map((found) => found.code))] });
}

/** A lot may hold what was promised and yet not the most that a new plan asks for: then the card stands as it was issued. */
function isGoodHere(card: Card, stand: ShopStand): boolean {
  const scaleIds = new Set(stand.bench?.scales.map((scale) => scale.id));
  const lots = new Map(withoutStopped(stand).map((lot) => [lot.id, lot]));
  return card.lines.every(
    (line) =>
      scaleIds.has(line.scale.id) &&
      line.lots.every(({ lotId, massUg }) => {
        const lot = lots.get(lotId);
        return lot?.status === 'released' && lot.expiresOn >= stand.day && lot.leftUg >= massUg;
      }),
  );
}

function planAnew(tx: Writing, flow: Flow, { view, edition }: BenchOrder, card: Card): void {
  const orderId = view.order.id;
  freeReservations(tx, { orderId, reason: 'planned-anew', atMs: flow.now });
  issueCard(tx, flow, { orderId, editionHash: edition.head.hash, card, reason: 'taken on' });
}
