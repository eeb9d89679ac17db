// How an acid is spread over its forms at a pH (Henderson–Hasselbalch; for several protons the same mass-action law in sequence).
// The pKa handed in decides what the answer means: thermodynamic at zero ionic strength, apparent in a jar.
import { invariant } from '../base/invariant.ts';
import type { Ph } from '../units/chemistry.ts';

/** Share of a monoprotic acid that still holds its proton: 1 / (1 + 10^(pH − pKa)). */
export const undissociatedShare = (at: Ph, pka: number): number => 1 / (1 + 10 ** (at - pka));

/**
 * Shares of every form of an acid, from fully protonated to bare: form k is 10^(k·pH − Σ pKa₁…k) of the first.
 * pKas rise along the list. Scaled by the largest form, so that no pH overflows.
 */
export function formShares(at: number, pkas: readonly number[]): readonly number[] {
  const logs = [0];
  for (const pka of pkas) logs.push((logs.at(-1) ?? 0) + at - pka);
  const most = Math.max(...logs);
  const weights = logs.map((log) => 10 ** (log - most));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  invariant(sum > 0, 'an acid has at least one form');
  return weights.map((weight) => weight / sum);
}
