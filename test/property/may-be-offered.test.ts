// What is left out before masks are judged is refused by the verdict too, on random small rulebooks.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Person } from '#lib/answers/person.ts';
import { finding } from '#lib/base/finding.ts';
import { openBook } from '#lib/rulebook/book.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { sharePpm } from '#lib/units/share.ts';
import { mayBeOffered } from '#lib/variants/may-be-offered.ts';
import { permittedVariants } from '#lib/variants/permitted.ts';
import { findingsOf, judgeVariant } from '#lib/verdict/judge.ts';
import { TEST_DAY } from '#test/support/a-demo-book.ts';
import { randomBook } from '#test/support/plain/random-book.ts';

const because = [{ questionId: 'q', optionId: 'o' }];

const visit = fc.record({
  excluded: fc.subarray(['aha', 'nut', 'oat'] as const),
  isCapped: fc.boolean(),
  isMildest: fc.boolean(),
  absent: fc.array(fc.nat(40), { maxLength: 3 }),
});

it('nothing that a person may have and a shop can make is left out', () => {
  const tally = new Map<string, number>();
  fc.assert(
    fc.property(randomBook, visit, (rulebook, { excluded, isCapped, isMildest, absent }) => {
      const book = openBook({
        ...rulebook,
        personCaps: [{ id: 'cap', materialClass: 'clay', maxPpm: sharePpm(15_500) }],
        crossContacts: (['aha', 'nut', 'oat'] as const).map((tag) => ({ tag, policy: { kind: 'none', reason: 'r' } as const })),
      });
      const person: Person = {
        wishes: new Map(),
        excluded: new Map(excluded.map((tag) => [tag, because])),
        capIds: new Map(isCapped ? [['cap', because]] : []),
        mildest: isMildest ? because : [],
        areaFactorPpm: null,
        cautions: [],
        outcomes: [],
      };
      const { stocks } = book.rulebook;
      const absentIds = new Set(absent.map((nth) => stocks[nth % stocks.length]?.id ?? ''));
      const isOffered = mayBeOffered(book, person, absentIds);
      for (const { variant } of permittedVariants(book, TEST_DAY)) {
        const { verdict } = judgeVariant(book, variant, {
          day: TEST_DAY,
          person,
          shop: ({ lines }) =>
            lines
              .filter(({ stockId }) => absentIds.has(stockId))
              .map(({ stockId }) => finding('no-lot', stockId, { stockId, neededUg: 1 })),
        });
        const isLeftOut = !isOffered(variant);
        if (isLeftOut) expect(verdict.kind, variantKey(variant)).not.toBe('permitted');
        const codes = verdict.kind === 'permitted' ? ['permitted'] : findingsOf(verdict).map((found) => found.code);
        for (const code of codes) tally.set(`${code} ${isLeftOut}`, (tally.get(`${code} ${isLeftOut}`) ?? 0) + 1);
      }
    }),
    { seed: 15_020_417, numRuns: 300 },
  );
  // Each reason has left something out, and something was offered.
  for (const met of ['permitted false', 'person-excluded true', 'person-cap true', 'person-mildest true', 'no-lot true']) {
    expect(tally.get(met) ?? 0, met).toBeGreaterThan(5);
  }
});
