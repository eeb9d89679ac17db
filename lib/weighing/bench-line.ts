// The lines of a plan in the order of work. Powders stand before everything wet, because a powder dropped into finished cream clumps:
// whatever holds an insoluble powder goes into the paste, wherever its stock says it belongs.
import { compareBy } from '../base/compare.ts';
import { isInsolublePowder } from '../chemistry/wetting.ts';
import { planAmounts } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Material, Stock } from '../rulebook/material.ts';
import type { Plan } from '../rulebook/variant.ts';
import type { Part } from '../units/share.ts';
import { part } from '../units/share.ts';

/** What a line is taken from. The base stands at the bench in two parts. */
export type LineSource =
  | { readonly kind: 'stock'; readonly stockId: string }
  | { readonly kind: 'cream' }
  | { readonly kind: 'wetting-oil' };

/** Places in the order of work, first to last. */
export const PLACES = ['paste-powder', 'paste-liquid', 'wetting-oil', 'cream', 'with-cream', 'last'] as const;
export type Place = (typeof PLACES)[number];

export interface BenchLine {
  readonly lineId: string;
  readonly source: LineSource;
  readonly place: Place;
  /** Share of the jar as a part of 10^12. */
  readonly share: Part;
  /** Stock code, or the base's. */
  readonly code: string;
}

/** A stable text for a source; stocks cannot take the names of the base's parts. */
export const lineIdOf = (source: LineSource): string => (source.kind === 'stock' ? `stock:${source.stockId}` : source.kind);

/** How a finding names the stock of a line: the stock's id, or the part of the base. */
export const stockIdOf = (source: LineSource): string => (source.kind === 'stock' ? source.stockId : source.kind);

/**
 * One line per stock, the wetting oil and the cream, in the order of work: powders, oil-borne stocks, wetting oil, cream, then additions;
 * largest first within a place, equal ones by code.
 */
export function benchLines(book: Book, plan: Pick<Plan, 'lines'>): readonly BenchLine[] {
  const amounts = planAmounts(book, plan);
  const baseCode = book.rulebook.base.code;
  const baseLine = (kind: 'cream' | 'wetting-oil', share: bigint): BenchLine => ({
    lineId: kind,
    source: { kind },
    place: kind,
    share: part(share),
    code: baseCode,
  });
  const stockLines = [...amounts.stocks].map(([stockId, share]): BenchLine => {
    const stock = need(book.stocks, stockId);
    const source = { kind: 'stock', stockId } as const;
    return { lineId: lineIdOf(source), source, place: placeOf(book, stock), share: part(share), code: stock.code };
  });
  return [...stockLines, baseLine('wetting-oil', amounts.oil), baseLine('cream', amounts.cream)]
    .filter((line) => line.share > 0n)
    .sort(
      (a, b) => PLACES.indexOf(a.place) - PLACES.indexOf(b.place) || largerFirst(a, b) || compareBy<BenchLine>((line) => line.code)(a, b),
    );
}

function largerFirst(a: BenchLine, b: BenchLine): number {
  if (a.share === b.share) return 0;
  return a.share > b.share ? -1 : 1;
}

function placeOf(book: Book, stock: Stock): Place {
  const materials = stock.parts.map((one) => need(book.materials, one.materialId));
  if (stock.addedTo === 'paste' || materials.some(isInsolublePowder)) return materials.every(isDry) ? 'paste-powder' : 'paste-liquid';
  return stock.addedTo === 'cream' ? 'with-cream' : 'last';
}

const isDry = (material: Material): boolean => isInsolublePowder(material) || material.kind === 'soluble-powder';

/** Lines whose place is before the cream. */
export const isInPaste = (place: Place): boolean => PLACES.indexOf(place) < PLACES.indexOf('cream');
