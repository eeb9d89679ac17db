// Back to the queue: whoever took an order on, or anybody who finds it lying there, gives it back while no jar is bound to it.
import { endOrderClaim } from '#db/orders.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { BenchAsked } from './bench-act.ts';
import { actAtBench } from './bench-act.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';

/** What is promised to the order stays promised: it is still to be made. */
export const giveBackOrder = (flow: Flow, asked: BenchAsked & { readonly reason: string }): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    ...asked,
    content: { giveBack: asked.reason },
    isShared: true,
    decide: (_tx, { view, stage }) => {
      if (stage !== 'claimed' || !view.claim) return refuse({ kind: 'not-this-step' });
      const { claim } = view;
      const ending = { byAccountId: staffOf(flow).accountId, reason: asked.reason, atMs: flow.now };
      return accept({
        kind: 'order-given-back',
        body: { fromAccountId: claim.byAccountId, reason: asked.reason },
        save: (tx) => endOrderClaim(tx, claim, ending),
      });
    },
  });
