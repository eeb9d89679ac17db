// What can be chosen: shades, actives at levels, adjusters, sizes and prices.

import type { MassUg } from '../units/mass.ts';
import type { BenefitMilli, VolumeUl } from '../units/material-property.ts';
import type { MoneyMinor } from '../units/money.ts';
import type { FactorPpm, SharePpm } from '../units/share.ts';
import type { Lang } from './language.ts';

/** CIELAB (D65, 2°) in hundredths. */
export interface LabX100 {
  readonly lX100: number;
  readonly aX100: number;
  readonly bX100: number;
}

/** What the customer is told about a shade or an active: one good point with what it rests on, one less good point. */
export interface Claims {
  readonly goodTextId: string;
  /** Tested on this mask, known for the ingredient only, or a matter of look and feel. */
  readonly goodBasis: 'tested-on-mask' | 'known-for-ingredient' | 'look-and-feel';
  readonly lessGoodTextId: string;
}

export interface Shade {
  readonly id: string;
  readonly code: string;
  readonly name: Readonly<Partial<Record<Lang, string>>>;
  readonly parts: readonly { readonly materialId: string; readonly sharePpm: SharePpm }[];
  readonly colour: {
    readonly wet: LabX100;
    readonly dry: LabX100;
    readonly family: string;
    readonly nameTextId: string;
    readonly origin: 'measured' | 'predicted';
  };
  readonly claims: Claims;
  readonly priceMinor: MoneyMinor;
}

export interface Level {
  /** Share of the jar, counted as the pure active. */
  readonly levelPpm: SharePpm;
  /** False: kept for its evidence, not on sale. */
  readonly permitted: boolean;
  readonly benefits: readonly { readonly concernId: string; readonly benefitMilli: BenefitMilli }[];
  readonly priceMinor: MoneyMinor;
}

export interface Active {
  readonly id: string;
  readonly code: string;
  readonly name: Readonly<Partial<Record<Lang, string>>>;
  readonly materialId: string;
  /** Pure active in the material as bought; the whole for a pure material. */
  readonly strengthPpm: SharePpm;
  readonly role: 'active' | 'adjuster';
  readonly levels: readonly Level[];
  /** Absent for adjusters, which are never shown. */
  readonly claims?: Claims;
  /** Tolerance of its line; absent: the house's bands. */
  readonly tauPpm?: FactorPpm;
}

export interface JarSize {
  readonly id: string;
  readonly code: string;
  readonly netUg: MassUg;
  readonly overageUg: MassUg;
  readonly vesselId: string;
  readonly labelSizeId: string;
  readonly priceMinor: MoneyMinor;
}

export interface Vessel {
  readonly id: string;
  readonly code: string;
  readonly capacityUl: VolumeUl;
  readonly lossUg: MassUg;
}

export interface LabelSize {
  readonly id: string;
  readonly widthUm: number;
  readonly heightUm: number;
  readonly fits: readonly JarSize['id'][];
  /** Characters that the ingredients, and the cautions, may take at the smallest permitted letters. */
  readonly ingredientsCharCount: number;
  readonly cautionsCharCount: number;
}

export interface ScaleProfile {
  readonly id: string;
  readonly code: string;
  readonly stepUg: MassUg;
  readonly repeatabilityUg: MassUg;
  readonly capacityUg: MassUg;
  readonly zeroToleranceUg: MassUg;
  readonly checkWeights: readonly { readonly massUg: MassUg; readonly toleranceUg: MassUg }[];
}
