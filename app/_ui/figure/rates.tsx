// Rates with their intervals: dot, whiskers and the count in words, so that 1 of 2 never looks like a finding.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import { INK } from '../drawing/lightness.ts';
import { axisTicks, placePercent } from './axis.ts';
import { Grid } from './bars.tsx';
import styles from './plot.module.css';

export interface Rate {
  readonly id: string;
  readonly name: ReactNode;
  /** Share and the ends of its interval, in per cent. */
  readonly percent: number;
  readonly lowPercent: number;
  readonly highPercent: number;
  /** "5 of 71". */
  readonly count: string;
  readonly signal?: boolean;
}

export function Rates(props: {
  readonly label: string;
  readonly rates: readonly Rate[];
  readonly restPercent?: number;
  readonly formatTick: (value: number) => string;
}): ReactNode {
  const { label, rates, restPercent, formatTick } = props;
  const ticks = axisTicks(Math.max(1, ...rates.map((rate) => rate.highPercent)));
  const end = ticks.at(-1) ?? 1;
  return (
    <div className={classNames(styles.plot, styles.rates)} role="img" aria-label={label}>
      <Grid ticks={ticks} end={end} format={formatTick} room={100} />
      {restPercent !== undefined && (
        <svg className={styles.grid} overflow="visible" aria-hidden="true">
          <line
            x1={placePercent(restPercent, end)}
            x2={placePercent(restPercent, end)}
            y1="0"
            y2="100%"
            stroke={INK}
            strokeWidth={2}
            strokeDasharray="3 5"
          />
        </svg>
      )}
      <div className={styles.rows}>
        {rates.map((rate) => (
          <div key={rate.id} className={classNames(styles.row, styles.rate)}>
            <span className={classNames(styles.name, rate.signal && 'type-strong')}>{rate.name}</span>
            <Whiskers rate={rate} end={end} />
            <span className={styles.count}>{rate.count}</span>
          </div>
        ))}
      </div>
    </div>
  );
}

function Whiskers({ rate, end }: { readonly rate: Rate; readonly end: number }): ReactNode {
  const low = placePercent(rate.lowPercent, end);
  const high = placePercent(rate.highPercent, end);
  return (
    <svg aria-hidden="true" width="100%" height={30} overflow="visible">
      <line x1={low} x2={high} y1={15} y2={15} stroke={INK} strokeWidth={2.5} />
      <line x1={low} x2={low} y1={8} y2={22} stroke={INK} strokeWidth={2.5} />
      <line x1={high} x2={high} y1={8} y2={22} stroke={INK} strokeWidth={2.5} />
      <circle
        cx={placePercent(rate.percent, end)}
        cy={15}
        r={7}
        fill={rate.signal ? '#90362A' : '#FFFFFF'}
        stroke={INK}
        strokeWidth={2.5}
      />
    </svg>
  );
}
