// IEC 61966-2-1 colours in CIELAB (D65): values computed with two independent open colour libraries that agree to four decimals.
// Difference: Sharma, Wu and Dalal, Color Research and Application 30 (2005) 21–30, Table 1, first twenty rows as tabled; verified.
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '#lib/colour/delta-e.ts';
import type { Lab } from '#lib/colour/lab.ts';
import { labOfHex, swatchOf } from '#lib/colour/lab.ts';

const lab = (l: number, a: number, b: number): Lab => ({ l, a, b });

describe('sRGB and CIELAB', () => {
  it.each([
    ['#ff0000', [53.2371, 80.0901, 67.2033]],
    ['#00ff00', [87.7355, -86.1816, 83.1866]],
    ['#0000ff', [32.3009, 79.1953, -107.8555]],
    ['#ffffff', [100, 0, 0]],
    ['#808080', [53.585, 0, 0]],
    ['#767676', [49.637, 0, 0]],
  ] as const)('%s', (hex, [l, a, b]) => {
    const found = labOfHex(hex);
    expect(found.l).toBeCloseTo(l, 3);
    expect(found.a).toBeCloseTo(a, 3);
    expect(found.b).toBeCloseTo(b, 3);
  });

  it('is linear near black: #010101 is L* = 903.2963 / (255 × 12.92) (CIE 15 and IEC 61966-2-1)', () => {
    expect(labOfHex('#010101').l).toBeCloseTo(903.2963 / (255 * 12.92), 6);
  });

  it('Lab (50, 20, 30) is #a46945', () => {
    expect(swatchOf(lab(50, 20, 30))).toEqual({ hex: '#a46945', reduced: false });
  });

  it('comes back from Lab to the same sRGB colour', () => {
    for (const hex of [
      '#ff0000',
      '#00ff00',
      '#0000ff',
      '#ffffff',
      '#000000',
      '#735244',
      '#c29682',
      '#010203',
      '#0a0b0a',
      '#050000',
      '#000009',
    ]) {
      expect(swatchOf(labOfHex(hex))).toEqual({ hex, reduced: false });
    }
  });
});

// L1 a1 b1, L2 a2 b2, difference
const PAIRS = `
50 2.6772 -79.7751 50 0 -82.7485 2.0425
50 3.1571 -77.2803 50 0 -82.7485 2.8615
50 2.8361 -74.02 50 0 -82.7485 3.4412
50 -1.3802 -84.2814 50 0 -82.7485 1.0000
50 -1.1848 -84.8006 50 0 -82.7485 1.0000
50 -0.9009 -85.5211 50 0 -82.7485 1.0000
50 0 0 50 -1 2 2.3669
50 -1 2 50 0 0 2.3669
50 2.49 -0.001 50 -2.49 0.0009 7.1792
50 2.49 -0.001 50 -2.49 0.001 7.1792
50 2.49 -0.001 50 -2.49 0.0011 7.2195
50 2.49 -0.001 50 -2.49 0.0012 7.2195
50 -0.001 2.49 50 0.0009 -2.49 4.8045
50 -0.001 2.49 50 0.001 -2.49 4.8045
50 -0.001 2.49 50 0.0011 -2.49 4.7461
50 2.5 0 50 0 -2.5 4.3065
50 2.5 0 73 25 -18 27.1492
50 2.5 0 61 -5 29 22.8977
50 2.5 0 56 -27 -3 31.9030
50 2.5 0 58 24 15 19.4535`
  .trim()
  .split('\n')
  .map((line) => line.split(' ').map(Number));

describe('CIEDE2000', () => {
  it.each(PAIRS)('(%d %d %d) to (%d %d %d): %d, both ways round', (l1, a1, b1, l2, a2, b2, difference) => {
    const first = lab(l1 ?? 0, a1 ?? 0, b1 ?? 0);
    const second = lab(l2 ?? 0, a2 ?? 0, b2 ?? 0);
    expect(Math.abs(deltaE2000(first, second) - (difference ?? 0))).toBeLessThanOrEqual(0.0001);
    expect(Math.abs(deltaE2000(second, first) - (difference ?? 0))).toBeLessThanOrEqual(0.0001);
  });
});
