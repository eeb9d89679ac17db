// Taking an order on. One person gets it; whoever comes second is told so, and a bench holds one jar at a time. What was left from
// earlier days lapses first, so that its lots are free.
import type { Reading, Writing } from '#db/connection.ts';
import { insertOrderClaim, listOpenOrders, orderStage } from '#db/orders.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { addDays } from '#lib/units/time.ts';
import type { BenchAsked, BenchDecision } from './bench-act.ts';
import { actAtBench, stoppedBy } from './bench-act.ts';
import type { BenchOrder } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';
import { lapseOrders } from './lapse-orders.ts';
import { rejudgeOrders } from './rejudge-open-orders.ts';
import { OPEN_DAYS } from './show-queue.ts';

export function claimOrder(flow: Flow, asked: BenchAsked): Result<null, BenchRefusal> {
  lapseOrders(flow);
  rejudgeOrders(flow);
  return actAtBench(flow, { ...asked, content: 'claim', isShared: true, decide: (tx, bench) => claimed(tx, flow, bench) });
}

function claimed(tx: Writing, flow: Flow, bench: BenchOrder): BenchDecision {
  const { view, stage, stand } = bench;
  if (stage !== 'placed') return refuse({ kind: view.claim ? 'already-claimed' : 'not-ready' });
  const barred = claimBar(tx, bench);
  if (barred) return refuse(barred);
  const stationId = stand.bench?.stationId;
  if (stationId === undefined) return refuse({ kind: 'no-bench' });
  return accept({
    kind: 'order-claimed',
    body: { stationId },
    save: (writing) =>
      insertOrderClaim(writing, { orderId: view.order.id, byAccountId: staffOf(flow).accountId, stationId, atMs: flow.now }),
  });
}

function claimBar(tx: Reading, bench: BenchOrder): BenchRefusal | null {
  const stationId = bench.stand.bench?.stationId;
  const inHand = listOpenOrders(tx, addDays(bench.stand.day, -OPEN_DAYS)).find(
    (view) =>
      view.claim?.stationId === stationId && view.order.id !== bench.view.order.id && ['claimed', 'mixing'].includes(orderStage(view)),
  );
  return stoppedBy(bench) ?? (inHand ? { kind: 'bench-busy', shortCode: inHand.order.shortCode } : null);
}
