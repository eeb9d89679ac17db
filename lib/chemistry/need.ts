// How much alkali a whole jar needs to reach a pH: an exact sum over what was weighed. Needs add up where titratable acidities of weak acids do not,
// because every item is asked at the same final pH (proton balance).
import type { Composition } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need as resolve } from '../rulebook/book.ts';
import type { AcidityTable, Material, Stock } from '../rulebook/material.ts';
import type { Part } from '../units/share.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { NeedPoints } from './acidity-table.ts';
import { addScaled, NO_NEED, needX50, TABLE_STEP_X100 } from './acidity-table.ts';
import { basePoints } from './base-points.ts';

const PPM = BigInt(WHOLE_PPM);

/** One stock in a jar: its part, its needs in µmol/kg × 10^6, and how far they may be wrong. */
interface StockNeed {
  readonly part: Part;
  readonly points: NeedPoints;
  readonly errorPpm: bigint;
}

/** The needs of one jar, read once and asked often. */
export type JarNeeds =
  | { readonly kind: 'missing'; readonly stockIds: readonly string[] }
  | {
      readonly kind: 'known';
      /** Σ part × need over stocks and base, in part × µmol/kg × 10^6. */
      readonly points: NeedPoints;
      readonly stocks: readonly StockNeed[];
      readonly errorMinUmolPerKg: bigint;
    };

export type KnownNeeds = Extract<JarNeeds, { kind: 'known' }>;

/**
 * Sums the need tables of a jar, planned or weighed. Stocks without a full table are named, never read as zero.
 * @param shiftX100 how far the base lot lies from the approved base
 */
export function jarNeeds(book: Book, jar: Composition, shiftX100 = 0): JarNeeds {
  const held = [...jar.stocks]
    .filter(([, part]) => part > 0n)
    .map(([stockId, part]) => ({ stockId, part, points: stockPoints(book, stockId) }));
  const stockIds = held.filter((one) => one.points === null).map((one) => one.stockId);
  if (stockIds.length > 0) return { kind: 'missing', stockIds };
  const house = book.rulebook.house;
  const stocks = held.map(
    ({ stockId, part, points }): StockNeed => ({
      part,
      points: points ?? NO_NEED,
      errorPpm: BigInt(resolve(book.stocks, stockId).acidityErrorPpm ?? house.acidityErrorPpm),
    }),
  );
  const base = addScaled(NO_NEED, basePoints(book, shiftX100), jar.cream + jar.wettingOil);
  const points = stocks.reduce<NeedPoints>((sum, one) => addScaled(sum, one.points, one.part), base);
  return { kind: 'known', points, stocks, errorMinUmolPerKg: BigInt(house.acidityErrorMinUmolPerKg) };
}

/** Needs of a stock in µmol/kg × 10^6: its own table, else the exact sum over its materials; null when one has none. */
export function stockPoints(book: Book, stockId: string): NeedPoints | null {
  const stock: Stock = resolve(book.stocks, stockId);
  if (stock.acidity) return whole(stock.acidity);
  return stock.parts.reduce<NeedPoints | null>((sum, one) => {
    const points = materialPoints(resolve(book.materials, one.materialId));
    return sum && points ? addScaled(sum, points, BigInt(one.sharePpm)) : null;
  }, NO_NEED);
}

/** Needs of a material in µmol/kg. Only water and what is declared inert may go without a table. */
function materialPoints(material: Material): NeedPoints | null {
  if (material.acidity) return material.acidity.umolPerKg.map(BigInt);
  return material.classes.includes('inert') || material.classes.includes('water') ? NO_NEED : null;
}

const whole = (table: AcidityTable): NeedPoints => table.umolPerKg.map((value) => BigInt(value) * PPM);

/** The grain in which needs and their errors are compared: part × µmol/kg × 50 × 10^12. */
export const NEED_GRAIN: bigint = BigInt(TABLE_STEP_X100) * PPM * PPM;

/** need(pH) of the jar, in part × µmol/kg × NEED_GRAIN; divide by whole × NEED_GRAIN for µmol per kg of jar. */
export const needAt = (needs: KnownNeeds, phX100: number): bigint => needX50(needs.points, phX100) * PPM;

/** Σ part × u over the additions at a pH, in the grain of needAt: u is a share of |need|, at least a floor. The base brings none. */
export function needErrorAt(needs: KnownNeeds, phX100: number): bigint {
  const floor = needs.errorMinUmolPerKg * NEED_GRAIN;
  return needs.stocks.reduce((sum, one) => {
    const found = needX50(one.points, phX100);
    const error = (found < 0n ? -found : found) * one.errorPpm;
    return sum + one.part * (error > floor ? error : floor);
  }, 0n);
}
