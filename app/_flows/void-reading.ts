// Taking the last reading back because it was typed wrongly. The reading stays on record beside the fact that it does not count; what was
// poured stays poured, and is weighed in again as the next reading.

import type { Reading } from '#db/connection.ts';
import { listJarFacts } from '#db/jar-facts.ts';
import { listStepsDone, recordReadingVoid } from '#db/jars.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { voidableSeq } from '#lib/weighing/readings.ts';
import type { BenchAsked } from './bench-act.ts';
import { actAtBench } from './bench-act.ts';
import type { BenchOrder } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';

export const voidReading = (flow: Flow, asked: BenchAsked & { readonly reason: string }): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    ...asked,
    content: { void: asked.reason },
    decide: (tx, bench) => {
      const last = lastReading(tx, bench);
      if (!last) return refuse({ kind: 'nothing-to-take-back' });
      const { id, jarCode, lineNo } = last;
      const row = { readingId: id, jarCode, hadLeftLot: false, reason: asked.reason, byAccountId: staffOf(flow).accountId, atMs: flow.now };
      return accept({
        kind: 'reading-voided',
        body: { jarCode, readingId: id, lineNo, reason: asked.reason },
        save: (writing) => void recordReadingVoid(writing, row, flow.newId),
      });
    },
  });

/** The reading that may still be taken back: the jar's last fact, with no step confirmed and no check made since. */
export function lastReading(tx: Reading, { view, facts, checks }: Pick<BenchOrder, 'view' | 'facts' | 'checks'>) {
  const jarCode = view.jar?.batchCode;
  const factNo = voidableSeq(facts);
  if (jarCode === undefined || factNo === null) return null;
  const reading = listJarFacts(tx, jarCode).readings.find((one) => one.factNo === factNo);
  if (!reading) return null;
  const isSince = ({ atMs }: { readonly atMs: number }): boolean => atMs > reading.atMs;
  return listStepsDone(tx, jarCode).some(isSince) || checks.some(isSince) ? null : reading;
}
