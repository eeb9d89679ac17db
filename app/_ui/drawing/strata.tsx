// Layers of any drawing: each is painted from its seam to the bottom, so the next one covers it and seams never gap.
// Levels are percentages of the height, wobble is px: a column can be any height without distortion.
import type { ReactNode } from 'react';
import { cutWave, seamPath, wobblePx } from './core-layout.ts';
import type { Hatch } from './hatch.tsx';
import { HatchPattern } from './hatch.tsx';
import { INK, markOn, WHITE } from './lightness.ts';
import styles from './strata.module.css';

export interface Stratum {
  readonly hatch: Hatch;
  readonly fill: string;
  readonly hatchInk?: string;
  readonly seamInk?: string;
  readonly moving?: boolean;
}

const DEEP = 6000;
const percent = (share: number): string => `${(share * 100).toFixed(3)}%`;

export const hatchInk = (stratum: Stratum): string => stratum.hatchInk ?? markOn(stratum.fill);

const strengthOn = (ink: string): number => (ink === WHITE ? 0.82 : ink === INK ? 0.78 : 1);

/** The patterns that these strata need, for the `defs` of the same drawing. */
export function StrataDefs(props: { readonly id: string; readonly strata: readonly Stratum[]; readonly scale: number }): ReactNode {
  return props.strata.map((stratum, index) => (
    <HatchPattern
      // biome-ignore lint/suspicious/noArrayIndexKey: a layer is its place
      key={index}
      id={`${props.id}-${index}`}
      hatch={stratum.hatch}
      ink={hatchInk(stratum)}
      strength={strengthOn(hatchInk(stratum))}
      scale={props.scale}
    />
  ));
}

/** Strata from the top down; `tops` are shares of the height. */
export function Strata(props: {
  readonly id: string;
  readonly strata: readonly Stratum[];
  readonly tops: readonly number[];
  readonly width: number;
  readonly seam: number;
  readonly wobble?: number;
}): ReactNode {
  const { id, strata, tops, width, seam, wobble = wobblePx(width) } = props;
  return strata.map((stratum, index) => {
    const line = seamPath(index, width, 0, wobble);
    const body = index === 0 ? `M0-${DEEP}H${width}V${DEEP}H0Z` : `${line}V${DEEP}H0Z`;
    return (
      <svg
        // biome-ignore lint/suspicious/noArrayIndexKey: a layer is its place
        key={index}
        y={percent(tops[index] ?? 0)}
        overflow="visible"
        className={stratum.moving ? styles.arriving : undefined}
        aria-hidden="true"
      >
        <path d={body} fill={stratum.fill} />
        <path d={body} fill={`url(#${id}-${index})`} />
        {index > 0 && <path d={line} fill="none" stroke={stratum.seamInk ?? INK} strokeWidth={seam} />}
      </svg>
    );
  });
}

/** The cut mark in the cream at 10 % of the height. */
export function CutMark(props: { readonly width: number; readonly seam: number; readonly at?: number }): ReactNode {
  const gap = Math.max(6, Math.min(props.width * 0.16, 34));
  const upper = cutWave(props.width, 0);
  const lower = cutWave(props.width, gap);
  return (
    <svg y={percent(props.at ?? 0.1)} overflow="visible" aria-hidden="true">
      <path d={`${upper}V${gap}H0Z`} className={styles.gap} />
      <path d={`${lower}V${gap / 2}H0Z`} className={styles.gap} />
      <path d={upper} fill="none" stroke={INK} strokeWidth={props.seam} />
      <path d={lower} fill="none" stroke={INK} strokeWidth={props.seam} />
    </svg>
  );
}
