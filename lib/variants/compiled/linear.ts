// A check that adds up over the stocks of a plan, turned into one number per stock. Asked of millions of plans, it must be fast; asked of
// a limit, it must be exact: weights are whole numbers in doubles where every sum stays below 2^53, and where one does not, doubles only
// decide what is clear and the exact sum decides the rest.
import type { Amounts, Composition } from '../../composition/compose.ts';
import { compose } from '../../composition/compose.ts';
import type { Book } from '../../rulebook/book.ts';
import { WHOLE_PPM } from '../../units/share.ts';

/** How far a jar is over a bound, in any grain: additive over what is in the jar. At most 0 = the bound holds. */
export type Excess = (jar: Composition) => bigint;

/** Stocks of a plan by number, with their shares in ppm. A stock may stand twice; `count` entries are in use. */
export interface PlanShares {
  readonly stocks: Int32Array;
  readonly sharesPpm: Float64Array;
  count: number;
}

export interface LinearTest {
  /** Excess of a jar = constant + Σ share × weight of its stock; rounded down where it is not exact. */
  readonly constant: number;
  readonly weights: Float64Array;
  /** Null where the doubles are exact. */
  readonly rounded: Rounded | null;
}

interface Rounded {
  /** Rounded up. */
  readonly constant: number;
  readonly weights: Float64Array;
  readonly exactConstant: bigint;
  readonly exactWeights: readonly bigint[];
}

/** One ppm of each stock alone, and one ppm of base, as jars. */
export interface UnitJars {
  readonly stocks: readonly Composition[];
  readonly base: Composition;
}

export function unitJars(book: Book, stockIds: readonly string[]): UnitJars {
  const alone = (amounts: Partial<Amounts>): Composition => compose(book, { stocks: new Map(), cream: 0n, oil: 0n, ...amounts });
  const oil = BigInt(book.rulebook.base.wettingOilPpm);
  return {
    stocks: stockIds.map((id) => alone({ stocks: new Map([[id, BigInt(WHOLE_PPM)]]) })),
    base: alone({ cream: BigInt(WHOLE_PPM) - oil, oil }),
  };
}

/**
 * @param mostPpm no plan is asked whose stocks together exceed this
 * @param skips stocks that no plan with this test may hold; they weigh nothing
 */
export function linearTest(units: UnitJars, excess: Excess, { mostPpm, skips }: { mostPpm: number; skips: Uint8Array }): LinearTest {
  const base = excess(units.base);
  const weights = units.stocks.map((jar, stock) => (skips[stock] ? 0n : excess(jar) - base));
  const constant = base * BigInt(WHOLE_PPM);
  const divisor = weights.reduce(commonDivisor, constant) || 1n;
  const exactWeights = weights.map((weight) => weight / divisor);
  const exactConstant = constant / divisor;
  const most = exactWeights.map(abs).reduce(larger, 0n) * BigInt(mostPpm) + abs(exactConstant);
  if (most < SAFE) return { constant: Number(exactConstant), weights: Float64Array.from(exactWeights, Number), rounded: null };
  // Half the range, so that the rounding of each weight cannot add up beyond it.
  const grain = most / (SAFE / 2n) + 1n;
  return {
    constant: Number(floorDivide(exactConstant, grain)),
    weights: Float64Array.from(exactWeights, (weight) => Number(floorDivide(weight, grain))),
    rounded: {
      constant: -Number(floorDivide(-exactConstant, grain)),
      weights: Float64Array.from(exactWeights, (weight) => -Number(floorDivide(-weight, grain))),
      exactConstant,
      exactWeights,
    },
  };
}

const SAFE = 2n ** 53n;
const abs = (value: bigint): bigint => (value < 0n ? -value : value);
function larger(a: bigint, b: bigint): bigint {
  return a < b ? b : a;
}

function commonDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [abs(a), abs(b)];
  while (y > 0n) [x, y] = [y, x % y];
  return x;
}

function floorDivide(value: bigint, by: bigint): bigint {
  const quotient = value / by;
  return value % by < 0n ? quotient - 1n : quotient;
}

/** Is the excess of the plan at most 0? */
export function holds(test: LinearTest, plan: PlanShares): boolean {
  const low = sum(test.constant, test.weights, plan);
  const { rounded } = test;
  if (rounded === null || low > 0) return low <= 0;
  if (sum(rounded.constant, rounded.weights, plan) <= 0) return true;
  let exact = rounded.exactConstant;
  for (let line = 0; line < plan.count; line += 1) {
    exact += BigInt(plan.sharesPpm[line] ?? 0) * (rounded.exactWeights[plan.stocks[line] ?? 0] ?? 0n);
  }
  return exact <= 0n;
}

function sum(constant: number, weights: Float64Array, { stocks, sharesPpm, count }: PlanShares): number {
  let total = constant;
  for (let line = 0; line < count; line += 1) total += (sharesPpm[line] ?? 0) * (weights[stocks[line] ?? 0] ?? 0);
  return total;
}

/** True when no plan up to `mostPpm` of additions can break it: such a test need not be asked. */
export function alwaysHolds(test: LinearTest, mostPpm: number): boolean {
  const { constant, weights } = test.rounded ?? test;
  return constant + mostPpm * weights.reduce((most, weight) => Math.max(most, weight), 0) <= 0;
}
