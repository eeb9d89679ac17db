// The end of a hold: somebody asked the customer, and the jar is permitted and can be made today. It goes back to the queue with a new card.
import type { Reading } from '#db/connection.ts';
import { endOrderClaim, insertOrderHoldEnd } from '#db/orders.ts';
import { freeReservations } from '#db/reservations.ts';
import type { FindingCode } from '#lib/base/finding.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { findingsOf, judge } from '#lib/verdict/judge.ts';
import type { Card } from '#lib/weighing/card.ts';
import type { BenchAsked, BenchDecision } from './bench-act.ts';
import { actAtBench } from './bench-act.ts';
import type { BenchOrder } from './bench-order.ts';
import { benchOf } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import { editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';
import { cardHere, issueCard } from './issue-card.ts';
import { readDayStand, shopChecks, standFor } from './shop-context.ts';

export const resumeOrder = (flow: Flow, asked: BenchAsked & { readonly reason: string }): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    ...asked,
    content: { resume: asked.reason },
    isShared: true,
    decide: (tx, bench) => resumed(tx, flow, bench, asked.reason),
  });

function resumed(tx: Reading, flow: Flow, { view, stage }: BenchOrder, reason: string): BenchDecision {
  const { hold, claim } = view;
  if (stage !== 'held' || !hold) return refuse({ kind: 'not-this-step' });
  const anew = judgedAnew(tx, flow, view);
  if (!anew.ok) return refuse({ kind: 'cannot-make', findings: anew.refusal });
  const orderId = view.order.id;
  const ending = { byAccountId: staffOf(flow).accountId, reason, atMs: flow.now };
  return accept({
    kind: 'order-resumed',
    body: { reason },
    save: (writing) => {
      freeReservations(writing, { orderId, reason: 'planned-anew', atMs: flow.now });
      issueCard(writing, flow, { orderId, ...anew.value, reason: 'off hold' });
      endOrderClaim(writing, claim, ending);
      insertOrderHoldEnd(writing, { holdId: hold.id, ...ending });
    },
  });
}

interface Anew {
  readonly card: Card;
  readonly editionHash: string;
}

/** The card under the edition in force, or what keeps the order on hold. */
export function judgedAnew(tx: Reading, flow: Flow, { order }: BenchOrder['view']): Result<Anew, readonly FindingCode[]> {
  const edition = editionInForce(tx, flow);
  const jarSize = edition?.book.jarSizes.get(order.jarSizeId);
  if (!edition || !jarSize || order.plan.lines.some((line) => !edition.book.stocks.has(line.stockId))) return refuse(['no-stock']);
  const { book, head } = edition;
  const stand = standFor(tx, readDayStand(tx, flow, book, benchOf(flow)), order.id);
  const verdict = judge(book, order.plan, { day: stand.day, ...shopChecks(book, stand, jarSize) });
  if (verdict.kind !== 'permitted') return refuse([...new Set(findingsOf(verdict).map((found) => found.code))]);
  const card = cardHere(tx, stand, { book, plan: order.plan, jarSize });
  return card.ok ? accept({ card: card.value, editionHash: head.hash }) : refuse([...new Set(card.refusal.map((found) => found.code))]);
}
