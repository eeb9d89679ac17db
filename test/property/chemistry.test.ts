// Laws of the chemistry, on random jars: needs are exact, additive and never fall with pH; more acid never means a higher pH;
// wetting adds up; a weighed jar and a planned jar of the same shares are the same jar.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { needX50 } from '#lib/chemistry/acidity-table.ts';
import { acidityTable, alkaliTo, phOf } from '#lib/chemistry/charge-balance.ts';
import { lowerEnd, mayLieOutside, phBounds, predictedJarPh, upperEnd } from '#lib/chemistry/jar-ph.ts';
import { jarNeeds, needAt } from '#lib/chemistry/need.ts';
import { predictPh } from '#lib/chemistry/ph-check.ts';
import { formShares } from '#lib/chemistry/undissociated.ts';
import { wettingOf } from '#lib/chemistry/wetting.ts';
import type { Composition } from '#lib/composition/compose.ts';
import { compose } from '#lib/composition/compose.ts';
import type { AcidityTable } from '#lib/rulebook/material.ts';
import { mgPer100g } from '#lib/units/material-property.ts';
import { aBase } from '#test/support/a-base.ts';
import { aBook, aPlannedJar } from '#test/support/a-jar.ts';
import { aMaterial, anAcidityTable, aPowder, aStock, aSubstance, parts } from '#test/support/a-material.ts';

const runs = { seed: 20_261_125, numRuns: 200 };

/** Non-decreasing tables of whole µmol/kg. */
const tables = (from: number, step: number): fc.Arbitrary<AcidityTable> =>
  fc
    .tuple(fc.integer({ min: from, max: 0 }), fc.array(fc.integer({ min: 0, max: step }), { minLength: 12, maxLength: 12 }))
    .map(([first, steps]) =>
      anAcidityTable(first, ...steps.map((_, index) => steps.slice(0, index + 1).reduce((sum, one) => sum + one, first))),
    );

const shares = fc.record({ one: fc.integer({ min: 0, max: 20_000 }), two: fc.integer({ min: 0, max: 20_000 }) });
const phs = fc.integer({ min: 300, max: 900 });

const bookOf = (base: AcidityTable, one: AcidityTable, two: AcidityTable) =>
  aBook({
    substances: [aSubstance('one'), aSubstance('two')],
    materials: [aMaterial('one', { acidity: one }), aMaterial('two', { acidity: two })],
    stocks: [aStock('one'), aStock('two'), aStock('two', { id: 'both', parts: parts({ two: 400_000, one: 600_000 }) })],
    rest: { base: aBase({ acidity: base }) },
  });
/** Tables, not books: a counterexample must be short enough to read. */
const three = fc.tuple(tables(-20_000, 5000), tables(-3_000_000, 400_000), tables(-200_000, 30_000));
type Book = ReturnType<typeof bookOf>;

const known = (book: Book, jar: Composition) => {
  const needs = jarNeeds(book, jar);
  if (needs.kind !== 'known') throw new Error('needs are missing');
  return needs;
};
const jarOf = (book: Book, { one, two }: { one: number; two: number }) => aPlannedJar(book, { 'one-neat': one, 'two-neat': two });

describe('needs', () => {
  it('never fall as the pH rises', () => {
    fc.assert(
      fc.property(three, shares, phs, phs, (made, held, a, b) => {
        const book = bookOf(...made);
        const needs = known(book, jarOf(book, held));
        expect(needAt(needs, Math.min(a, b)) <= needAt(needs, Math.max(a, b))).toBe(true);
      }),
      runs,
    );
  });

  it('are exact at the points of a table and on the straight line between them', () => {
    fc.assert(
      fc.property(tables(-1_000_000, 200_000), phs, (table, at) => {
        const points = table.umolPerKg.map(BigInt);
        const index = Math.floor((at - 300) / 50);
        const rest = BigInt((at - 300) % 50);
        const low = points[index] ?? 0n;
        expect(needX50(points, at)).toBe(low * 50n + ((points[index + 1] ?? low) - low) * rest);
        if (rest === 0n) expect(needX50(points, at)).toBe(low * 50n);
      }),
      runs,
    );
  });

  it('of a jar are the sum of the needs of its parts', () => {
    fc.assert(
      fc.property(three, fc.integer({ min: 0, max: 10 ** 9 }), fc.integer({ min: 0, max: 10 ** 9 }), phs, (made, one, two, at) => {
        const book = bookOf(...made);
        const need = (amounts: { cream: bigint; stocks: readonly (readonly [string, bigint])[] }) =>
          needAt(known(book, compose(book, { cream: amounts.cream, oil: 0n, stocks: new Map(amounts.stocks) })), at);
        const all = need({
          cream: 10n ** 9n,
          stocks: [
            ['one-neat', BigInt(one)],
            ['two-neat', BigInt(two)],
          ],
        });
        const apart = [
          need({ cream: 10n ** 9n, stocks: [] }),
          need({ cream: 0n, stocks: [['one-neat', BigInt(one)]] }),
          need({ cream: 0n, stocks: [['two-neat', BigInt(two)]] }),
        ];
        expect(all).toBe(apart.reduce((sum, value) => sum + value, 0n));
      }),
      runs,
    );
  });

  it('of a premix are those of what it holds', () => {
    fc.assert(
      fc.property(three, fc.integer({ min: 1, max: 4000 }), phs, (made, tenth, at) => {
        const book = bookOf(...made);
        const premixed = known(book, aPlannedJar(book, { both: tenth * 10 }));
        const apart = known(book, aPlannedJar(book, { 'two-neat': tenth * 4, 'one-neat': tenth * 6 }));
        expect(needAt(premixed, at)).toBe(needAt(apart, at));
      }),
      runs,
    );
  });
});

describe('predicted pH', () => {
  it('stands where the need changes sign, within its bracket', () => {
    fc.assert(
      fc.property(three, shares, (made, held) => {
        const book = bookOf(...made);
        const jar = jarOf(book, held);
        const needs = known(book, jar);
        const found = predictPh(book, jar);
        expect(found.kind === 'below-table').toBe(needAt(needs, 300) > 0n);
        expect(found.kind === 'above-table').toBe(needAt(needs, 900) < 0n);
        expect(found.kind).not.toBe('missing');
        if (found.kind !== 'within') return;
        expect(needAt(needs, found.minPhX100) <= 0n).toBe(true);
        expect(needAt(needs, found.maxPhX100) >= 0n).toBe(true);
        expect(found.lowest * 100).toBeGreaterThanOrEqual(found.minPhX100 - 1e-9);
        expect(found.highest * 100).toBeLessThanOrEqual(found.maxPhX100 + 1e-9);
        expect(found.lowest).toBeLessThanOrEqual(found.highest);
      }),
      runs,
    );
  });

  it('never rises when a stock that needs alkali at every pH takes the place of base', () => {
    const acid = anAcidityTable(...Array.from({ length: 13 }, (_, index) => 1_000_000 + index));
    const rank = (book: Book, ppm: number): number => {
      const found = predictPh(book, aPlannedJar(book, { 'one-neat': ppm }));
      return found.kind === 'within' ? found.highest : found.kind === 'below-table' ? 0 : 14;
    };
    fc.assert(
      fc.property(tables(-20_000, 5000), fc.integer({ min: 0, max: 25_000 }), fc.integer({ min: 0, max: 25_000 }), (base, ppm, more) => {
        const book = bookOf(base, acid, anAcidityTable(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0));
        expect(rank(book, ppm + more)).toBeLessThanOrEqual(rank(book, ppm) + 1e-9);
      }),
      runs,
    );
  });

  it('held ends of a window contain the prediction with its error, and wider windows hold whatever narrower ones do', () => {
    fc.assert(
      fc.property(three, shares, fc.integer({ min: 200, max: 1000 }), fc.integer({ min: 0, max: 100 }), (made, held, end, wider) => {
        const book = bookOf(...made);
        const jarPh = predictedJarPh(book, jarOf(book, held));
        const bounds = phBounds(jarPh);
        if (lowerEnd(jarPh, end) === 'held') {
          expect(lowerEnd(jarPh, end - wider)).toBe('held');
          if (bounds.kind === 'known') expect(bounds.highest * 100).toBeGreaterThanOrEqual(end - 1e-9);
        }
        if (upperEnd(jarPh, end) === 'held') {
          expect(upperEnd(jarPh, end + wider)).toBe('held');
          if (bounds.kind === 'known') expect(bounds.lowest * 100).toBeLessThanOrEqual(end + 1e-9);
        }
        expect(mayLieOutside(jarPh, end, end)).toBe(lowerEnd(jarPh, end) !== 'held' || upperEnd(jarPh, end) !== 'held');
      }),
      runs,
    );
  });
});

describe('charge balance', () => {
  const ions = fc.record({
    acid: fc.double({ min: 0.001, max: 0.1, noNaN: true }),
    base: fc.double({ min: 0, max: 0.1, noNaN: true }),
    pka: fc.double({ min: 2.5, max: 9.5, noNaN: true }),
  });

  it('makes tables that never decrease and cross zero where the solution’s own pH is', () => {
    fc.assert(
      fc.property(ions, ({ acid, base, pka }) => {
        const solution = {
          ions: [
            { molPerKg: acid, topCharge: 0, pkas: [pka, pka + 3] },
            { molPerKg: base, topCharge: 1, pkas: [] },
          ],
          waterShare: 1,
        };
        const table = acidityTable(solution);
        const own = phOf(solution);
        expect(table.ok && own.ok).toBe(true);
        if (!table.ok || !own.ok) return;
        table.value.umolPerKg.forEach((value, index) => {
          expect(value).toBeGreaterThanOrEqual(table.value.umolPerKg[index - 1] ?? value);
          const at = 3 + 0.5 * index;
          if (at < own.value - 0.01) expect(value).toBeLessThanOrEqual(0);
          if (at > own.value + 0.01) expect(value).toBeGreaterThanOrEqual(0);
        });
      }),
      { ...runs, numRuns: 40 },
    );
  });

  it('adds as much alkali to a pH as the solution then shows', () => {
    fc.assert(
      fc.property(ions, fc.double({ min: 3, max: 10, noNaN: true }), ({ acid, pka }, at) => {
        const solution = { ions: [{ molPerKg: acid, topCharge: 0, pkas: [pka, pka + 3] }], waterShare: 1 };
        const added = alkaliTo(solution, at);
        expect(added.ok).toBe(true);
        if (!added.ok) return;
        // A negative need is met by a strong acid's anion.
        const strong = { molPerKg: Math.abs(added.value), topCharge: Math.sign(added.value), pkas: [] };
        const shown = phOf({ ...solution, ions: [...solution.ions, strong] });
        expect(shown.ok && Math.abs(shown.value - at) < 1e-6).toBe(true);
      }),
      { ...runs, numRuns: 40 },
    );
  });

  it('spreads an acid over its forms without losing any', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 14, noNaN: true }),
        fc.array(fc.double({ min: 0, max: 14, noNaN: true }), { maxLength: 4 }),
        (at, pkas) => {
          const forms = formShares(
            at,
            [...pkas].sort((a, b) => a - b),
          );
          expect(forms).toHaveLength(pkas.length + 1);
          expect(forms.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        },
      ),
      runs,
    );
  });
});

describe('wetting', () => {
  const book = aBook({
    substances: [aSubstance('clay'), aSubstance('blue')],
    materials: [
      aPowder('clay', { oilAbsorptionMgPer100g: mgPer100g(43_210) }),
      aPowder('blue', { kind: 'pigment', oilAbsorptionMgPer100g: mgPer100g(35_007) }),
    ],
    stocks: [
      aStock('clay', { addedTo: 'paste' }),
      aStock('blue', { addedTo: 'paste' }),
      aStock('blue', { id: 'blend', isBlend: true, addedTo: 'paste', parts: parts({ clay: 900_000, blue: 100_000 }) }),
    ],
  });
  const needed = (held: Readonly<Record<string, number>>): bigint => wettingOf(book, aPlannedJar(book, held)).needed;
  const ppm = fc.integer({ min: 0, max: 2000 });

  it('adds up over powders, and a blend needs what its powders need', () => {
    fc.assert(
      fc.property(ppm, ppm, (clay, blue) => {
        expect(needed({ 'clay-neat': clay, 'blue-neat': blue })).toBe(needed({ 'clay-neat': clay }) + needed({ 'blue-neat': blue }));
        expect(needed({ blend: clay * 10 })).toBe(needed({ 'clay-neat': clay * 9, 'blue-neat': clay }));
      }),
      runs,
    );
  });
});
