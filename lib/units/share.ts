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

/**
 * An exact part of a mixture, in a grain that the mixture's own `whole` gives: share = part / whole.
 * Plans and weighed jars have different wholes, so a part never travels without its whole.
 */
export type Part = BigUnit<'Part'>;

export function part(value: bigint): Part {
  invariant(value >= 0n, `a part must not be negative: ${value}`);
  return value as Part;
}

export const addParts = (a: Part, b: Part): Part => part(a + b);

export const sumParts = (parts: Iterable<Part>): Part => part([...parts].reduce((sum, one) => sum + one, 0n));

/** part / whole > limit, exactly. */
export const exceedsPpm = (found: Part, whole: Part, limitPpm: number): boolean => found * BigInt(WHOLE_PPM) > BigInt(limitPpm) * whole;

/** part / whole < limit, exactly. */
export const belowPpm = (found: Part, whole: Part, limitPpm: number): boolean => found * BigInt(WHOLE_PPM) < BigInt(limitPpm) * whole;

/** For people only: a part in ppm as a double. Never compare with it. */
export const partToPpm = (found: Part, whole: Part): number => {
  const scaled = (found * 10n ** 18n) / whole;
  return Number(scaled) / 1e12;
};
