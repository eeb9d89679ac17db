// Factors of "expressed as" limits, offered by the editor of limit rows. Molar masses in mg/mol from IUPAC standard atomic weights.
// The factors stand here as numbers, so that a rulebook can be compared with them; a test computes each from its molar masses.
import type { FactorPpm } from '../units/share.ts';
import { factorPpm } from '../units/share.ts';

export interface EquivalentRow {
  /** INCI name of what is weighed. */
  readonly name: string;
  readonly expressedAs: string;
  readonly molarMassOfMgPerMol: number;
  readonly molarMassInMgPerMol: number;
  /** How many of "expressed as" one formula unit of the weighed substance holds. */
  readonly unitsCount: number;
  readonly factorPpm: FactorPpm;
}

const row = (name: string, expressedAs: string, masses: readonly [number, number], factor: number): EquivalentRow => ({
  name,
  expressedAs,
  molarMassOfMgPerMol: masses[0],
  molarMassInMgPerMol: masses[1],
  unitsCount: 1,
  factorPpm: factorPpm(factor),
});

export const EQUIVALENT_ROWS: readonly EquivalentRow[] = [
  row('SODIUM BENZOATE', 'as benzoic acid', [122_122, 144_103], 847_464),
  row('POTASSIUM BENZOATE', 'as benzoic acid', [122_122, 160_212], 762_253),
  row('POTASSIUM SORBATE', 'as sorbic acid', [112_127, 150_217], 746_434),
  row('SODIUM DEHYDROACETATE', 'as dehydroacetic acid', [168_147, 190_129], 884_384),
  row('SODIUM SALICYLATE', 'as salicylic acid', [138_121, 160_103], 862_701),
  row('ZINC PCA', 'as zinc', [65_378, 321_590], 203_297),
  row('ZINC ACETATE', 'as zinc', [65_378, 183_468], 356_346),
  row('ZINC CHLORIDE', 'as zinc', [65_378, 136_284], 479_719),
  row('ZINC GLUCONATE', 'as zinc', [65_378, 455_673], 143_476),
  row('RETINYL PALMITATE', 'as retinol equivalent', [286_452, 524_862], 545_767),
  row('RETINYL ACETATE', 'as retinol equivalent', [286_452, 328_488], 872_032),
  row('STRONTIUM CHLORIDE', 'as strontium', [87_620, 158_520], 552_738),
];
