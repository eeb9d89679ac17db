// What is asked of a jar once more when it is weighed: one bend of the rules for each check, each a hair under what the jar holds, and the
// same jar released where the bend leaves it that hair. Invented recipe; the rule of what is asked again is the house's own.
import { describe, expect, it } from 'vitest';
import { compose } from '#lib/composition/compose.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { mgPer100g } from '#lib/units/material-property.ts';
import { factorPpm, sharePpm } from '#lib/units/share.ts';
import { localDay } from '#lib/units/time.ts';
import { judgeWeighed } from '#lib/verdict/judge.ts';
import { aDemoRulebook, TEST_DAY } from '#test/support/a-demo-book.ts';

/** 50 g as weighed: kaolin 0.90, titanium dioxide in kaolin 0.50, niacinamide 1.00, panthenol 75 % 0.40, oil 1.888, cream the rest. */
const AMOUNTS = {
  stocks: new Map([
    ['kaolin-neat', 900_000n],
    ['titanium-20', 500_000n],
    ['niacinamide-neat', 1_000_000n],
    ['panthenol-75', 400_000n],
  ]),
  oil: 1_888_000n,
  cream: 45_312_000n,
};
/** Niacinamide is 2 % of it, the additions are 5.6 %, the powder is 2.8 %. */
const NIACINAMIDE_PPM = 20_000;
/** With the panthenol, 75 % of 0.8 %. */
const VITAMINS_PPM = 26_000;

const plain = aDemoRulebook();
const grounds = { reason: 'r', source: 's', by: 'b', on: localDay('2026-01-01') };

function codes(bend: Partial<Rulebook>, measuredPhX100: number | null = 600): readonly string[] {
  const book: Book = openBook({ ...plain, ...bend });
  const jar = compose(book, AMOUNTS);
  const read = measuredPhX100 === null ? null : phX100(measuredPhX100);
  return judgeWeighed(book, { jar, measuredPhX100: read }, { day: TEST_DAY }).map((found) => found.code);
}

const base = (change: Partial<Rulebook['base']>): Partial<Rulebook> => ({ base: { ...plain.base, ...change } });
const ofNiacinamide = (change: Partial<Rulebook['substances'][number]>): Partial<Rulebook> => ({
  substances: plain.substances.map((one) => (one.id === 'niacinamide' ? { ...one, ...change } : one)),
});
const solubility = (mgOf100g: number) => ofNiacinamide({ solubility: { neutralMgPer100g: mgPer100g(mgOf100g) } });
const preservative = plain.base.preservation.preservatives[0] ?? expect.fail('no preservative');
const proven = (ppm: number) =>
  base({ preservation: { ...plain.base.preservation, preservatives: [{ ...preservative, provenMinPpm: sharePpm(ppm) }] } });
const powderCap = (ppm: number) => base({ caps: { ...plain.base.caps, powderPpm: sharePpm(ppm) } });
const tested = (ppm: number) => base({ preservation: { ...plain.base.preservation, testedPowderPpm: sharePpm(ppm) } });
const pairLimit = (ppm: number): Partial<Rulebook> => ({
  pairJudgements: [
    ...plain.pairJudgements,
    {
      ...grounds,
      id: 'niacinamide-kaolin',
      firstMaterialId: 'niacinamide',
      secondMaterialId: 'kaolin',
      verdict: 'limit',
      limit: { maxFirstPpm: sharePpm(ppm) },
    },
  ],
});
const classRule = (ppm: number): Partial<Rulebook> => ({
  classRules: [{ ...grounds, id: 'much-vitamin', first: { materialClass: 'vitamin', abovePpm: sharePpm(ppm) }, then: { kind: 'refuse' } }],
});
const law = (ppm: number): Partial<Rulebook> => ({
  limits: [
    ...plain.limits,
    {
      kind: 'substance',
      id: 'much-niacinamide',
      marketId: plain.markets[0]?.id ?? expect.fail('no market'),
      productKinds: plain.markets.map((market) => market.productKind),
      substances: [{ substanceId: 'niacinamide', factorPpm: factorPpm(1_000_000) }],
      maxPpm: sharePpm(ppm),
      expressedAs: 'niacinamide',
      source: 's',
      status: 'house',
    },
  ],
});
/** The margin is PoD / 0.05333 mg per kg and day: 8 g, a tenth of it stays, 2 % niacinamide, 60 kg, 20 % through the skin = 0.0533. */
const exposure = (podUg: number) =>
  ofNiacinamide({ exposure: { systemicPodUgPerKgDay: podUg, dermalAbsorptionPpm: sharePpm(200_000), source: 's' } });

describe('a weighed jar', () => {
  it('that breaks nothing is released, with a reading and without one', () => {
    expect(codes({})).toEqual([]);
    expect(codes({}, null)).toEqual([]);
  });

  it.each<readonly [string, string, Partial<Rulebook>, Partial<Rulebook>]>([
    ['3', 'pair-limit-first', pairLimit(NIACINAMIDE_PPM - 1), pairLimit(NIACINAMIDE_PPM)],
    ['4', 'class-rule', classRule(VITAMINS_PPM - 1), classRule(VITAMINS_PPM)],
    ['5, the ceiling', 'allowance-exceeded', base({ ceilingPpm: sharePpm(55_999) }), base({ ceilingPpm: sharePpm(56_000) })],
    ['6', 'solubility-exceeded', solubility(2_000), solubility(3_000)],
    ['7', 'cap-exceeded', powderCap(27_999), powderCap(28_000)],
    ['9, dilution', 'preservative-too-low', proven(8_497), proven(8_496)],
    ['9, powder beyond the test', 'powder-beyond-challenge', tested(27_999), tested(28_000)],
    ['11', 'law-limit', law(NIACINAMIDE_PPM - 1), law(NIACINAMIDE_PPM)],
    ['12', 'exposure-margin', exposure(5_333), exposure(5_334)],
  ])('is held by check %s: %s', (_check, code, over, at) => {
    expect(codes(over)).toEqual([code]);
    expect(codes(at)).toEqual([]);
  });

  it('is held by the reading of the meter, whatever was predicted; without a reading the pH is not asked again', () => {
    const { minPhX100, maxPhX100 } = plain.base.ph;
    const narrow = base({ ph: { minPhX100: phX100(500), maxPhX100: phX100(650) } });
    expect([minPhX100, maxPhX100]).toEqual([330, 750]);
    expect(codes(narrow, 499)).toEqual(['ph-too-low']);
    expect(codes(narrow, 500)).toEqual([]);
    expect(codes(narrow, 650)).toEqual([]);
    expect(codes(narrow, 651)).toEqual(['ph-too-high']);
    expect(codes(base({ ph: { minPhX100: phX100(700), maxPhX100: phX100(750) } }), null)).toEqual([]);
  });

  it('gives every finding at once, in the order of the checks', () => {
    expect(codes({ ...pairLimit(1), ...law(1), ...powderCap(1) })).toEqual(['pair-limit-first', 'cap-exceeded', 'law-limit']);
  });
});
