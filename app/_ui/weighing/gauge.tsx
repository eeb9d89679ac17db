// The weighing gauge: pattern and place say what colour would, so a grey screen loses nothing.
import type { ReactNode } from 'react';
import { useId } from 'react';
import type { MassUg } from '#lib/units/mass.ts';
import { HatchPattern } from '../drawing/hatch.tsx';
import { INK } from '../drawing/lightness.ts';
import type { WeighingState } from '../marks/weighing-mark.tsx';
import styles from './gauge.module.css';
import type { GaugeBand } from './gauge-scale.ts';
import { GAUGE_WIDTH, gaugeX, nearUg } from './gauge-scale.ts';

const TOP = 26;
const BAR = 68;
const SURVEY = '#1D4E9E';

export interface GaugeProps {
  readonly band: GaugeBand;
  /** null when no reading is there. */
  readonly readingUg: MassUg | null;
  readonly state: WeighingState;
  /** What a screen reader hears. */
  readonly label: string;
  /** Texts of the ticks, and the word inside the band. */
  readonly texts: {
    readonly zero: string;
    readonly near: string;
    readonly lo: string;
    readonly target: string;
    readonly hi: string;
    readonly inside: string;
  };
}

export function Gauge({ band, readingUg, state, label, texts }: GaugeProps): ReactNode {
  const id = `gauge-${useId()}`;
  const lo = gaugeX(band.loUg, band);
  const hi = gaugeX(band.hiUg, band);
  const target = gaugeX(band.targetUg, band);
  const near = gaugeX(nearUg(band), band);
  const at = readingUg === null ? null : gaugeX(readingUg, band);
  return (
    <svg viewBox={`-4 0 ${GAUGE_WIDTH + 8} 138`} className={styles.gauge} role="img" aria-label={label} direction="ltr">
      <defs>
        <HatchPattern id={`${id}-light`} hatch="oil" strength={0.75} scale={1.1} />
        <HatchPattern id={`${id}-none`} hatch="humectant" scale={0.7} />
        <pattern id={`${id}-heavy`} width={8} height={8} patternUnits="userSpaceOnUse">
          <path d="M2.5 0V8" stroke={INK} strokeWidth={4} />
        </pattern>
        <pattern id={`${id}-above`} width={9} height={9} patternUnits="userSpaceOnUse">
          <path d="M4 0V9" stroke="#C9D3D1" strokeWidth={4} />
        </pattern>
      </defs>
      <rect y={TOP} width={GAUGE_WIDTH} height={BAR} fill="#FFFFFF" />
      {state === 'no-reading' ? (
        <rect y={TOP} width={GAUGE_WIDTH} height={BAR} fill={`url(#${id}-none)`} />
      ) : (
        <rect x={hi} y={TOP} width={GAUGE_WIDTH - hi} height={BAR} fill={`url(#${id}-above)`} />
      )}
      {at !== null && <Filled id={id} at={at} lo={lo} hi={hi} />}
      <rect y={TOP} width={GAUGE_WIDTH} height={BAR} fill="none" stroke={INK} strokeWidth={3} />
      <path d={`M${near} ${TOP + 4}V${TOP + BAR - 4}`} stroke={INK} strokeWidth={2} strokeDasharray="2 5" />
      <Band lo={lo} hi={hi} target={target} stable={state === 'stable'} />
      {at !== null && <Pointer at={Math.min(at, GAUGE_WIDTH - 4)} />}
      <text x={(lo + hi) / 2} y={TOP + BAR / 2 + 11} textAnchor="middle" className={styles.word}>
        {texts.inside}
      </text>
      <Ticks
        ticks={[
          { at: 0, text: texts.zero, anchor: 'start' },
          { at: near, text: texts.near, anchor: 'middle', second: true },
          { at: lo, text: texts.lo, anchor: 'middle' },
          { at: target, text: texts.target, anchor: 'middle' },
          { at: hi, text: texts.hi, anchor: 'middle' },
        ]}
      />
    </svg>
  );
}

function Filled(props: { readonly id: string; readonly at: number; readonly lo: number; readonly hi: number }): ReactNode {
  const { id, at, lo, hi } = props;
  const below = Math.min(at, lo);
  return (
    <>
      <rect y={TOP} width={below} height={BAR} fill="#E5EDF8" />
      <rect y={TOP} width={below} height={BAR} fill={`url(#${id}-light)`} />
      {at > hi && <rect x={hi} y={TOP} width={at - hi} height={BAR} fill="#FFFFFF" />}
      {at > hi && <rect x={hi} y={TOP} width={at - hi} height={BAR} fill={`url(#${id}-heavy)`} />}
    </>
  );
}

function Band(props: { readonly lo: number; readonly hi: number; readonly target: number; readonly stable: boolean }): ReactNode {
  const { lo, hi, target, stable } = props;
  return (
    <>
      <rect x={lo} y={TOP - 10} width={hi - lo} height={BAR + 20} fill="#FFFFFF" stroke={INK} strokeWidth={6} />
      {stable && <rect x={lo + 8} y={TOP - 2} width={hi - lo - 16} height={BAR + 4} fill="none" stroke={INK} strokeWidth={3} />}
      <path d={`M${target} ${TOP - 10}v14M${target} ${TOP + BAR + 10}v-14`} stroke={INK} strokeWidth={3} />
    </>
  );
}

const Pointer = ({ at }: { readonly at: number }): ReactNode => (
  <>
    <path d={`M${at - 17} 0H${at + 17}L${at} 22Z`} fill={SURVEY} stroke="#FFFFFF" strokeWidth={1.5} />
    <rect x={at - 3.5} y={16} width={7} height={TOP + BAR - 8} fill={SURVEY} />
  </>
);

interface Tick {
  readonly at: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle';
  readonly second?: boolean;
}

const Ticks = ({ ticks }: { readonly ticks: readonly Tick[] }): ReactNode =>
  ticks.map((tick) => (
    <text key={tick.at} x={tick.at} y={132} textAnchor={tick.anchor} className={tick.second ? styles.second : styles.tick}>
      {tick.text}
    </text>
  ));
