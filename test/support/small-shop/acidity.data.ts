// Need tables of the demonstration, µmol of alkali per kg at pH 3.0, 3.5 … 9.0.
// Solutions and the base: charge balance of their composition, with the activities of a jar. Clays: invented, shaped like common exchange data.
import { acidityTable } from '#lib/chemistry/charge-balance.ts';
import type { Ion } from '#lib/chemistry/charge-balance.ts';
import { invariant } from '#lib/base/invariant.ts';

const invented = (...mmolPerKg: readonly number[]) => ({ origin: 'measured', umolPerKg: mmolPerKg.map((mmol) => Math.round(mmol * 1000)) });

export const POWDER_ACIDITY = {
  inert: invented(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0),
  kaolin: invented(-20, -12, -5, 0, 5, 8, 11, 14, 17, 20, 23, 26, 30),
  illite: invented(-75, -66, -58, -51, -43, -28, -12, -4, 4, 10, 15, 20, 25),
};

/** Thermodynamic pKa at 25 °C: citric 3.128, 4.761, 6.396; lactic 3.86; niacinamide, conjugate acid, 3.35 (from memory). */
const citrate = (molPerKg: number): Ion => ({ molPerKg, topCharge: 0, pkas: [3.128, 4.761, 6.396] });
const lactate = (molPerKg: number): Ion => ({ molPerKg, topCharge: 0, pkas: [3.86] });
const sodium = (molPerKg: number): Ion => ({ molPerKg, topCharge: 1, pkas: [] });
const nicotinamide = (molPerKg: number): Ion => ({ molPerKg, topCharge: 1, pkas: [3.35] });

const G_PER_MOL = { citricAcid: 192.124, trisodiumCitrate: 258.07, lacticAcid: 90.078, sodiumHydroxide: 39.997, niacinamide: 122.125 };

function computed(ions: readonly Ion[], waterShare: number, shareOfJar: number) {
  const table = acidityTable({ ions, waterShare }, shareOfJar);
  invariant(table.ok, 'the demonstration holds no solution that the charge balance cannot compute');
  return table.value;
}

/** Mol per kg of citrate and of its sodium, from g per kg of the acid and of the trisodium salt. */
const citrateIons = (acidGPerKg: number, saltGPerKg: number): readonly Ion[] => [
  citrate(acidGPerKg / G_PER_MOL.citricAcid + saltGPerKg / G_PER_MOL.trisodiumCitrate),
  sodium((3 * saltGPerKg) / G_PER_MOL.trisodiumCitrate),
];

export const COMPUTED_ACIDITY = {
  base: computed(citrateIons(0.3, 1.1), 0.75, 1),
  niacinamide: computed([nicotinamide(1000 / G_PER_MOL.niacinamide)], 0, 0.02),
  lacticAcid50: computed([lactate(500 / G_PER_MOL.lacticAcid), sodium(185 / G_PER_MOL.sodiumHydroxide)], 0.315, 0.02),
  citrateBuffer20: computed(citrateIons(160, 40), 0.8, 0.01),
};
