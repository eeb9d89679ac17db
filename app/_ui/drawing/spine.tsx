// The kiosk's progress as a growing core: one layer an answer, from the bottom up. Decoration; the words stand beside it.
import type { ReactNode } from 'react';
import { useId } from 'react';
import { earth } from './earth.data.ts';
import { INK } from './lightness.ts';
import styles from './spine.module.css';
import type { Stratum } from './strata.tsx';
import { Strata, StrataDefs } from './strata.tsx';

// From the bottom up; a visit of more questions starts over.
const ground: readonly Stratum[] = [
  { hatch: 'base-clay', fill: earth.kaolin },
  { hatch: 'humectant', fill: '#E6D8BE' },
  { hatch: 'oil', fill: earth.sand },
  { hatch: 'tint-clay', fill: earth.ochre },
  { hatch: 'base-clay', fill: '#C98A4B' },
  { hatch: 'tint-clay', fill: earth.rust },
  { hatch: 'botanical', fill: earth.rose },
  { hatch: 'humectant', fill: '#DDBDB1' },
  { hatch: 'tint-clay', fill: earth.illite },
  { hatch: 'mineral-colour', fill: '#7C9069' },
  { hatch: 'oil', fill: earth.green },
  { hatch: 'tint-clay', fill: earth.slate },
  { hatch: 'acid', fill: '#8A7A86' },
];

const current: Stratum = { hatch: 'oil', fill: '#E5EDF8', hatchInk: '#6F8FC9' };
const toCome: Stratum = { hatch: 'cream', fill: '#FBFCFB', seamInk: '#C9D3D1' };

// Layers of a real core are not equally thick; fixed offsets, as shares of one layer.
const drift = [0.08, -0.1, 0.12, -0.04, 0.1, -0.12, 0.05, -0.08, 0.02, 0.11, -0.06, 0.04] as const;

export interface Progress {
  readonly total: number;
  readonly answered: number;
  /** The question being asked lies on top of the answered ones. */
  readonly asking: boolean;
}

/** Strata from the top down, with the share of the height at which each begins. */
export function spineStrata({ total, answered, asking }: Progress): {
  readonly strata: readonly Stratum[];
  readonly tops: readonly number[];
} {
  const strata = Array.from({ length: total }, (_, fromTop): Stratum => {
    const fromBottom = total - 1 - fromTop;
    if (fromBottom < answered) return { ...(ground[fromBottom % ground.length] ?? toCome), moving: fromBottom === answered - 1 };
    return asking && fromBottom === answered ? { ...current, moving: true } : { ...toCome };
  });
  const tops = strata.map((_, fromTop) => (fromTop === 0 ? 0 : (fromTop + (drift[fromTop % drift.length] ?? 0)) / total));
  return { strata: strata.map((stratum, index) => seamed(stratum, strata[index - 1])), tops };
}

// A seam is ink as soon as either side of it is laid down.
const seamed = (stratum: Stratum, above: Stratum | undefined): Stratum =>
  stratum.fill === toCome.fill && (above === undefined || above.fill === toCome.fill) ? stratum : { ...stratum, seamInk: INK };

export function Spine(props: Progress & { readonly width?: number }): ReactNode {
  const id = `spine-${useId()}`;
  const { width = 96 } = props;
  const { strata, tops } = spineStrata(props);
  return (
    <span className={styles.spine} aria-hidden="true">
      <svg aria-hidden="true" width={width} height="100%" className={styles.drawing}>
        <defs>
          <StrataDefs id={id} strata={strata} scale={0.95} />
        </defs>
        <Strata id={id} strata={strata} tops={tops} width={width} seam={2.5} />
      </svg>
    </span>
  );
}

/** The same in 30 × 42, beside the line that names the part. */
export function PartMark(props: { readonly part: number; readonly parts: number }): ReactNode {
  const id = `part-${useId()}`;
  const { strata, tops } = spineStrata({ total: props.parts, answered: props.part - 1, asking: true });
  return (
    <svg width="1.03em" height="1.45em" viewBox="0 0 30 42" aria-hidden="true">
      <defs>
        <StrataDefs id={id} strata={strata} scale={0.5} />
      </defs>
      <svg aria-hidden="true" x={1.5} y={1.5} width={27} height={39} overflow="hidden">
        <Strata id={id} strata={strata} tops={tops} width={27} seam={1.75} wobble={1.8} />
      </svg>
      <rect x={1.25} y={1.25} width={27.5} height={39.5} rx={3} fill="none" stroke={INK} strokeWidth={2.5} />
    </svg>
  );
}
