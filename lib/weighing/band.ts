// The band of a line: which readings of its scale are good enough. Ends are rounded inwards to what the scale can show,
// so that no reading inside the band lies outside the tolerance. The browser holds this file too: the mixer sees the same verdict at once.
import { invariant } from '../base/invariant.ts';
import type { ExactMass } from '../units/exact-mass.ts';
import { GRAINS_PER_UG } from '../units/exact-mass.ts';
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';
import type { FactorPpm } from '../units/share.ts';
import { WHOLE_PPM } from '../units/share.ts';

/** Lowest and highest good reading; both can be shown by the scale. */
export interface Band {
  readonly loUg: MassUg;
  readonly hiUg: MassUg;
}

export type BandState = 'light' | 'in-band' | 'heavy';

/** Where a mass lies; both ends are inside. */
export function bandStateOf(band: Band, mass: MassUg): BandState {
  if (mass < band.loUg) return 'light';
  return mass > band.hiUg ? 'heavy' : 'in-band';
}

/** How many readings of the scale lie in a band (0 when its ends have crossed). */
export const readingsIn = (band: Band, step: MassUg): number => Math.max(0, Math.floor((band.hiUg - band.loUg) / step) + 1);

/** Exact mass to the nearest step, half up. */
export function nearestStep(exact: ExactMass, step: MassUg): MassUg {
  const grains = BigInt(step) * GRAINS_PER_UG;
  return massUg(Number((2n * exact + grains) / (2n * grains)) * step);
}

/** ⌈exact·(1−τ)/d⌉·d to ⌊exact·(1+τ)/d⌋·d, decided on whole numbers only. Throws a Fault for a tolerance above the whole. */
export function bandOf(exact: ExactMass, tau: FactorPpm, step: MassUg): Band {
  invariant(tau <= WHOLE_PPM, `a tolerance cannot exceed the whole: ${tau}`);
  const grains = BigInt(step) * GRAINS_PER_UG * BigInt(WHOLE_PPM);
  const lowest = (exact * BigInt(WHOLE_PPM - tau) + grains - 1n) / grains;
  const highest = (exact * BigInt(WHOLE_PPM + tau)) / grains;
  return { loUg: massUg(Number(lowest) * step), hiUg: massUg(Number(highest) * step) };
}
