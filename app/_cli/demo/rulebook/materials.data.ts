// Materials of the demonstration: what the house buys. Densities and oil absorption are common handbook ranges; irritancy and ionic figures are invented.
import { POWDER_ACIDITY } from './acidity.data.ts';
import { material } from './material-row.ts';
import { ACTIVE_MATERIALS } from './materials-actives.data.ts';
import { POWDER_MATERIALS } from './materials-powders.data.ts';

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

export const MATERIALS = [...BASE_PARTS, ...POWDER_MATERIALS, ...ACTIVE_MATERIALS];
