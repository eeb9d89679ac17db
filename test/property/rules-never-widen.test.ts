// Laws of the verdict over a whole book: what a rule may do to the permitted set, and what it may not.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openBook } from '#lib/rulebook/book.ts';
import type { ClassRule, PairJudgement, Scope } from '#lib/rulebook/judgement.ts';
import type { SubstanceLimit } from '#lib/rulebook/limit.ts';
import type { MaterialClass } from '#lib/rulebook/material.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { factorPpm, sharePpm } from '#lib/units/share.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import { aDemoRulebook, TEST_DAY } from '#test/support/a-demo-book.ts';
import { allVariants } from '#test/support/all-variants.ts';

const SEED = 20_261_125;
const RUNS = 12;
const DEMO = aDemoRulebook();

/** Every variant with its whole verdict as text. */
function verdicts(rulebook: Rulebook): ReadonlyMap<string, string> {
  const book = openBook(rulebook);
  return new Map(
    [...allVariants(book)].map((variant) => [variantKey(variant), JSON.stringify(judgeVariant(book, variant, { day: TEST_DAY }))]),
  );
}

function permitted(rulebook: Rulebook): ReadonlySet<string> {
  const book = openBook(rulebook);
  return new Set(
    [...allVariants(book)].filter((variant) => judgeVariant(book, variant, { day: TEST_DAY }).verdict.kind === 'permitted').map(variantKey),
  );
}

const BEFORE = permitted(DEMO);
const grounds = { reason: 'a law', source: 'a law', by: 'formulator', on: TEST_DAY };
const oneOf = <T>(items: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...items);
const classes = oneOf<MaterialClass>(['inert', 'clay', 'iron', 'vitamin', 'acid', 'electrolyte', 'anionic-polymer']);
const share = fc.integer({ min: 0, max: 30_000 }).map(sharePpm);
const material = oneOf(DEMO.materials.map((one) => one.id));
const chosenActives = fc.subarray(
  DEMO.actives.flatMap((active) => active.levels.map((level) => ({ activeId: active.id, levelPpm: level.levelPpm }))),
  { maxLength: 3 },
);
const shadeIds = fc.subarray(DEMO.shades.map((shade) => shade.id));

const classRule: fc.Arbitrary<ClassRule> = fc
  .record({
    first: classes,
    second: fc.option(classes, { nil: undefined }),
    abovePpm: share,
    window: fc.option(fc.tuple(fc.integer({ min: 300, max: 600 }), fc.integer({ min: 600, max: 900 })), { nil: undefined }),
  })
  .map(({ first, second, abovePpm, window }) => ({
    id: 'law-rule',
    first: { materialClass: first, abovePpm },
    ...(second && { second: { materialClass: second, abovePpm: sharePpm(0) } }),
    ...(window && { unlessPhWithin: { minPhX100: phX100(window[0]), maxPhX100: phX100(window[1]) } }),
    then: { kind: 'refuse' } as const,
    ...grounds,
  }));

const limitRow: fc.Arbitrary<SubstanceLimit> = fc
  .record({ substanceId: oneOf(DEMO.substances.map((one) => one.id)), maxPpm: share, factor: fc.integer({ min: 1, max: 1_000_000 }) })
  .map(({ substanceId, maxPpm, factor }) => ({
    id: 'law-limit',
    kind: 'substance',
    marketId: 'EU',
    source: 'a law',
    status: 'house',
    productKinds: ['rinse-off'],
    substances: [{ substanceId, factorPpm: factorPpm(factor) }],
    maxPpm,
    expressedAs: 'as supplied',
  }));

const scope = (kind: Scope['kind']): fc.Arbitrary<Scope> =>
  fc
    .record({ shadeIds, actives: chosenActives, mostActivesCount: fc.integer({ min: 0, max: 3 }) })
    .map((drawn) => ({ id: `law-${kind}`, kind, evidenceIds: [], reason: 'a law', by: 'formulator', on: TEST_DAY, ...drawn }));

const tighterCaps = fc.record({ powderPpm: share, pigmentPpm: share, freeAcidPpm: share }).map((drawn) => {
  const { caps } = DEMO.base;
  const least = <K extends keyof typeof drawn>(key: K) => sharePpm(Math.min(drawn[key], caps[key]));
  return { ...caps, powderPpm: least('powderPpm'), pigmentPpm: least('pigmentPpm'), freeAcidPpm: least('freeAcidPpm') };
});

const pairJudgement = (verdicts: readonly PairJudgement['verdict'][]): fc.Arbitrary<PairJudgement> =>
  fc
    .tuple(material, material, oneOf(verdicts))
    .filter(([a, b]) => a !== b)
    .map(([firstMaterialId, secondMaterialId, verdict]) => ({
      id: 'law-pair',
      firstMaterialId,
      secondMaterialId,
      verdict,
      ...(verdict === 'caution' && { cautionId: 'sting' }),
      ...grounds,
    }));

/** A pair has one judgement of its own: the new one takes the place of an old one. */
const judging = (judged: PairJudgement): Rulebook => ({
  ...DEMO,
  pairJudgements: [
    ...DEMO.pairJudgements.filter(
      (old) => new Set([old.firstMaterialId, old.secondMaterialId, judged.firstMaterialId, judged.secondMaterialId]).size > 2,
    ),
    judged,
  ],
});

const holds = <T>(drawn: fc.Arbitrary<T>, law: (value: T) => void): void =>
  fc.assert(
    fc.property(drawn, (value) => void law(value)),
    { seed: SEED, numRuns: RUNS },
  );
const isWithin = (small: ReadonlySet<string>, large: ReadonlySet<string>): void =>
  expect([...small].filter((key) => !large.has(key))).toEqual([]);

describe('adding never widens', () => {
  it('a class rule', () => holds(classRule, (rule) => isWithin(permitted({ ...DEMO, classRules: [...DEMO.classRules, rule] }), BEFORE)));
  it('a cap', () => holds(tighterCaps, (caps) => isWithin(permitted({ ...DEMO, base: { ...DEMO.base, caps } }), BEFORE)));
  it('a limit row', () => holds(limitRow, (row) => isWithin(permitted({ ...DEMO, limits: [...DEMO.limits, row] }), BEFORE)));
  it('a refusing scope', () =>
    holds(scope('refuse'), (refusing) => isWithin(permitted({ ...DEMO, scopes: [...DEMO.scopes, refusing] }), BEFORE)));
  it('a judgement of never', () => holds(pairJudgement(['never']), (judged) => isWithin(permitted(judging(judged)), BEFORE)));
});

describe('adding never narrows', () => {
  it('an approval', () =>
    holds(scope('approve'), (approving) => isWithin(BEFORE, permitted({ ...DEMO, scopes: [...DEMO.scopes, approving] }))));
  it('a judgement of fine or caution', () =>
    holds(pairJudgement(['fine', 'caution']), (judged) => isWithin(BEFORE, permitted(judging(judged)))));
});

describe('order and repetition', () => {
  const whole = verdicts(DEMO);
  const dice = fc.integer({ min: 1, max: 1_000_000 });

  it('the order of rows in the document cannot show in any verdict', () => {
    fc.assert(
      fc.property(dice, (thrown) => void expect(new Map([...verdicts(shuffleAll(DEMO, thrown))])).toEqual(whole)),
      { seed: SEED, numRuns: 6 },
    );
  });
  it('the same book gives the same bytes', () => expect([...verdicts(aDemoRulebook())]).toEqual([...whole]));
});

/** Every list of rows in another order; lists inside rows (parts, levels, windows) carry meaning and stay. */
function shuffleAll(book: Rulebook, dice: number): Rulebook {
  const moved = Object.entries(book).map(([key, value]) => [
    key,
    Array.isArray(value) && key !== 'languages' ? shuffle(value, dice) : value,
  ]);
  return Object.fromEntries(moved) as Rulebook;
}

const shuffle = <T>(items: readonly T[], dice: number): readonly T[] =>
  items
    .map((item, index) => ({ item, key: (Math.imul(index + 1, 2_654_435_761) ^ Math.imul(dice, 40_503)) >>> 0 }))
    .sort((a, b) => a.key - b.key)
    .map(({ item }) => item);
