// Which scale can weigh a line well enough. The form is the one of USP <41> (twice the repeatability over the permitted error),
// with the line's own tolerance in place of 0.10 %; and three readings of the scale must always fit into the band.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { ScaleProfile } from '../rulebook/offer.ts';
import type { ExactMass } from '../units/exact-mass.ts';
import { GRAINS_PER_UG } from '../units/exact-mass.ts';
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';
import type { FactorPpm } from '../units/share.ts';
import { WHOLE_PPM } from '../units/share.ts';

/** A scale as it stands at a station. Capacity counts contents only: the station takes its heaviest empty vessel off before. */
export type BenchScale = Pick<ScaleProfile, 'id' | 'code' | 'stepUg' | 'repeatabilityUg' | 'capacityUg'>;

const PPM = BigInt(WHOLE_PPM);

/** max(s, 0.41 d) in hundredths of a µg: a scale that repeats to less than 0.41 of its step cannot show it (USP <41>). */
function repeatabilityX100(scale: BenchScale): bigint {
  const measured = BigInt(scale.repeatabilityUg) * 100n;
  const floor = BigInt(scale.stepUg) * 41n;
  return measured > floor ? measured : floor;
}

/**
 * exact ≥ √n · 2·max(s, 0.41 d)/τ and 2τ·exact ≥ 3 d, both exactly (the root is compared as squares).
 * Errors of n weighings of one line add up as the root of n.
 */
export function canWeigh(scale: BenchScale, exact: ExactMass, tau: FactorPpm, weighingsCount = 1): boolean {
  const spread = exact * BigInt(tau);
  const threeReadings = 2n * spread >= 3n * BigInt(scale.stepUg) * PPM * GRAINS_PER_UG;
  const twice = 2n * repeatabilityX100(scale) * PPM * GRAINS_PER_UG;
  return threeReadings && (100n * spread) ** 2n >= BigInt(weighingsCount) * twice ** 2n;
}

/** Smallest whole µg by repeatability alone: √n · 2·max(s, 0.41 d)/τ, rounded up. With τ = 0.10 % it is the minimum weight of USP <41>. */
export function repeatabilityLeastUg(scale: BenchScale, tau: FactorPpm, weighingsCount = 1): MassUg {
  const twice = 2n * repeatabilityX100(scale) * PPM;
  return massUg(Number(ceilDivide(ceilRoot(BigInt(weighingsCount) * twice ** 2n), 100n * BigInt(tau))));
}

/** Smallest whole µg that canWeigh accepts. */
export function leastUg(scale: BenchScale, tau: FactorPpm, weighingsCount = 1): MassUg {
  const threeReadings = Number(ceilDivide(3n * BigInt(scale.stepUg) * PPM, 2n * BigInt(tau)));
  return massUg(Math.max(threeReadings, repeatabilityLeastUg(scale, tau, weighingsCount)));
}

/** What a line asks of a scale. `loadUg`: all that lies on the scale at the end of the weighing. */
export interface ScaleAsk {
  readonly stockId: string;
  readonly exact: ExactMass;
  readonly tauPpm: FactorPpm;
  readonly loadUg: MassUg;
}

export type ScaleChoice = { readonly ok: true; readonly scale: BenchScale } | { readonly ok: false; readonly finding: Finding };

/** The coarsest scale that can weigh a line and bear its load, or why there is none. Equal steps: the first by code. */
export function chooseScale(scales: readonly BenchScale[], ask: ScaleAsk): ScaleChoice {
  const coarsestFirst = [...scales].sort((a, b) => b.stepUg - a.stepUg || (a.code < b.code ? -1 : 1));
  if (coarsestFirst.length === 0) return { ok: false, finding: finding('no-scale', 'bench', {}) };
  const fine = coarsestFirst.filter((scale) => canWeigh(scale, ask.exact, ask.tauPpm));
  const chosen = fine.find((scale) => ask.loadUg <= scale.capacityUg);
  return chosen
    ? { ok: true, scale: chosen }
    : { ok: false, finding: fine.length === 0 ? tooSmall(coarsestFirst, ask) : tooHeavy(fine, ask) };
}

const tooSmall = (scales: readonly BenchScale[], { stockId, exact, tauPpm }: ScaleAsk): Finding =>
  finding('not-weighable', 'bench', {
    stockId,
    exactUg: Number(exact / GRAINS_PER_UG),
    leastUg: Math.min(...scales.map((scale) => leastUg(scale, tauPpm))),
  });

const tooHeavy = (scales: readonly BenchScale[], { stockId, loadUg }: ScaleAsk): Finding =>
  finding('over-capacity', 'bench', { stockId, massUg: loadUg, capacityUg: Math.max(...scales.map((scale) => scale.capacityUg)) });

const ceilDivide = (a: bigint, b: bigint): bigint => (a + b - 1n) / b;

/** Smallest whole number whose square is at least n (Newton's method on whole numbers, from above). */
function ceilRoot(n: bigint): bigint {
  const settle = (guess: bigint): bigint => {
    const next = (guess + n / guess) / 2n;
    return next >= guess ? guess : settle(next);
  };
  const floor = n < 2n ? n : settle(1n << BigInt(Math.ceil(n.toString(2).length / 2)));
  return floor * floor === n ? floor : floor + 1n;
}
