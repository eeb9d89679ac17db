// What is bought and what it is made of. Every property that a check needs stands here, so that a check never guesses.

import type { AcidityUmolPerKg, PhX100 } from '../units/chemistry.ts';
import type { DensityMgPerMl, MgPer100g, TemperatureC, UnitsPerPpm } from '../units/material-property.ts';
import type { FactorPpm, SharePpm } from '../units/share.ts';
import type { Lang, MarketId } from './language.ts';

/** One chemical identity, as the law and the label see it. */
export interface Substance {
  readonly id: string;
  /** The name printed per market: AQUA in the EU, WATER in the US; colourants carry their CI number in the EU. */
  readonly labelNames: Readonly<Record<MarketId, string>>;
  /** CI number without the letters when the substance colours (77491); it orders colourants on the EU label. */
  readonly colourIndex?: string;
  readonly nano: boolean;
  /** Water itself: what solubility is counted against. */
  readonly isWater?: boolean;
  readonly solubility?: Solubility;
  /** Present when free acid of this substance counts towards the cap on free acid. */
  readonly acid?: { readonly pkaX1000: number };
  readonly exposure?: Exposure;
  /** True where the safety assessor wants a margin for this substance: no figure then means "undecided". */
  readonly exposureDemanded: boolean;
}

export interface Solubility {
  /** Of the neutral form, mg per 100 g of water at the lowest storage temperature. */
  readonly neutralMgPer100g: MgPer100g;
  /** For weak acids: solubility rises with pH as S0·(1 + 10^(pH − pKa)). */
  readonly pkaX1000?: number;
  /** Evidence that the substance is meant to stay suspended; waives the check. */
  readonly suspendedEvidence?: string;
}

export interface Exposure {
  /** Systemic point of departure in µg per kg body weight and day (oral NOAEL × 0.5 unless the source gives it). */
  readonly systemicPodUgPerKgDay: number;
  readonly dermalAbsorptionPpm: SharePpm;
  readonly source: string;
}

export type MaterialKind = 'insoluble-powder' | 'soluble-powder' | 'pigment' | 'liquid' | 'oil' | 'solution' | 'gum' | 'wax';

/** What a clash or a cap speaks of. */
export type MaterialClass =
  | 'acid'
  | 'alkali'
  | 'cationic'
  | 'anionic-polymer'
  | 'polyphenol'
  | 'enzyme'
  | 'peptide'
  | 'swelling-clay'
  | 'clay'
  | 'adsorbent'
  | 'electrolyte'
  | 'iron'
  | 'acid-sensitive'
  | 'acid-consumer'
  | 'carbonate'
  | 'retinoid'
  | 'preservative'
  | 'humectant'
  | 'emollient'
  | 'emulsifier'
  | 'botanical'
  | 'vitamin'
  | 'water'
  | 'inert'
  | 'protein';

/** What a customer may need to avoid. */
export type AvoidTag =
  | 'acid'
  | 'aha'
  | 'salicylate'
  | 'retinoid'
  | 'enzyme'
  | 'exfoliant'
  | 'photosensitiser'
  | 'fragrance'
  | 'essential-oil'
  | 'nut'
  | 'seed-oil'
  | 'oat'
  | 'milk'
  | 'bee'
  | 'asteraceae'
  | 'gluten';

export interface PhWindow {
  readonly minPhX100: PhX100;
  readonly maxPhX100: PhX100;
}

/** Alkali needed per kg at pH 3.0, 3.5 … 9.0 (13 whole numbers, never decreasing). */
export interface AcidityTable {
  readonly origin: 'measured' | 'computed';
  readonly umolPerKg: readonly AcidityUmolPerKg[];
}

export interface Material {
  readonly id: string;
  readonly code: string;
  readonly name: Readonly<Partial<Record<Lang, string>>>;
  readonly substances: readonly { readonly substanceId: string; readonly sharePpm: SharePpm }[];
  readonly kind: MaterialKind;
  readonly classes: readonly MaterialClass[];
  readonly tags: readonly AvoidTag[];
  readonly densityMgPerMl: DensityMgPerMl;
  /** Powders only: g of oil per 100 g, as mg per 100 g. */
  readonly oilAbsorptionMgPer100g?: MgPer100g;
  readonly phFresh?: PhWindow;
  readonly phShelf?: PhWindow;
  readonly maxTemperatureC?: TemperatureC;
  readonly ionicUnitsPerPpm: UnitsPerPpm;
  readonly irritancyUnitsPerPpm: UnitsPerPpm;
  readonly origin: 'mineral' | 'plant' | 'animal' | 'synthetic';
  /** True when the material gives the jar its colour: positive lists of colourants then apply. */
  readonly colours: boolean;
  readonly acidity?: AcidityTable;
  /** Fragrance allergens it brings, beside its composition. */
  readonly allergens: readonly { readonly name: string; readonly sharePpm: SharePpm }[];
  /** What a lot's certificate must show before it is released. */
  readonly certificateItems: readonly string[];
  readonly source: string;
}

/** Where a stock goes in the order of work. */
export type AddedTo = 'paste' | 'cream' | 'last';

export interface Stock {
  readonly id: string;
  readonly code: string;
  readonly name: Readonly<Partial<Record<Lang, string>>>;
  /** The first part is what the stock is for, the others carry it. Several = premix or dry blend; shares sum exactly to the whole. */
  readonly parts: readonly { readonly materialId: string; readonly sharePpm: SharePpm }[];
  readonly addedTo: AddedTo;
  /** Absent: in a boat under the rulebook's boat limit, else in the vessel. */
  readonly weighedIn?: 'boat' | 'vessel';
  /** A dry blend may serve a whole shade when its ratio equals the shade's recipe. */
  readonly isBlend: boolean;
  /** Measured on the stock itself; replaces the sum over its materials. */
  readonly acidity?: AcidityTable;
  /** Uncertainty of the need as a share of |need|; at least the rulebook's floor. */
  readonly acidityErrorPpm?: FactorPpm;
  readonly needsHeat: boolean;
  readonly inUseDays?: number;
  /** Life of a batch made at the bench; an unpreserved aqueous stock lives at most 24 h. */
  readonly madeHereHours?: number;
  readonly preservation: 'dry' | 'low-water-activity' | 'preserved' | 'unpreserved-aqueous';
  readonly costMinorPerKg: number;
  /** Look-alike names are printed with the differing part in capitals. */
  readonly lookAlikeName?: string;
  readonly secondPerson: boolean;
  readonly staffCautionIds: readonly string[];
}
