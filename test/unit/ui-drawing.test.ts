// Geometry of drawings: whole, in order, the same every time.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COLUMN_UNITS, isCut, layerTops, layerUnits, seamPath } from '#app/_ui/drawing/core-layout.ts';
import { HATCHES } from '#app/_ui/drawing/hatch.tsx';
import { spineStrata } from '#app/_ui/drawing/spine.tsx';
import { axisTicks } from '#app/_ui/figure/axis.ts';
import { GAUGE_WIDTH, gaugeX, nearUg } from '#app/_ui/weighing/gauge-scale.ts';
import { gramsToUg, massUg } from '#lib/units/mass.ts';

const layer = fc.record({ hatch: fc.constantFrom(...HATCHES), sharePpm: fc.integer({ min: 0, max: 1_000_000 }) });
const column = fc.array(layer, { minLength: 1, maxLength: 24 });
const height = fc.integer({ min: 30, max: 1800 });

describe('a core', () => {
  test('its layers fill the column exactly and none is missing', () => {
    fc.assert(
      fc.property(column, height, (layers, heightPx) => {
        const units = layerUnits(layers, heightPx);
        expect(units.reduce((total, unit) => total + unit, 0)).toBe(COLUMN_UNITS);
        expect(Math.min(...units)).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  test('a larger share is never drawn lower than a smaller one', () => {
    fc.assert(
      fc.property(column, height, (layers, heightPx) => {
        const units = layerUnits(layers, heightPx);
        const drawn = layers.map((one, index) => ({ ...one, unit: units[index] ?? 0 })).filter((one) => !isCut(one));
        for (const one of drawn) {
          for (const other of drawn) if (one.sharePpm > other.sharePpm) expect(one.unit).toBeGreaterThanOrEqual(other.unit);
        }
      }),
    );
  });

  test('a layer is at least 12 px high where the column has room for it', () => {
    fc.assert(
      fc.property(fc.array(layer, { minLength: 1, maxLength: 7 }), fc.integer({ min: 200, max: 1800 }), (layers, heightPx) => {
        expect((Math.min(...layerUnits(layers, heightPx)) * heightPx) / COLUMN_UNITS).toBeGreaterThanOrEqual(12);
      }),
    );
  });

  test('the cream of a usual jar is cut and takes about a quarter', () => {
    const units = layerUnits(
      [
        { hatch: 'cream', sharePpm: 912_960 },
        { hatch: 'oil', sharePpm: 38_040 },
        { hatch: 'base-clay', sharePpm: 15_000 },
        { hatch: 'tint-clay', sharePpm: 5_000 },
      ],
      436,
    );
    expect(units[0]).toBe(13);
    expect(layerTops(units)[1]).toBeCloseTo(13 / 48, 10);
  });

  test('no column of nothing', () => {
    expect(() => layerUnits([], 100)).toThrow('1 to 24 layers');
  });

  test('a seam begins at the left edge, ends at the right one, and is the same every time', () => {
    expect(seamPath(3, 100, 40)).toMatch(/^M0 .* 100\.00 [\d.]+$/);
    expect(seamPath(3, 100, 40)).toBe(seamPath(3, 100, 40));
    expect(seamPath(2, 100, 40)).not.toBe(seamPath(3, 100, 40));
  });
});

describe('the spine', () => {
  test('grows by one layer an answer, from the bottom up', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 30 }), (total, count) => {
        const answered = Math.min(total, count);
        const { strata, tops } = spineStrata({ total, answered, asking: answered < total });
        const plain = strata.filter(({ fill }) => fill === '#FBFCFB').length;
        expect(plain).toBe(total - answered - (answered < total ? 1 : 0));
        expect(strata.slice(0, plain).every(({ fill }) => fill === '#FBFCFB')).toBe(true);
        expect([...tops].sort((a, b) => a - b)).toEqual(tops);
      }),
    );
  });
});

describe('the gauge', () => {
  const stepUg = gramsToUg(0.01);
  const band = { targetUg: gramsToUg(1.04), loUg: gramsToUg(0.99), hiUg: gramsToUg(1.09), stepUg };

  test('its stretches take 34, 26, 24 and 16 % of the width', () => {
    expect(gaugeX(massUg(0), band)).toBe(0);
    expect(gaugeX(nearUg(band), band)).toBeCloseTo(0.34 * GAUGE_WIDTH, 8);
    expect(gaugeX(band.loUg, band)).toBeCloseTo(0.6 * GAUGE_WIDTH, 8);
    expect(gaugeX(band.hiUg, band)).toBeCloseTo(0.84 * GAUGE_WIDTH, 8);
    expect(gaugeX(gramsToUg(900), band)).toBe(GAUGE_WIDTH);
  });

  test('it changes pace at 90 % of the target, to the nearest step', () => {
    expect(nearUg(band)).toBe(gramsToUg(0.94));
  });

  test('more mass never lies further left', () => {
    const any = fc.integer({ min: 1, max: 100_000 }).chain((target) =>
      fc.record({
        target: fc.constant(target),
        below: fc.integer({ min: 0, max: target }),
        above: fc.integer({ min: 1, max: 5_000 }),
        one: fc.integer({ min: 0, max: 200_000 }),
        other: fc.integer({ min: 0, max: 200_000 }),
      }),
    );
    fc.assert(
      fc.property(any, ({ target, below, above, one, other }) => {
        const made = { targetUg: massUg(target), loUg: massUg(target - below), hiUg: massUg(target + above), stepUg: massUg(1) };
        const [less, more] = [Math.min(one, other), Math.max(one, other)];
        expect(gaugeX(massUg(less), made)).toBeLessThanOrEqual(gaugeX(massUg(more), made) + 1e-9);
      }),
    );
  });

  test('a band without its target is a fault', () => {
    expect(() => gaugeX(massUg(1), { ...band, targetUg: gramsToUg(2) })).toThrow('must hold its target');
  });
});

describe('an axis', () => {
  test('begins at 0, has round steps and reaches the greatest value', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000_000 }), (greatest) => {
        const ticks = axisTicks(greatest);
        expect(ticks[0]).toBe(0);
        expect(ticks.at(-1)).toBeGreaterThanOrEqual(greatest);
        expect(ticks.length).toBeGreaterThanOrEqual(2);
        expect(ticks.length).toBeLessThanOrEqual(6);
        expect(ticks.every(Number.isInteger)).toBe(true);
      }),
    );
    expect(axisTicks(118)).toEqual([0, 40, 80, 120]);
    expect(axisTicks(0)).toEqual([0, 1]);
    expect(axisTicks(1)).toEqual([0, 1]);
    expect(axisTicks(3)).toEqual([0, 1, 2, 3]);
  });
});
