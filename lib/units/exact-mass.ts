// A mass before any scale has rounded it: batch × share, exactly. Rounding happens once, where a scale reads,
// so that a limit that a rounded figure would just pass or just fail is decided by the recipe and not by the rounding.
import { invariant } from '../base/invariant.ts';
import type { MassUg } from './mass.ts';
import type { Part } from './share.ts';
import type { BigUnit } from './unit.ts';

/** A mass in whole grains of 10^-12 µg; made here only. */
export type ExactMass = BigUnit<'ExactMass'>;

/** Shares of a plan are parts of 10^12, so batch (µg) × part is a whole number of these grains. */
export const GRAINS_PER_UG: bigint = 10n ** 12n;

/** Throws a Fault for a negative mass. */
export function exactMass(grains: bigint): ExactMass {
  invariant(grains >= 0n, `an exact mass must not be negative: ${grains}`);
  return grains as ExactMass;
}

/** batch × share, for a share that is a part of 10^12. */
export const exactShareOf = (batch: MassUg, share: Part): ExactMass => exactMass(BigInt(batch) * share);

export const exactOfUg = (mass: MassUg): ExactMass => exactMass(BigInt(mass) * GRAINS_PER_UG);

/** Exact decimal text in µg, without trailing zeros: "1978080", "320.5". The form in which an exact mass crosses JSON. */
export function exactText(exact: ExactMass): string {
  const fraction = String(exact % GRAINS_PER_UG)
    .padStart(12, '0')
    .replace(/0+$/, '');
  return fraction === '' ? String(exact / GRAINS_PER_UG) : `${exact / GRAINS_PER_UG}.${fraction}`;
}

/** The reverse of exactText. Throws a Fault for any other text. */
export function exactFromText(text: string): ExactMass {
  const found = /^(\d+)(?:\.(\d{1,12}))?$/.exec(text);
  invariant(found, `not an exact mass: ${text}`);
  return exactMass(BigInt(found[1] ?? '') * GRAINS_PER_UG + BigInt((found[2] ?? '').padEnd(12, '0')));
}
