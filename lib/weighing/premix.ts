// Arithmetic of premixes: what a scale cannot weigh is weighed diluted. Classroom rules of pharmaceutical calculation, kept as exact whole numbers.

import { invariant } from '../base/invariant.ts';
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';
import type { FactorPpm, SharePpm } from '../units/share.ts';
import { WHOLE_PPM } from '../units/share.ts';

/** Least weighable quantity: sensitivity requirement over the permitted error, rounded up to whole µg. */
export const leastWeighableUg = (sensitivity: MassUg, error: FactorPpm): MassUg => massUg(Math.ceil((sensitivity * WHOLE_PPM) / error));

export interface Aliquot {
  /** How many times the needed amount is weighed. */
  readonly factorCount: number;
  readonly weighUg: MassUg;
  readonly diluentUg: MassUg;
  readonly totalUg: MassUg;
  /** Of the mixture; holds exactly the needed amount. */
  readonly aliquotUg: MassUg;
}

/**
 * Aliquot method: weigh the smallest whole multiple that can be weighed, dilute, take one part.
 * Refused when the aliquot itself is too small to weigh, or holds less than is needed.
 */
export function aliquotFor(
  needed: MassUg,
  least: MassUg,
  aliquot: MassUg,
): Result<Aliquot, 'aliquot-not-weighable' | 'aliquot-holds-too-little'> {
  invariant(needed > 0, 'an aliquot of nothing');
  if (aliquot < least) return refuse('aliquot-not-weighable');
  if (aliquot < needed) return refuse('aliquot-holds-too-little');
  const factorCount = Math.ceil(least / needed);
  const weigh = factorCount * needed;
  const total = factorCount * aliquot;
  return accept({ factorCount, weighUg: massUg(weigh), diluentUg: massUg(total - weigh), totalUg: massUg(total), aliquotUg: aliquot });
}

/**
 * Alligation alternate: whole parts of each strength that give the wanted strength, in lowest terms and in the order given.
 * Each stronger one is paired with each weaker one in turn; one that has the wanted strength already takes a part of its own.
 */
export function alligate(strengths: readonly SharePpm[], wanted: SharePpm): Result<readonly number[], 'out-of-reach'> {
  const stronger = strengths.flatMap((strength, index) => (strength > wanted ? [index] : []));
  const weaker = strengths.flatMap((strength, index) => (strength < wanted ? [index] : []));
  const parts = strengths.map((strength): number => (strength === wanted ? 1 : 0));
  if (stronger.length === 0 || weaker.length === 0) return parts.includes(1) ? accept(parts) : refuse('out-of-reach');
  for (let turn = 0; turn < Math.max(stronger.length, weaker.length); turn++) {
    const strong = stronger[turn % stronger.length] ?? 0;
    const weak = weaker[turn % weaker.length] ?? 0;
    parts[strong] = (parts[strong] ?? 0) + wanted - (strengths[weak] ?? 0);
    parts[weak] = (parts[weak] ?? 0) + (strengths[strong] ?? 0) - wanted;
  }
  const common = parts.reduce(greatestCommonDivisor, 0);
  return accept(parts.map((one) => one / common));
}

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

/** Alligation medial: strength of a mixture as an exact fraction of ppm × µg over µg. */
export function strengthOfMixture(parts: readonly { readonly massUg: MassUg; readonly strengthPpm: SharePpm }[]): {
  readonly heldPpmUg: bigint;
  readonly totalUg: bigint;
} {
  return {
    heldPpmUg: parts.reduce((sum, one) => sum + BigInt(one.massUg) * BigInt(one.strengthPpm), 0n),
    totalUg: parts.reduce((sum, one) => sum + BigInt(one.massUg), 0n),
  };
}

/** Doublings of geometric dilution from one part to a whole of n parts: ⌈log2 n⌉. */
export function doublingsTo(partsCount: number): number {
  invariant(Number.isSafeInteger(partsCount) && partsCount > 0, 'a whole has at least one part');
  return partsCount === 1 ? 0 : 1 + doublingsTo(Math.ceil(partsCount / 2));
}
