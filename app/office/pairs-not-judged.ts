// Pairs that can meet in a jar of this rulebook and that nobody judged. They act as never, so they are listed until somebody does.
import type { Book } from '#lib/rulebook/book.ts';
import { pairRulings } from '#lib/verdict/pair-verdict.ts';

export interface OpenPair {
  readonly firstMaterialId: string;
  readonly secondMaterialId: string;
}

/** Materials of the base, shades, actives and their stocks, two by two, in id order. */
export function pairsNotJudged(book: Book): readonly OpenPair[] {
  const { base, shades, actives, stocks } = book.rulebook;
  const wanted = new Set([
    ...shades.flatMap((shade) => shade.parts.map((part) => part.materialId)),
    ...actives.map((active) => active.materialId),
  ]);
  const carriers = stocks
    .filter((stock) => stock.parts.some((part) => wanted.has(part.materialId)))
    .flatMap((stock) => stock.parts.map((part) => part.materialId));
  const ids = [...new Set([...wanted, ...carriers, ...base.parts.map((part) => part.materialId)])].sort();
  return ids.flatMap((firstMaterialId, index) =>
    ids
      .slice(index + 1)
      .filter((secondMaterialId) => pairRulings(book, firstMaterialId, secondMaterialId, true).length === 0)
      .map((secondMaterialId) => ({ firstMaterialId, secondMaterialId })),
  );
}
