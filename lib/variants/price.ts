// The price belongs to the variant and the size of the jar, never to how it happens to be weighed.
import { invariant } from '../base/invariant.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Variant } from '../rulebook/variant.ts';
import type { MoneyMinor } from '../units/money.ts';
import { addMoney } from '../units/money.ts';

/** Shade and levels, without the jar. */
export function additionsPrice(book: Book, variant: Variant): MoneyMinor {
  return variant.actives.reduce<MoneyMinor>((sum, { activeId, levelPpm }) => {
    const level = need(book.actives, activeId).levels.find((one) => one.levelPpm === levelPpm);
    invariant(level !== undefined, `no level ${levelPpm} ppm of ${activeId}`);
    return addMoney(sum, level.priceMinor);
  }, need(book.shades, variant.shadeId).priceMinor);
}

/** What the customer pays for this variant in this jar. Throws a Fault for an unknown shade, active or size. */
export const priceOf = (book: Book, variant: Variant, jarSizeId: string): MoneyMinor =>
  addMoney(need(book.jarSizes, jarSizeId).priceMinor, additionsPrice(book, variant));
