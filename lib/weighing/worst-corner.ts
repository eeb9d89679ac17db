// Makes bands narrow enough that no jar inside all of them can break a limit. A linear limit is worst at one corner of the bands,
// so one sum per limit stands for every jar that could be weighed; brute force over all corners says the same.
import { compareBy } from '../base/compare.ts';
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';
import type { Band } from './band.ts';
import { bandStateOf, readingsIn } from './band.ts';
import type { MassLimit } from './mass-limit.ts';
import { pushOf } from './mass-limit.ts';

/** A line with the step of its scale, what it aims at, and its band. */
export interface CornerLine {
  readonly lineId: string;
  readonly stepUg: MassUg;
  readonly targetUg: MassUg;
  readonly band: Band;
}

/** Why the bands cannot be narrowed enough: the limit that stays broken, and the line that it squeezes most (null: none can give way). */
export interface TooNarrow {
  readonly lineId: string | null;
  readonly limit: MassLimit;
}

/** Fewest readings that a band must hold. */
export const LEAST_READINGS = 3;

/** Σ m·(content − allowed) at the worst corner, over the limit's whole: lines that push at their upper ends, the others at their lower. */
export const worstSum = (limit: MassLimit, lines: readonly CornerLine[]): bigint =>
  lines.reduce((sum, { lineId, band }) => {
    const push = pushOf(limit, lineId);
    return sum + push * BigInt(push > 0n ? band.hiUg : band.loUg);
  }, 0n);

/**
 * Pulls ends in, one step at a time, until no limit is broken at its worst corner. Each time the most broken limit decides
 * (ties by code, then id) and its line with the most readings gives way (ties by card order), so the order of limits cannot show.
 * A band keeps three readings and its target; when no line can give any more, the card is refused.
 */
export function narrowBands(lines: readonly CornerLine[], limits: readonly MassLimit[]): Result<readonly CornerLine[], TooNarrow> {
  const bands = [...lines];
  // Narrower bands lower every worst sum: a limit that holds at the start can never be broken later.
  const broken = limits
    .filter((limit) => worstSum(limit, bands) > 0n)
    .sort(
      compareBy<MassLimit>(
        ({ code }) => code,
        ({ id }) => id,
      ),
    );
  for (let worst = mostBroken(broken, bands); worst !== null; worst = mostBroken(broken, bands)) {
    const limit = worst;
    const giver = widest(bands.filter((line) => gives(limit, line) && canGive(pulledIn(limit, line))));
    if (!giver) return refuse({ lineId: widest(bands.filter((line) => gives(limit, line)))?.lineId ?? null, limit });
    bands[bands.indexOf(giver)] = pulledIn(limit, giver);
  }
  return accept(bands);
}

/** The limit with the largest sum over 0; the first of equals. Sums over different wholes are compared crosswise. */
function mostBroken(limits: readonly MassLimit[], lines: readonly CornerLine[]): MassLimit | null {
  const sums = limits.map((limit) => ({ limit, sum: worstSum(limit, lines) })).filter(({ sum }) => sum > 0n);
  const [first, ...rest] = sums;
  if (!first) return null;
  return rest.reduce((worst, one) => (one.sum * worst.limit.whole > worst.sum * one.limit.whole ? one : worst), first).limit;
}

/** Lines that bring what a limit bounds (their upper ends give way), or what a minimum protects (their lower ends do). */
function gives(limit: MassLimit, line: CornerLine): boolean {
  const push = pushOf(limit, line.lineId);
  return limit.direction === 'at-most' ? push > 0n : push < 0n;
}

const canGive = ({ band, stepUg, targetUg }: CornerLine): boolean =>
  readingsIn(band, stepUg) >= LEAST_READINGS && bandStateOf(band, targetUg) === 'in-band';

/** The line with the most readings; the first of equals. */
function widest(lines: readonly CornerLine[]): CornerLine | undefined {
  const most = Math.max(...lines.map((line) => readingsIn(line.band, line.stepUg)));
  return lines.find((line) => readingsIn(line.band, line.stepUg) === most);
}

function pulledIn(limit: MassLimit, line: CornerLine): CornerLine {
  const { loUg, hiUg } = line.band;
  const atMost = limit.direction === 'at-most';
  return { ...line, band: { loUg: massUg(atMost ? loUg : loUg + line.stepUg), hiUg: massUg(atMost ? hiUg - line.stepUg : hiUg) } };
}
