// Laws of the law: more of a limited substance never mends a broken limit, a tighter limit never passes what a looser one refused,
// a factor never understates, and a label holds every ingredient once whatever the order of the plan.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '#lib/colour/delta-e.ts';
import { swatchOf } from '#lib/colour/lab.ts';
import { equivalentFactor, largestPassingPpm } from '#lib/law/equivalent-factor.ts';
import { checkExposure } from '#lib/law/exposure.ts';
import { labelIngredients } from '#lib/law/label-order.ts';
import { checkLaw } from '#lib/law/limits.ts';
import { tolerableError } from '#lib/law/tolerable-error.ts';
import type { LimitRow } from '#lib/rulebook/limit.ts';
import { massUg } from '#lib/units/mass.ts';
import { factorPpm, sharePpm } from '#lib/units/share.ts';
import { localDay } from '#lib/units/time.ts';
import { aBook, aPlannedJar } from '#test/support/a-jar.ts';
import { aSubstance } from '#test/support/a-material.ts';

const runs = { seed: 20_261_125, numRuns: 200 };
const day = localDay('2026-11-25');
const ppm = fc.integer({ min: 0, max: 50_000 });
const factor = fc.integer({ min: 1, max: 2_000_000 });

const limitedBook = (maxPpm: number, ofFactor: number) => {
  const row: LimitRow = {
    id: 'limit',
    kind: 'substance',
    marketId: 'EU',
    source: 'invented for tests',
    status: 'house',
    productKinds: ['rinse-off'],
    substances: [{ substanceId: 'niacinamide', factorPpm: factorPpm(ofFactor) }],
    maxPpm: sharePpm(maxPpm),
    expressedAs: 'as such',
  };
  return aBook({ rest: { limits: [row] } });
};
const breaks = (held: number, maxPpm: number, ofFactor: number): boolean => {
  const book = limitedBook(maxPpm, ofFactor);
  return checkLaw(book, aPlannedJar(book, { 'niacinamide-neat': held }), day).length > 0;
};

describe('limits', () => {
  it('are monotone in the share, in the limit and in the factor', () => {
    fc.assert(
      fc.property(ppm, ppm, factor, ppm, (held, maxPpm, ofFactor, more) => {
        if (!breaks(held, maxPpm, ofFactor)) return;
        expect(breaks(Math.min(1_000_000, held + more), maxPpm, ofFactor)).toBe(true);
        expect(breaks(held, Math.max(0, maxPpm - more), ofFactor)).toBe(true);
        expect(breaks(held, maxPpm, ofFactor + more)).toBe(true);
      }),
      runs,
    );
  });

  it('break exactly above the largest passing share', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), fc.integer({ min: 500_000, max: 2_000_000 }), (maxPpm, ofFactor) => {
        const most = largestPassingPpm(maxPpm, factorPpm(ofFactor));
        expect([breaks(most, maxPpm, ofFactor), breaks(most + 1, maxPpm, ofFactor)]).toEqual([false, true]);
      }),
      runs,
    );
  });

  it('take factors that never understate and overstate by less than 1 ppm', () => {
    const mass = fc.integer({ min: 1000, max: 1_000_000 });
    fc.assert(
      fc.property(mass, mass, (of, into) => {
        const found = BigInt(equivalentFactor(of, into));
        const exact = BigInt(of) * 1_000_000n;
        expect(found * BigInt(into) >= exact && (found - 1n) * BigInt(into) < exact).toBe(true);
      }),
      runs,
    );
  });
});

describe('exposure', () => {
  it('never finds a better margin for a larger share or area', () => {
    const book = aBook({
      substances: [
        aSubstance('niacinamide', {
          exposureDemanded: true,
          exposure: { systemicPodUgPerKgDay: 9000, dermalAbsorptionPpm: sharePpm(500_000), source: 'invented for tests' },
        }),
      ],
    });
    const broken = (held: number, area: number) =>
      checkExposure(book, aPlannedJar(book, { 'niacinamide-neat': held }), factorPpm(area)).length > 0;
    fc.assert(
      fc.property(ppm, factor, ppm, (held, area, more) => {
        if (!broken(held, area)) return;
        expect(broken(held + more, area) && broken(held, area + more)).toBe(true);
      }),
      runs,
    );
  });
});

describe('labels', () => {
  it('name every ingredient once, in an order that the order of weighing cannot change', () => {
    const book = aBook();
    const stocks = ['kaolin-neat', 'niacinamide-neat', 'rust-blend'] as const;
    fc.assert(
      fc.property(fc.tuple(ppm, ppm, ppm), fc.shuffledSubarray([...stocks], { minLength: 3 }), (amounts, order) => {
        const held = new Map<string, number>(stocks.map((stock, index) => [stock, ((amounts[index] ?? 0) / 5) | 0]));
        const list = (ids: readonly string[]) =>
          labelIngredients(book, aPlannedJar(book, Object.fromEntries(ids.map((id) => [id, held.get(id) ?? 0]))), {
            id: 'EU',
            productKind: 'rinse-off',
          });
        const found = list(order);
        expect(found).toEqual(list(stocks));
        expect(new Set(found.map((one) => one.name)).size).toBe(found.length);
        const weighed = found.filter((one) => one.group !== 'colourant').map((one) => one.shownPpm);
        expect(weighed).toEqual([...weighed].sort((a, b) => b - a));
      }),
      runs,
    );
  });
});

describe('net content', () => {
  it('tolerates more in grams as packs grow, and never more than 9 % and a step', () => {
    const nominal = fc.integer({ min: 5_000_000, max: 10_000_000_000 });
    fc.assert(
      fc.property(nominal, nominal, (a, b) => {
        const [small, large] = [Math.min(a, b), Math.max(a, b)].map((mass) => tolerableError('EU', massUg(mass))?.errorUg ?? -1);
        expect(small).toBeLessThanOrEqual(large ?? -1);
        expect(large).toBeLessThanOrEqual(Math.max(a, b) * 0.09 + 100_000);
      }),
      runs,
    );
  });
});

describe('colour', () => {
  const lab = fc.record({
    l: fc.double({ min: 0, max: 100, noNaN: true }),
    a: fc.double({ min: -100, max: 100, noNaN: true }),
    b: fc.double({ min: -100, max: 100, noNaN: true }),
  });

  it('difference is symmetric, zero for itself and never negative', () => {
    fc.assert(
      fc.property(lab, lab, (one, two) => {
        expect(deltaE2000(one, two)).toBeCloseTo(deltaE2000(two, one), 9);
        expect(deltaE2000(one, one)).toBe(0);
        expect(deltaE2000(one, two)).toBeGreaterThanOrEqual(0);
      }),
      runs,
    );
  });

  it('every colour has a swatch that a screen can show', () => {
    fc.assert(
      fc.property(lab, (one) => void expect(swatchOf(one).hex).toMatch(/^#[0-9a-f]{6}$/)),
      runs,
    );
  });
});
