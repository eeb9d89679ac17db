// Needs and pH of a jar, told plainly: straight lines between table points, errors added up item by item.
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { Fraction } from './fraction.ts';
import { abs, isOver, minus, most, plus, q, sign, sum, times, toNumber } from './fraction.ts';
import type { PlainJar } from './plain-jar.ts';
import { find } from './plain-jar.ts';

const PPM = 1_000_000;
type Table = readonly Fraction[];

/** Need of a stock at the 13 points; null where something has no table. */
function tableOf(book: Rulebook, stockId: string): Table | null {
  const stock = find(book.stocks, stockId);
  if (stock.acidity) return stock.acidity.umolPerKg.map((value) => q(value));
  const tables = stock.parts.map((part) => {
    const material = find(book.materials, part.materialId);
    const free = material.classes.includes('inert') || material.classes.includes('water');
    const points = material.acidity?.umolPerKg ?? (free ? Array.from({ length: 13 }, () => 0) : null);
    return points?.map((value) => times(q(value), q(part.sharePpm, PPM))) ?? null;
  });
  if (tables.some((table) => table === null)) return null;
  return Array.from({ length: 13 }, (_, index) => sum(tables.map((table) => table?.[index] ?? q(0))));
}

/** Straight line between points; pH in hundredths. */
function at(table: Table, phX100: number): Fraction {
  const index = Math.min(11, Math.floor((phX100 - 300) / 50));
  const low = table[index] ?? q(0);
  return plus(low, times(minus(table[index + 1] ?? q(0), low), q(phX100 - 300 - 50 * index, 50)));
}

export interface PlainPh {
  /** Null: no table for something. */
  readonly need: ((phX100: number) => Fraction) | null;
  readonly error: (phX100: number) => Fraction;
  readonly e: number;
}

export function plainPh(book: Rulebook, jar: PlainJar): PlainPh {
  const items = jar.lines.map((line) => ({
    share: line.share,
    table: tableOf(book, line.stockId),
    errorPpm: find(book.stocks, line.stockId).acidityErrorPpm ?? book.house.acidityErrorPpm,
  }));
  const base = book.base.acidity.umolPerKg.map((value) => q(value));
  const known = items.every((item) => item.table !== null);
  return {
    need: known
      ? (phX100) => plus(times(jar.base, at(base, phX100)), sum(items.map((item) => times(item.share, at(item.table ?? base, phX100)))))
      : null,
    error: (phX100) =>
      sum(
        items.map((item) =>
          times(
            item.share,
            most(times(abs(at(item.table ?? base, phX100)), q(item.errorPpm, PPM)), q(book.house.acidityErrorMinUmolPerKg)),
          ),
        ),
      ),
    e: book.house.phErrorX100,
  };
}

export type End = 'held' | 'broken' | 'unknown';

/** Is the pH at or above `min`, errors included? */
export function aboveMin({ need, error, e }: PlainPh, min: number): End {
  if (!need) return 'unknown';
  const asked = Math.max(300, min + e);
  if (asked > 900) return sign(need(900)) > 0 ? 'broken' : 'unknown';
  if (!isOver(plus(need(asked), error(asked)), q(0))) return 'held';
  return min + e < 300 ? 'unknown' : 'broken';
}

export function belowMax({ need, error, e }: PlainPh, max: number): End {
  if (!need) return 'unknown';
  const asked = Math.min(900, max - e);
  if (asked < 300) return sign(need(300)) < 0 ? 'broken' : 'unknown';
  if (!isOver(error(asked), need(asked))) return 'held';
  return max - e > 900 ? 'unknown' : 'broken';
}

/** Lowest and highest pH where the need is 0, by halving; null where the tables hold no such pH. */
export function roots({ need }: PlainPh): { readonly low: number; readonly high: number } | null {
  if (!need || sign(need(300)) > 0 || sign(need(900)) < 0) return null;
  const value = (x: number): number => {
    const floor = Math.min(899, Math.floor(x));
    const a = toNumber(need(floor));
    return a + (toNumber(need(floor + 1)) - a) * (x - floor);
  };
  const halve = (isLow: (x: number) => boolean): number => {
    let [a, b] = [300, 900];
    for (let step = 0; step < 60; step += 1) [a, b] = isLow((a + b) / 2) ? [(a + b) / 2, b] : [a, (a + b) / 2];
    return (a + b) / 2;
  };
  return { low: halve((x) => value(x) < 0) / 100, high: halve((x) => value(x) <= 0) / 100 };
}
