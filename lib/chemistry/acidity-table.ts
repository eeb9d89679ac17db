// Reads need tables between their points. Straight lines between whole numbers stay exact when multiplied by the 50 hundredths of a step,
// so no item of a jar is ever rounded before the sum is compared.
import { invariant } from '../base/invariant.ts';

/** The points of every table: pH 3.00, 3.50 … 9.00, in hundredths. */
export const TABLE_START_X100 = 300;
export const TABLE_END_X100 = 900;
export const TABLE_STEP_X100 = 50;
export const TABLE_POINTS = (TABLE_END_X100 - TABLE_START_X100) / TABLE_STEP_X100 + 1;

/** 13 exact needs, in any one grain. */
export type NeedPoints = readonly bigint[];

/** The need at one point of a table, counted from 0. Throws a Fault outside. */
export function pointAt(points: NeedPoints, index: number): bigint {
  const value = points[index];
  invariant(value !== undefined, `a need table has ${TABLE_POINTS} points, none at ${index}`);
  return value;
}

/** Fifty times the need at a pH in whole hundredths from 300 to 900. Throws a Fault outside: callers decide what "outside" means. */
export function needX50(points: NeedPoints, phX100: number): bigint {
  invariant(phX100 >= TABLE_START_X100 && phX100 <= TABLE_END_X100, `pH ${phX100} lies outside the need tables`);
  const past = phX100 - TABLE_START_X100;
  const index = Math.floor(past / TABLE_STEP_X100);
  const rest = past % TABLE_STEP_X100;
  const low = pointAt(points, index) * BigInt(TABLE_STEP_X100 - rest);
  return rest === 0 ? low : low + pointAt(points, index + 1) * BigInt(rest);
}

/** Point by point a + b × times. */
export const addScaled = (a: NeedPoints, b: NeedPoints, times: bigint): NeedPoints =>
  a.map((value, index) => value + pointAt(b, index) * times);

export const NO_NEED: NeedPoints = Array.from({ length: TABLE_POINTS }, () => 0n);
