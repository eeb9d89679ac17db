// One whole number below 2^53 ranks a mask: score, then fewer actives, lower irritancy, lower price. The key decides last, outside the number.

import type { Person } from '../answers/person.ts';
import { compareText } from '../base/compare.ts';
import { invariant } from '../base/invariant.ts';
import type { Book } from '../rulebook/book.ts';
import type { Variant } from '../rulebook/variant.ts';
import type { Permitted } from './permitted.ts';

/** Σ weight × min(1000, Σ benefits of the actives at their levels), a whole number. */
export const scoreOf = (book: Book, variant: Variant, wishes: Person['wishes']): number => scorer(book, wishes)(variant);

/** The same for many variants: what each level gives to each wish is looked up once. */
function scorer(book: Book, wishes: Person['wishes']): (variant: Variant) => number {
  const asked = [...wishes];
  const given = new Map<string, ReadonlyMap<number, readonly number[]>>(
    book.rulebook.actives.map(({ id, levels }) => [
      id,
      new Map(
        levels.map(({ levelPpm, benefits }) => [
          levelPpm,
          asked.map(([concernId]) =>
            benefits.reduce((sum, benefit) => (benefit.concernId === concernId ? sum + benefit.benefitMilli : sum), 0),
          ),
        ]),
      ),
    ]),
  );
  return ({ actives }) =>
    asked.reduce((score, [, weight], wish) => {
      const benefit = actives.reduce((sum, { activeId, levelPpm }) => sum + (given.get(activeId)?.get(levelPpm)?.[wish] ?? 0), 0);
      return score + weight * Math.min(WHOLE_MILLI, benefit);
    }, 0);
}

const WHOLE_MILLI = 1000;

export interface Ranked extends Permitted {
  readonly score: number;
  readonly rank: number;
  readonly priceStepsCount: number;
}

/** Ranks by one folded number; higher is better. */
export function rankAll(book: Book, permitted: readonly Permitted[], wishes: Person['wishes']): readonly Ranked[] {
  const step = book.rulebook.house.ranking.priceStepMinor;
  const priceSteps = (one: Permitted): number => Math.ceil(one.additionsPriceMinor / step);
  const irritancyRoom = 1 + permitted.reduce((most, one) => Math.max(most, one.irritancyStepsCount), 0);
  const priceRoom = 1 + permitted.reduce((most, one) => Math.max(most, priceSteps(one)), 0);
  const scoreFor = scorer(book, wishes);
  const most = book.rulebook.base.mostActivesCount;
  return permitted.map((one) => {
    const score = scoreFor(one.variant);
    const byActives = score * (most + 1) + (most - one.variant.actives.length);
    const byIrritancy = byActives * irritancyRoom + (irritancyRoom - 1 - one.irritancyStepsCount);
    const rank = byIrritancy * priceRoom + (priceRoom - 1 - priceSteps(one));
    invariant(Number.isSafeInteger(rank), 'rank leaves the range of whole doubles: coarsen the ranking steps');
    return { ...one, score, rank, priceStepsCount: priceSteps(one) };
  });
}

export const bestFirst = (a: Ranked, b: Ranked): number => b.rank - a.rank || compareText(a.codeKey, b.codeKey);

/** Lower irritancy, then higher score, fewer actives, lower price, key. */
export function mildestFirst(a: Ranked, b: Ranked): number {
  return (
    a.irritancyStepsCount - b.irritancyStepsCount ||
    b.score - a.score ||
    a.variant.actives.length - b.variant.actives.length ||
    a.priceStepsCount - b.priceStepsCount ||
    compareText(a.codeKey, b.codeKey)
  );
}
