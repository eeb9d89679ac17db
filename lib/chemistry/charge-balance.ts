// Makes need tables from a composition where nothing was titrated yet: electroneutrality with activities.
// log γ = −A z² (√I / (1 + √I) − 0.3 I) (Davies 1962), A = 0.509 at 25 °C, pH = −log a(H⁺), pKw 13.995, neutral γ = 1.
// The form is good to about I = 0.5 mol/kg; beyond that the answer is "not computed", as a value.
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { AcidityTable } from '../rulebook/material.ts';
import type { Ph } from '../units/chemistry.ts';
import { acidityUmolPerKg, ph } from '../units/chemistry.ts';
import { TABLE_POINTS, TABLE_START_X100, TABLE_STEP_X100 } from './acidity-table.ts';
import { formShares } from './undissociated.ts';

/** An acid, base or strong ion: the charge of its fully protonated form and thermodynamic pKas (none = a strong ion). */
export interface Ion {
  readonly molPerKg: number;
  readonly topCharge: number;
  readonly pkas: readonly number[];
}

/** What is dissolved, per kg as supplied, and how much of that kg is water. */
export interface Solution {
  readonly ions: readonly Ion[];
  readonly waterShare: number;
}

/** "ideal": γ = 1 everywhere, as in textbook examples. */
export type Activity = 'davies' | 'ideal';

export type NotComputed = 'ionic-strength-too-high' | 'no-convergence';

const DAVIES_A = 0.509;
const PKW = 13.995;
const MAX_IONIC_STRENGTH = 0.5;
const BISECTIONS = 60;
const ROUNDS = 200;
const SETTLED = 1e-12;

const logGamma = (charge: number, strength: number): number => {
  const root = Math.sqrt(strength);
  return -DAVIES_A * charge * charge * (root / (1 + root) - 0.3 * strength);
};

interface State {
  /** Net charge per kg without any alkali or acid to be added. */
  readonly charge: number;
  /** Ionic strength of the same, in mol/kg. */
  readonly strength: number;
}

/** Charges and ionic strength at a pH, with activity coefficients taken at an assumed ionic strength. */
function stateAt(solution: Solution, at: number, assumed: number): State {
  const hydrogen = solution.waterShare * 10 ** (-at - logGamma(1, assumed));
  const hydroxide = solution.waterShare * 10 ** (at - PKW - logGamma(1, assumed));
  const water: State = { charge: hydrogen - hydroxide, strength: (hydrogen + hydroxide) / 2 };
  return solution.ions.reduce<State>((sum, ion) => {
    const shares = formShares(at, apparentPkas(ion, assumed));
    const mean = (of: (charge: number) => number): number =>
      shares.reduce((total, share, lost) => total + share * of(ion.topCharge - lost), 0);
    return {
      charge: sum.charge + ion.molPerKg * mean((charge) => charge),
      strength: sum.strength + (ion.molPerKg * mean((charge) => charge * charge)) / 2,
    };
  }, water);
}

/** pKa + log γ(form that lost the proton) − log γ(form that holds it). */
const apparentPkas = (ion: Ion, strength: number): readonly number[] =>
  ion.pkas.map((pka, lost) => pka + logGamma(ion.topCharge - lost - 1, strength) - logGamma(ion.topCharge - lost, strength));

/** pH of a solution: 60 bisections on 0 … 14 for zero net charge, repeated until the ionic strength agrees with itself. */
export function phOf(solution: Solution, activity: Activity = 'davies'): Result<Ph, NotComputed> {
  return settle(activity, (assumed) => {
    const at = bisect((tried) => stateAt(solution, tried, assumed).charge);
    return { answer: ph(at), strength: stateAt(solution, at, assumed).strength };
  });
}

/** Mol of strong alkali per kg that bring a solution to a pH; negative = strong acid is needed. */
export function alkaliTo(solution: Solution, at: number, activity: Activity = 'davies'): Result<number, NotComputed> {
  return settle(activity, (assumed) => {
    const { charge, strength } = stateAt(solution, at, assumed);
    return { answer: -charge, strength: strength + Math.abs(charge) / 2 };
  });
}

/**
 * Need table of a stock as supplied: whole µmol of alkali per kg at pH 3.0, 3.5 … 9.0, marked as computed.
 * Activities are those of a jar that holds `shareOfJar` of it (a neat acid has no pH of its own); 1 = the stock itself.
 */
export function acidityTable(solution: Solution, shareOfJar = 1): Result<AcidityTable, NotComputed> {
  const thinned: Solution = {
    ions: solution.ions.map((ion) => ({ ...ion, molPerKg: ion.molPerKg * shareOfJar })),
    waterShare: solution.waterShare * shareOfJar,
  };
  const needs = Array.from({ length: TABLE_POINTS }, (_, index) => alkaliTo(thinned, (TABLE_START_X100 + TABLE_STEP_X100 * index) / 100));
  const umolPerKg = needs.flatMap((found) => (found.ok ? [acidityUmolPerKg(Math.round((found.value / shareOfJar) * 1e6) + 0)] : []));
  const failed = needs.find((found) => !found.ok);
  return failed ?? accept({ origin: 'computed', umolPerKg });
}

interface Trial<T> {
  readonly answer: T;
  readonly strength: number;
}

/** Repeats a trial with the ionic strength that it found itself, until the two agree. */
function settle<T>(activity: Activity, attempt: (assumed: number) => Trial<T>): Result<T, NotComputed> {
  let trial = attempt(0);
  if (activity === 'ideal') return accept(trial.answer);
  for (let round = 0, assumed = 0; round < ROUNDS; round += 1) {
    if (Math.abs(trial.strength - assumed) < SETTLED)
      return trial.strength > MAX_IONIC_STRENGTH ? refuse('ionic-strength-too-high') : accept(trial.answer);
    // Beyond the limit the coefficients turn upwards again; held there, the rounds still settle and the strength says "too high".
    assumed = trial.strength;
    trial = attempt(Math.min(assumed, MAX_IONIC_STRENGTH));
  }
  return refuse('no-convergence');
}

/** Zero of a falling function on pH 0 … 14. */
function bisect(charge: (at: number) => number): number {
  let low = 0;
  let high = 14;
  for (let step = 0; step < BISECTIONS; step += 1) {
    const middle = (low + high) / 2;
    if (charge(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
