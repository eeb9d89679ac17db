// Counts over time: at most four series, each with its own marker and dash and its name at its end; changes marked upright.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import { chartColours } from '../drawing/earth.data.ts';
import { INK } from '../drawing/lightness.ts';
import { axisTicks, placePercent } from './axis.ts';
import styles from './plot.module.css';

export interface RunSeries {
  readonly name: string;
  readonly values: readonly number[];
}

export interface RunChartProps {
  readonly label: string;
  readonly series: readonly [RunSeries, ...RunSeries[]];
  /** One text a point; an empty one is not drawn. */
  readonly dates: readonly string[];
  readonly changes?: readonly { readonly at: number; readonly text: string }[];
  readonly formatTick: (value: number) => string;
}

const inks = [chartColours[1], chartColours[4], chartColours[0], chartColours[3]] as const;
const dashes = [undefined, '9 6', '2 6', '14 5 3 5'] as const;

export function RunChart({ label, series, dates, changes = [], formatTick }: RunChartProps): ReactNode {
  const ticks = axisTicks(Math.max(1, ...series.flatMap((one) => one.values)));
  const end = ticks.at(-1) ?? 1;
  const across = (index: number): string => placePercent(index, Math.max(1, dates.length - 1));
  const down = (value: number): string => placePercent(end - value, end);
  return (
    <div className={classNames(styles.plot, styles.run)} role="img" aria-label={label}>
      <svg aria-hidden="true" className={styles.levels} width="100%" height="100%" overflow="visible">
        {ticks.map((tick) => (
          <text key={tick} x="100%" dx={-12} y={down(tick)} dominantBaseline="central" textAnchor="end" className={styles.tick}>
            {formatTick(tick)}
          </text>
        ))}
      </svg>
      <svg aria-hidden="true" className={styles.canvas} width="100%" height="100%" overflow="visible">
        {ticks.map((tick) => (
          <line
            key={tick}
            x1="0"
            x2="100%"
            y1={down(tick)}
            y2={down(tick)}
            stroke={tick === 0 ? INK : '#C9D3D1'}
            strokeWidth={tick === 0 ? 2 : 1.5}
          />
        ))}
        {changes.map((change) => (
          <g key={change.at}>
            <line x1={across(change.at)} x2={across(change.at)} y1="-6" y2="100%" stroke={INK} strokeWidth={2} strokeDasharray="3 5" />
            <text x={across(change.at)} dx={-8} y={-2} textAnchor="end" className={styles.tick}>
              {change.text}
            </text>
          </g>
        ))}
        {series.map((one, index) => (
          <Line key={one.name} values={one.values} end={end} last={Math.max(1, dates.length - 1)} look={index} />
        ))}
      </svg>
      <svg aria-hidden="true" className={styles.names} width="100%" height="100%" overflow="visible">
        {series.map((one, index) => (
          <text
            key={one.name}
            x={14}
            y={down(one.values.at(-1) ?? 0)}
            dominantBaseline="central"
            fill={inks[index % inks.length]}
            className={styles.seriesName}
          >
            {one.name} {formatTick(one.values.at(-1) ?? 0)}
          </text>
        ))}
      </svg>
      <svg aria-hidden="true" className={styles.dates} width="100%" height="100%" overflow="visible">
        {dates.map((date, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a date is its place on the axis
          <text key={index} x={across(index)} y="1.3em" textAnchor="middle" className={styles.tick}>
            {date}
          </text>
        ))}
      </svg>
    </div>
  );
}

function Line(props: {
  readonly values: readonly number[];
  readonly end: number;
  readonly last: number;
  readonly look: number;
}): ReactNode {
  const { values, end, last, look } = props;
  const ink = inks[look % inks.length];
  const points = values.map((value, index) => `${((index / last) * 1000).toFixed(2)},${((1 - value / end) * 1000).toFixed(2)}`);
  return (
    <>
      <svg aria-hidden="true" width="100%" height="100%" viewBox="0 0 1000 1000" preserveAspectRatio="none" overflow="visible">
        <polyline
          points={points.join(' ')}
          fill="none"
          stroke={ink}
          strokeWidth={3.5}
          strokeDasharray={dashes[look % dashes.length]}
          vectorEffect="non-scaling-stroke"
          strokeLinejoin="round"
        />
      </svg>
      {values.map((value, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a point is its place on the axis
        <svg aria-hidden="true" key={index} x={placePercent(index, last)} y={placePercent(end - value, end)} overflow="visible">
          <Marker look={look} ink={ink ?? INK} />
        </svg>
      ))}
    </>
  );
}

function Marker({ look, ink }: { readonly look: number; readonly ink: string }): ReactNode {
  const shape = look % 4;
  if (shape === 0) return <circle r={5.5} fill={ink} />;
  if (shape === 1) return <rect x={-5} y={-5} width={10} height={10} fill={ink} />;
  return shape === 2 ? <path d="M0-7L6.5 5H-6.5Z" fill={ink} /> : <path d="M0-7L7 0L0 7L-7 0Z" fill={ink} />;
}
