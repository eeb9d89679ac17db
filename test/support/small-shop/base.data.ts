// The one approved base of the demonstration and the rules of its house. Composition and tolerances are invented but plausible.
import { COMPUTED_ACIDITY } from './acidity.data.ts';

const window = (minPhX100: number, maxPhX100: number) => ({ minPhX100, maxPhX100 });
const parts = (shares: Record<string, number>) => Object.entries(shares).map(([materialId, sharePpm]) => ({ materialId, sharePpm }));

export const BASE = {
  id: 'base-r2',
  code: 'R2',
  parts: parts({
    water: 753_600,
    glycerin: 100_000,
    'caprylic-capric-triglyceride': 60_000,
    'cetearyl-alcohol': 30_000,
    'pentylene-glycol': 25_000,
    'ceteareth-20': 14_000,
    phenoxyethanol: 9_000,
    'xanthan-gum': 6_000,
    'sodium-citrate': 1_100,
    ethylhexylglycerin: 1_000,
    'citric-acid': 300,
  }),
  wettingOilPpm: 40_000,
  wettingOilParts: parts({ 'caprylic-capric-triglyceride': 1_000_000 }),
  allowancePpm: 50_000,
  ceilingPpm: 56_000,
  caps: { powderPpm: 30_000, swellingClayPpm: 10_000, pigmentPpm: 6_000, ionicUnits: 120_000, irritancyUnits: 600_000, freeAcidPpm: 5_000 },
  mostActivesCount: 3,
  ph: window(330, 750),
  acidity: COMPUTED_ACIDITY.base,
  preservation: {
    preservatives: [{ substanceId: 'phenoxyethanol', provenMinPpm: 8_000, ph: window(300, 850) }],
    testedPowderPpm: 30_000,
    testedSwellingClayPpm: 10_000,
    evidenceId: 'challenge-r2',
  },
  densityMgPerMl: 1010,
  costMinorPerKg: 950,
  inUseDays: 60,
  evidenceIds: ['stability-r2', 'challenge-r2', 'assessment-r2'],
};

export const HOUSE = {
  phErrorX100: 30,
  acidityErrorPpm: 100_000,
  acidityErrorMinUmolPerKg: 2_000,
  wettingSparePpm: 1_500_000,
  boatBelowUg: 2_000_000,
  bands: { usualPpm: 100_000, nearLimitTauPpm: 50_000, nearLimitPpm: 200_000, wettingOilPpm: 50_000, creamPpm: 10_000 },
  exposure: {
    amountPerUseMg: 8_000,
    usesPerDayCount: 1,
    usesPerWeekCount: 2,
    retentionPpm: 100_000,
    bodyWeightG: 60_000,
    faceAreaCm2: 565,
    areas: [
      { id: 'face', factorPpm: 1_000_000 },
      { id: 'neck', factorPpm: 1_300_000 },
      { id: 'chest-or-back', factorPpm: 2_000_000 },
    ],
    marginFloorCount: 100,
    source: 'invented for the demonstration; no published retention factor exists for masks',
  },
  phMeasured: { method: '10 % in water, 5 minutes, 20 to 25 °C', when: 'acid-or-narrow-else-first-of-day', narrowWindowX100: 200 },
  gentleIrritancyUnits: 150_000,
  jarLifeMonths: 6,
  minRemainingLifeDays: 30,
  openedLabelMonths: 6,
  phCorrection: { stockId: 'citrate-buffer-20-neat', maxSharePpm: 5_000 },
  mayGrow: true,
  ranking: { irritancyStepUnits: 10_000, priceStepMinor: 50 },
};
