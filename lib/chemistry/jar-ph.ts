// What is known of a jar's pH, predicted from needs or measured, and which ends of a window it therefore holds.
// One meaning of "inside the window, errors included" serves every check, so that a pair limit and the pH check cannot disagree.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { Composition } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import type { Ph, PhX100 } from '../units/chemistry.ts';
import { ph, phX100 } from '../units/chemistry.ts';
import type { NeedPoints } from './acidity-table.ts';
import { pointAt, TABLE_END_X100, TABLE_POINTS, TABLE_START_X100, TABLE_STEP_X100 } from './acidity-table.ts';
import { basePoints } from './base-points.ts';
import type { JarNeeds } from './need.ts';
import { jarNeeds, needAt, needErrorAt } from './need.ts';

export type JarPh =
  | { readonly kind: 'predicted'; readonly needs: JarNeeds; readonly errorX100: number }
  | { readonly kind: 'measured'; readonly phX100: PhX100; readonly errorX100: number };

/** The pH that a jar's needs predict, with the house's error; `shiftX100` as `jarNeeds` takes it. */
export const predictedJarPh = (book: Book, jar: Composition, shiftX100 = 0): JarPh => ({
  kind: 'predicted',
  needs: jarNeeds(book, jar, shiftX100),
  errorX100: book.rulebook.house.phErrorX100,
});

/** A reading at the bench, with the error that the house grants its meter (0 when the reading itself decides). */
export const measuredJarPh = (read: PhX100, errorX100: number): JarPh => ({ kind: 'measured', phX100: read, errorX100 });

export type PhPrediction =
  /** Roots of need = 0: one point, or both ends where the needs lie flat at zero. Hundredths bracket them outwards, exactly. */
  | { readonly kind: 'within'; readonly lowest: Ph; readonly highest: Ph; readonly minPhX100: PhX100; readonly maxPhX100: PhX100 }
  | { readonly kind: 'below-table' }
  | { readonly kind: 'above-table' }
  | { readonly kind: 'missing'; readonly stockIds: readonly string[] };

/** Where need = 0. Needs never decrease with pH, so a sign change is the only one. */
export function rootOfNeeds(needs: JarNeeds): PhPrediction {
  if (needs.kind === 'missing') return needs;
  if (pointAt(needs.points, 0) > 0n) return { kind: 'below-table' };
  if (pointAt(needs.points, TABLE_POINTS - 1) < 0n) return { kind: 'above-table' };
  const first = rootAfter(needs.points, needs.points.findIndex((value) => value >= 0n) - 1);
  const last = rootAfter(
    needs.points,
    needs.points.findLastIndex((value) => value <= 0n),
  );
  return { kind: 'within', lowest: first.root, highest: last.root, minPhX100: first.floorX100, maxPhX100: last.ceilingX100 };
}

interface Root {
  readonly root: Ph;
  readonly floorX100: PhX100;
  readonly ceilingX100: PhX100;
}

/** The zero of the line that starts at a point of the table (−1 and the last point: that end itself). */
function rootAfter(points: NeedPoints, index: number): Root {
  const start = Math.max(index, 0);
  const low = pointAt(points, start);
  const rise = start === TABLE_POINTS - 1 ? 0n : pointAt(points, start + 1) - low;
  const startX100 = TABLE_START_X100 + TABLE_STEP_X100 * start;
  if (low === 0n || rise === 0n) return { root: ph(startX100 / 100), floorX100: phX100(startX100), ceilingX100: phX100(startX100) };
  const scaled = -low * BigInt(TABLE_STEP_X100);
  const ceiling = (scaled + rise - 1n) / rise;
  const exact = Number((scaled * 10n ** 12n) / rise) / 1e12;
  return {
    root: ph((startX100 + exact) / 100),
    floorX100: phX100(startX100 + Number(scaled / rise)),
    ceilingX100: phX100(startX100 + Number(ceiling)),
  };
}

/** For people and facts: the middle of a prediction in whole hundredths, the reading itself, or null where none is known. */
export function shownPhX100(jarPh: JarPh): number | null {
  if (jarPh.kind === 'measured') return jarPh.phX100;
  const predicted = rootOfNeeds(jarPh.needs);
  return predicted.kind === 'within' ? Math.round((predicted.lowest + predicted.highest) * 50) : null;
}

/** How far a measured base lies from the approved one, in hundredths; null where the approved one's own pH lies outside its table. */
export function baseShiftX100(book: Book, measured: PhX100): number | null {
  const needs: JarNeeds = { kind: 'known', points: basePoints(book, 0), stocks: [], errorMinUmolPerKg: 0n };
  const approvedX100 = shownPhX100({ kind: 'predicted', needs, errorX100: 0 });
  return approvedX100 === null ? null : measured - approvedX100;
}

/** Does the jar hold one end of a window? "unknown": the tables cannot tell. */
export type EndHeld = 'held' | 'broken' | 'unknown';

/**
 * pH ≥ min, errors included: need(min + e) ≤ −Σ share·u. Under the table's start the start itself is asked,
 * which is enough since needs never decrease; above the table's end only a jar already too acid there is surely broken.
 */
export function lowerEnd(jarPh: JarPh, minX100: number): EndHeld {
  if (jarPh.kind === 'measured') return jarPh.phX100 - jarPh.errorX100 >= minX100 ? 'held' : 'broken';
  if (jarPh.needs.kind === 'missing') return 'unknown';
  const asked = minX100 + jarPh.errorX100;
  if (asked > TABLE_END_X100) return needAt(jarPh.needs, TABLE_END_X100) > 0n ? 'broken' : 'unknown';
  const at = Math.max(asked, TABLE_START_X100);
  if (needAt(jarPh.needs, at) <= -needErrorAt(jarPh.needs, at)) return 'held';
  return asked < TABLE_START_X100 ? 'unknown' : 'broken';
}

/** pH ≤ max, errors included: need(max − e) ≥ Σ share·u; the mirror of lowerEnd. */
export function upperEnd(jarPh: JarPh, maxX100: number): EndHeld {
  if (jarPh.kind === 'measured') return jarPh.phX100 + jarPh.errorX100 <= maxX100 ? 'held' : 'broken';
  if (jarPh.needs.kind === 'missing') return 'unknown';
  const asked = maxX100 - jarPh.errorX100;
  if (asked < TABLE_START_X100) return needAt(jarPh.needs, TABLE_START_X100) < 0n ? 'broken' : 'unknown';
  const at = Math.min(asked, TABLE_END_X100);
  if (needAt(jarPh.needs, at) >= needErrorAt(jarPh.needs, at)) return 'held';
  return asked > TABLE_END_X100 ? 'unknown' : 'broken';
}

/** True as soon as the pH, errors included, may lie outside [min, max]; also where the tables cannot tell. null = no such end. */
export const mayLieOutside = (jarPh: JarPh, minX100: number | null, maxX100: number | null): boolean =>
  (minX100 !== null && lowerEnd(jarPh, minX100) !== 'held') || (maxX100 !== null && upperEnd(jarPh, maxX100) !== 'held');

export type PhBounds =
  | { readonly kind: 'known'; readonly lowest: Ph; readonly highest: Ph }
  | { readonly kind: 'unknown'; readonly findings: readonly Finding[] };

/** Prediction or reading ± e for what changes smoothly with pH; else what is missing, as undecided findings. */
export function phBounds(jarPh: JarPh): PhBounds {
  if (jarPh.kind === 'measured') return boundsAround(jarPh.phX100 / 100, jarPh.phX100 / 100, jarPh.errorX100);
  const predicted = rootOfNeeds(jarPh.needs);
  if (predicted.kind === 'within') return boundsAround(predicted.lowest, predicted.highest, jarPh.errorX100);
  if (predicted.kind === 'missing') return { kind: 'unknown', findings: missingAcidity(predicted.stockIds) };
  const atPhX100 = predicted.kind === 'below-table' ? TABLE_START_X100 : TABLE_END_X100;
  return { kind: 'unknown', findings: [finding('ph-outside-table', 'acidity', { atPhX100 })] };
}

const boundsAround = (low: number, high: number, errorX100: number): PhBounds => ({
  kind: 'known',
  lowest: ph(Math.max(0, low - errorX100 / 100)),
  highest: ph(Math.min(14, high + errorX100 / 100)),
});

export const missingAcidity = (stockIds: readonly string[]): readonly Finding[] =>
  stockIds.map((stockId) => finding('acidity-missing', stockId, { stockId }));
