// A held jar is never sold: its findings stand, since a closed jar is measured no more. Two people, one of them a checker or a formulator,
// throw it away; then another is made, or the order is closed.
import type { Writing } from '#db/connection.ts';
import { insertOrderEnd } from '#db/orders.ts';
import { listAccounts } from '#db/people.ts';
import { insertHoldDecision } from '#db/releases.ts';
import { freeReservations } from '#db/reservations.ts';
import type { Role } from '#db/schema-people.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { BenchAsked, BenchDecision } from './bench-act.ts';
import { actAtBench } from './bench-act.ts';
import type { BenchOrder } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf, stampOf } from './flow.ts';
import { remakeOrder } from './remake-order.ts';

export interface HeldJarAsked extends BenchAsked {
  readonly reason: string;
  /** Admitted by their own password. */
  readonly secondAccountId: string;
  /** The id of the order that follows; null where nobody wants another jar. */
  readonly remakeOrderId: string | null;
}

export const decideHeldJar = (flow: Flow, { requestKey, orderId, ...asked }: HeldJarAsked): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    requestKey,
    orderId,
    content: { reason: asked.reason, secondAccountId: asked.secondAccountId, isRemade: asked.remakeOrderId !== null },
    isShared: true,
    decide: (tx, bench) => decided(tx, flow, bench, { requestKey, orderId, ...asked }),
  });

const DECIDING: readonly Role[] = ['checker', 'formulator'];

function decided(tx: Writing, flow: Flow, bench: BenchOrder, asked: HeldJarAsked): BenchDecision {
  const jarCode = bench.view.jar?.batchCode;
  if (bench.stage !== 'jar-held' || jarCode === undefined) return refuse({ kind: 'not-this-step' });
  const { accountId: byAccountId, role } = staffOf(flow);
  const { secondAccountId, reason, remakeOrderId, orderId, requestKey } = asked;
  if (secondAccountId === byAccountId) return refuse({ kind: 'second-same-person' });
  const second = listAccounts(tx).find((account) => account.id === secondAccountId);
  if (!DECIDING.includes(role) && !(second && DECIDING.includes(second.role))) return refuse({ kind: 'decider-needed' });
  return accept({
    kind: 'held-jar-discarded',
    body: { jarCode, reason, secondAccountId, isRemade: remakeOrderId !== null },
    save: (writing) => {
      const row = { jarCode, decision: 'discarded', reason, byAccountId, secondAccountId, atMs: flow.now } as const;
      insertHoldDecision(writing, row);
      if (remakeOrderId !== null) return remakeOrder(writing, flow, bench, { requestKey, orderId: remakeOrderId, reason, isInHand: false });
      freeReservations(writing, { orderId, reason: 'discarded', atMs: flow.now });
      insertOrderEnd(writing, { orderId, kind: 'discarded', reason, byAccountId, ...stampOf(writing, flow.now) });
    },
  });
}
