// "Expressed as" limits of Regulation (EC) No 1223/2009: Annex V as acid (entries 1, 3 verified; 13 from memory), III/24 as zinc (verified),
// III/376 as retinol equivalent (verified; number from memory). Levels computed apart from this program from IUPAC molar masses.
import { describe, expect, it } from 'vitest';
import { equivalentFactor, largestPassingPpm } from '#lib/law/equivalent-factor.ts';
import { EQUIVALENT_ROWS } from '#lib/law/factors.data.ts';
import { factorPpm } from '#lib/units/share.ts';

const factorOf = (name: string) => EQUIVALENT_ROWS.find((row) => row.name === name)?.factorPpm ?? factorPpm(0);

describe('equivalents', () => {
  it.each([
    ['SODIUM BENZOATE', 847_464],
    ['ZINC PCA', 203_297],
    ['ZINC ACETATE', 356_346],
    ['RETINYL PALMITATE', 545_767],
  ])('%s', (name, factor) => {
    expect(factorOf(name)).toBe(factor);
  });

  it.each([
    ['SODIUM BENZOATE', 5000, 5899],
    ['SODIUM BENZOATE', 25_000, 29_499],
    ['SODIUM DEHYDROACETATE', 6000, 6784],
    ['SODIUM SALICYLATE', 5000, 5795],
    ['ZINC PCA', 10_000, 49_189],
    ['ZINC ACETATE', 10_000, 28_062],
    ['ZINC CHLORIDE', 10_000, 20_845],
    ['RETINYL PALMITATE', 3000, 5496],
    ['RETINYL ACETATE', 3000, 3440],
  ])('%s under a limit of %d ppm: at most %d ppm', (name, limitPpm, mostPpm) => {
    expect(largestPassingPpm(limitPpm, factorOf(name))).toBe(mostPpm);
  });

  it.each(EQUIVALENT_ROWS.map((row) => [row.name, row] as const))('%s: the tabled factor follows from its molar masses', (_name, row) => {
    expect(equivalentFactor(row.molarMassOfMgPerMol, row.molarMassInMgPerMol, row.unitsCount)).toBe(row.factorPpm);
  });

  it('rounds up, never down, and counts units', () => {
    expect(equivalentFactor(1, 3)).toBe(333_334);
    expect(equivalentFactor(1, 4)).toBe(250_000);
    expect(equivalentFactor(24_305, 100_000, 2)).toBe(486_100);
    for (const wrong of [0, -1, 122.122]) expect(() => equivalentFactor(wrong, 144_103)).toThrow('whole and positive');
  });
});
