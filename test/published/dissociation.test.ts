// Undissociated parts of acids by Henderson–Hasselbalch: 100 / (1 + 10^(pH − pKa)) %, tabulated apart from this program with the pKa beside each row.
import { describe, expect, it } from 'vitest';
import { formShares, undissociatedShare } from '#lib/chemistry/undissociated.ts';
import { ph } from '#lib/units/chemistry.ts';

const AT = [3, 3.5, 4, 4.5, 5, 5.5, 6, 6.5] as const;

// pKa at 25 °C: benzoic, lactic and glycolic verified (CRC Handbook and Martell & Smith tables); sorbic, salicylic, mandelic from memory;
// dehydroacetic from memory and doubtful (5.1 to 5.5 in the literature): the row checks the arithmetic only.
const ROWS = [
  ['benzoic', 4.2, [94.06, 83.37, 61.31, 33.39, 13.68, 4.77, 1.56, 0.5]],
  ['sorbic', 4.76, [98.29, 94.79, 85.19, 64.54, 36.53, 15.4, 5.44, 1.79]],
  ['dehydroacetic', 5.27, [99.47, 98.33, 94.9, 85.48, 65.06, 37.06, 15.7, 5.56]],
  ['salicylic', 2.97, [48.27, 22.79, 8.54, 2.87, 0.92, 0.29, 0.09, 0.03]],
  ['lactic', 3.86, [87.87, 69.61, 42.01, 18.64, 6.76, 2.24, 0.72, 0.23]],
  ['glycolic', 3.83, [87.11, 68.13, 40.34, 17.61, 6.33, 2.09, 0.67, 0.21]],
  ['mandelic', 3.41, [71.99, 44.84, 20.45, 7.52, 2.51, 0.81, 0.26, 0.08]],
] as const;

describe('undissociated acid, per cent', () => {
  it.each(ROWS)('%s acid, pKa %s', (_acid, pka, percents) => {
    const found = AT.map((at) => (undissociatedShare(ph(at), pka) * 100).toFixed(2));
    expect(found).toEqual(percents.map((percent) => percent.toFixed(2)));
  });

  it('azelaic acid at pH 5.00 (pKa 4.55 and 5.50): 21.3 % H2A, 59.8 % HA-, 18.9 % A2- as published, 21.23 / 59.84 / 18.92 recomputed', () => {
    expect(formShares(5, [4.55, 5.5]).map((share) => (share * 100).toFixed(2))).toEqual(['21.23', '59.84', '18.92']);
  });

  it('is half at pH = pKa, by definition', () => {
    expect(undissociatedShare(ph(3.86), 3.86)).toBe(0.5);
    expect(formShares(3.86, [3.86])).toEqual([0.5, 0.5]);
  });

  it('does not overflow far from every pKa', () => {
    expect(formShares(300, [1, 2, 3]).at(-1)).toBeCloseTo(1, 12);
    expect(formShares(-300, [1, 2, 3])[0]).toBeCloseTo(1, 12);
  });
});
