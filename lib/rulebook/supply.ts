// How a level or a shade powder can reach the jar: which stocks bring it in whole ppm, and how much of each that takes.
import { WHOLE_PPM } from '../units/share.ts';
import type { Book } from './book.ts';
import type { Stock } from './material.ts';
import type { Active } from './offer.ts';

export interface Supply {
  readonly stock: Stock;
  /** Share of the jar as supplied. */
  readonly suppliedPpm: number;
}

/** Stocks whose purpose is this material: neat, or a premix that names it first. A blend serves whole shades only. */
export const stocksFor = (book: Book, materialId: string): readonly Stock[] =>
  book.rulebook.stocks.filter((stock) => !stock.isBlend && stock.parts[0]?.materialId === materialId);

/** Every stock that brings `wantedPpm` of a material in whole ppm. */
export function suppliesOf(book: Book, materialId: string, wantedPpm: number): readonly Supply[] {
  return stocksFor(book, materialId).flatMap((stock) => {
    const suppliedPpm = wholeQuotient(wantedPpm, stock.parts[0]?.sharePpm ?? 0);
    return suppliedPpm === null ? [] : [{ stock, suppliedPpm }];
  });
}

/** Share of the material as bought for a level of the pure active; null when it is no whole ppm. */
export const materialPpm = (active: Pick<Active, 'strengthPpm'>, levelPpm: number): number | null =>
  wholeQuotient(levelPpm, active.strengthPpm);

/** wanted / (share of the whole), or null when that is no whole number. Both are at most 10^6, so the product is exact. */
function wholeQuotient(wantedPpm: number, sharePpm: number): number | null {
  const scaled = wantedPpm * WHOLE_PPM;
  return sharePpm > 0 && scaled % sharePpm === 0 ? scaled / sharePpm : null;
}
