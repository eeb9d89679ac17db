// Predicted pH by need tables. The acids, buffers and clays of this book are estimates by charge balance; the roots are worked by hand apart from
// this program. What is checked against the outside: a weak acid's need is not a single titratable acidity (proton balance of any textbook).
import { describe, expect, it } from 'vitest';
import type { Ion } from '#lib/chemistry/charge-balance.ts';
import { acidityTable, phOf } from '#lib/chemistry/charge-balance.ts';
import { predictPh } from '#lib/chemistry/ph-check.ts';
import type { AcidityTable } from '#lib/rulebook/material.ts';
import { aBase } from '#test/support/a-base.ts';
import { aBook, aPlannedJar } from '#test/support/a-jar.ts';
import { aMaterial, anAcidityTable, aSubstance } from '#test/support/a-material.ts';

/** µmol/kg at pH 3.0, 3.5 … 9.0. */
const KAOLIN = anAcidityTable(-15_000, -10_000, -5000, 0, 5000, 8000, 11_000, 12_000, 13_000, 14_000, 15_000, 16_000, 17_000);
const LACTIC = anAcidityTable(
  -3_000_000,
  -2_107_000,
  -553_000,
  632_000,
  1_193_000,
  1_400_000,
  1_469_000,
  1_490_000,
  1_500_000,
  1_500_000,
  1_500_000,
  1_500_000,
  1_500_000,
);

const book = aBook({
  substances: [aSubstance('lactate')],
  materials: [
    aMaterial('kaolin', { kind: 'insoluble-powder', acidity: KAOLIN }),
    aMaterial('lactate', { kind: 'solution', acidity: LACTIC }),
  ],
});
const predicted = (shares: Readonly<Record<string, number>>): number => {
  const found = predictPh(book, aPlannedJar(book, shares));
  if (found.kind !== 'within') throw new Error(found.kind);
  expect(found.lowest).toBe(found.highest);
  return found.lowest;
};

describe('predicted pH', () => {
  it('worked: 2 % of a lactic buffer stock lands at 4.3, where one titratable acidity would say 1.7', () => {
    // need(4.0) = 0.98 × −5540 + 0.02 × −553 000 = −16 489; need(4.5) = 0.98 × −4040 + 0.02 × 632 000 = 8681 → 4 + 0.5 × 16 489 / 25 170.
    // By the acidity at pH 6 alone: 6 − 0.02 × 1469 / (0.98 × 7 mmol/kg per pH of the base) = 1.7.
    expect(predicted({ 'lactate-neat': 20_000 })).toBeCloseTo(4.3276, 4);
  });

  it('worked: kaolin 2 % moves the base from 6.00 to 5.92', () => {
    // need(5.5) = 0.98 × −1320 + 0.02 × 8000 = −1133.6; need(6.0) = 0.02 × 11 000 = 220 → 5.5 + 0.5 × 1133.6 / 1353.6
    expect(predicted({})).toBe(6);
    expect(predicted({ 'kaolin-neat': 20_000 })).toBeCloseTo(5.9187, 4);
  });
});

describe('need tables from a composition', () => {
  const strong = (molPerKg: number): Ion => ({ molPerKg, topCharge: 1, pkas: [] });
  const citric = (molPerKg: number): Ion => ({ molPerKg, topCharge: 0, pkas: [3.128, 4.761, 6.396] });
  const tableOf = (ions: readonly Ion[], waterShare: number, share = 1): AcidityTable => {
    const found = acidityTable({ ions, waterShare }, share);
    if (!found.ok) throw new Error(found.refusal);
    return found.value;
  };

  it('are marked computed, hold 13 whole numbers, never decrease and change sign at the pH of the solution itself', () => {
    const ions = [citric(0.05), strong(0.09)];
    const table = tableOf(ions, 1);
    const own = phOf({ ions, waterShare: 1 });
    expect(table.origin).toBe('computed');
    expect(table.umolPerKg).toHaveLength(13);
    expect(table.umolPerKg.every((value, index) => Number.isInteger(value) && value >= (table.umolPerKg[index - 1] ?? value))).toBe(true);
    const crossing = 3 + 0.5 * table.umolPerKg.findIndex((value) => value >= 0);
    expect(own.ok && own.value > crossing - 0.5 && own.value <= crossing).toBe(true);
  });

  it('add up: base and stock tables predict the pH that the mixed solution itself has', () => {
    // Citrate base of pH 6 and 1 % of a concentrated citric buffer, against one charge balance over everything.
    const baseIons = [citric(0.004), strong(0.0104)];
    const stockIons = [citric(1), strong(0.8)];
    const share = 0.01;
    const mixed = phOf({ ions: [citric(0.004 * 0.99 + 0.01), strong(0.0104 * 0.99 + 0.008)], waterShare: 1 });
    const citrateBook = aBook({
      substances: [aSubstance('buffer')],
      materials: [aMaterial('buffer', { kind: 'solution', acidity: tableOf(stockIons, 1, share) })],
      rest: { base: aBase({ acidity: tableOf(baseIons, 1) }) },
    });
    const found = predictPh(citrateBook, aPlannedJar(citrateBook, { 'buffer-neat': 10_000 }));
    expect(mixed.ok).toBe(true);
    expect(found.kind).toBe('within');
    if (mixed.ok && found.kind === 'within') expect(Math.abs(found.lowest - mixed.value)).toBeLessThan(0.05);
  });

  it('of a concentrated acid are taken at its share of the jar, since neat it has no pH to compute', () => {
    const ions: readonly Ion[] = [citric(1), strong(1.5)];
    expect(acidityTable({ ions, waterShare: 0.7 }).ok).toBe(false);
    expect(acidityTable({ ions, waterShare: 0.7 }, 0.02).ok).toBe(true);
  });
});
