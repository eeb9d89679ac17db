// How much is mixed for one jar, and how much cream closes the sum. Every line but the cream is rounded on its own;
// the cream takes what the roundings leave, since it is by far the largest line and its composition the least sensitive.

import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import { invariant } from '../base/invariant.ts';
import type { Base } from '../rulebook/base.ts';
import type { JarSize, Vessel } from '../rulebook/offer.ts';
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';

/** A mass rounded up to a step. */
export const roundUp = (mass: number, step: MassUg): MassUg => massUg(Math.ceil(mass / step) * step);

const roundDown = (mass: number, step: MassUg): MassUg => massUg(Math.floor(mass / step) * step);

/** The coarsest step of a station's scales. Throws a Fault for a station without scales. */
export function coarsestStep(steps: readonly MassUg[]): MassUg {
  invariant(steps.length > 0, 'a station without scales has no step');
  return massUg(Math.max(...steps));
}

/** Net content and overage, rounded up to the station's coarsest step. */
export const batchOf = (jarSize: Pick<JarSize, 'netUg' | 'overageUg'>, step: MassUg): MassUg =>
  roundUp(jarSize.netUg + jarSize.overageUg, step);

/** What the other lines leave of the batch, down to the step of the cream's own scale; null when they leave nothing. */
export function creamTarget(batch: MassUg, others: readonly MassUg[], creamStep: MassUg): MassUg | null {
  const left = others.reduce<number>((rest, mass) => rest - mass, batch);
  return left >= creamStep ? roundDown(left, creamStep) : null;
}

/** Whether a batch fits its vessel, counted at the base's density: powders are denser, so the true volume is smaller. µg / (mg/mL) = µL. */
export function vesselFinding(base: Base, vessel: Vessel, batch: MassUg): Finding | null {
  const needUl = Math.ceil(batch / base.densityMgPerMl);
  if (needUl <= vessel.capacityUl) return null;
  return finding('vessel-too-small', 'bench', { vesselId: vessel.id, needUl, capacityUl: vessel.capacityUl });
}
