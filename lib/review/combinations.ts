// What sold: one row a combination, most jars first. Counting and adding only; who bought is nowhere in it.
import { compareBy } from '../base/compare.ts';
import type { MoneyMinor } from '../units/money.ts';
import { moneyMinor } from '../units/money.ts';
import { WHOLE_PPM } from '../units/share.ts';

/** Jars handed over of one variant in one week. */
export interface SoldRow {
  readonly isoWeek: number;
  readonly variantKey: string;
  readonly jarsCount: number;
  readonly revenueMinor: number;
  readonly remakesCount: number;
}

export interface Combination {
  readonly variantKey: string;
  readonly jarsCount: number;
  readonly revenueMinor: MoneyMinor;
  readonly remakesCount: number;
  /** Of all jars sold, down to whole ppm. */
  readonly sharePpm: number;
}

/** Combinations over all weeks, most jars first, equals by key. */
export function combinationsSold(rows: readonly SoldRow[]): readonly Combination[] {
  const allCount = rows.reduce((sum, row) => sum + row.jarsCount, 0);
  const keys = [...new Set(rows.map((row) => row.variantKey))];
  return keys
    .map((variantKey): Combination => {
      const own = rows.filter((row) => row.variantKey === variantKey);
      const jarsCount = own.reduce((sum, row) => sum + row.jarsCount, 0);
      return {
        variantKey,
        jarsCount,
        revenueMinor: moneyMinor(own.reduce((sum, row) => sum + row.revenueMinor, 0)),
        remakesCount: own.reduce((sum, row) => sum + row.remakesCount, 0),
        sharePpm: Math.floor((jarsCount * WHOLE_PPM) / allCount),
      };
    })
    .sort(
      compareBy(
        (one) => -one.jarsCount,
        (one) => one.variantKey,
      ),
    );
}

/** With fewer jars than this no combination is said to lead: chance alone would name it. */
export const LEAST_FOR_FINDING_COUNT = 20;

/** What the sales say: too few to say anything, one combination before all others, or none. */
export function leader<One extends Combination>(combinations: readonly One[]): One | 'too-few' | 'none' {
  const jarsCount = combinations.reduce((sum, one) => sum + one.jarsCount, 0);
  const [first, second] = combinations;
  if (!first || jarsCount < LEAST_FOR_FINDING_COUNT) return 'too-few';
  return first.jarsCount > (second?.jarsCount ?? 0) ? first : 'none';
}

/** Groups under this many jars are masked in exports: they could point at one person. */
export const LEAST_SHOWN_COUNT = 5;

/**
 * Which rows of an export are masked: every row under five jars, and one further (the smallest other, first of equals),
 * so that the total gives nothing back. Where no further row is left, the total is masked too.
 */
export function maskedRows(counts: readonly number[]): { readonly rows: readonly boolean[]; readonly isTotalMasked: boolean } {
  const small = counts.map((count) => count > 0 && count < LEAST_SHOWN_COUNT);
  if (!small.includes(true)) return { rows: small, isTotalMasked: false };
  const others = counts.flatMap((count, index) => (count >= LEAST_SHOWN_COUNT ? [{ count, index }] : []));
  const further = others.reduce<{ count: number; index: number } | null>(
    (least, one) => (least === null || one.count < least.count ? one : least),
    null,
  );
  return further === null
    ? { rows: small, isTotalMasked: true }
    : { rows: small.map((isSmall, index) => isSmall || index === further.index), isTotalMasked: false };
}
