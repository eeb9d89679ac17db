// The soundness check: the dull rulebook is sound, and every fault that can be planted is found in every place where it lies, and nowhere else.
import { describe, expect, test } from 'vitest';
import { checkRulebook } from '#lib/rulebook/check-rulebook.ts';
import { references } from '#lib/rulebook/references.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { SOUNDNESS_MESSAGES } from '#lib/rulebook/soundness-messages.ts';
import { textReferences } from '#lib/rulebook/text-references.ts';
import { sharePpm } from '#lib/units/share.ts';
import { aDemoRulebook, TEST_DAY } from '#test/support/a-demo-book.ts';
import { aClassRule, aPairJudgement } from '#test/support/a-judgement.ts';
import { aRulebook } from '#test/support/a-rulebook.ts';
import { bend } from '#test/support/bend.ts';
import type { Planted } from './planted-faults.ts';
import { BASE, CHEMISTRY, JUDGEMENTS, LAW, LISTS, MATERIALS, OFFERS, SHOP, SUMS } from './planted-faults.ts';

const placesOf = (book: Rulebook): readonly string[] =>
  checkRulebook(book, TEST_DAY).map((found) => `${found.path.join('.')}: ${found.code}`);

const GROUPS = { LISTS, SUMS, CHEMISTRY, MATERIALS, BASE, OFFERS, LAW, JUDGEMENTS, SHOP } satisfies Readonly<
  Record<string, readonly Planted[]>
>;
const ALL: readonly Planted[] = Object.values(GROUPS).flat();

describe('sound rulebooks', () => {
  test('the dull one has no fault, with or without a day', () => {
    expect(checkRulebook(aRulebook(), TEST_DAY)).toEqual([]);
    expect(checkRulebook(aRulebook())).toEqual([]);
  });

  test('the demonstration has no error', () => {
    expect(checkRulebook(aDemoRulebook(), TEST_DAY).filter((found) => found.weight === 'error')).toEqual([]);
  });
});

describe.each(Object.entries(GROUPS))('planted: %s', (_, planted) => {
  test.each(planted)('$name', ({ book, faults }) => {
    expect(placesOf(book)).toEqual(faults);
  });
});

test('every code is planted at least once', () => {
  const planted = new Set(ALL.flatMap(({ book }) => checkRulebook(book, TEST_DAY).map((found) => found.code)));
  expect(Object.keys(SOUNDNESS_MESSAGES).filter((code) => !planted.has(code as keyof typeof SOUNDNESS_MESSAGES))).toEqual([]);
});

describe('many faults at once', () => {
  const PLANTED: readonly (readonly [path: string, value: unknown])[] = [
    ['currency', 'euro'],
    ['base.parts.0.sharePpm', 931_001],
    ['base.ceilingPpm', 1],
    ['base.wettingOilPpm', 70_000],
    ['base.evidenceIds.0', 'nowhere'],
    ['base.acidity.umolPerKg.12', 0],
    ['base.preservation.preservatives.0.provenMinPpm', 9000],
    ['house.exposure.bodyWeightG', 0],
    ['substances.2.id', 'phenoxethanol'],
    ['materials.3.substances.0.sharePpm', 999_000],
    ['materials.4.oilAbsorptionMgPer100g', undefined],
    ['materials.5.phFresh.minPhX100', 750],
    ['stocks.0.addedTo', 'cream'],
    ['stocks.1.needsHeat', true],
    ['shades.0.code', 'Rust'],
    ['shades.1.parts.1.materialId', 'iron-oxyde'],
    ['actives.0.levels.1.benefits.0.benefitMilli', 900],
    ['limits.1.substanceId', 'nowhere'],
    ['markets.0.responsiblePerson.name', ''],
    ['scopes.0.mostActivesCount', 9],
    ['questions.0.mostCount', 3],
    ['questions.1.options.2.exclusive', false],
    ['cautions.0.labelTextId', undefined],
    ['jarSizes.0.vesselId', 'nowhere'],
    ['scaleProfiles.0.checkWeights', []],
    ['texts.en', { ...aRulebook().texts.en, 'concern.shine': '' }],
  ];
  const step = (text: string): string | number => (/^\d+$/.test(text) ? Number(text) : text);
  const broken = PLANTED.reduce((book, [path, value]) => bend(book, path.split('.').map(step), value), aRulebook());

  test('all are found, each in its place, although references dangle and sums are off', () => {
    expect(placesOf(broken)).toEqual([
      'shades.1.code: duplicate-code',
      'base.preservation.preservatives.0.substanceId: unknown-reference',
      'base.evidenceIds.0: unknown-reference',
      'materials.2.substances.0.substanceId: unknown-reference',
      'shades.1.parts.1.materialId: unknown-reference',
      'limits.0.substances.0.substanceId: unknown-reference',
      'limits.1.substanceId: unknown-reference',
      'jarSizes.0.vesselId: unknown-reference',
      'base.parts: sum-not-whole',
      'materials.3.substances: sum-not-whole',
      'materials.5.phFresh: window-reversed',
      'actives.0.materialId: window-too-narrow',
      'base.acidity.umolPerKg.12: acidity-falls',
      'materials.4.oilAbsorptionMgPer100g: oil-absorption-missing',
      'stocks.0.addedTo: powder-not-in-paste',
      'stocks.1.needsHeat: heat-not-premix',
      'stocks.2.parts: blend-no-shade',
      'base.wettingOilParts.0: wetting-oil-outside-base',
      'base.ceilingPpm: ceiling-under-allowance',
      'base.preservation.preservatives.0.provenMinPpm: preservative-diluted',
      'house.exposure.bodyWeightG: out-of-range',
      'actives.0.levels.1.benefits: benefit-not-concave',
      'markets.0.responsiblePerson.name: responsible-person-blank',
      'scopes.0.mostActivesCount: scope-most-actives',
      'questions.0.mostCount: one-answer-only',
      'questions.1.options.2.exclusive: skip-not-exclusive',
      'cautions.0.labelTextId: caution-no-label-text',
      'currency: currency-code',
      'texts.en.concern.shine: missing-text',
      'scaleProfiles.0.checkWeights: too-few-check-weights',
    ]);
  });

  test('they come in the same order every time and are plain data', () => {
    const found = checkRulebook(broken, TEST_DAY);
    expect(JSON.parse(JSON.stringify(found))).toEqual(checkRulebook(broken, TEST_DAY));
  });
});

describe('references', () => {
  /** Uses every kind of reference that the dull book leaves out. */
  const full = (): Rulebook => ({
    ...aRulebook({
      pairJudgements: [
        aPairJudgement('kaolin', 'niacinamide', {
          verdict: 'caution',
          cautionId: 'eyes',
          overridesClassJudgementId: 'class-clay-vitamin',
          evidenceId: 'stability-1',
        }),
      ],
      classRules: [aClassRule('clay', 'vitamin', { then: { kind: 'caution', cautionId: 'eyes' } })],
      crossContacts: [{ tag: 'nut', policy: { kind: 'caution', cautionId: 'eyes' } }],
      personCaps: [{ id: 'low', materialClass: 'clay', maxPpm: sharePpm(10_000) }],
    }),
    house: { ...aRulebook().house, phCorrection: { stockId: 'niacinamide-neat', maxSharePpm: sharePpm(5000) } },
  });

  /** Paths of all texts whose key says that they name something. */
  const namingPaths = (node: unknown, path: readonly (string | number)[], key: string): readonly string[] => {
    if (typeof node === 'string') return /Ids?$/.test(key) ? [path.join('.')] : [];
    if (typeof node !== 'object' || node === null) return [];
    const isList = Array.isArray(node);
    return Object.entries(node).flatMap(([next, member]) =>
      namingPaths(member, [...path, isList ? Number(next) : next], isList ? key : next),
    );
  };

  test.each([
    ['the demonstration', aDemoRulebook()],
    ['a book of all kinds', full()],
  ])('nothing in %s names something unseen by the walk', (_, book) => {
    const seen = new Set([...references(book), ...textReferences(book)].map(({ path }) => path.join('.')));
    const named = namingPaths(book, [], '').filter((path) => !/^limits\.\d+\.marketId$/.test(path));
    expect(named.filter((path) => !seen.has(path))).toEqual([]);
    expect(named.length).toBeGreaterThan(50);
  });

  test('each that dangles is found in its place, and none stops the check', () => {
    const book = full();
    const unseen = [...references(book)].filter(({ path }) => {
      const found = placesOf(bend(book, path, 'nowhere'));
      return !found.includes(`${path.join('.')}: unknown-reference`);
    });
    expect(unseen).toEqual([]);
  });
});

describe('words', () => {
  const saysOf = (book: Rulebook): readonly string[] => checkRulebook(book, TEST_DAY).map((found) => found.message);

  test('a sentence names what was found and what to do', () => {
    expect(saysOf(bend(aRulebook(), ['base', 'parts', 0, 'sharePpm'], 930_999))).toEqual([
      'The shares sum to 999999 ppm: make them sum to exactly 1000000.',
    ]);
    expect(saysOf(bend(aRulebook(), ['base', 'preservation', 'preservatives', 0, 'provenMinPpm'], 8551))).toEqual([
      'At full allowance 8550 ppm of “phenoxyethanol” are left; 8551 are proven: raise it or lower the allowance.',
    ]);
  });

  test('no sentence holds an undefined fact', () => {
    const said = ALL.flatMap(({ book }) => saysOf(book));
    expect(said.filter((message) => /undefined|NaN|Infinity|\[object/.test(message))).toEqual([]);
  });
});

describe('weight', () => {
  const weightsOf = (book: Rulebook): readonly string[] => checkRulebook(book, TEST_DAY).map((found) => found.weight);

  test('what breaks a limit forbids publishing; what a limit to come will break is pointed out', () => {
    const over = bend(aRulebook(), ['limits', 0, 'maxPpm'], 8999);
    expect(weightsOf(over)).toEqual(['error']);
    expect(weightsOf(bend(over, ['limits', 0, 'fromDay'], '2026-11-26'))).toEqual(['warning']);
    expect(weightsOf(bend(over, ['limits', 0, 'fromDay'], '2026-11-25'))).toEqual(['error']);
  });

  test('a market that nobody answers for is left out of an edition, so it forbids nothing', () => {
    expect(weightsOf(bend(aRulebook(), ['markets', 0, 'responsiblePerson', 'name'], ''))).toEqual(['warning']);
  });

  test('without a day a limit that is over still counts', () => {
    const over = bend(bend(aRulebook(), ['limits', 0, 'maxPpm'], 8999), ['limits', 0, 'untilDay'], '2020-01-01');
    expect(checkRulebook(over, TEST_DAY)).toEqual([]);
    expect(checkRulebook(over).map((found) => found.code)).toEqual(['base-over-limit']);
  });
});
