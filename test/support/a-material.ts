// Dull substances, materials and stocks for tests: every property that a check reads is there, and none stands out.
import type { AcidityTable, Material, PhWindow, Stock, Substance } from '#lib/rulebook/material.ts';
import { acidityUmolPerKg, phX100 } from '#lib/units/chemistry.ts';
import { densityMgPerMl, mgPer100g, unitsPerPpm } from '#lib/units/material-property.ts';
import { factorPpm, sharePpm, WHOLE_PPM } from '#lib/units/share.ts';

/** A need table over pH 3.0, 3.5 … 9.0 from 13 whole numbers. */
export const anAcidityTable = (...umolPerKg: readonly number[]): AcidityTable => ({
  origin: 'measured',
  umolPerKg: umolPerKg.map(acidityUmolPerKg),
});

/** A material that never moves the pH. */
export const noAcidity = (): AcidityTable => anAcidityTable(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

export const aWindow = (minPhX100: number, maxPhX100: number): PhWindow => ({ minPhX100: phX100(minPhX100), maxPhX100: phX100(maxPhX100) });

/** Parts of a base, stock, shade or wetting oil from ids and shares. */
export const parts = (shares: Readonly<Record<string, number>>) =>
  Object.entries(shares).map(([materialId, share]) => ({ materialId, sharePpm: sharePpm(share) }));

/** The composition of a material from substance ids and shares. */
export const substancesOf = (shares: Readonly<Record<string, number>>) =>
  Object.entries(shares).map(([substanceId, share]) => ({ substanceId, sharePpm: sharePpm(share) }));

/** A substance without limits, solubility or exposure figure. */
export function aSubstance(id: string, overrides: Partial<Substance> = {}): Substance {
  const name = id.replaceAll('-', ' ').toUpperCase();
  return { id, labelNames: { EU: name, US: name }, nano: false, exposureDemanded: false, ...overrides };
}

/** A mild soluble powder made of the one substance of the same id. */
export function aMaterial(id: string, overrides: Partial<Material> = {}): Material {
  return {
    id,
    code: id.toUpperCase(),
    name: { en: `The ${id.replaceAll('-', ' ')}` },
    substances: substancesOf({ [id]: WHOLE_PPM }),
    kind: 'soluble-powder',
    classes: ['inert'],
    tags: [],
    densityMgPerMl: densityMgPerMl(1300),
    ionicUnitsPerPpm: unitsPerPpm(0),
    irritancyUnitsPerPpm: unitsPerPpm(0),
    origin: 'synthetic',
    colours: false,
    acidity: noAcidity(),
    allergens: [],
    certificateItems: ['identity'],
    source: 'invented for tests',
    ...overrides,
  };
}

/** An insoluble powder: it must be wetted, so it absorbs oil and goes into the paste. */
export function aPowder(id: string, overrides: Partial<Material> = {}): Material {
  return aMaterial(id, {
    kind: 'insoluble-powder',
    classes: ['clay'],
    densityMgPerMl: densityMgPerMl(2600),
    oilAbsorptionMgPer100g: mgPer100g(45_000),
    phFresh: aWindow(300, 900),
    origin: 'mineral',
    ...overrides,
  });
}

/** The neat stock "<material>-neat" of a material, added last; powders override with `addedTo: 'paste'`. */
export function aStock(materialId: string, overrides: Partial<Stock> = {}): Stock {
  const id = overrides.id ?? `${materialId}-neat`;
  return {
    id,
    code: id.toUpperCase(),
    name: { en: `${materialId}, neat` },
    parts: parts({ [materialId]: WHOLE_PPM }),
    addedTo: 'last',
    isBlend: false,
    acidityErrorPpm: factorPpm(100_000),
    needsHeat: false,
    preservation: 'dry',
    costMinorPerKg: 4000,
    secondPerson: false,
    staffCautionIds: [],
    ...overrides,
  };
}
