// Handing over is the sale. The label on the jar is read once more, so that nobody takes home what another
// ordered, or a jar whose last day of use is over.
import { insertOrderEnd } from '#db/orders.ts';
import { countLabelPrints } from '#db/releases.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { BenchAsked } from './bench-act.ts';
import { actAtBench, stoppedBy } from './bench-act.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf, stampOf } from './flow.ts';
import { isOfJar } from './release-jar.ts';

export const collectOrder = (flow: Flow, asked: BenchAsked & { readonly labelCode: string }): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    ...asked,
    content: { collect: asked.labelCode },
    isShared: true,
    decide: (tx, bench) => {
      const { view, stage } = bench;
      const jarCode = view.jar?.batchCode;
      if (jarCode === undefined || stage !== 'ready') return refuse({ kind: 'not-ready' });
      const stopped = stoppedBy(bench);
      if (stopped) return refuse(stopped);
      if (countLabelPrints(tx, jarCode) === 0) return refuse({ kind: 'label-not-printed' });
      if (!isOfJar(bench, asked.labelCode)) return refuse({ kind: 'other-jar' });
      const useByDay = view.release?.useByDay;
      if (useByDay && useByDay < bench.stand.day) return refuse({ kind: 'past-use-by', useByDay });
      const end = { orderId: view.order.id, kind: 'collected', reason: '', byAccountId: staffOf(flow).accountId } as const;
      return accept({
        kind: 'order-collected',
        body: { jarCode, priceMinor: view.order.priceMinor },
        save: (writing) => insertOrderEnd(writing, { ...end, ...stampOf(writing, flow.now) }),
      });
    },
  });
