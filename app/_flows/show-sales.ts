// Combinations sold in the last weeks, with the names they went by.
import { listSoldCombinations } from '#db/sales.ts';
import { readShop } from '#db/shop.ts';
import type { Combination } from '#lib/review/combinations.ts';
import { combinationsSold } from '#lib/review/combinations.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import { sharePpm } from '#lib/units/share.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { addDays, isoWeek, localDayIn } from '#lib/units/time.ts';
import { editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import { maskName } from './mask-view.ts';

const WEEKS_COUNT = 26;

export interface NamedCombination extends Combination {
  readonly name: string;
}

export interface Sales {
  readonly fromDay: LocalDay;
  readonly toDay: LocalDay;
  readonly currency: string;
  readonly jarsCount: number;
  readonly combinations: readonly NamedCombination[];
}

export function showSales(flow: Flow): Sales {
  return flow.db.read((tx) => {
    const toDay = localDayIn(readShop(tx).zone, flow.now);
    const fromDay = addDays(toDay, -7 * WEEKS_COUNT);
    const book = editionInForce(tx, flow)?.book ?? null;
    const combinations = combinationsSold(listSoldCombinations(tx, { fromWeek: isoWeek(fromDay), toWeek: isoWeek(toDay) }));
    const isKnown = ({ shadeId, actives }: Variant): boolean =>
      (book?.shades.has(shadeId) ?? false) && actives.every((one) => book?.actives.has(one.activeId));
    const named = combinations.map((combination) => {
      const variant = variantOf(combination.variantKey);
      return { ...combination, name: book && isKnown(variant) ? maskName(book, 'en', variant) : combination.variantKey };
    });
    return {
      fromDay,
      toDay,
      currency: book?.rulebook.currency ?? 'EUR',
      jarsCount: combinations.reduce((sum, one) => sum + one.jarsCount, 0),
      combinations: named,
    };
  });
}

/** A stored key read back: "shade|active@level+active@level". */
function variantOf(key: string): Variant {
  const [shadeId = '', rest = ''] = key.split('|');
  const actives = rest === '' ? [] : rest.split('+').map((one) => one.split('@'));
  return { shadeId, actives: actives.map(([activeId = '', level = '0']) => ({ activeId, levelPpm: sharePpm(Number(level)) })) };
}
