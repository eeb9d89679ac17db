// Where a mass lies on the weighing gauge. Four stretches, each linear, so that the last 0.02 g before the band can be seen:
// 34 % for nearly all of it, 26 % up to the band, 24 % for the band, 16 % above.
import { invariant } from '#lib/base/invariant.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { massUg } from '#lib/units/mass.ts';

export const GAUGE_WIDTH = 872;

export interface GaugeBand {
  readonly targetUg: MassUg;
  readonly loUg: MassUg;
  readonly hiUg: MassUg;
  /** Step of the scale; marks fall on it. */
  readonly stepUg: MassUg;
}

const NEAR_AT = 0.34 * GAUGE_WIDTH;
const LO_AT = 0.6 * GAUGE_WIDTH;
const HI_AT = 0.84 * GAUGE_WIDTH;

/** Where the gauge changes pace: 90 % of the target, or twice as far from the target as the band reaches. */
export function nearUg({ targetUg, loUg, stepUg }: GaugeBand): MassUg {
  const near = Math.min(targetUg * 0.9, targetUg - 2 * (targetUg - loUg));
  return massUg(Math.max(0, Math.round(near / stepUg) * stepUg));
}

/** Place of a mass in px of GAUGE_WIDTH; what is heavier than the gauge shows lies at its end. */
export function gaugeX(mass: MassUg, band: GaugeBand): number {
  const { loUg, targetUg, hiUg } = band;
  invariant(loUg <= targetUg && targetUg <= hiUg && loUg < hiUg, `a band must hold its target: ${loUg}, ${targetUg}, ${hiUg}`);
  const near = nearUg(band);
  if (mass <= near) return near === 0 ? 0 : (mass / near) * NEAR_AT;
  if (mass < loUg) return NEAR_AT + ((mass - near) / (loUg - near)) * (LO_AT - NEAR_AT);
  const pace = (HI_AT - LO_AT) / (hiUg - loUg);
  return Math.min(GAUGE_WIDTH, LO_AT + (mass - loUg) * pace);
}
