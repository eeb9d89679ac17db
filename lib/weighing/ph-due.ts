// Which jars have their pH measured before release. A prediction screens; where a window is narrow or an acid is at work, the meter decides.
import { assertNever } from '../base/invariant.ts';
import { jarWindow } from '../chemistry/ph-check.ts';
import type { Composition } from '../composition/compose.ts';
import type { HouseRules } from '../rulebook/base.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import { phX100 } from '../units/chemistry.ts';
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { PhCheck } from './card.ts';

/** The window and method where a jar is to be measured, else null. `isFirst`: of this base lot on this day. */
export function phCheckFor(book: Book, jar: Composition, isFirst: boolean): PhCheck | null {
  const { lower, upper } = jarWindow(book, jar);
  const { phMeasured } = book.rulebook.house;
  const isNarrow = upper.phX100 - lower.phX100 < phMeasured.narrowWindowX100;
  const isDue = isFirst || isAlwaysDue(phMeasured.when, isNarrow || hasAcid(book, jar));
  return isDue ? { minPhX100: phX100(lower.phX100), maxPhX100: phX100(upper.phX100), method: phMeasured.method } : null;
}

function isAlwaysDue(when: HouseRules['phMeasured']['when'], isDelicate: boolean): boolean {
  switch (when) {
    case 'every-jar':
      return true;
    case 'acid-or-narrow-else-first-of-day':
      return isDelicate;
    default:
      return assertNever(when);
  }
}

/** An acid among the additions; the buffer of the base is not one. */
const hasAcid = (book: Book, jar: Composition): boolean =>
  [...jar.additionMaterials].some(([materialId, held]) => held > 0n && need(book.materials, materialId).classes.includes('acid'));

/** The most of the one approved correction that a jar may get, down to whole µg; null where the house approves none. */
export function mostCorrectionUg(book: Book, weighed: MassUg): MassUg | null {
  const correction = book.rulebook.house.phCorrection;
  return correction ? massUg(Number((BigInt(weighed) * BigInt(correction.maxSharePpm)) / BigInt(WHOLE_PPM))) : null;
}
