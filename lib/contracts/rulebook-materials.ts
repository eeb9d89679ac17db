// Substances, materials and stocks on the wire.
import { z } from 'zod';
import {
  acidityUmolPerKgSchema,
  costMinorPerKgSchema,
  daysSchema,
  densityMgPerMlSchema,
  factorPpmSchema,
  mgPer100gSchema,
  phX100Schema,
  pkaX1000Schema,
  sharePpmSchema,
  temperatureCSchema,
  unitsPerPpmSchema,
  wholeSchema,
} from './quantities.ts';
import { codeSchema, idSchema, marketIdSchema, namesSchema, statementSchema } from './words.ts';

export const materialClassSchema = z.enum([
  'acid',
  'alkali',
  'cationic',
  'anionic-polymer',
  'polyphenol',
  'enzyme',
  'peptide',
  'swelling-clay',
  'clay',
  'adsorbent',
  'electrolyte',
  'iron',
  'acid-sensitive',
  'acid-consumer',
  'carbonate',
  'retinoid',
  'preservative',
  'humectant',
  'emollient',
  'emulsifier',
  'botanical',
  'vitamin',
  'water',
  'inert',
  'protein',
]);

export const avoidTagSchema = z.enum([
  'acid',
  'aha',
  'salicylate',
  'retinoid',
  'enzyme',
  'exfoliant',
  'photosensitiser',
  'fragrance',
  'essential-oil',
  'nut',
  'seed-oil',
  'oat',
  'milk',
  'bee',
  'asteraceae',
  'gluten',
]);

export const phWindowSchema = z.strictObject({ minPhX100: phX100Schema, maxPhX100: phX100Schema });

export const acidityTableSchema = z.strictObject({
  origin: z.enum(['measured', 'computed']),
  umolPerKg: z.array(acidityUmolPerKgSchema).meta({ description: 'at pH 3.0, 3.5 … 9.0: 13 numbers, never decreasing' }),
});

/** Shares of materials in a base, stock, shade or wetting oil. */
export const materialPartsSchema = z.array(z.strictObject({ materialId: idSchema, sharePpm: sharePpmSchema }));

export const substanceSchema = z.strictObject({
  id: idSchema,
  labelNames: z.record(marketIdSchema, statementSchema),
  colourIndex: z
    .string()
    .regex(/^\d{5}(:\d)?$/, { error: 'must be a colour index number without letters, like 77491 or 15850:1' })
    .optional(),
  nano: z.boolean(),
  isWater: z.boolean().optional(),
  solubility: z
    .strictObject({
      neutralMgPer100g: mgPer100gSchema,
      pkaX1000: pkaX1000Schema.optional(),
      suspendedEvidence: statementSchema.optional(),
    })
    .optional(),
  acid: z.strictObject({ pkaX1000: pkaX1000Schema }).optional(),
  exposure: z
    .strictObject({
      systemicPodUgPerKgDay: wholeSchema('µg per kg body weight and day'),
      dermalAbsorptionPpm: sharePpmSchema,
      source: statementSchema,
    })
    .optional(),
  exposureDemanded: z.boolean(),
});

export const materialSchema = z.strictObject({
  id: idSchema,
  code: codeSchema,
  name: namesSchema,
  substances: z.array(z.strictObject({ substanceId: idSchema, sharePpm: sharePpmSchema })),
  kind: z.enum(['insoluble-powder', 'soluble-powder', 'pigment', 'liquid', 'oil', 'solution', 'gum', 'wax']),
  classes: z.array(materialClassSchema),
  tags: z.array(avoidTagSchema),
  densityMgPerMl: densityMgPerMlSchema,
  oilAbsorptionMgPer100g: mgPer100gSchema.optional(),
  phFresh: phWindowSchema.optional(),
  phShelf: phWindowSchema.optional(),
  maxTemperatureC: temperatureCSchema.optional(),
  ionicUnitsPerPpm: unitsPerPpmSchema,
  irritancyUnitsPerPpm: unitsPerPpmSchema,
  origin: z.enum(['mineral', 'plant', 'animal', 'synthetic']),
  colours: z.boolean(),
  acidity: acidityTableSchema.optional(),
  allergens: z.array(z.strictObject({ name: statementSchema, sharePpm: sharePpmSchema })),
  certificateItems: z.array(statementSchema),
  source: statementSchema,
});

export const stockSchema = z.strictObject({
  id: idSchema,
  code: codeSchema,
  name: namesSchema,
  parts: materialPartsSchema,
  addedTo: z.enum(['paste', 'cream', 'last']),
  weighedIn: z.enum(['boat', 'vessel']).optional(),
  isBlend: z.boolean(),
  acidity: acidityTableSchema.optional(),
  acidityErrorPpm: factorPpmSchema.optional(),
  needsHeat: z.boolean(),
  inUseDays: daysSchema.optional(),
  madeHereHours: wholeSchema('hours', 876_000).optional(),
  preservation: z.enum(['dry', 'low-water-activity', 'preserved', 'unpreserved-aqueous']),
  costMinorPerKg: costMinorPerKgSchema,
  lookAlikeName: statementSchema.optional(),
  secondPerson: z.boolean(),
  staffCautionIds: z.array(idSchema),
});
