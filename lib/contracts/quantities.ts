// Every number on the wire is a whole number of a named grain; anything else is refused with the grain's name, never rounded.
// The ranges keep products of two quantities inside whole doubles; what a number may mean is for the soundness check.
import { z } from 'zod';
import { acidityUmolPerKg, phX100 } from '../units/chemistry.ts';
import { massUg } from '../units/mass.ts';
import { benefitMilli, densityMgPerMl, loadUnits, mgPer100g, temperatureC, unitsPerPpm, volumeUl } from '../units/material-property.ts';
import { moneyMinor } from '../units/money.ts';
import { factorPpm, sharePpm, WHOLE_PPM } from '../units/share.ts';

/** A plain whole number of `grain` (a count or a measure that never mixes with another); `least` to `most`, both allowed. */
export function wholeSchema(grain: string, most = 1_000_000_000, least = 0) {
  const error = `must be a whole number of ${grain}, from ${least} to ${most}`;
  return z.int({ error }).min(least, { error }).max(most, { error }).meta({ description: grain });
}

/** The same, made into its branded unit by the constructor of lib/units. */
const unitSchema = <U extends number>(make: (value: number) => U, grain: string, most: number, least = 0) =>
  wholeSchema(grain, most, least).transform(make);

export const sharePpmSchema = unitSchema(sharePpm, 'ppm of the whole (1 % = 10000)', WHOLE_PPM);
export const factorPpmSchema = unitSchema(factorPpm, 'ppm as a factor (1.5 = 1500000)', 1_000_000_000);
export const phX100Schema = unitSchema(phX100, 'hundredths of a pH', 1400);
export const acidityUmolPerKgSchema = unitSchema(
  acidityUmolPerKg,
  'µmol of alkali per kg, negative where acid is needed',
  100_000_000,
  -100_000_000,
);
/** Up to 9 kg, so that a mass times a share stays exact. */
export const massUgSchema = unitSchema(massUg, 'micrograms (1 g = 1000000)', 9_000_000_000);
export const volumeUlSchema = unitSchema(volumeUl, 'microlitres (1 mL = 1000)', 10_000_000);
export const densityMgPerMlSchema = unitSchema(densityMgPerMl, 'mg per mL (water = 998)', 30_000);
export const mgPer100gSchema = unitSchema(mgPer100g, 'mg per 100 g (45 g per 100 g = 45000)', 10_000_000);
export const unitsPerPpmSchema = unitSchema(unitsPerPpm, 'units per ppm as supplied', 1_000_000);
export const loadUnitsSchema = unitSchema(loadUnits, 'units over the whole jar', 1_000_000_000_000);
export const benefitMilliSchema = unitSchema(benefitMilli, 'thousandths of a full benefit', 1_000_000);
export const temperatureCSchema = unitSchema(temperatureC, 'degrees Celsius', 200);
export const moneyMinorSchema = unitSchema(moneyMinor, 'minor units of the currency (pence, cents)', 1_000_000_000);

/** pKa in thousandths; strong acids lie below 0. */
export const pkaX1000Schema = wholeSchema('thousandths of a pKa', 20_000, -20_000);
export const costMinorPerKgSchema = wholeSchema('minor units of the currency per kg');
export const daysSchema = wholeSchema('days', 36_500);
export const monthsSchema = wholeSchema('months', 1200);
export const countSchema = (what: string) => wholeSchema(what, 1_000_000);
