// The order of masks and its boundaries, on a small book bent until two masks differ in one thing only. The rules are the house's own.
import { describe, expect, it } from 'vitest';
import type { Person } from '#lib/answers/person.ts';
import { planVariant } from '#lib/composition/plan-variant.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Active } from '#lib/rulebook/offer.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { benefitMilli, loadUnits, unitsPerPpm } from '#lib/units/material-property.ts';
import { moneyMinor } from '#lib/units/money.ts';
import type { Permitted } from '#lib/variants/permitted.ts';
import { irritancySteps, permittedVariants } from '#lib/variants/permitted.ts';
import { bestFirst, mildestFirst, rankAll } from '#lib/variants/rank.ts';
import { threeMasks } from '#lib/variants/three-masks.ts';
import { aDemoBook, aDemoRulebook, TEST_DAY, variantFrom } from '#test/support/a-demo-book.ts';

const book = aDemoBook();

/** A permitted mask with the figures that rank it; the plan plays no part in ranking. */
function figured(key: string, figures: Partial<Permitted> = {}): Permitted {
  const variant = variantFrom(key);
  const [plan] = planVariant(book, variant, null).plans;
  return { variant, plan: plan ?? expect.fail(), irritancyStepsCount: 3, additionsPriceMinor: moneyMinor(100), codeKey: key, ...figures };
}

const noWish = new Map<string, number>();
const order = (masks: readonly Permitted[], compare: typeof bestFirst): readonly string[] =>
  [...rankAll(book, masks, noWish)].sort(compare).map((one) => one.codeKey);

const ONE = 'chalk-down|panthenol@3000';
const TWO = 'chalk-down|niacinamide@10000+panthenol@3000';

describe('the best first, masks of one score', () => {
  it('fewer actives, whatever else', () =>
    expect(order([figured(TWO, { irritancyStepsCount: 0, additionsPriceMinor: moneyMinor(0) }), figured(ONE)], bestFirst)).toEqual([
      ONE,
      TWO,
    ]));
  it('then lower irritancy, whatever the price', () =>
    expect(
      order(
        [figured(ONE, { codeKey: 'a', irritancyStepsCount: 4, additionsPriceMinor: moneyMinor(0) }), figured(ONE, { codeKey: 'b' })],
        bestFirst,
      ),
    ).toEqual(['b', 'a']));
  it('then lower price in whole steps, rounded up: 101 is dearer than 100, and 101 no dearer than 150', () => {
    const priced = (codeKey: string, minor: number) => figured(ONE, { codeKey, additionsPriceMinor: moneyMinor(minor) });
    expect(book.rulebook.house.ranking.priceStepMinor).toBe(50);
    expect(order([priced('a', 101), priced('b', 100)], bestFirst)).toEqual(['b', 'a']);
    expect(order([priced('b', 101), priced('a', 150)], bestFirst)).toEqual(['a', 'b']);
  });
  it('then the key', () => expect(order([figured(ONE, { codeKey: 'b' }), figured(ONE, { codeKey: 'a' })], bestFirst)).toEqual(['a', 'b']));
});

describe('the mildest first', () => {
  it('lower irritancy, then fewer actives, whatever the price, then lower price, then the key', () => {
    expect(order([figured(ONE), figured(TWO, { irritancyStepsCount: 2 })], mildestFirst)).toEqual([TWO, ONE]);
    expect(order([figured(TWO, { additionsPriceMinor: moneyMinor(0) }), figured(ONE)], mildestFirst)).toEqual([ONE, TWO]);
    const dear = figured(ONE, { codeKey: 'a', additionsPriceMinor: moneyMinor(151) });
    expect(order([dear, figured(ONE, { codeKey: 'b' })], mildestFirst)).toEqual(['b', 'a']);
    expect(order([figured(ONE, { codeKey: 'b' }), figured(ONE, { codeKey: 'a' })], mildestFirst)).toEqual(['a', 'b']);
  });
});

describe('irritancy in steps', () => {
  // Only niacinamide irritates: 20 000 ppm × 3 units = 60 000 units.
  const stepsAt = (stepUnits: number): number => {
    const plain = aDemoRulebook();
    const bent = openBook({
      ...plain,
      materials: plain.materials.map((one) => ({ ...one, irritancyUnitsPerPpm: unitsPerPpm(one.id === 'niacinamide' ? 3 : 0) })),
      house: { ...plain.house, ranking: { ...plain.house.ranking, irritancyStepUnits: loadUnits(stepUnits) } },
    });
    const [plan] = planVariant(bent, variantFrom('chalk-down|niacinamide@20000'), null).plans;
    return irritancySteps(bent, plan ?? expect.fail());
  };
  it('is rounded up', () => expect([10_000, 9_999, 60_000, 60_001, 59_999].map(stepsAt)).toEqual([6, 7, 1, 1, 2]));
});

describe('which masks are shown', () => {
  const wishes = new Map([['dry', 1]]);
  const who: Person = { wishes, excluded: new Map(), capIds: new Map(), mildest: [], areaFactorPpm: null, cautions: [], outcomes: [] };

  /** Niacinamide 1 % serves the wish whole and irritates; panthenol 0.3 % serves it by so much and does not. Chalk Down only. */
  function shown(benefit: number, prices: { readonly niacinamide: number; readonly panthenol: number }): readonly string[] {
    const plain = aDemoRulebook();
    const levels = (active: Active): Active['levels'] =>
      active.levels.map((level) => ({
        ...level,
        benefits: [{ concernId: 'dry', benefitMilli: benefitMilli(active.id === 'niacinamide' ? 1000 : benefit) }],
        priceMinor: moneyMinor(active.id === 'niacinamide' ? prices.niacinamide : prices.panthenol),
      }));
    const bent: Rulebook = {
      ...plain,
      materials: plain.materials.map((one) => ({ ...one, irritancyUnitsPerPpm: unitsPerPpm(one.id === 'niacinamide' ? 3 : 0) })),
      actives: plain.actives.map((active) => (active.role === 'active' ? { ...active, levels: levels(active) } : active)),
    };
    const opened = openBook(bent);
    const few = new Set(['chalk-down|niacinamide@10000', 'chalk-down|panthenol@3000']);
    const permitted = permittedVariants(opened, TEST_DAY).filter(({ variant }) => few.has(variantKey(variant)));
    expect(permitted).toHaveLength(2);
    return threeMasks(opened, permitted, { person: who, jarSizeId: 'jar-50', context: { day: TEST_DAY } }).masks.map(
      (mask) => `${mask.role} ${mask.variant.actives[0]?.activeId}`,
    );
  }
  const JAR = 1400;

  it('the milder from seven tenths of the best score on', () => {
    const same = { niacinamide: 100, panthenol: 100 };
    expect(shown(700, same)).toEqual(['closest niacinamide', 'mildest panthenol']);
    expect(shown(699, same)).toEqual(['closest niacinamide']);
  });
  it('a cheaper one of the same colour from nine tenths of the price of the whole jar down', () => {
    // 1400 + 600 = 2000; nine tenths are 1800.
    expect(aDemoBook().jarSizes.get('jar-50')?.priceMinor).toBe(JAR);
    expect(shown(600, { niacinamide: 600, panthenol: 400 })).toEqual(['closest niacinamide', 'lower-price panthenol']);
    expect(shown(600, { niacinamide: 600, panthenol: 401 })).toEqual(['closest niacinamide']);
  });
});
