// One whole number below 2^53 ranks a mask: score, then fewer actives, lower irritancy, lower price. The key decides last, outside the number.

import type { Person } from '../answers/person.ts';
import { compareText } from '../base/compare.ts';
import { invariant } from '../base/invariant.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Variant } from '../rulebook/variant.ts';
import type { Permitted } from './permitted.ts';

/** Σ weight × min(1000, Σ benefits of the actives at their levels), a whole number. */
export function scoreOf(book: Book, variant: Variant, wishes: Person['wishes']): number {
  const benefits = new Map<string, number>();
  for (const { activeId, levelPpm } of variant.actives) {
    const level = need(book.actives, activeId).levels.find((one) => one.levelPpm === levelPpm);
    for (const { concernId, benefitMilli } of level?.benefits ?? []) benefits.set(concernId, (benefits.get(concernId) ?? 0) + benefitMilli);
  }
  return [...wishes].reduce((sum, [concernId, weight]) => sum + weight * Math.min(1000, benefits.get(concernId) ?? 0), 0);
}

export interface Ranked extends Permitted {
  readonly score: number;
  readonly rank: number;
  readonly priceStepsCount: number;
  readonly codeKey: string;
}

/** Shade code, then active codes with their levels: the last tie-break, which no renumbering of ids can move. */
export function codeKey(book: Book, variant: Variant): string {
  const actives = variant.actives.map(
    ({ activeId, levelPpm }) => `${need(book.actives, activeId).code}@${String(levelPpm).padStart(7, '0')}`,
  );
  return `${need(book.shades, variant.shadeId).code}|${actives.sort().join('+')}`;
}

/** Ranks by one folded number; higher is better. */
export function rankAll(book: Book, permitted: readonly Permitted[], wishes: Person['wishes']): readonly Ranked[] {
  const step = book.rulebook.house.ranking.priceStepMinor;
  const priceSteps = (one: Permitted): number => Math.ceil(one.additionsPriceMinor / step);
  const irritancyRoom = 1 + Math.max(0, ...permitted.map((one) => one.irritancyStepsCount));
  const priceRoom = 1 + Math.max(0, ...permitted.map(priceSteps));
  const most = book.rulebook.base.mostActivesCount;
  return permitted.map((one) => {
    const score = scoreOf(book, one.variant, wishes);
    const byActives = score * (most + 1) + (most - one.variant.actives.length);
    const byIrritancy = byActives * irritancyRoom + (irritancyRoom - 1 - one.irritancyStepsCount);
    const rank = byIrritancy * priceRoom + (priceRoom - 1 - priceSteps(one));
    invariant(Number.isSafeInteger(rank), 'rank leaves the range of whole doubles: coarsen the ranking steps');
    return { ...one, score, rank, priceStepsCount: priceSteps(one), codeKey: codeKey(book, one.variant) };
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
