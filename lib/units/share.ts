// Shares (w/w) in whole ppm, and their exact products. Limits are compared on products, so that rounding can never pass a limit.
import { invariant } from '../base/invariant.ts';
import type { BigUnit, Unit } from './unit.ts';
import { wholeUnit } from './unit.ts';

export type SharePpm = Unit<'SharePpm'>;

export const WHOLE_PPM = 1_000_000;

/** Whole parts per million of a jar or a stock, 0 to 1 000 000 (1 % = 10 000). Throws a Fault otherwise. */
export function sharePpm(value: number): SharePpm {
  invariant(value <= WHOLE_PPM, `SharePpm must be at most ${WHOLE_PPM}, not ${value}`);
  return wholePpm(value);
}
const wholePpm = wholeUnit('SharePpm');

/** A ratio, factor, tolerance or spare in whole ppm; may exceed the whole (1.5 = 1 500 000). */
export type FactorPpm = Unit<'FactorPpm'>;
export const factorPpm: (value: number) => FactorPpm = wholeUnit('FactorPpm');

/** An exact share of a jar: share of stock × share in stock × share in material, whole = 10^18. */
export type ShareE18 = BigUnit<'ShareE18'>;

export const WHOLE_E18 = 10n ** 18n;

export function shareE18(value: bigint): ShareE18 {
  invariant(value >= 0n, `ShareE18 must not be negative: ${value}`);
  return value as ShareE18;
}

export const addShareE18 = (a: ShareE18, b: ShareE18): ShareE18 => shareE18(a + b);

/** A whole-ppm share as an exact share. */
export const exactShare = (share: SharePpm): ShareE18 => shareE18(BigInt(share) * 10n ** 12n);

/** For people only: an exact share as a double in ppm. Never compare with it. */
export const shareE18ToPpm = (share: ShareE18): number => Number(share) / 1e12;
