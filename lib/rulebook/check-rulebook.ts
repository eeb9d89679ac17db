// Whether a rulebook makes sense as a whole. It lists every fault it can find, since an author who mends one at a time never sees the end,
// and it never throws: a dangling reference is one fault more, not the last.
import type { LocalDay } from '../units/time.ts';
import type { Book } from './book.ts';
import { openBook } from './book.ts';
import { checkAcidity } from './check-acidity.ts';
import { checkBase } from './check-base.ts';
import { checkCautions } from './check-cautions.ts';
import { checkHouse } from './check-house.ts';
import { checkIds } from './check-ids.ts';
import { checkJudgements } from './check-judgements.ts';
import { checkLimits } from './check-limits.ts';
import { checkMarkets } from './check-markets.ts';
import { checkMaterials } from './check-materials.ts';
import { checkOffers } from './check-offers.ts';
import { checkPreservation } from './check-preservation.ts';
import { checkQuestions } from './check-questions.ts';
import { checkReferences } from './check-references.ts';
import { checkScopes } from './check-scopes.ts';
import { checkSizes } from './check-sizes.ts';
import { checkStocks } from './check-stocks.ts';
import { checkSums } from './check-sums.ts';
import { checkTexts } from './check-texts.ts';
import { checkWindows } from './check-windows.ts';
import type { Rulebook } from './rulebook.ts';
import type { Faults, SoundnessFault } from './soundness-fault.ts';

const CHECKS: readonly ((book: Book, day: LocalDay | undefined) => Faults)[] = [
  checkIds,
  checkReferences,
  checkSums,
  checkWindows,
  checkAcidity,
  checkMaterials,
  checkStocks,
  checkBase,
  checkPreservation,
  checkHouse,
  checkOffers,
  checkLimits,
  checkMarkets,
  checkJudgements,
  checkScopes,
  checkQuestions,
  checkCautions,
  checkTexts,
  checkSizes,
];

/**
 * All faults of a rulebook, in one fixed order; errors forbid publishing, warnings ask somebody to look.
 * @param day of the shop, to tell limit rows that are over or still to come; without it every row counts as in force.
 */
export function checkRulebook(rulebook: Rulebook, day?: LocalDay): readonly SoundnessFault[] {
  const book = openBook(rulebook);
  return CHECKS.flatMap((check) => [...check(book, day)]);
}
