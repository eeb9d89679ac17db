// Check 15 for the base: a lot of cream whose own pH, as it came in, would carry this jar out of its window.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import { baseShiftX100, predictedJarPh } from '../chemistry/jar-ph.ts';
import { checkPh } from '../chemistry/ph-check.ts';
import { composePlan } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import type { Plan } from '../rulebook/variant.ts';
import type { PhX100 } from '../units/chemistry.ts';
import type { BenchLot } from './allocate-lots.ts';

interface MeasuredLot {
  readonly id: string;
  readonly measuredPhX100: PhX100;
}

/** Lots of cream that were measured and do not suit the plan, in the order given. */
export function lotsOffPh(book: Book, plan: Plan, lots: readonly BenchLot[]): readonly (BenchLot & MeasuredLot)[] {
  const measured = lots.filter(
    (lot): lot is BenchLot & MeasuredLot => lot.source.kind === 'cream' && lot.status === 'released' && lot.measuredPhX100 !== null,
  );
  if (measured.length === 0) return [];
  const jar = composePlan(book, plan);
  return measured.filter((lot) => {
    const shiftX100 = baseShiftX100(book, lot.measuredPhX100);
    return shiftX100 === null || checkPh(book, jar, predictedJarPh(book, jar, shiftX100)).length > 0;
  });
}

export const baseLotPh = (lot: MeasuredLot): Finding =>
  finding('base-lot-ph', lot.id, { lotId: lot.id, measuredPhX100: lot.measuredPhX100 });
