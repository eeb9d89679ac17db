// Grams of sodium hydroxide per gram of acid, complete and to a pH: computed apart from this program without activities,
// from molar masses (IUPAC standard atomic weights) and pKa citric 3.13/4.76/6.40, lactic 3.86.
import { describe, expect, it } from 'vitest';
import { alkaliTo } from '#lib/chemistry/charge-balance.ts';

const NAOH_G_PER_MOL = 39.997;

/** g NaOH per g of an acid; the water's own ions are left out, as in the table. */
function naohPerGram(acid: { readonly pkas: readonly number[]; readonly gPerMol: number }, at: number): number {
  const found = alkaliTo({ ions: [{ molPerKg: 1, topCharge: 0, pkas: acid.pkas }], waterShare: 0 }, at, 'ideal');
  if (!found.ok) throw new Error(found.refusal);
  return (found.value * NAOH_G_PER_MOL) / acid.gPerMol;
}

const CITRIC = { pkas: [3.13, 4.76, 6.4], gPerMol: 192.124 };
const LACTIC = { pkas: [3.86], gPerMol: 90.078 };

describe('neutralisation, g NaOH per g acid', () => {
  it.each([
    [4, 0.2146],
    [4.5, 0.276],
    [5, 0.3457],
    [5.5, 0.4072],
    [6, 0.465],
  ])('anhydrous citric acid to pH %s', (at, grams) => {
    expect(naohPerGram(CITRIC, at)).toBeCloseTo(grams, 3);
  });

  it.each([
    [3.5, 0.1349],
    [3.86, 0.222],
    [4, 0.2575],
    [4.5, 0.3613],
    [5, 0.414],
  ])('lactic acid to pH %s', (at, grams) => {
    expect(naohPerGram(LACTIC, at)).toBeCloseTo(grams, 3);
  });

  it.each([
    ['citric, anhydrous', CITRIC.pkas, 192.124, 0.6246],
    ['citric, monohydrate', CITRIC.pkas, 210.139, 0.571],
    ['lactic', LACTIC.pkas, 90.078, 0.444],
    ['glycolic', [3.83], 76.051, 0.5259],
    ['salicylic', [2.97], 138.121, 0.2896],
    ['mandelic', [3.41], 152.148, 0.2629],
  ])('complete: %s', (_acid, pkas, gPerMol, grams) => {
    expect(naohPerGram({ pkas, gPerMol }, 13)).toBeCloseTo(grams, 3);
  });
});
