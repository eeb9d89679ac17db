// Check 8: is the jar's pH, errors included, inside every window that stands over it?
// The windows are intersected first: two windows that do not meet are a fact about the pair, whatever the pH would be.
import { compareText } from '../base/compare.ts';
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { Composition } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { PhWindow } from '../rulebook/material.ts';
import type { EndHeld, JarPh, PhPrediction } from './jar-ph.ts';
import { lowerEnd, missingAcidity, rootOfNeeds, shownPhX100, upperEnd } from './jar-ph.ts';
import { jarNeeds } from './need.ts';

/** One end of the intersection and whose it is: the base's id or a material's. */
interface WindowEnd {
  readonly of: string;
  readonly phX100: number;
}

export interface JarWindow {
  readonly lower: WindowEnd;
  readonly upper: WindowEnd;
}

/** The narrowest window over a jar: the base's own, and fresh and shelf windows of every material in the additions. */
export function jarWindow(book: Book, jar: Composition): JarWindow {
  const base = book.rulebook.base;
  const windows: (PhWindow & { readonly of: string })[] = [{ ...base.ph, of: base.id }];
  for (const materialId of [...jar.additionMaterials.keys()].sort(compareText)) {
    if (jar.additionMaterials.get(materialId) === 0n) continue;
    const { phFresh, phShelf } = need(book.materials, materialId);
    for (const window of [phFresh, phShelf]) if (window) windows.push({ ...window, of: materialId });
  }
  return windows.reduce<JarWindow>(
    ({ lower, upper }, one) => ({
      lower: one.minPhX100 > lower.phX100 ? { of: one.of, phX100: one.minPhX100 } : lower,
      upper: one.maxPhX100 < upper.phX100 ? { of: one.of, phX100: one.maxPhX100 } : upper,
    }),
    { lower: { of: base.id, phX100: base.ph.minPhX100 }, upper: { of: base.id, phX100: base.ph.maxPhX100 } },
  );
}

/** Findings of check 8 for a jar, planned or weighed; its pH is handed in: predicted for a plan, measured at release. */
export function checkPh(book: Book, jar: Composition, jarPh: JarPh): readonly Finding[] {
  const { lower, upper } = jarWindow(book, jar);
  const missing = jarPh.kind === 'predicted' && jarPh.needs.kind === 'missing' ? missingAcidity(jarPh.needs.stockIds) : [];
  if (lower.phX100 > upper.phX100) {
    return [
      finding('ph-windows-apart', lower.of, { lowerOf: lower.of, upperOf: upper.of, minPhX100: lower.phX100, maxPhX100: upper.phX100 }),
      ...missing,
    ];
  }
  if (missing.length > 0) return missing;
  const predictedPhX100 = shownPhX100(jarPh);
  return [
    ...endFindings(lowerEnd(jarPh, lower.phX100), lower.phX100 + jarPh.errorX100, () =>
      finding('ph-too-low', lower.of, { windowOf: lower.of, minPhX100: lower.phX100, predictedPhX100 }),
    ),
    ...endFindings(upperEnd(jarPh, upper.phX100), upper.phX100 - jarPh.errorX100, () =>
      finding('ph-too-high', upper.of, { windowOf: upper.of, maxPhX100: upper.phX100, predictedPhX100 }),
    ),
  ];
}

function endFindings(held: EndHeld, askedX100: number, broken: () => Finding): readonly Finding[] {
  if (held === 'held') return [];
  return [held === 'broken' ? broken() : finding('ph-outside-table', 'acidity', { atPhX100: askedX100 })];
}

/** Where the jar's pH is predicted to lie, without errors; or why nothing is predicted. */
export const predictPh = (book: Book, jar: Composition): PhPrediction => rootOfNeeds(jarNeeds(book, jar));
