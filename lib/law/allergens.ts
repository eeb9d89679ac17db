// Fragrance allergens that must be named one by one: Regulation (EC) No 1223/2009, Annex III, as amended by Regulation (EU) 2023/1545.
// They are constituents of what was bought, listed beside its composition; the threshold is strict: exactly at it, none is owed.
import { compareText } from '../base/compare.ts';
import type { Composition } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { ProductKind } from '../rulebook/language.ts';
import type { Market } from '../rulebook/limit.ts';
import type { Part } from '../units/share.ts';
import { addParts, exceedsPpm, part, WHOLE_PPM } from '../units/share.ts';

/** 0.001 % where the product stays on, 0.01 % where it is taken off. */
export const ALLERGEN_ABOVE_PPM = { 'leave-on': 10, 'rinse-off': 100 } satisfies Record<ProductKind, number>;

export interface AllergenOwed {
  readonly name: string;
  /** In parts of the jar's whole, rounded up. */
  readonly held: Part;
}

/** Allergens above the threshold of the market's kind of product, most first. The US has no such list: none. */
export function allergensOwed(book: Book, jar: Composition, market: Pick<Market, 'id' | 'productKind'>): readonly AllergenOwed[] {
  if (market.id !== 'EU') return [];
  const fine = part(jar.whole * BigInt(WHOLE_PPM));
  const totals = new Map<string, Part>();
  const add = (name: string, held: Part): void => void totals.set(name, addParts(totals.get(name) ?? part(0n), held));
  for (const [materialId, held] of jar.materials) {
    for (const allergen of need(book.materials, materialId).allergens) add(allergen.name, part(held * BigInt(allergen.sharePpm)));
  }
  return [...totals]
    .filter(([, held]) => exceedsPpm(held, fine, ALLERGEN_ABOVE_PPM[market.productKind]))
    .sort(([nameA, a], [nameB, b]) => (a === b ? compareText(nameA, nameB) : a > b ? -1 : 1))
    .map(([name, held]) => ({ name, held: part((held + BigInt(WHOLE_PPM) - 1n) / BigInt(WHOLE_PPM)) }));
}
