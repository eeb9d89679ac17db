// Directive 76/211/EEC, Annex I, 2.4 (the same table in OIML R 87): verified to 1000 g; rounding up to 0.1 g and the last row from memory.
// NIST Handbook 133, Table 2-5: from memory.
import { describe, expect, it } from 'vitest';
import { tolerableError } from '#lib/law/tolerable-error.ts';
import { gramsToUg } from '#lib/units/mass.ts';

const gramsOf = (ug: number | undefined): number | undefined => (ug === undefined ? undefined : ug / 1_000_000);

describe('tolerable negative error', () => {
  it.each([
    [5, 0.5],
    [15, 1.4],
    [30, 2.7],
    [50, 4.5],
    [75, 4.5],
    [100, 4.5],
    [150, 6.8],
    [200, 9],
    [250, 9],
    [300, 9],
    [400, 12],
    [500, 15],
    [750, 15],
    [1000, 15],
    [2000, 30],
    [10_000, 150],
  ])('%d g: %d g', (nominal, error) => {
    expect(gramsOf(tolerableError('EU', gramsToUg(nominal))?.errorUg)).toBe(error);
  });

  it.each([
    [30, 27.3, 24.6],
    [50, 45.5, 41],
  ])('%d g: lower limits %d g and %d g', (nominal, lower, lowest) => {
    const found = tolerableError('EU', gramsToUg(nominal));
    expect([gramsOf(found?.lowerUg), gramsOf(found?.lowestUg)]).toEqual([lower, lowest]);
  });

  it.each([
    [30, 3],
    [36, 3.6],
    [50, 3.6],
    [54, 3.6],
    [60, 5.4],
    [100, 7.2],
    [150, 9],
  ])('US maximum allowable variation, %d g: %d g', (nominal, error) => {
    expect(gramsOf(tolerableError('US', gramsToUg(nominal))?.errorUg)).toBe(error);
  });

  it('has no row outside its tables', () => {
    expect([4.9, 10_001, 0].map((grams) => tolerableError('EU', gramsToUg(grams)))).toEqual([null, null, null]);
    expect([200, 0].map((grams) => tolerableError('US', gramsToUg(grams)))).toEqual([null, null]);
  });
});
