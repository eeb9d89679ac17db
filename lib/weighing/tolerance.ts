// How far a line may be off. Data decides where it speaks; else the house's usual tolerance, or the narrow one where the line's own level
// comes close to a legal limit or a cap. Sums over several lines are the worst corner's business.
import type { Book } from '../rulebook/book.ts';
import type { Plan, PlanLine } from '../rulebook/variant.ts';
import type { FactorPpm } from '../units/share.ts';
import { factorPpm, WHOLE_PPM } from '../units/share.ts';
import type { BenchLine } from './bench-line.ts';
import type { MassLimit } from './mass-limit.ts';

/** Tolerance of a line as a share of its exact mass. A stock that serves several purposes takes the narrowest of them. */
export function tauOf(book: Book, plan: Pick<Plan, 'lines'>, line: BenchLine, limits: readonly MassLimit[]): FactorPpm {
  const { bands } = book.rulebook.house;
  const { source } = line;
  if (source.kind === 'cream') return bands.creamPpm;
  if (source.kind === 'wetting-oil') return bands.wettingOilPpm;
  const fallback = isNearLimit(book, line, limits) ? bands.nearLimitTauPpm : bands.usualPpm;
  const given = plan.lines.filter((one) => one.stockId === source.stockId).map((one) => givenTau(book, one) ?? fallback);
  return factorPpm(Math.min(...given));
}

/** The tolerance that an active carries as data. */
function givenTau(book: Book, planLine: PlanLine): FactorPpm | undefined {
  if (planLine.purpose === 'shade' || planLine.materialId === null) return undefined;
  return book.rulebook.actives.find((active) => active.materialId === planLine.materialId && active.role === planLine.purpose)?.tauPpm;
}

/** True when what this line alone brings, plus the house's margin, reaches a legal limit or a cap. */
export function isNearLimit(book: Book, line: BenchLine, limits: readonly MassLimit[]): boolean {
  const margin = BigInt(WHOLE_PPM) + BigInt(book.rulebook.house.bands.nearLimitPpm);
  return limits.some((limit) => {
    const share = limit.shares.get(line.lineId);
    if (!share || share.content === 0n || limit.direction === 'at-least') return false;
    if (limit.basis !== 'law' && limit.basis !== 'cap') return false;
    return line.share * share.content * margin >= 10n ** 12n * share.allowed * BigInt(WHOLE_PPM);
  });
}
