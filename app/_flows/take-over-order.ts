// Into other hands: somebody else goes on with an order, where it stands, when whoever had it cannot. A bound jar keeps its bench.
import { endOrderClaim, insertOrderClaim } from '#db/orders.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { BenchAsked } from './bench-act.ts';
import { actAtBench } from './bench-act.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';

export const takeOverOrder = (flow: Flow, asked: BenchAsked & { readonly reason: string }): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    ...asked,
    content: { takeOver: asked.reason },
    isShared: true,
    decide: (_tx, { view, stage }) => {
      const { claim, order } = view;
      const byAccountId = staffOf(flow).accountId;
      const isInHand = stage === 'claimed' || stage === 'mixing';
      if (!isInHand || !claim || claim.byAccountId === byAccountId) return refuse({ kind: 'not-this-step' });
      return accept({
        kind: 'order-taken-over',
        body: { fromAccountId: claim.byAccountId, reason: asked.reason },
        save: (tx) => {
          endOrderClaim(tx, claim, { byAccountId, reason: asked.reason, atMs: flow.now });
          insertOrderClaim(tx, { orderId: order.id, byAccountId, stationId: claim.stationId, atMs: flow.now });
        },
      });
    },
  });
