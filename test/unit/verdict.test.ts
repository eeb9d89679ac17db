// One test a finding that the demonstration's book can provoke by bending one row, and the promises of the verdict as a whole.
import { describe, expect, it } from 'vitest';
import type { Person } from '#lib/answers/person.ts';
import type { FindingCode } from '#lib/base/finding.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { acidityUmolPerKg, phX100 } from '#lib/units/chemistry.ts';
import { loadUnits, mgPer100g } from '#lib/units/material-property.ts';
import { factorPpm, sharePpm } from '#lib/units/share.ts';
import { localDay } from '#lib/units/time.ts';
import { findingsOf, judgeVariant } from '#lib/verdict/judge.ts';
import type { JudgeContext } from '#lib/verdict/verdict.ts';
import { aDemoRulebook, TEST_DAY, variantFrom } from '#test/support/a-demo-book.ts';

const GOOD = 'chalk-down|niacinamide@10000';

const nobody: Person = {
  wishes: new Map(),
  excluded: new Map(),
  capIds: new Map(),
  mildest: [],
  areaFactorPpm: null,
  cautions: [],
  outcomes: [],
};
const because = [{ questionId: 'q', optionId: 'o' }];

function judged(key: string, bend: (book: Rulebook) => Rulebook = (book) => book, context: Partial<JudgeContext> = {}) {
  return judgeVariant(openBook(bend(aDemoRulebook())), variantFrom(key), { day: TEST_DAY, ...context });
}

const codesOf = (...of: Parameters<typeof judged>): readonly string[] => [
  ...new Set(findingsOf(judged(...of).verdict).map((found) => found.code)),
];

/** Replaces rows of one section by id. */
const rows =
  <K extends keyof Rulebook>(section: K, id: string, change: object) =>
  (book: Rulebook): Rulebook => ({
    ...book,
    [section]: (book[section] as readonly { id: string }[]).map((row) => (row.id === id ? { ...row, ...change } : row)),
  });
const base =
  (change: Partial<Rulebook['base']>) =>
  (book: Rulebook): Rulebook => ({ ...book, base: { ...book.base, ...change } });
const caps =
  (change: Partial<Rulebook['base']['caps']>) =>
  (book: Rulebook): Rulebook =>
    base({ caps: { ...book.base.caps, ...change } })(book);

describe('a permitted jar', () => {
  it('comes with its plan, its cautions and its figures', () => {
    const { plan, verdict } = judged(GOOD);
    expect(plan?.lines.map((line) => [line.stockId, line.sharePpm])).toEqual([
      ['kaolin-neat', 10_000],
      ['titanium-20', 10_000],
      ['niacinamide-neat', 10_000],
    ]);
    expect(verdict.kind === 'permitted' && verdict.cautions.map((owed) => owed.cautionId)).toEqual([
      'broken-skin',
      'children',
      'eyes',
      'time',
    ]);
    expect(verdict.kind === 'permitted' && verdict.facts.additionsPpm).toBe(30_000);
  });

  it('is brought into its pH window by the lowest level of an adjuster when it needs one', () => {
    expect(judged('chalk-down|lactic-acid@5000').plan?.adjuster).toEqual({ activeId: 'citrate-buffer', levelPpm: 1000 });
    expect(judged('chalk-down|lactic-acid@10000').plan?.adjuster).toBeNull();
  });
});

describe('each check refuses by its own code', () => {
  const cases: [FindingCode, ...Parameters<typeof judged>][] = [
    ['unknown-shade', 'no-such-shade|'],
    ['unknown-active', 'chalk-down|no-such-active@1'],
    ['unknown-active', 'chalk-down|citrate-buffer@1000'],
    ['unknown-level', 'chalk-down|niacinamide@10001'],
    ['repeated-part', 'chalk-down|niacinamide@10000+niacinamide@20000'],
    ['too-many-actives', 'chalk-down|niacinamide@10000+panthenol@3000', base({ mostActivesCount: 1 })],
    ['no-stock', GOOD, (book) => ({ ...book, stocks: book.stocks.filter((stock) => stock.id !== 'niacinamide-neat') })],
    ['not-approved', GOOD, (book) => ({ ...book, scopes: [] })],
    ['approval-refused', 'rust-seam|lactic-acid@10000'],
    ['pair-never', GOOD, rows('classJudgements', 'clay-with-vitamin', { verdict: 'never' })],
    [
      'pair-not-judged',
      GOOD,
      (book) => ({ ...book, classJudgements: book.classJudgements.filter((row) => row.id !== 'clay-with-vitamin') }),
    ],
    [
      'pair-limit-first',
      'fern-bank|lactic-acid@10000',
      rows('pairJudgements', 'lactic-illite', { limit: { maxFirstPpm: sharePpm(19_999) } }),
    ],
    [
      'pair-limit-second',
      'fern-bank|lactic-acid@10000',
      rows('pairJudgements', 'lactic-illite', { limit: { maxSecondPpm: sharePpm(3_999) } }),
    ],
    ['pair-limit-sum', 'fern-bank|lactic-acid@10000', rows('pairJudgements', 'lactic-illite', { limit: { maxSumPpm: sharePpm(23_999) } })],
    ['pair-limit-ph', 'fern-bank|lactic-acid@10000', rows('pairJudgements', 'lactic-illite', { limit: { minPhX100: phX100(450) } })],
    ['class-rule', 'chalk-down|niacinamide@10000', rows('classRules', 'vitamin-outside-ph-4-to-8', { unlessPhWithin: undefined })],
    ['allowance-exceeded', GOOD, base({ allowancePpm: sharePpm(29_999) })],
    [
      'level-not-permitted',
      GOOD,
      (book) => rows('actives', 'niacinamide', { levels: book.actives[0]?.levels.map((level) => ({ ...level, permitted: false })) })(book),
    ],
    ['solubility-exceeded', GOOD, rows('substances', 'niacinamide', { solubility: { neutralMgPer100g: mgPer100g(1_000) } })],
    ['cap-exceeded', GOOD, caps({ powderPpm: sharePpm(19_999) })],
    ['cap-exceeded', GOOD, caps({ irritancyUnits: loadUnits(79_999) })],
    [
      'ph-windows-apart',
      'chalk-down|lactic-acid@5000',
      rows('materials', 'lactic-acid-50', { phShelf: { minPhX100: phX100(760), maxPhX100: phX100(800) } }),
    ],
    ['ph-too-low', 'chalk-down|niacinamide@10000+lactic-acid@5000'],
    [
      'ph-too-high',
      'chalk-down|lactic-acid@5000',
      (book) => ({ ...book, actives: book.actives.filter((active) => active.role === 'active') }),
    ],
    ['acidity-missing', GOOD, rows('materials', 'niacinamide', { acidity: undefined })],
    [
      'preservative-too-low',
      GOOD,
      (book) =>
        base({
          preservation: {
            ...book.base.preservation,
            preservatives: book.base.preservation.preservatives.map((one) => ({ ...one, provenMinPpm: sharePpm(8_731) })),
          },
        })(book),
    ],
    [
      'powder-beyond-challenge',
      GOOD,
      (book) => base({ preservation: { ...book.base.preservation, testedPowderPpm: sharePpm(19_999) } })(book),
    ],
    ['wetting-short', GOOD, rows('materials', 'kaolin', { oilAbsorptionMgPer100g: mgPer100g(200_000) })],
    ['law-limit', GOOD, rows('limits', 'eu-v-29-phenoxyethanol', { maxPpm: sharePpm(8_729) })],
    ['law-colourant', GOOD, (book) => ({ ...book, limits: book.limits.filter((row) => row.id !== 'us-73-2575') })],
    [
      'exposure-margin',
      GOOD,
      (book) => ({ ...book, house: { ...book.house, exposure: { ...book.house.exposure, marginFloorCount: 1_000_000 } } }),
    ],
    ['exposure-no-figure', GOOD, rows('substances', 'niacinamide', { exposure: undefined })],
    ['person-excluded', 'chalk-down|lactic-acid@10000', undefined, { person: { ...nobody, excluded: new Map([['aha', because]]) } }],
    ['person-cap', 'chalk-down|lactic-acid@10000', undefined, { person: { ...nobody, capIds: new Map([['acid-low', because]]) } }],
    ['person-mildest', 'chalk-down|niacinamide@20000', undefined, { person: { ...nobody, mildest: because } }],
    ['cross-contact', GOOD, (book) => ({ ...book, crossContacts: [] }), { person: { ...nobody, excluded: new Map([['aha', because]]) } }],
  ];

  it.each(cases)('%s for %s', (code, ...[key, bend, context]) => expect(codesOf(key, bend, context)).toContain(code));

  it('says "undecided" when only something is missing, and "refused" as soon as one check says no', () => {
    expect(judged(GOOD, rows('materials', 'niacinamide', { acidity: undefined })).verdict.kind).toBe('undecided');
    expect(judged(GOOD, (book) => ({ ...rows('materials', 'niacinamide', { acidity: undefined })(book), scopes: [] })).verdict.kind).toBe(
      'refused',
    );
  });

  it('names all findings, not the first', () => {
    const bend = (book: Rulebook): Rulebook => ({ ...caps({ powderPpm: sharePpm(19_999) })(book), scopes: [] });
    expect(codesOf(GOOD, bend)).toEqual(['not-approved', 'cap-exceeded']);
  });

  it('hands the plan to the bench and to the shop and takes their findings in', () => {
    const bench: JudgeContext['bench'] = (plan) =>
      plan.lines.map((line) => ({ code: 'no-lot', ruleId: line.stockId, facts: { stockId: line.stockId, neededUg: 1 } }));
    expect(findingsOf(judged(GOOD, undefined, { bench }).verdict).map((found) => found.ruleId)).toEqual([
      'kaolin-neat',
      'niacinamide-neat',
      'titanium-20',
    ]);
  });
});

/** The lowest whole number from..to for which a test holds that, once true, stays true. */
function lowestTrue(from: number, to: number, test: (value: number) => boolean): number {
  if (from === to) return from;
  const middle = Math.floor((from + to) / 2);
  return test(middle) ? lowestTrue(from, middle, test) : lowestTrue(middle + 1, to, test);
}

describe('limits hold exactly', () => {
  it('an undissociated need one µmol over tips the window', () => {
    const shifted =
      (umol: number) =>
      (book: Rulebook): Rulebook =>
        base({ acidity: { ...book.base.acidity, umolPerKg: book.base.acidity.umolPerKg.map((value) => acidityUmolPerKg(value + umol)) } })(
          book,
        );
    const refused = (umol: number): boolean => codesOf(GOOD, shifted(umol)).includes('ph-too-low');
    const tipping = lowestTrue(0, 4_000, refused);
    expect(refused(tipping)).toBe(true);
    expect(refused(tipping - 1)).toBe(false);
  });

  it('a limit row speaks from its first day on and no longer on its last', () => {
    const dated = (day: string) =>
      codesOf(
        GOOD,
        rows('limits', 'eu-v-29-phenoxyethanol', {
          maxPpm: sharePpm(1),
          fromDay: localDay('2027-01-01'),
          untilDay: localDay('2027-02-01'),
        }),
        { day: localDay(day) },
      );
    expect(['2026-12-31', '2027-01-01', '2027-01-31', '2027-02-01'].map((day) => dated(day).includes('law-limit'))).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });
});

describe('the area that a person covers', () => {
  // 1 % niacinamide, a fifth through the skin, 8 g of which a tenth stays, 60 kg: 0.02667 mg per kg and day. PoD 4 mg: margin 150.
  const margin150 = rows('substances', 'niacinamide', {
    exposure: { systemicPodUgPerKgDay: 4_000, dermalAbsorptionPpm: sharePpm(200_000), source: 's' },
  });
  const margin75 = rows('substances', 'niacinamide', {
    exposure: { systemicPodUgPerKgDay: 2_000, dermalAbsorptionPpm: sharePpm(200_000), source: 's' },
  });
  const covers = (areaFactor: number) => ({ person: { ...nobody, areaFactorPpm: factorPpm(areaFactor) } });

  it('of twice the face halves the margin', () => {
    expect(codesOf(GOOD, margin150)).toEqual([]);
    expect(codesOf(GOOD, margin150, covers(1_000_000))).toEqual([]);
    expect(codesOf(GOOD, margin150, covers(2_000_000))).toEqual(['exposure-margin']);
  });
  it('under the whole buys nothing that the edition refuses', () => {
    expect(codesOf(GOOD, margin75)).toEqual(['exposure-margin']);
    expect(codesOf(GOOD, margin75, covers(500_000))).toEqual(['exposure-margin']);
  });
});
