// How near a line's level may come to a legal limit or a cap before its band narrows: within a fifth, ends included. The house's own figures.
import { describe, expect, it } from 'vitest';
import { openBook } from '#lib/rulebook/book.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { factorPpm, sharePpm } from '#lib/units/share.ts';
import { benchLines } from '#lib/weighing/bench-line.ts';
import { massLimits } from '#lib/weighing/mass-limits.ts';
import { tauOf } from '#lib/weighing/tolerance.ts';
import { FERN_DAY, fernBook, fernPlan } from '#test/support/fern-jar.ts';

const plain = fernBook().rulebook;
const [row] = plain.limits.filter((one) => one.kind === 'substance');

/** τ of the panthenol line, 0.3 % pure. */
function tauOfPanthenol(bend: Partial<Rulebook>): number {
  const book = openBook({ ...plain, ...bend });
  const plan = fernPlan(book);
  const line = benchLines(book, plan).find(({ source }) => source.kind === 'stock' && source.stockId === 'panthenol-75');
  return tauOf(book, plan, line ?? expect.fail('no such line'), massLimits({ book, plan, markets: book.rulebook.markets, day: FERN_DAY }));
}

const law = (maxPpm: number): Partial<Rulebook> => ({
  limits: [
    ...plain.limits,
    {
      ...(row ?? expect.fail('no limit row')),
      id: 'panthenol-limit',
      substances: [{ substanceId: 'panthenol', factorPpm: factorPpm(1_000_000) }],
      maxPpm: sharePpm(maxPpm),
    },
  ],
});

describe('the band of a line', () => {
  it('is the usual one far from every limit', () => expect(tauOfPanthenol({})).toBe(plain.house.bands.usualPpm));
  it('is narrow where six fifths of the level reach a legal limit, to the last ppm', () => {
    expect(plain.house.bands.nearLimitPpm).toBe(200_000);
    expect(tauOfPanthenol(law(3_600))).toBe(plain.house.bands.nearLimitTauPpm);
    expect(tauOfPanthenol(law(3_601))).toBe(plain.house.bands.usualPpm);
  });
});
