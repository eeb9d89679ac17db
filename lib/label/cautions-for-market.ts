// Which of the cautions that a jar owes go on the label of one market: a caution that another market's limit asks for stays off it.
import type { Book } from '../rulebook/book.ts';
import type { MarketId } from '../rulebook/language.ts';

interface Owed {
  readonly cautionId: string;
  readonly ruleId: string;
}

/** Ids in the rulebook's order of cautions, each once. */
export function cautionsForMarket(book: Book, owed: readonly Owed[], marketId: MarketId): readonly string[] {
  const marketOf = new Map(book.rulebook.limits.map((row) => [row.id, row.marketId]));
  const here = new Set(owed.filter(({ ruleId }) => (marketOf.get(ruleId) ?? marketId) === marketId).map(({ cautionId }) => cautionId));
  return book.rulebook.cautions.map((caution) => caution.id).filter((id) => here.has(id));
}
