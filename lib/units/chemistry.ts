// pH is real in code and hundredths at rest; needs are whole µmol per kg, so that a jar's need is an exact sum.
import { invariant } from '../base/invariant.ts';
import type { Unit } from './unit.ts';
import { signedUnit, wholeUnit } from './unit.ts';

/** pH as a real number, 0 to 14. Compare only; there is no sum of two pH. */
export type Ph = Unit<'Ph'>;

export function ph(value: number): Ph {
  invariant(Number.isFinite(value) && value >= 0 && value <= 14, `pH must be from 0 to 14, not ${value}`);
  return value as Ph;
}

/** pH in whole hundredths, as stored and typed. */
export type PhX100 = Unit<'PhX100'>;

export function phX100(value: number): PhX100 {
  invariant(value <= 1400, `PhX100 must be at most 1400, not ${value}`);
  return wholePh(value);
}
const wholePh = wholeUnit('PhX100');

export const phFromX100 = (value: PhX100): Ph => ph(value / 100);

/** Alkali needed to bring 1 kg of something, as supplied, to a pH; negative where acid is needed. */
export type AcidityUmolPerKg = Unit<'AcidityUmolPerKg'>;
export const acidityUmolPerKg: (value: number) => AcidityUmolPerKg = signedUnit('AcidityUmolPerKg');
