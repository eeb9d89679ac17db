// The verdict over the whole demonstration: every variant that its structure allows is judged once.

import { judgeVariant } from '#lib/verdict/judge.ts';
import { aDemoBook, TEST_DAY } from '#test/support/a-demo-book.ts';
import { allVariants } from '#test/support/all-variants.ts';
import type { Bench } from './bench.ts';
import { timed } from './bench.ts';

export const judgeBench: Bench = {
  name: 'judge',
  says: 'judge every variant of the demonstration rulebook',
  run: async (timesCount) => {
    const book = aDemoBook();
    const judgeAll = (): { judgedCount: number; permittedCount: number } => {
      const verdicts = [...allVariants(book)].map((variant) => judgeVariant(book, variant, { day: TEST_DAY }).verdict.kind);
      return { judgedCount: verdicts.length, permittedCount: verdicts.filter((kind) => kind === 'permitted').length };
    };
    const counts = judgeAll();
    const { tookMs } = await timed(() => {
      for (let time = 0; time < timesCount; time += 1) judgeAll();
    });
    return { ...counts, perSecondCount: Math.round((counts.judgedCount * timesCount * 1000) / tookMs) };
  },
};
