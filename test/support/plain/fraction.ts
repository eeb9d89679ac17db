// Exact fractions, the slow and obvious way: the plain checker must not share its arithmetic with the program it checks.

export interface Fraction {
  readonly n: bigint;
  readonly d: bigint;
}

export const q = (n: number | bigint, d: number | bigint = 1): Fraction => ({ n: BigInt(n), d: BigInt(d) });
export const ZERO = q(0);

/** Over one denominator; the larger one where it will do, so that long sums stay short. */
function together(a: Fraction, b: Fraction, join: (x: bigint, y: bigint) => bigint): Fraction {
  if (a.d % b.d === 0n) return { n: join(a.n, b.n * (a.d / b.d)), d: a.d };
  if (b.d % a.d === 0n) return { n: join(a.n * (b.d / a.d), b.n), d: b.d };
  return { n: join(a.n * b.d, b.n * a.d), d: a.d * b.d };
}

export const plus = (a: Fraction, b: Fraction): Fraction => together(a, b, (x, y) => x + y);
export const minus = (a: Fraction, b: Fraction): Fraction => together(a, b, (x, y) => x - y);
export const times = (a: Fraction, b: Fraction): Fraction => ({ n: a.n * b.n, d: a.d * b.d });
export const sign = (a: Fraction): number => (a.n === 0n ? 0 : a.n > 0n === a.d > 0n ? 1 : -1);
export const isOver = (a: Fraction, b: Fraction): boolean => sign(minus(a, b)) > 0;
export const isUnder = (a: Fraction, b: Fraction): boolean => sign(minus(a, b)) < 0;
export const isWhole = (a: Fraction): boolean => a.n % a.d === 0n;
export const sum = (all: readonly Fraction[]): Fraction => all.reduce(plus, ZERO);
export const toNumber = (a: Fraction): number => Number((a.n * 10n ** 24n) / a.d) / 1e24;
export const abs = (a: Fraction): Fraction => (sign(a) < 0 ? { n: -a.n, d: a.d } : a);
export const most = (a: Fraction, b: Fraction): Fraction => (isOver(a, b) ? a : b);
