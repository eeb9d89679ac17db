// Which judgement speaks for two materials. A pair's own judgement wins; else the strictest class judgement that names both; else nobody judged.
import type { Composition } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need, pairKey } from '../rulebook/book.ts';
import type { ClassJudgement, JudgementVerdict, PairLimit } from '../rulebook/judgement.ts';

/** A judgement turned so that `first` and `second` are the materials that its limits speak of. */
export interface PairRuling {
  readonly ruleId: string;
  readonly firstMaterialId: string;
  readonly secondMaterialId: string;
  readonly verdict: JudgementVerdict;
  readonly limit?: PairLimit;
  readonly cautionId?: string;
}

/** Strictest first; "not judged" stands between never and limit and is what an empty answer means. */
export const STRICTNESS = { never: 0, limit: 2, caution: 3, fine: 4 } satisfies Record<JudgementVerdict, number>;

/**
 * The rulings that hold for a pair: one of its own, or all class judgements of the strictest verdict. Empty: nobody judged it.
 * Two materials of the approved base need no judgement of their own: the base's evidence covers them. Where the additions bring more of
 * one (`isAdded`), a class judgement speaks all the same.
 */
export function pairRulings(book: Book, a: string, b: string, isAdded: boolean): readonly PairRuling[] | 'judged-with-the-base' {
  const own = book.pairJudgements.get(pairKey(a, b));
  if (own) {
    const { firstMaterialId, secondMaterialId, verdict, limit, cautionId } = own;
    return [{ ruleId: own.id, firstMaterialId, secondMaterialId, verdict, limit, cautionId }];
  }
  const inBase = book.baseMaterialIds.has(a) && book.baseMaterialIds.has(b);
  if (inBase && !isAdded) return 'judged-with-the-base';
  const all = classJudgementsOn(book, a, b).flatMap((judgement) => turned(book, judgement, a, b));
  if (inBase && all.length === 0) return 'judged-with-the-base';
  const strictest = Math.min(...all.map((ruling) => STRICTNESS[ruling.verdict]));
  return all.filter((ruling) => STRICTNESS[ruling.verdict] === strictest);
}

/** Every class judgement that names a class of each, once. */
function classJudgementsOn(book: Book, a: string, b: string): readonly ClassJudgement[] {
  const theirs = need(book.materials, b).classes;
  const found = need(book.materials, a).classes.flatMap((mine) =>
    theirs.flatMap((other) => book.classJudgementsOf.get(pairKey(mine, other)) ?? []),
  );
  return found.length > 1 ? [...new Set(found)] : found;
}

/** Do the additions of a jar bring one of the two? */
export const isPairAdded = (jar: Pick<Composition, 'additionMaterials'>, a: string, b: string): boolean =>
  (jar.additionMaterials.get(a) ?? 0n) > 0n || (jar.additionMaterials.get(b) ?? 0n) > 0n;

function turned(book: Book, judgement: ClassJudgement, a: string, b: string): readonly PairRuling[] {
  const { id: ruleId, verdict, limit, cautionId, firstClass, secondClass } = judgement;
  const has = (materialId: string, materialClass: string): boolean =>
    need(book.materials, materialId).classes.some((one) => one === materialClass);
  const ruling = (firstMaterialId: string, secondMaterialId: string): PairRuling => ({
    ruleId,
    firstMaterialId,
    secondMaterialId,
    verdict,
    limit,
    cautionId,
  });
  const oneWay = has(a, firstClass) && has(b, secondClass) ? [ruling(a, b)] : [];
  const otherWay = firstClass !== secondClass && has(b, firstClass) && has(a, secondClass) ? [ruling(b, a)] : [];
  return [...oneWay, ...otherWay];
}
