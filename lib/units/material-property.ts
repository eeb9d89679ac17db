// Properties of bought materials in whole grains.
import type { Unit } from './unit.ts';
import { wholeUnit } from './unit.ts';

/** Density, whole mg per mL (water is 998 at 20 °C). */
export type DensityMgPerMl = Unit<'DensityMgPerMl'>;
export const densityMgPerMl: (value: number) => DensityMgPerMl = wholeUnit('DensityMgPerMl');

/** Oil absorption or solubility: whole mg per 100 g of powder or of water. */
export type MgPer100g = Unit<'MgPer100g'>;
export const mgPer100g: (value: number) => MgPer100g = wholeUnit('MgPer100g');

/** Irritancy or ionic load: whole units per ppm of the share as supplied. */
export type UnitsPerPpm = Unit<'UnitsPerPpm'>;
export const unitsPerPpm: (value: number) => UnitsPerPpm = wholeUnit('UnitsPerPpm');

/** A load of a whole jar: Σ share ppm × units per ppm. */
export type LoadUnits = Unit<'LoadUnits'>;
export const loadUnits: (value: number) => LoadUnits = wholeUnit('LoadUnits');

/** A benefit in thousandths of "fully there". */
export type BenefitMilli = Unit<'BenefitMilli'>;
export const benefitMilli: (value: number) => BenefitMilli = wholeUnit('BenefitMilli');

/** Whole degrees Celsius. */
export type TemperatureC = Unit<'TemperatureC'>;
export const temperatureC: (value: number) => TemperatureC = wholeUnit('TemperatureC');

/** Volume in whole microlitres. */
export type VolumeUl = Unit<'VolumeUl'>;
export const volumeUl: (value: number) => VolumeUl = wholeUnit('VolumeUl');
