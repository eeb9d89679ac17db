// Materials of the demonstration: what the house buys. Densities and oil absorption are common handbook ranges; irritancy and ionic figures are invented.
import { COMPUTED_ACIDITY, POWDER_ACIDITY } from './acidity.data.ts';

const INVENTED = 'invented for the demonstration';
const window = (minPhX100: number, maxPhX100: number) => ({ minPhX100, maxPhX100 });

/** What most liquids and base parts share; a row says only what differs. */
const material = (id: string, code: string, en: string, more: Record<string, unknown>) => ({
  id,
  code,
  name: { en },
  substances: [{ substanceId: id, sharePpm: 1_000_000 }],
  kind: 'liquid',
  classes: ['inert'],
  tags: [],
  densityMgPerMl: 1000,
  ionicUnitsPerPpm: 0,
  irritancyUnitsPerPpm: 0,
  origin: 'synthetic',
  colours: false,
  allergens: [],
  certificateItems: ['identity'],
  source: INVENTED,
  ...more,
});

/** Insoluble powders: wetted in oil, weighed dry. */
const powder = (id: string, code: string, en: string, more: Record<string, unknown>) =>
  material(id, code, en, {
    kind: 'insoluble-powder',
    classes: ['clay'],
    origin: 'mineral',
    certificateItems: ['identity', 'heavy metals', 'total count'],
    ...more,
  });

const pigment = (id: string, code: string, en: string, more: Record<string, unknown>) =>
  powder(id, code, en, { kind: 'pigment', classes: ['inert'], colours: true, acidity: POWDER_ACIDITY.inert, certificateItems: ['identity', 'heavy metals'], ...more });

const BASE_PARTS = [
  material('water', 'WTR', 'Purified water', { classes: ['inert', 'water'], densityMgPerMl: 998, origin: 'mineral', acidity: POWDER_ACIDITY.inert }),
  material('glycerin', 'GLY', 'Glycerin', { classes: ['inert', 'humectant'], densityMgPerMl: 1261, origin: 'plant', acidity: POWDER_ACIDITY.inert }),
  material('caprylic-capric-triglyceride', 'CCT', 'Caprylic/capric triglyceride', {
    kind: 'oil',
    classes: ['inert', 'emollient'],
    densityMgPerMl: 945,
    origin: 'plant',
    acidity: POWDER_ACIDITY.inert,
  }),
  material('cetearyl-alcohol', 'CEA', 'Cetearyl alcohol', { kind: 'wax', classes: ['inert', 'emulsifier'], densityMgPerMl: 820, origin: 'plant' }),
  material('ceteareth-20', 'C20', 'Ceteareth-20', { kind: 'wax', classes: ['inert', 'emulsifier'] }),
  material('pentylene-glycol', 'PNG', 'Pentylene glycol', { classes: ['inert', 'humectant'], densityMgPerMl: 970 }),
  material('phenoxyethanol', 'PHE', 'Phenoxyethanol', { classes: ['inert', 'preservative'], densityMgPerMl: 1102 }),
  material('ethylhexylglycerin', 'EHG', 'Ethylhexylglycerin', { classes: ['inert', 'preservative'], densityMgPerMl: 950 }),
  material('xanthan-gum', 'XAN', 'Xanthan gum', { kind: 'gum', classes: ['anionic-polymer'], densityMgPerMl: 1500, origin: 'plant' }),
  material('citric-acid', 'CIT', 'Citric acid', { kind: 'soluble-powder', classes: ['electrolyte'], densityMgPerMl: 1665, origin: 'plant' }),
  material('sodium-citrate', 'SCI', 'Sodium citrate', { kind: 'soluble-powder', classes: ['electrolyte'], densityMgPerMl: 1700, origin: 'plant' }),
];

const POWDERS = [
  powder('kaolin', 'KAO', 'Kaolin, white', { densityMgPerMl: 2600, oilAbsorptionMgPer100g: 45_000, phFresh: window(300, 900), acidity: POWDER_ACIDITY.kaolin }),
  powder('illite', 'ILL', 'Illite, green', { densityMgPerMl: 2700, oilAbsorptionMgPer100g: 40_000, phFresh: window(350, 900), acidity: POWDER_ACIDITY.illite }),
  pigment('titanium-dioxide', 'TIO', 'Titanium dioxide', { densityMgPerMl: 4100, oilAbsorptionMgPer100g: 20_000, phFresh: window(200, 1000) }),
  pigment('iron-oxide-red', 'FER', 'Iron oxide, red', { classes: ['iron'], densityMgPerMl: 5200, oilAbsorptionMgPer100g: 30_000, phFresh: window(300, 1000) }),
  pigment('chromium-oxide-green', 'CRG', 'Chromium oxide, green', { densityMgPerMl: 5200, oilAbsorptionMgPer100g: 15_000, phFresh: window(200, 1100) }),
];

const ACTIVES = [
  material('niacinamide', 'NIA', 'Niacinamide', {
    kind: 'soluble-powder',
    classes: ['vitamin'],
    densityMgPerMl: 1400,
    phFresh: window(500, 700),
    maxTemperatureC: 60,
    irritancyUnitsPerPpm: 8,
    acidity: COMPUTED_ACIDITY.niacinamide,
  }),
  material('panthenol', 'PAN', 'Panthenol', {
    classes: ['vitamin'],
    densityMgPerMl: 1200,
    phFresh: window(400, 750),
    maxTemperatureC: 60,
    irritancyUnitsPerPpm: 1,
    acidity: POWDER_ACIDITY.inert,
  }),
  material('lactic-acid-50', 'LAC', 'Lactic acid 50 %, part neutral', {
    kind: 'solution',
    substances: [
      { substanceId: 'lactic-acid', sharePpm: 500_000 },
      { substanceId: 'water', sharePpm: 315_000 },
      { substanceId: 'sodium-hydroxide', sharePpm: 185_000 },
    ],
    classes: ['acid', 'electrolyte'],
    tags: ['acid', 'aha', 'exfoliant', 'photosensitiser'],
    densityMgPerMl: 1180,
    phFresh: window(380, 500),
    maxTemperatureC: 40,
    ionicUnitsPerPpm: 4,
    irritancyUnitsPerPpm: 18,
    acidity: COMPUTED_ACIDITY.lacticAcid50,
  }),
  material('citrate-buffer-20', 'CBF', 'Citrate buffer 20 %, pH 3.2', {
    kind: 'solution',
    substances: [
      { substanceId: 'water', sharePpm: 800_000 },
      { substanceId: 'citric-acid', sharePpm: 160_000 },
      { substanceId: 'sodium-citrate', sharePpm: 40_000 },
    ],
    classes: ['electrolyte'],
    densityMgPerMl: 1090,
    phFresh: window(300, 800),
    maxTemperatureC: 60,
    ionicUnitsPerPpm: 2,
    irritancyUnitsPerPpm: 3,
    acidity: COMPUTED_ACIDITY.citrateBuffer20,
  }),
];

export const MATERIALS = [...BASE_PARTS, ...POWDERS, ...ACTIVES];
