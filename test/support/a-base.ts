// A dull base and house: water, oil and one preservative, with room for everything that a test adds.
import type { Base, HouseRules } from '#lib/rulebook/base.ts';
import { densityMgPerMl, loadUnits } from '#lib/units/material-property.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { factorPpm, sharePpm, WHOLE_PPM } from '#lib/units/share.ts';
import { anAcidityTable, aWindow, parts } from './a-material.ts';

/** Base of pH 6.00: 0.90 % preservative, 4 % of it held back as wetting oil, allowance 5 %. */
export function aBase(overrides: Partial<Base> = {}): Base {
  return {
    id: 'base',
    code: 'BASE-1',
    parts: parts({ water: 931_000, oil: 60_000, phenoxyethanol: 9000 }),
    wettingOilPpm: sharePpm(40_000),
    wettingOilParts: parts({ oil: WHOLE_PPM }),
    allowancePpm: sharePpm(50_000),
    ceilingPpm: sharePpm(56_000),
    caps: {
      powderPpm: sharePpm(50_000),
      swellingClayPpm: sharePpm(10_000),
      pigmentPpm: sharePpm(5000),
      ionicUnits: loadUnits(100_000),
      irritancyUnits: loadUnits(60_000),
      freeAcidPpm: sharePpm(5000),
    },
    mostActivesCount: 3,
    ph: aWindow(330, 750),
    acidity: anAcidityTable(-9000, -7100, -5540, -4040, -2610, -1320, 0, 1070, 1640, 1850, 2000, 2200, 2500),
    preservation: {
      preservatives: [{ substanceId: 'phenoxyethanol', provenMinPpm: sharePpm(8000), ph: aWindow(300, 850) }],
      testedPowderPpm: sharePpm(50_000),
      testedSwellingClayPpm: sharePpm(10_000),
      evidenceId: 'challenge-1',
    },
    densityMgPerMl: densityMgPerMl(1010),
    costMinorPerKg: 1500,
    inUseDays: 90,
    evidenceIds: ['stability-1'],
    ...overrides,
  };
}

/** Common bands and a wash-off scenario. */
export function aHouse(overrides: Partial<HouseRules> = {}): HouseRules {
  return {
    phErrorX100: 30,
    acidityErrorPpm: factorPpm(100_000),
    acidityErrorMinUmolPerKg: 2000,
    wettingSparePpm: factorPpm(1_500_000),
    boatBelowUg: 2_000_000,
    bands: {
      usualPpm: factorPpm(100_000),
      nearLimitTauPpm: factorPpm(50_000),
      nearLimitPpm: factorPpm(200_000),
      wettingOilPpm: factorPpm(50_000),
      creamPpm: factorPpm(10_000),
    },
    exposure: {
      amountPerUseMg: 8000,
      usesPerDayCount: 1,
      usesPerWeekCount: 2,
      retentionPpm: factorPpm(100_000),
      bodyWeightG: 60_000,
      faceAreaCm2: 565,
      areas: [{ id: 'face', factorPpm: factorPpm(WHOLE_PPM) }],
      marginFloorCount: 100,
      source: 'invented for tests',
    },
    phMeasured: { method: '10 % in water, 5 minutes, 20 °C', when: 'every-jar', narrowWindowX100: 200 },
    gentleIrritancyUnits: loadUnits(10_000),
    jarLifeMonths: 6,
    minRemainingLifeDays: 30,
    openedLabelMonths: 6,
    mayGrow: true,
    ranking: { irritancyStepUnits: loadUnits(1000), priceStepMinor: moneyMinor(50) },
    ...overrides,
  };
}
