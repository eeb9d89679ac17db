// Geometric dilution: each portion of cream equals what is already in the vessel, so that a little paste spreads evenly through much cream
// (standard compounding procedure, from memory).
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';

export interface Folding {
  readonly inVesselUg: MassUg;
  readonly creamUg: MassUg;
  /** Step of the cream's scale; portions are readings of it. */
  readonly stepUg: MassUg;
  /** A last remnant under this joins the portion before it. */
  readonly leastUg: MassUg;
}

/** Portions that sum to the cream. An empty vessel takes all of it at once. */
export function creamPortions({ inVesselUg, creamUg, stepUg, leastUg }: Folding): readonly MassUg[] {
  const portion = Math.max(Math.floor(inVesselUg / stepUg) * stepUg, stepUg);
  const rest = creamUg - portion;
  if (inVesselUg === 0 || rest < Math.max(leastUg, 1)) return [creamUg];
  const next = { inVesselUg: massUg(inVesselUg + portion), creamUg: massUg(rest), stepUg, leastUg };
  return [massUg(portion), ...creamPortions(next)];
}
