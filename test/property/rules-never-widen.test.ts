// Laws of the verdict over a whole book: what a rule may do to the permitted set, and what it may not.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stopFindings } from '#app/_flows/shop-context.ts';
import type { Person } from '#lib/answers/person.ts';
import type { CapName, Caps } from '#lib/rulebook/base.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { ClassJudgement, ClassRule, JudgementVerdict, PairJudgement, Scope } from '#lib/rulebook/judgement.ts';
import type { ProductKind } from '#lib/rulebook/language.ts';
import type { SubstanceLimit } from '#lib/rulebook/limit.ts';
import type { AvoidTag, MaterialClass } from '#lib/rulebook/material.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { factorPpm, sharePpm } from '#lib/units/share.ts';
import { instantMs } from '#lib/units/time.ts';
import { permittedVariants } from '#lib/variants/permitted.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import { pairRulings } from '#lib/verdict/pair-verdict.ts';
import type { JudgeContext } from '#lib/verdict/verdict.ts';
import { aDemoRulebook, TEST_DAY } from '#test/support/a-demo-book.ts';
import { allVariants } from '#test/support/all-variants.ts';
import { randomBook } from '#test/support/plain/random-book.ts';

const SEED = 20_261_125;
const DEMO_RUNS = 20;
const BOOKS = 150;
const DEMO = aDemoRulebook();

/** Every variant with its whole verdict as text. */
function verdicts(rulebook: Rulebook): ReadonlyMap<string, string> {
  const book = openBook(rulebook);
  return new Map(
    [...allVariants(book)].map((variant) => [variantKey(variant), JSON.stringify(judgeVariant(book, variant, { day: TEST_DAY }))]),
  );
}

type Keys = ReadonlySet<string>;

const permitted = (rulebook: Rulebook): Keys =>
  new Set(permittedVariants(openBook(rulebook), TEST_DAY).map(({ variant }) => variantKey(variant)));

/** What a person, or a shop, may have of it: asked of every variant there is. */
function permittedIn(rulebook: Rulebook, context: (book: Book) => Partial<JudgeContext>): Keys {
  const book = openBook(rulebook);
  const asked = { day: TEST_DAY, ...context(book) };
  return new Set(
    [...allVariants(book)].filter((variant) => judgeVariant(book, variant, asked).verdict.kind === 'permitted').map(variantKey),
  );
}

const grounds = { reason: 'a law', source: 'a law', by: 'formulator', on: TEST_DAY };
const oneOf = <T>(items: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...items);
const idOf = (rows: readonly { readonly id: string }[]): fc.Arbitrary<string> => oneOf(rows.map((one) => one.id));
const classes = oneOf<MaterialClass>(['inert', 'clay', 'iron', 'vitamin', 'acid', 'electrolyte', 'anionic-polymer', 'humectant', 'water']);
const share = fc.integer({ min: 0, max: 30_000 }).map(sharePpm);
const window = fc.tuple(fc.integer({ min: 300, max: 600 }), fc.integer({ min: 600, max: 900 }));

const classRule = (): fc.Arbitrary<ClassRule> =>
  fc
    .record({
      first: classes,
      second: fc.option(classes, { nil: undefined }),
      abovePpm: share,
      within: fc.option(window, { nil: undefined }),
    })
    .map(({ first, second, abovePpm, within }) => ({
      id: 'law-rule',
      first: { materialClass: first, abovePpm },
      ...(second && { second: { materialClass: second, abovePpm: sharePpm(0) } }),
      ...(within && { unlessPhWithin: { minPhX100: phX100(within[0]), maxPhX100: phX100(within[1]) } }),
      then: { kind: 'refuse' } as const,
      ...grounds,
    }));

const limitRow = ({ substances, markets }: Rulebook): fc.Arbitrary<SubstanceLimit> =>
  fc
    .record({
      substanceId: idOf(substances),
      maxPpm: share,
      factor: fc.integer({ min: 1, max: 1_000_000 }),
      market: oneOf(markets),
      kinds: fc.subarray<ProductKind>(['rinse-off', 'leave-on'], { minLength: 1 }),
    })
    .map(({ substanceId, maxPpm, factor, market, kinds }) => ({
      id: 'law-limit',
      kind: 'substance',
      marketId: market.id,
      source: 'a law',
      status: 'house',
      productKinds: kinds,
      substances: [{ substanceId, factorPpm: factorPpm(factor) }],
      maxPpm,
      expressedAs: 'as supplied',
    }));

const scope =
  (kind: Scope['kind']) =>
  ({ shades, actives }: Rulebook): fc.Arbitrary<Scope> =>
    fc
      .record({
        shadeIds: fc.subarray(shades.map((shade) => shade.id)),
        actives: fc.subarray(
          actives.flatMap((active) => active.levels.map((level) => ({ activeId: active.id, levelPpm: level.levelPpm }))),
          { maxLength: 3 },
        ),
        mostActivesCount: fc.integer({ min: 0, max: 3 }),
      })
      .map((drawn) => ({ id: `law-${kind}`, kind, evidenceIds: [], reason: 'a law', by: 'formulator', on: TEST_DAY, ...drawn }));

/** One of the six at a time, so that none hides another. */
const tighterCaps = ({ base: { caps } }: Rulebook): fc.Arbitrary<Caps> =>
  fc
    .tuple(oneOf(Object.keys(caps) as CapName[]), fc.integer({ min: 0, max: 1_000_000 }))
    .map(([name, thousandths]) => ({ ...caps, [name]: Math.floor((caps[name] * thousandths) / 1_000_000) }));

const pairJudgement =
  (verdictsOf: readonly JudgementVerdict[]) =>
  ({ materials, cautions }: Rulebook): fc.Arbitrary<PairJudgement> =>
    fc
      .tuple(idOf(materials), idOf(materials), oneOf(verdictsOf), idOf(cautions))
      .filter(([a, b]) => a !== b)
      .map(([firstMaterialId, secondMaterialId, verdict, cautionId]) => ({
        id: 'law-pair',
        firstMaterialId,
        secondMaterialId,
        verdict,
        ...(verdict === 'caution' && { cautionId }),
        ...grounds,
      }));

const classJudgement =
  (verdictsOf: readonly JudgementVerdict[]) =>
  ({ cautions }: Rulebook): fc.Arbitrary<ClassJudgement> =>
    fc.tuple(classes, classes, oneOf(verdictsOf), idOf(cautions)).map(([firstClass, secondClass, verdict, cautionId]) => ({
      id: 'law-class',
      firstClass,
      secondClass,
      verdict,
      ...(verdict === 'caution' && { cautionId }),
      ...grounds,
    }));

/** A pair has one judgement of its own: the new one takes the place of an old one. */
const judging = (book: Rulebook, judged: PairJudgement): Rulebook => ({
  ...book,
  pairJudgements: [
    ...book.pairJudgements.filter(
      (old) => new Set([old.firstMaterialId, old.secondMaterialId, judged.firstMaterialId, judged.secondMaterialId]).size > 2,
    ),
    judged,
  ],
});

interface Law<T> {
  /** What is permitted with the drawn thing in force. */
  readonly after: (book: Rulebook, value: T) => Keys;
  /** What is permitted without it: by default, what the book permits. */
  readonly before?: (book: Rulebook, value: T) => Keys;
}

/** Over the small shop's book and over random small ones. */
function holds<T>(drawn: (book: Rulebook) => fc.Arbitrary<T>, { after, before = permitted }: Law<T>, way: 'narrower' | 'wider'): void {
  const moved = { count: 0 };
  const law = (book: Rulebook, value: T): void => {
    const [was, now] = [before(book, value), after(book, value)];
    const [small, large] = way === 'narrower' ? [now, was] : [was, now];
    expect([...small].filter((key) => !large.has(key))).toEqual([]);
    if (small.size < large.size) moved.count += 1;
  };
  fc.assert(
    fc.property(drawn(DEMO), (value) => void law(DEMO, value)),
    { seed: SEED, numRuns: DEMO_RUNS },
  );
  fc.assert(
    fc.property(
      randomBook.chain((book) => drawn(book).map((value) => [book, value] as const)),
      ([book, value]) => void law(book, value),
    ),
    { seed: SEED, numRuns: BOOKS },
  );
  // A law about something that never happens is no law.
  expect(moved.count).toBeGreaterThan(0);
}

describe('adding never widens', () => {
  it('a class rule', () =>
    holds(classRule, { after: (book, rule) => permitted({ ...book, classRules: [...book.classRules, rule] }) }, 'narrower'));
  it('a cap', () => holds(tighterCaps, { after: (book, caps) => permitted({ ...book, base: { ...book.base, caps } }) }, 'narrower'));
  it('a limit row', () => holds(limitRow, { after: (book, row) => permitted({ ...book, limits: [...book.limits, row] }) }, 'narrower'));
  it('a refusing scope', () =>
    holds(scope('refuse'), { after: (book, refusing) => permitted({ ...book, scopes: [...book.scopes, refusing] }) }, 'narrower'));
  it('a judgement of never', () =>
    holds(pairJudgement(['never']), { after: (book, judged) => permitted(judging(book, judged)) }, 'narrower'));
  it('a class judgement of never', () =>
    holds(
      classJudgement(['never']),
      { after: (book, judged) => permitted({ ...book, classJudgements: [...book.classJudgements, judged] }) },
      'narrower',
    ));
  it('what a person excludes, a cap on a class for them, the gentle set', () =>
    holds(
      () => fc.record({ excluded: fc.subarray<AvoidTag>(['aha', 'nut', 'acid', 'oat']), isCapped: fc.boolean(), isMildest: fc.boolean() }),
      { after: (book, asked) => permittedIn(withCap(book), () => ({ person: aPerson(asked) })) },
      'narrower',
    ));
  it('a stop', () =>
    holds(
      ({ materials, stocks, shades, actives }) =>
        fc.oneof(
          idOf(materials).map((subjectId) => ({ subjectKind: 'material' as const, subjectId })),
          idOf(stocks).map((subjectId) => ({ subjectKind: 'stock' as const, subjectId })),
          idOf(shades).map((subjectId) => ({ subjectKind: 'shade' as const, subjectId })),
          idOf(actives).map((subjectId) => ({ subjectKind: 'active' as const, subjectId })),
        ),
      {
        after: (book, subject) => {
          const stop = { id: 'law-stop', reason: 'a law', byAccountId: 'formulator', atMs: instantMs(0), ...subject };
          return permittedIn(book, (opened) => ({ shop: (plan) => stopFindings(opened, [stop], plan) }));
        },
      },
      'narrower',
    ));
});

const because = [{ questionId: 'q', optionId: 'o' }];

/** Every tag may be handled at this bench, so that only what is in the jar counts. */
const withCap = (book: Rulebook): Rulebook => ({
  ...book,
  personCaps: [...book.personCaps, { id: 'law-cap', materialClass: 'clay', maxPpm: sharePpm(15_500) }],
  crossContacts: (['aha', 'nut', 'acid', 'oat'] as const).map((tag) => ({ tag, policy: { kind: 'none', reason: 'a law' } as const })),
});

const aPerson = (asked: { readonly excluded: readonly AvoidTag[]; readonly isCapped: boolean; readonly isMildest: boolean }): Person => ({
  wishes: new Map(),
  excluded: new Map(asked.excluded.map((tag) => [tag, because])),
  capIds: new Map(asked.isCapped ? [['law-cap', because]] : []),
  mildest: asked.isMildest ? because : [],
  areaFactorPpm: null,
  cautions: [],
  outcomes: [],
});

describe('adding never narrows', () => {
  it('an approval', () =>
    holds(scope('approve'), { after: (book, approving) => permitted({ ...book, scopes: [...book.scopes, approving] }) }, 'wider'));
  it('a judgement of fine or caution on a pair that nobody judged, or that may never meet', () =>
    holds(
      (book) => {
        const open = apart(book);
        return fc.record({
          pair: oneOf(open.length > 0 ? open : [['none', 'other'] as const]),
          drawn: pairJudgement(['fine', 'caution'])(book),
        });
      },
      {
        after: (book, { pair: [firstMaterialId, secondMaterialId], drawn }) =>
          permitted(judging(book, { ...drawn, firstMaterialId, secondMaterialId })),
      },
      'wider',
    ));
  it('a class judgement of fine or caution', () =>
    holds(
      ({ classJudgements }) => oneOf(classJudgements.filter(({ verdict }) => verdict === 'fine' || verdict === 'caution')),
      {
        before: (book, judged) => permitted({ ...book, classJudgements: book.classJudgements.filter((one) => one !== judged) }),
        after: permitted,
      },
      'wider',
    ));
});

/** Pairs of materials that no jar may hold together. */
function apart(rulebook: Rulebook): readonly (readonly [string, string])[] {
  const book = openBook(rulebook);
  const ids = rulebook.materials.map((one) => one.id);
  return ids.flatMap((a, index) =>
    ids.slice(index + 1).flatMap((b) => {
      const rulings = pairRulings(book, a, b, true);
      const isApart = rulings !== 'judged-with-the-base' && (rulings.length === 0 || rulings.some((ruling) => ruling.verdict === 'never'));
      return isApart ? [[a, b] as const] : [];
    }),
  );
}

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
