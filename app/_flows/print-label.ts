// A print of a released jar's label. Each one is a fact with a number; from the second on the label says that it is a copy.
import { insertLabelPrint } from '#db/releases.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { BenchAsked } from './bench-act.ts';
import { actAtBench } from './bench-act.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';

export const printLabel = (flow: Flow, asked: BenchAsked): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    ...asked,
    content: 'print-label',
    isShared: true,
    decide: (_tx, { view, stage }) => {
      const jarCode = view.jar?.batchCode;
      if (jarCode === undefined || (stage !== 'ready' && stage !== 'collected')) return refuse({ kind: 'not-ready' });
      return accept({
        kind: 'label-printed',
        body: { jarCode },
        save: (tx) => void insertLabelPrint(tx, { jarCode, byAccountId: staffOf(flow).accountId, atMs: flow.now }),
      });
    },
  });
