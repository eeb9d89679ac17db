import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '#lib/colour/delta-e.ts';
import { labOfHex, swatchOf } from '#lib/colour/lab.ts';

describe('swatch', () => {
  it.each([
    ['ultramarine masstone', { l: 32, a: 18, b: -70 }],
    ['a green no screen shows', { l: 60, a: -90, b: 40 }],
    ['a deep yellow', { l: 75, a: 10, b: 110 }],
  ])('keeps lightness and hue of %s and says that chroma was reduced', (_name, lab) => {
    const found = swatchOf(lab);
    const shown = labOfHex(found.hex);
    expect(found.reduced).toBe(true);
    expect(Math.abs(shown.l - lab.l)).toBeLessThan(0.6);
    expect(Math.abs(Math.atan2(shown.b, shown.a) - Math.atan2(lab.b, lab.a))).toBeLessThan(0.02);
    const chroma = Math.hypot(shown.a, shown.b);
    expect(chroma).toBeLessThan(Math.hypot(lab.a, lab.b));
    // Not paler than it must be: the screen's edge is near.
    const further = swatchOf({ l: lab.l, a: (shown.a / chroma) * (chroma + 3), b: (shown.b / chroma) * (chroma + 3) });
    expect(further.reduced).toBe(true);
  });

  it('holds lightness within black and white', () => {
    expect(swatchOf({ l: 120, a: 0, b: 0 }).hex).toBe('#ffffff');
    expect(swatchOf({ l: -5, a: 0, b: 0 }).hex).toBe('#000000');
    expect(swatchOf({ l: 0, a: 20, b: 0 })).toEqual({ hex: '#000000', reduced: true });
  });

  it('shows a clay as it is', () => {
    const clay = { l: 82.5, a: 2.1, b: 9.4 };
    const found = swatchOf(clay);
    expect(found.reduced).toBe(false);
    expect(deltaE2000(clay, labOfHex(found.hex))).toBeLessThan(0.5);
  });
});
