// Dull shades, actives, sizes and scales for tests.
import type { Active, Claims, JarSize, LabelSize, Level, ScaleProfile, Shade, Vessel } from '#lib/rulebook/offer.ts';
import { gramsToUg, massUg } from '#lib/units/mass.ts';
import { benefitMilli, volumeUl } from '#lib/units/material-property.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { sharePpm, WHOLE_PPM } from '#lib/units/share.ts';
import { parts } from './a-material.ts';

/** Texts are those of the builder's questionnaire. */
export const aClaims = (): Claims => ({ goodTextId: 'good-plain', goodBasis: 'look-and-feel', lessGoodTextId: 'less-good-plain' });

/** A shade of these powders, in ppm of the jar. */
export function aShade(id: string, powders: Readonly<Record<string, number>>, overrides: Partial<Shade> = {}): Shade {
  const colour = { lX100: 8500, aX100: 100, bX100: 600 };
  return {
    id,
    code: id.toUpperCase(),
    name: { en: id },
    parts: parts(powders),
    colour: { wet: colour, dry: { ...colour, lX100: 9000 }, family: 'pale', nameTextId: 'colour-pale', origin: 'predicted' },
    claims: aClaims(),
    priceMinor: moneyMinor(100),
    ...overrides,
  };
}

/** A permitted level with its benefits in thousandths per concern. */
export const aLevel = (levelPpm: number, benefits: Readonly<Record<string, number>> = {}, overrides: Partial<Level> = {}): Level => ({
  levelPpm: sharePpm(levelPpm),
  permitted: true,
  benefits: Object.entries(benefits).map(([concernId, milli]) => ({ concernId, benefitMilli: benefitMilli(milli) })),
  priceMinor: moneyMinor(200),
  ...overrides,
});

/** An active of the pure material of the same id. */
export function anActive(materialId: string, levels: readonly Level[], overrides: Partial<Active> = {}): Active {
  return {
    id: materialId,
    code: materialId.toUpperCase(),
    name: { en: materialId },
    materialId,
    strengthPpm: sharePpm(WHOLE_PPM),
    role: 'active',
    levels,
    ...(overrides.role === 'adjuster' ? {} : { claims: aClaims() }),
    ...overrides,
  };
}

/** 50 g with 2 g overage. */
export const aJarSize = (overrides: Partial<JarSize> = {}): JarSize => ({
  id: 'jar-50',
  code: 'J50',
  netUg: gramsToUg(50),
  overageUg: gramsToUg(2),
  vesselId: 'vessel-100',
  labelSizeId: 'label-60',
  priceMinor: moneyMinor(2500),
  ...overrides,
});

export const aVessel = (overrides: Partial<Vessel> = {}): Vessel => ({
  id: 'vessel-100',
  code: 'V100',
  capacityUl: volumeUl(100_000),
  lossUg: gramsToUg(1),
  ...overrides,
});

export const aLabelSize = (overrides: Partial<LabelSize> = {}): LabelSize => ({
  id: 'label-60',
  widthUm: 60_000,
  heightUm: 90_000,
  fits: ['jar-50'],
  ingredientsCharCount: 900,
  cautionsCharCount: 600,
  ...overrides,
});

/** Reads 0.01 g, repeats to 0.003 g, holds 500 g. */
export const aScaleProfile = (overrides: Partial<ScaleProfile> = {}): ScaleProfile => ({
  id: 'scale-10mg',
  code: 'S10',
  stepUg: massUg(10_000),
  repeatabilityUg: massUg(3000),
  capacityUg: gramsToUg(500),
  zeroToleranceUg: massUg(10_000),
  checkWeights: [
    { massUg: gramsToUg(1), toleranceUg: massUg(10_000) },
    { massUg: gramsToUg(200), toleranceUg: massUg(20_000) },
  ],
  ...overrides,
});
