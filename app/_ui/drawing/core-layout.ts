// Where the seams of a core lie. Shares run from 0.01 % to 91 %, so heights follow the square root and the cream is cut;
// the true share is always written beside it.
import { invariant } from '#lib/base/invariant.ts';
import type { Hatch } from './hatch.tsx';

/** A column is this many whole units high, so that label rows beside it can share its seams by class alone. */
export const COLUMN_UNITS = 48;

const LEAST_LAYER_PX = 12;
const CUT_FROM_PPM = 400_000;
const CUT_UNITS = 13;

interface Share {
  readonly hatch: Hatch;
  readonly sharePpm: number;
}

/** Cream that would fill the column is drawn cut short, with a cut mark. */
export const isCut = (share: Share): boolean => share.hatch === 'cream' && share.sharePpm > CUT_FROM_PPM;

/**
 * Whole units per layer, top down; they sum to COLUMN_UNITS. A larger share is never drawn lower than a smaller one
 * (divisor method of Sainte-Laguë on the square roots), and a layer is at least `leastPx` (12) where the column has room.
 */
export function layerUnits(shares: readonly Share[], heightPx: number, leastPx = LEAST_LAYER_PX): readonly number[] {
  invariant(shares.length > 0 && shares.length <= 24, `a column has 1 to 24 layers, not ${shares.length}`);
  const wanted = Math.ceil((leastPx * COLUMN_UNITS) / heightPx);
  const cuts = shares.length > 1 ? shares.findIndex(isCut) : -1;
  const room = cuts < 0 ? COLUMN_UNITS / shares.length : (COLUMN_UNITS - CUT_UNITS) / (shares.length - 1);
  const least = Math.max(1, Math.min(wanted, Math.floor(room)));
  const units = shares.map((_, index) => (index === cuts ? CUT_UNITS : least));
  const weights = shares.map((share, index) => (index === cuts ? 0 : Math.sqrt(share.sharePpm)));
  const given = shares.map(() => 0);
  const spare = COLUMN_UNITS - sum(units);
  for (let turn = 0; turn < spare; turn += 1) {
    const next = neediest(weights, given);
    given[next] = (given[next] ?? 0) + 1;
  }
  return units.map((unit, index) => unit + (given[index] ?? 0));
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

function neediest(weights: readonly number[], given: readonly number[]): number {
  const claims = weights.map((weight, index) => weight / (2 * (given[index] ?? 0) + 1));
  const most = Math.max(...claims);
  return claims.indexOf(most);
}

/** Top edge of each layer as a share of the column's height, 0 to 1. */
export const layerTops = (units: readonly number[]): readonly number[] =>
  units.map((_, index) => sum(units.slice(0, index)) / COLUMN_UNITS);

// Fixed by index, never random: the same recipe is the same picture for ever, and tests can look at it.
const lean = [-0.35, 0.4, -0.2, 0.3, -0.45, 0.25] as const;
const swell = [0.9, -0.75, 1, -0.6, 0.8, -1] as const;

/** How far a seam may leave its level: 4 at 60 wide or more, 3 under it, 11 in a big jar. */
export const wobblePx = (widthPx: number): number => (widthPx < 60 ? Math.min(3, widthPx / 14) : widthPx > 180 ? 11 : 4);

/** A gently uneven line from the left edge to the right one, as an SVG path. */
export function seamPath(index: number, widthPx: number, y: number, wobble = wobblePx(widthPx)): string {
  const tilt = wobble * 0.6 * (lean[index % lean.length] ?? 0);
  const bow = wobble * (swell[index % swell.length] ?? 0);
  const at = (value: number): string => value.toFixed(2);
  return (
    `M0 ${at(y + tilt)}` +
    `C${at(widthPx * 0.18)} ${at(y + tilt - bow * 1.3)} ${at(widthPx * 0.36)} ${at(y - bow)} ${at(widthPx * 0.5)} ${at(y)}` +
    `S${at(widthPx * 0.84)} ${at(y - tilt + bow * 1.2)} ${at(widthPx)} ${at(y - tilt)}`
  );
}

/** Two waves across the cream: "not to scale". */
export function cutWave(widthPx: number, y: number): string {
  const bow = Math.min(13, widthPx * 0.07);
  const quarter = widthPx / 4;
  return `M0 ${y}q${quarter / 2} ${-bow} ${quarter} 0t${quarter} 0t${quarter} 0t${quarter} 0`;
}
