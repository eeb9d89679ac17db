// The program against an independent, simpler checker on random small rulebooks: permitted or not, the codes of all findings, counts, and the three masks.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Person } from '#lib/answers/person.ts';
import { composePlan } from '#lib/composition/compose.ts';
import { planVariant } from '#lib/composition/plan-variant.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { sharePpm } from '#lib/units/share.ts';
import { permittedVariants } from '#lib/variants/permitted.ts';
import { threeMasks } from '#lib/variants/three-masks.ts';
import { adjusterChoices, findingsOf, judge, judgeVariant } from '#lib/verdict/judge.ts';
import type { JudgeContext } from '#lib/verdict/verdict.ts';
import { TEST_DAY } from '#test/support/a-demo-book.ts';
import { allVariants } from '#test/support/all-variants.ts';
import { plainPlans } from '#test/support/plain/plain-jar.ts';
import type { PlainPerson } from '#test/support/plain/plain-judge.ts';
import { plainAttempts, plainCodes } from '#test/support/plain/plain-judge.ts';
import { plainMasks } from '#test/support/plain/plain-masks.ts';
import { randomBook } from '#test/support/plain/random-book.ts';

const SEED = 7_064_3736;
const BOOKS = 300;
const PARTS = [1, 2, 3, 4, 5, 6];
const tally = new Map<string, number>();
const count = (code: string): void => void tally.set(code, (tally.get(code) ?? 0) + 1);

function sameVerdicts(rulebook: Rulebook): void {
  const book = openBook(rulebook);
  for (const variant of allVariants(book)) {
    const attempts = plainAttempts(rulebook, variant, TEST_DAY);
    const { verdict } = judgeVariant(book, variant, { day: TEST_DAY });
    const isPermitted = attempts.some((attempt) => attempt.codes.length === 0);
    expect(verdict.kind === 'permitted', variantKey(variant)).toBe(isPermitted);
    count(verdict.kind);
    const codes = codesOfAllAttempts(book, variant, {});
    expect(codes, variantKey(variant)).toEqual(attempts.map((attempt) => attempt.codes));
    for (const code of codes.flat()) count(code);
  }
}

/** Every attempt to make it, adjusters included, in the program's order. */
const codesOfAllAttempts = (book: Book, variant: Variant, context: Partial<JudgeContext>): readonly (readonly string[])[] =>
  adjusterChoices(book, variant).flatMap((adjuster) => {
    const { plans } = planVariant(book, variant, adjuster);
    if (plans.length === 0) return [['no plan']];
    return plans.map((plan) =>
      [...new Set(findingsOf(judge(book, plan, { day: TEST_DAY, ...context })).map((found) => found.code))].sort(),
    );
  });

const because = [{ questionId: 'q', optionId: 'o' }];

/** The same for one customer: what they exclude, a cap on a class, the gentle set, and what else is handled at the bench. */
function sameForPerson(rulebook: Rulebook, asked: PlainPerson): void {
  const book = openBook(rulebook);
  const who: Person = {
    ...person({}, asked.excluded),
    capIds: new Map((asked.capIds ?? []).map((id) => [id, because])),
    mildest: asked.isMildest ? because : [],
  };
  for (const variant of allVariants(book)) {
    const codes = codesOfAllAttempts(book, variant, { person: who });
    expect(codes, variantKey(variant)).toEqual(plainAttempts(rulebook, variant, TEST_DAY, asked).map((attempt) => attempt.codes));
    for (const code of codes.flat()) count(code);
  }
}

const person = (wishes: Readonly<Record<string, number>>, excluded: readonly string[]): Person => ({
  wishes: new Map(Object.entries(wishes)),
  excluded: new Map(excluded.map((tag) => [tag as 'aha', [{ questionId: 'q', optionId: 'o' }]])),
  capIds: new Map(),
  mildest: [],
  areaFactorPpm: null,
  cautions: [],
  outcomes: [],
});

describe('300 random rulebooks against the plain checker', () => {
  // In parts, so that no part comes near the limit of a test on a slow machine.
  it.each(PARTS)('agree on every variant: permitted or not, and the codes of all findings of every plan (part %i)', (part) => {
    fc.assert(
      fc.property(randomBook, (rulebook) => void sameVerdicts(rulebook)),
      { seed: SEED + 100 * part, numRuns: BOOKS / PARTS.length },
    );
  });

  it('agree on check 13 for persons of every kind', () => {
    const asked = fc.record({
      excluded: fc.subarray(['aha', 'nut', 'oat']),
      capIds: fc.subarray(['clay-cap']),
      isMildest: fc.boolean(),
      policies: fc.subarray(['aha', 'nut'] as const),
    });
    fc.assert(
      fc.property(randomBook, asked, (rulebook, { policies, ...who }) =>
        sameForPerson(
          {
            ...rulebook,
            personCaps: [{ id: 'clay-cap', materialClass: 'clay', maxPpm: sharePpm(15_500) }],
            crossContacts: policies.map((tag) => ({ tag, policy: { kind: 'none', reason: 'r' } as const })),
          },
          who,
        ),
      ),
      { seed: SEED + 7, numRuns: 60 },
    );
  });

  it('meet every check, permitted and refused jars alike, so that agreement means something', () => {
    const never = [
      'permitted',
      'refused',
      'undecided',
      'not-approved',
      'approval-refused',
      'pair-never',
      'pair-not-judged',
      'pair-limit-sum',
      'pair-limit-first',
      'pair-limit-second',
      'pair-limit-ph',
      'class-rule',
      'allowance-exceeded',
      'level-not-permitted',
      'solubility-exceeded',
      'cap-exceeded',
      'ph-windows-apart',
      'ph-too-low',
      'ph-too-high',
      'ph-outside-table',
      'acidity-missing',
      'preservative-too-low',
      'preservative-ph',
      'preservative-undissociated',
      'powder-beyond-challenge',
      'swelling-clay-beyond-challenge',
      'wetting-short',
      'law-limit',
      'law-colourant',
      'exposure-margin',
      'exposure-no-figure',
      'person-excluded',
      'person-cap',
      'person-mildest',
      'cross-contact',
    ].filter((code) => !tally.has(code));
    expect(never).toEqual([]);
    expect(tally.get('permitted') ?? 0).toBeGreaterThan(100);
  });

  it('agree on the three masks of a person', () => {
    const visit = fc.record({
      shine: fc.integer({ min: 0, max: 3 }),
      calm: fc.integer({ min: 0, max: 3 }),
      excluded: fc.subarray(['aha', 'nut']),
    });
    fc.assert(
      fc.property(randomBook, visit, (rulebook, { shine, calm, excluded }) => {
        const open = {
          ...rulebook,
          crossContacts: (['aha', 'nut'] as const).map((tag) => ({ tag, policy: { kind: 'none', reason: 'r' } as const })),
        };
        const book = openBook(open);
        const query = { person: person({ shine, calm }, excluded), jarSizeId: 'jar-50', context: { day: TEST_DAY } };
        const found = threeMasks(book, permittedVariants(book, TEST_DAY), query).masks.map(
          (mask) => `${mask.role} ${variantKey(mask.variant)}`,
        );
        expect(found).toEqual(plainMasks(open, TEST_DAY, { shine, calm }, excluded));
      }),
      { seed: SEED + 1, numRuns: BOOKS },
    );
  });
});

describe('the plain checker itself', () => {
  it('sums a jar to exactly one', () => {
    fc.assert(
      fc.property(randomBook, (rulebook) => {
        const book = openBook(rulebook);
        for (const plan of planVariant(book, { shadeId: 'pale', actives: [] }, null).plans) {
          const jar = composePlan(book, plan);
          expect([...jar.materials.values()].reduce((all, held) => all + held, 0n)).toBe(jar.whole);
          expect(
            plainCodes(rulebook, { variant: plan.variant, adjuster: null, day: TEST_DAY }, plainPlans(rulebook, 'pale', [])[0] ?? []),
          ).toBeDefined();
        }
      }),
      { seed: SEED + 2, numRuns: 20 },
    );
  });
});
