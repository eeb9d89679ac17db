// An order that will not be made, or a jar that will not be fetched: closed with a reason, and what was promised to it is free again.
// A jar that is being mixed is thrown away instead, since what lies in it has left its lots.
import type { OrderStage } from '#db/orders.ts';
import { insertOrderEnd } from '#db/orders.ts';
import { freeReservations } from '#db/reservations.ts';
import type { OrderEndKind } from '#db/schema-orders.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { BenchAsked } from './bench-act.ts';
import { actAtBench } from './bench-act.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf, stampOf } from './flow.ts';

const ENDS: { readonly [S in OrderStage]?: Extract<OrderEndKind, 'cancelled' | 'discarded'> } = {
  placed: 'cancelled',
  held: 'cancelled',
  claimed: 'cancelled',
  ready: 'discarded',
};

export const closeOrder = (flow: Flow, asked: BenchAsked & { readonly reason: string }): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    ...asked,
    content: { close: asked.reason },
    isShared: true,
    decide: (_tx, { view, stage }) => {
      const kind = ENDS[stage];
      if (kind === undefined) return refuse({ kind: 'not-this-step' });
      const orderId = view.order.id;
      return accept({
        kind: `order-${kind}`,
        body: { reason: asked.reason },
        save: (tx) => {
          freeReservations(tx, { orderId, reason: kind, atMs: flow.now });
          insertOrderEnd(tx, { orderId, kind, reason: asked.reason, byAccountId: staffOf(flow).accountId, ...stampOf(tx, flow.now) });
        },
      });
    },
  });
