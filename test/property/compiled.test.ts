// The compiled book against the verdict that defines it, on random small rulebooks: the same variants with the same plans.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Composition } from '#lib/composition/compose.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import type { Plan, Variant } from '#lib/rulebook/variant.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { compileBook } from '#lib/variants/compiled/compile-book.ts';
import { eachPermitted, foundVariant } from '#lib/variants/compiled/find-permitted.ts';
import type { Excess, UnitJars } from '#lib/variants/compiled/linear.ts';
import { holds, linearTest } from '#lib/variants/compiled/linear.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import { aDemoRulebook, TEST_DAY } from '#test/support/a-demo-book.ts';
import { allVariants } from '#test/support/all-variants.ts';
import { randomBook } from '#test/support/plain/random-book.ts';

const SEED = 9_051_171;
const MOST_PPM = 50_000;

interface Found {
  readonly variant: Variant;
  readonly plan: Plan;
}

function sameAsVerdict(rulebook: Rulebook): void {
  const book = openBook(rulebook);
  const expected = new Map<string, Found>();
  for (const variant of allVariants(book)) {
    const { plan, verdict } = judgeVariant(book, variant, { day: TEST_DAY });
    if (plan && verdict.kind === 'permitted') expected.set(variantKey(variant), { variant, plan });
  }
  const found = new Map<string, Found>();
  eachPermitted(compileBook(book, TEST_DAY), (one) => {
    const { variant, plan } = foundVariant(one);
    found.set(variantKey(variant), { variant, plan });
  });
  expect([...found.keys()].sort()).toEqual([...expected.keys()].sort());
  for (const [key, { plan }] of expected) expect(found.get(key)?.plan).toEqual(plan);
}

it('finds what the verdict permits, with the same plan, on 300 random rulebooks and on the demonstration', () => {
  sameAsVerdict(aDemoRulebook());
  fc.assert(
    fc.property(randomBook, (rulebook) => void sameAsVerdict(rulebook)),
    { seed: SEED, numRuns: 300 },
  );
});

/** Jars of a mixture whose excess is given: what a stock weighs can be anything. */
const unitsOf = (stocks: readonly bigint[], base: bigint): { units: UnitJars; excess: Excess } => {
  const jars = [...stocks, base].map((value) => ({ value }) as unknown as Composition);
  return {
    units: { stocks: jars.slice(0, -1), base: jars.at(-1) ?? expect.fail('no base') },
    excess: (jar) => (jar as unknown as { value: bigint }).value,
  };
};

const weight = fc.oneof(fc.bigInt(-(10n ** 26n), 10n ** 26n), fc.bigInt(-1000n, 1000n));

it('sums are exact, also where a double cannot hold them and where the answer hangs on one part in 10^26', () => {
  const tally = { rounded: 0, close: 0 };
  fc.assert(
    fc.property(
      fc.array(fc.record({ weight, share: fc.integer({ min: 0, max: 12_000 }) }), { minLength: 1, maxLength: 4 }),
      fc.record({ base: weight, last: weight, nudge: fc.option(fc.bigInt(-1n, 1n)) }),
      (drawn, { base, last, nudge }) => {
        const left = BigInt(999_999 - drawn.reduce((sum, line) => sum + line.share, 0));
        const rest = drawn.reduce((sum, line) => sum + BigInt(line.share) * line.weight, 0n) + left * base;
        // One ppm of a last stock that often brings the jar to its bound, or a hair beside it.
        const lines = [...drawn, { share: 1, weight: nudge === null ? last : nudge - rest }];
        const { units, excess } = unitsOf(
          lines.map((line) => line.weight),
          base,
        );
        const test = linearTest(units, excess, { mostPpm: MOST_PPM, skips: new Uint8Array(lines.length) });
        const plan = {
          stocks: Int32Array.from(lines.keys()),
          sharesPpm: Float64Array.from(lines, (line) => line.share),
          count: lines.length,
        };
        tally.rounded += test.rounded ? 1 : 0;
        tally.close += nudge === null ? 0 : 1;
        expect(holds(test, plan)).toBe(rest + (nudge === null ? last : nudge - rest) <= 0n);
      },
    ),
    { seed: SEED, numRuns: 3000 },
  );
  expect(tally.rounded).toBeGreaterThan(500);
  expect(tally.close).toBeGreaterThan(500);
});
