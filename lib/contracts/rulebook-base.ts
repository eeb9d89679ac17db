// The base and the figures of the house on the wire.
import { z } from 'zod';
import {
  costMinorPerKgSchema,
  countSchema,
  daysSchema,
  densityMgPerMlSchema,
  factorPpmSchema,
  loadUnitsSchema,
  moneyMinorSchema,
  monthsSchema,
  pkaX1000Schema,
  sharePpmSchema,
  wholeSchema,
} from './quantities.ts';
import { acidityTableSchema, materialPartsSchema, phWindowSchema } from './rulebook-materials.ts';
import { codeSchema, idSchema, statementSchema } from './words.ts';

const preservativeSchema = z.strictObject({
  substanceId: idSchema,
  provenMinPpm: sharePpmSchema,
  ph: phWindowSchema,
  weakAcid: z.strictObject({ apparentPkaX1000: pkaX1000Schema, minUndissociatedPpm: sharePpmSchema }).optional(),
});

export const baseSchema = z.strictObject({
  id: idSchema,
  code: codeSchema,
  parts: materialPartsSchema,
  wettingOilPpm: sharePpmSchema,
  wettingOilParts: materialPartsSchema,
  allowancePpm: sharePpmSchema,
  ceilingPpm: sharePpmSchema,
  caps: z.strictObject({
    powderPpm: sharePpmSchema,
    swellingClayPpm: sharePpmSchema,
    pigmentPpm: sharePpmSchema,
    ionicUnits: loadUnitsSchema,
    irritancyUnits: loadUnitsSchema,
    freeAcidPpm: sharePpmSchema,
  }),
  mostActivesCount: countSchema('actives'),
  ph: phWindowSchema,
  acidity: acidityTableSchema,
  preservation: z.strictObject({
    preservatives: z.array(preservativeSchema),
    testedPowderPpm: sharePpmSchema,
    testedSwellingClayPpm: sharePpmSchema,
    evidenceId: idSchema,
  }),
  densityMgPerMl: densityMgPerMlSchema,
  costMinorPerKg: costMinorPerKgSchema,
  inUseDays: daysSchema,
  evidenceIds: z.array(idSchema),
});

const bandsSchema = z.strictObject({
  usualPpm: factorPpmSchema,
  nearLimitTauPpm: factorPpmSchema,
  nearLimitPpm: factorPpmSchema,
  wettingOilPpm: factorPpmSchema,
  creamPpm: factorPpmSchema,
});

const exposureScenarioSchema = z.strictObject({
  amountPerUseMg: wholeSchema('mg per use'),
  usesPerDayCount: countSchema('uses a day'),
  usesPerWeekCount: countSchema('uses a week'),
  retentionPpm: factorPpmSchema,
  bodyWeightG: wholeSchema('grams'),
  faceAreaCm2: wholeSchema('cm²'),
  areas: z.array(z.strictObject({ id: idSchema, factorPpm: factorPpmSchema })),
  marginFloorCount: countSchema('times the exposure'),
  source: statementSchema,
});

export const houseRulesSchema = z.strictObject({
  phErrorX100: wholeSchema('hundredths of a pH', 1400),
  acidityErrorPpm: factorPpmSchema,
  acidityErrorMinUmolPerKg: wholeSchema('µmol per kg', 100_000_000),
  wettingSparePpm: factorPpmSchema,
  boatBelowUg: wholeSchema('micrograms (1 g = 1000000)', 9_000_000_000),
  bands: bandsSchema,
  exposure: exposureScenarioSchema,
  phMeasured: z.strictObject({
    method: statementSchema,
    when: z.enum(['every-jar', 'acid-or-narrow-else-first-of-day']),
    narrowWindowX100: wholeSchema('hundredths of a pH', 1400),
  }),
  gentleIrritancyUnits: loadUnitsSchema,
  jarLifeMonths: monthsSchema,
  minRemainingLifeDays: daysSchema,
  openedLabelMonths: monthsSchema,
  phCorrection: z.strictObject({ stockId: idSchema, maxSharePpm: sharePpmSchema }).optional(),
  mayGrow: z.boolean(),
  ranking: z.strictObject({ irritancyStepUnits: loadUnitsSchema, priceStepMinor: moneyMinorSchema }),
});
