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
  montmorillonite: invented(-150, -130, -111, -93, -76, -59, -43, -30, -18, -8, 0, 8, 15),
  bentonite: invented(-360, -320, -283, -249, -216, -184, -154, -125, -98, -72, -48, -26, -5),
  charcoal: invented(-54, -52, -50, -49, -47, -38, -28, -18, -9, 0, 8, 15, 20),
  silica: invented(-4, -2, 0, 1, 2, 3, 5, 8, 12, 17, 23, 30, 38),
  oat: invented(-45, -28, -12, -3, 4, 7, 9, 11, 13, 15, 17, 19, 21),
  ultramarines: invented(-34, -32, -30, -30, -30, -30, -29, -28, -27, -26, -25, -24, -23),
  zincOxide: invented(-24_576, -24_576, -24_576, -24_576, -24_576, -24_576, -24_576, -20_000, -9_000, -1_000, -200, -50, 0),
  calciumCarbonate: invented(-19_983, -19_983, -19_983, -19_983, -19_983, -19_983, -19_983, -19_000, -15_000, -8_000, -2_000, -400, 0),
  hyaluronate: invented(-10, -6, -3, -1, 0, 0, 0, 0, 0, 0, 0, 0, 0),
  tea: invented(-90, -55, -26, -8, 5, 10, 14, 17, 20, 23, 26, 29, 32),
  centella: invented(-45, -28, -15, -6, 0, 3, 5, 7, 9, 11, 13, 15, 17),
};

/** Thermodynamic pKa at 25 °C: citric 3.128, 4.761, 6.396; lactic 3.86; niacinamide, conjugate acid, 3.35 (from memory). */
const citrate = (molPerKg: number): Ion => ({ molPerKg, topCharge: 0, pkas: [3.128, 4.761, 6.396] });
const lactate = (molPerKg: number): Ion => ({ molPerKg, topCharge: 0, pkas: [3.86] });
const sodium = (molPerKg: number): Ion => ({ molPerKg, topCharge: 1, pkas: [] });
const nicotinamide = (molPerKg: number): Ion => ({ molPerKg, topCharge: 1, pkas: [3.35] });

/** Mandelic 3.41, salicylic 2.97, tromethamine 8.07, ectoin 3.14, betaine 1.83, tranexamic 4.3, PCA 3.32; azeloyl diglycine is estimated (all from memory). */
const ion = (molPerKg: number, topCharge: number, pkas: readonly number[] = []): Ion => ({ molPerKg, topCharge, pkas: [...pkas] });

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
  mandelicAcid40: computed([ion(400 / 152.15, 0, [3.41]), sodium(74.5 / G_PER_MOL.sodiumHydroxide)], 0.325, 0.02),
  salicylicAcid20: computed([ion(200 / 138.12, 0, [2.97]), ion(135 / 121.14, 1, [8.07])], 0.2, 0.02),
  azeloylDiglycinate30: computed([ion(300 / 378.5, 0, [3.5, 3.9]), ion(600 / 378.5, 1)], 0.7, 0.02),
  zincPca: computed([ion(2000 / 321.59, 0, [3.32]), ion(1000 / 321.59, 2)], 0, 0.01),
  ectoin: computed([ion(1000 / 142.16, 1, [3.14])], 0, 0.01),
  betaine: computed([ion(1000 / 117.15, 1, [1.83])], 0, 0.01),
  tranexamicAcid: computed([ion(1000 / 157.21, 1, [4.3, 10.6])], 0, 0.02),
  citrateBuffer20: computed(citrateIons(160, 40), 0.8, 0.01),
  sodiumCitrate20: computed(citrateIons(0, 200), 0.8, 0.01),
};
