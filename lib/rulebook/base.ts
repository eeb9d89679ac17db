// The approved cream and what it tolerates. It is delivered in two parts, cream and wetting oil, in a fixed ratio.
import type { DensityMgPerMl, LoadUnits } from '../units/material-property.ts';
import type { MoneyMinor } from '../units/money.ts';
import type { FactorPpm, SharePpm } from '../units/share.ts';
import type { AcidityTable, PhWindow } from './material.ts';

/** What the base tolerates at most, over the whole jar. */
export interface Caps {
  readonly powderPpm: SharePpm;
  readonly swellingClayPpm: SharePpm;
  readonly pigmentPpm: SharePpm;
  readonly ionicUnits: LoadUnits;
  readonly irritancyUnits: LoadUnits;
  readonly freeAcidPpm: SharePpm;
}

export type CapName = keyof Caps;

export interface Preservative {
  readonly substanceId: string;
  /** Lowest share of the jar that was challenge-tested. */
  readonly provenMinPpm: SharePpm;
  readonly ph: PhWindow;
  /** Acids work undissociated: apparent pKa in the jar and the least undissociated share of the jar. */
  readonly weakAcid?: { readonly apparentPkaX1000: number; readonly minUndissociatedPpm: SharePpm };
}

export interface Preservation {
  readonly preservatives: readonly Preservative[];
  /** The most powder and swelling clay that the challenge test covered. */
  readonly testedPowderPpm: SharePpm;
  readonly testedSwellingClayPpm: SharePpm;
  readonly evidenceId: string;
}

export interface Base {
  readonly id: string;
  readonly code: string;
  /** The whole base, wetting oil included; sums exactly to the whole. */
  readonly parts: readonly { readonly materialId: string; readonly sharePpm: SharePpm }[];
  /** Share of the base that is held back as wetting oil, and what that oil is. */
  readonly wettingOilPpm: SharePpm;
  readonly wettingOilParts: readonly { readonly materialId: string; readonly sharePpm: SharePpm }[];
  /** Most of a jar that additions may take, all carriers included. */
  readonly allowancePpm: SharePpm;
  /** Most that additions may take as made, at the worst corner of the bands. */
  readonly ceilingPpm: SharePpm;
  readonly caps: Caps;
  readonly mostActivesCount: number;
  readonly ph: PhWindow;
  readonly acidity: AcidityTable;
  readonly preservation: Preservation;
  readonly densityMgPerMl: DensityMgPerMl;
  readonly costMinorPerKg: number;
  readonly inUseDays: number;
  readonly evidenceIds: readonly string[];
}

/** Figures of the house that several checks share. */
export interface HouseRules {
  /** Error of the predicted pH, in hundredths. */
  readonly phErrorX100: number;
  readonly acidityErrorPpm: FactorPpm;
  readonly acidityErrorMinUmolPerKg: number;
  readonly wettingSparePpm: FactorPpm;
  readonly boatBelowUg: number;
  readonly bands: Bands;
  readonly exposure: ExposureScenario;
  readonly phMeasured: PhMeasuring;
  readonly gentleIrritancyUnits: LoadUnits;
  readonly jarLifeMonths: number;
  readonly minRemainingLifeDays: number;
  readonly openedLabelMonths: number;
  /** One approved correction of the pH at the bench, if any. */
  readonly phCorrection?: { readonly stockId: string; readonly maxSharePpm: SharePpm };
  readonly mayGrow: boolean;
  readonly ranking: RankingSteps;
}

/** Irritancy and price enter the ranking of masks in steps, rounded up, so that ties stay ties. */
export interface RankingSteps {
  readonly irritancyStepUnits: LoadUnits;
  readonly priceStepMinor: MoneyMinor;
}

/** Tolerances of a line, as shares of its exact mass. */
export interface Bands {
  readonly usualPpm: FactorPpm;
  /** Where a legal limit or cap lies within `nearLimitPpm` of the level. */
  readonly nearLimitTauPpm: FactorPpm;
  readonly nearLimitPpm: FactorPpm;
  readonly wettingOilPpm: FactorPpm;
  readonly creamPpm: FactorPpm;
}

export interface ExposureScenario {
  readonly amountPerUseMg: number;
  readonly usesPerDayCount: number;
  readonly usesPerWeekCount: number;
  readonly retentionPpm: FactorPpm;
  readonly bodyWeightG: number;
  readonly faceAreaCm2: number;
  readonly areas: readonly { readonly id: string; readonly factorPpm: FactorPpm }[];
  readonly marginFloorCount: number;
  readonly source: string;
}

export interface PhMeasuring {
  readonly method: string;
  readonly when: 'every-jar' | 'acid-or-narrow-else-first-of-day';
  readonly narrowWindowX100: number;
}
