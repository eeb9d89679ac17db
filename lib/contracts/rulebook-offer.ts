// Shades, actives, sizes and scales on the wire.
import { z } from 'zod';
import {
  benefitMilliSchema,
  countSchema,
  factorPpmSchema,
  massUgSchema,
  moneyMinorSchema,
  sharePpmSchema,
  volumeUlSchema,
  wholeSchema,
} from './quantities.ts';
import { materialPartsSchema } from './rulebook-materials.ts';
import { codeSchema, idSchema, namesSchema, statementSchema } from './words.ts';

const axisSchema = wholeSchema('hundredths of a CIELAB unit', 20_000, -20_000);
const labX100Schema = z.strictObject({
  lX100: wholeSchema('hundredths of CIELAB lightness', 10_000),
  aX100: axisSchema,
  bX100: axisSchema,
});

const claimsSchema = z.strictObject({
  goodTextId: idSchema,
  goodBasis: z.enum(['tested-on-mask', 'known-for-ingredient', 'look-and-feel']),
  lessGoodTextId: idSchema,
});

export const shadeSchema = z.strictObject({
  id: idSchema,
  code: codeSchema,
  name: namesSchema,
  parts: materialPartsSchema,
  colour: z.strictObject({
    wet: labX100Schema,
    dry: labX100Schema,
    family: statementSchema,
    nameTextId: idSchema,
    origin: z.enum(['measured', 'predicted']),
  }),
  claims: claimsSchema,
  priceMinor: moneyMinorSchema,
});

const levelSchema = z.strictObject({
  levelPpm: sharePpmSchema,
  permitted: z.boolean(),
  benefits: z.array(z.strictObject({ concernId: idSchema, benefitMilli: benefitMilliSchema })),
  priceMinor: moneyMinorSchema,
});

export const activeSchema = z.strictObject({
  id: idSchema,
  code: codeSchema,
  name: namesSchema,
  materialId: idSchema,
  strengthPpm: sharePpmSchema,
  role: z.enum(['active', 'adjuster']),
  levels: z.array(levelSchema),
  claims: claimsSchema.optional(),
  tauPpm: factorPpmSchema.optional(),
});

export const jarSizeSchema = z.strictObject({
  id: idSchema,
  code: codeSchema,
  netUg: massUgSchema,
  overageUg: massUgSchema,
  vesselId: idSchema,
  labelSizeId: idSchema,
  priceMinor: moneyMinorSchema,
});

export const vesselSchema = z.strictObject({ id: idSchema, code: codeSchema, capacityUl: volumeUlSchema, lossUg: massUgSchema });

export const labelSizeSchema = z.strictObject({
  id: idSchema,
  widthUm: wholeSchema('micrometres (1 mm = 1000)'),
  heightUm: wholeSchema('micrometres (1 mm = 1000)'),
  fits: z.array(idSchema),
  ingredientsCharCount: countSchema('characters'),
  cautionsCharCount: countSchema('characters'),
});

export const scaleProfileSchema = z.strictObject({
  id: idSchema,
  code: codeSchema,
  stepUg: massUgSchema,
  repeatabilityUg: massUgSchema,
  capacityUg: massUgSchema,
  zeroToleranceUg: massUgSchema,
  checkWeights: z.array(z.strictObject({ massUg: massUgSchema, toleranceUg: massUgSchema })),
});
