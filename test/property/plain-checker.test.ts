// The program against an independent, simpler checker on random small rulebooks: permitted or not, the codes of all findings, counts, and the three masks.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Person } from '#lib/answers/person.ts';
import { composePlan } from '#lib/composition/compose.ts';
import { planVariant } from '#lib/composition/plan-variant.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { permittedVariants } from '#lib/variants/permitted.ts';
import { threeMasks } from '#lib/variants/three-masks.ts';
import { findingsOf, judge, judgeVariant } from '#lib/verdict/judge.ts';
import { TEST_DAY } from '#test/support/a-demo-book.ts';
import { allVariants } from '#test/support/all-variants.ts';
import { plainPlans } from '#test/support/plain/plain-jar.ts';
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
    const { plans } = planVariant(book, variant, null);
    expect(plans.length, variantKey(variant)).toBe(plainPlans(rulebook, variant.shadeId, variant.actives).length);
    for (const [index, plan] of plans.entries()) {
      const codes = [...new Set(findingsOf(judge(book, plan, { day: TEST_DAY })).map((found) => found.code))].sort();
      expect(codes, `${variantKey(variant)}, plan ${index}`).toEqual(attempts[index]?.codes);
      for (const code of codes) count(code);
    }
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
