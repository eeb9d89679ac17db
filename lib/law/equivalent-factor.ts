// Limits are expressed "as acid", "as zinc", "as retinol equivalent". The factor turns a share of what is weighed into a share of that,
// in whole ppm rounded up, so that rounding never lets a jar pass.
import { invariant } from '../base/invariant.ts';
import type { FactorPpm } from '../units/share.ts';
import { factorPpm, WHOLE_PPM } from '../units/share.ts';

/** A molar mass in whole mg per mol (sodium benzoate 144.103 g/mol = 144 103). */
type MolarMassMgPerMol = number;

/** ⌈count × M(expressed as) / M(as weighed) × 10^6⌉; `count` = how many of it one formula unit holds. */
export function equivalentFactor(molarMassOf: MolarMassMgPerMol, molarMassIn: MolarMassMgPerMol, count = 1): FactorPpm {
  invariant(
    [molarMassOf, molarMassIn, count].every((value) => Number.isSafeInteger(value) && value > 0),
    'molar masses and counts are whole and positive',
  );
  const scaled = BigInt(molarMassOf) * BigInt(count) * BigInt(WHOLE_PPM);
  const into = BigInt(molarMassIn);
  return factorPpm(Number((scaled + into - 1n) / into));
}

/** The largest whole ppm of what is weighed that still stands under a limit expressed otherwise. */
export const largestPassingPpm = (limitPpm: number, factor: FactorPpm): number =>
  Number((BigInt(limitPpm) * BigInt(WHOLE_PPM)) / BigInt(factor));
