// Mass in whole micrograms: no scale in a shop reads finer, and 9 t still fits a safe integer.
import { invariant } from '../base/invariant.ts';
import type { Unit } from './unit.ts';
import { signedUnit, wholeUnit } from './unit.ts';

export type MassUg = Unit<'MassUg'>;

/** Whole micrograms, 0 or more; 1 g = 1 000 000. Throws a Fault otherwise. */
export const massUg: (value: number) => MassUg = wholeUnit('MassUg');

/** A difference of two masses, in whole micrograms; may be negative. */
export type MassDifferenceUg = Unit<'MassDifferenceUg'>;
export const massDifferenceUg: (value: number) => MassDifferenceUg = signedUnit('MassDifferenceUg');

export const UG_PER_G = 1_000_000;

export const gramsToUg = (grams: number): MassUg => massUg(Math.round(grams * UG_PER_G));

export const addMass = (a: MassUg, b: MassUg): MassUg => massUg(a + b);

export const sumMass = (masses: readonly MassUg[]): MassUg => masses.reduce<MassUg>(addMass, massUg(0));

/** a − b. Throws a Fault when b is more than a: a mass is never negative. */
export function subtractMass(a: MassUg, b: MassUg): MassUg {
  invariant(a >= b, `mass would be negative: ${a} - ${b}`);
  return massUg(a - b);
}

export const massDifference = (a: MassUg, b: MassUg): MassDifferenceUg => massDifferenceUg(a - b);
