// Enumeration order, prices, ranking and the three masks on the demonstration's book.
import { describe, expect, it } from 'vitest';
import type { Person } from '#lib/answers/person.ts';
import { openBook } from '#lib/rulebook/book.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { impactOf } from '#lib/variants/impact.ts';
import { countVariants, pageOfVariants, permittedVariants } from '#lib/variants/permitted.ts';
import { priceOf } from '#lib/variants/price.ts';
import { rankAll, scoreOf } from '#lib/variants/rank.ts';
import { threeMasks } from '#lib/variants/three-masks.ts';
import { whatFits, whyNot } from '#lib/variants/what-fits.ts';
import { aDemoBook, aDemoRulebook, TEST_DAY, variantFrom } from '#test/support/a-demo-book.ts';
import { allVariants } from '#test/support/all-variants.ts';

const book = aDemoBook();
const permitted = permittedVariants(book, TEST_DAY);
const person = (wishes: Readonly<Record<string, number>>, more: Partial<Person> = {}): Person => ({
  wishes: new Map(Object.entries(wishes)),
  excluded: new Map(),
  capIds: new Map(),
  mildest: [],
  areaFactorPpm: null,
  cautions: [],
  outcomes: [],
  ...more,
});
const masksFor = (who: Person) => threeMasks(book, permitted, { person: who, jarSizeId: 'jar-50', context: { day: TEST_DAY } });

describe('the list of all variants', () => {
  const keys = [...allVariants(book)].map(variantKey);

  it('holds every shade with every set of at most k actives at every level, once: 3 × (1 + 7 + 16 + 12)', () => {
    expect(keys).toHaveLength(108);
    expect(new Set(keys).size).toBe(108);
  });
  it('goes by shade code, number of actives, active codes, levels', () => {
    expect(keys.slice(0, 9)).toEqual([
      'chalk-down|',
      'chalk-down|lactic-acid@5000',
      'chalk-down|lactic-acid@10000',
      'chalk-down|niacinamide@10000',
      'chalk-down|niacinamide@20000',
      'chalk-down|panthenol@3000',
      'chalk-down|panthenol@7500',
      'chalk-down|panthenol@15000',
      'chalk-down|lactic-acid@5000+niacinamide@10000',
    ]);
  });
});

describe('count and pages', () => {
  it('count what the list holds', () => expect(countVariants(book, TEST_DAY)).toBe(permitted.length));
  it('page n is the slice of the whole list', () => {
    const page = pageOfVariants(book, TEST_DAY, { fromCount: 10, sizeCount: 7 });
    expect(page.map((one) => variantKey(one.variant))).toEqual(permitted.slice(10, 17).map((one) => variantKey(one.variant)));
    expect(pageOfVariants(book, TEST_DAY, { fromCount: permitted.length, sizeCount: 7 })).toEqual([]);
  });
});

describe('price and score', () => {
  it('adds jar, shade and levels', () =>
    expect(priceOf(book, variantFrom('fern-bank|niacinamide@20000+panthenol@3000'), 'jar-50')).toBe(1400 + 100 + 200 + 50));
  it('weighs wishes and stops counting a concern at the whole', () => {
    const wishes = new Map([
      ['dull', 3],
      ['pore', 1],
    ]);
    expect(scoreOf(book, variantFrom('chalk-down|niacinamide@20000'), wishes)).toBe(3 * 650 + 700);
    expect(scoreOf(book, variantFrom('chalk-down|niacinamide@20000+lactic-acid@10000'), wishes)).toBe(3 * 1000 + 1000);
  });
  it('ranks a higher score above anything else, then fewer actives', () => {
    const ranked = rankAll(book, permitted, new Map([['dry', 3]]));
    const rank = (key: string) => ranked.find((one) => variantKey(one.variant) === key)?.rank ?? Number.NaN;
    expect(rank('chalk-down|panthenol@7500')).toBeGreaterThan(rank('chalk-down|panthenol@3000'));
    expect(rank('chalk-down|panthenol@7500')).toBeGreaterThan(rank('chalk-down|niacinamide@10000+panthenol@7500'));
  });
});

describe('three masks', () => {
  it('are the best, a milder one that still does the job, and another colour', () => {
    const { masks, noActiveFits } = masksFor(person({ oil: 3 }));
    expect(noActiveFits).toBe(false);
    expect(masks.map((mask) => [mask.role, variantKey(mask.variant)])).toEqual([
      ['closest', 'chalk-down|niacinamide@20000'],
      ['other-colour', 'fern-bank|niacinamide@20000'],
    ]);
  });
  it('skip the mildest when it is the best, and never pad', () => {
    const { masks } = masksFor(person({ dry: 3 }));
    expect(masks.map((mask) => mask.role)).toEqual(['closest', 'mildest', 'other-colour']);
    expect(new Set(masks.map((mask) => variantKey(mask.variant))).size).toBe(masks.length);
  });
  it('offer the base with a shade and say so when no active answers the wish', () => {
    const { masks, noActiveFits } = masksFor(person({ 'no-such-concern': 3 }));
    expect(noActiveFits).toBe(true);
    expect(masks[0]?.variant.actives).toEqual([]);
  });
  it('hold nothing that the person excludes', () => {
    const { masks } = masksFor(person({ rough: 3 }, { excluded: new Map([['aha', [{ questionId: 'q', optionId: 'o' }]]]) }));
    expect(masks.flatMap((mask) => mask.variant.actives.map((chosen) => chosen.activeId))).not.toContain('lactic-acid');
  });
  it('are none when bench or shop refuse everything', () => {
    const nothing = threeMasks(book, permitted, {
      person: person({ oil: 3 }),
      jarSizeId: 'jar-50',
      context: { day: TEST_DAY, bench: () => [{ code: 'no-scale', ruleId: 'bench', facts: {} }] },
    });
    expect(nothing.masks).toEqual([]);
  });
});

describe('what fits, and why not', () => {
  const fits = whatFits(book, variantFrom('chalk-down|niacinamide@10000'), { day: TEST_DAY });

  it('asks every other shade and every level not chosen yet', () => {
    expect(fits.shades.map((one) => one.shadeId)).toEqual(['fern-bank', 'rust-seam']);
    expect(fits.levels.map((one) => `${one.chosen.activeId}@${one.chosen.levelPpm}`)).toEqual([
      'panthenol@3000',
      'panthenol@7500',
      'panthenol@15000',
      'lactic-acid@5000',
      'lactic-acid@10000',
    ]);
  });
  it('says "fits" exactly where the verdict permits', () => {
    const acid = fits.levels.find((one) => one.chosen.activeId === 'lactic-acid')?.fit;
    expect(acid?.fits === false && acid.findings.map((found) => found.code)).toContain('ph-too-low');
    expect(fits.levels[0]?.fit).toEqual({ fits: true });
  });
  it('gives all reasons against a variant', () =>
    expect(whyNot(book, variantFrom('rust-seam|lactic-acid@10000'), { day: TEST_DAY })).toMatchObject({
      fits: false,
      findings: [{ code: 'approval-refused' }],
    }));
});

describe('impact of a draft', () => {
  it('counts what is lost and gained and which past orders are among the lost', () => {
    const changed = {
      ...aDemoRulebook(),
      scopes: aDemoRulebook()
        .scopes.filter((scope) => scope.kind === 'approve')
        .map((scope) => ({ ...scope, shadeIds: ['chalk-down', 'rust-seam'] })),
    };
    const impact = impactOf(book, openBook(changed), TEST_DAY, ['fern-bank|', 'chalk-down|', 'fern-bank|']);
    const fern = permitted.filter((one) => one.variant.shadeId === 'fern-bank').length;
    expect(impact.lostCount).toBe(fern);
    expect(impact.gainedCount).toBe((countVariants(openBook(changed), TEST_DAY) ?? 0) - (permitted.length - fern));
    expect(impact.lostKeys).toEqual(['fern-bank|']);
  });
});
