// Plain bars on a common axis from 0, value at the end, ink outline, hatch inside. Drawn on the server, no script.
import type { ReactNode } from 'react';
import { useId } from 'react';
import { classNames } from '../class-names.ts';
import type { Hatch } from '../drawing/hatch.tsx';
import { HatchPattern } from '../drawing/hatch.tsx';
import { INK, markOn } from '../drawing/lightness.ts';
import { axisTicks, placePercent } from './axis.ts';
import styles from './plot.module.css';

export interface Bar {
  readonly id: string;
  readonly name: ReactNode;
  readonly note?: ReactNode;
  readonly value: number;
  /** The value as it is read: "118". */
  readonly text: string;
  readonly fill?: string;
  readonly hatch?: Hatch;
  /** An earlier value, drawn hatched above: "61 to 64". */
  readonly before?: number;
}

// The longest bar ends here, in per cent; behind it stands its number, or at the edge where it compares two.
const ROOM = 84;
const ROOM_COMPARED = 66;

export function Bars(props: {
  readonly label: string;
  readonly bars: readonly Bar[];
  readonly height?: 'usual' | 'small';
  readonly formatTick: (value: number) => string;
  readonly axis?: boolean;
}): ReactNode {
  const { label, bars, height = 'usual', formatTick, axis = true } = props;
  const id = `bars-${useId()}`;
  const ticks = axisTicks(Math.max(0, ...bars.map((bar) => Math.max(bar.value, bar.before ?? 0))));
  const end = ticks.at(-1) ?? 1;
  const room = bars.some((bar) => bar.before !== undefined) ? ROOM_COMPARED : ROOM;
  return (
    <div className={classNames(styles.plot, axis && styles.axis, height === 'small' && styles.small)} role="img" aria-label={label}>
      {axis && <Grid ticks={ticks} end={end} format={formatTick} room={room} />}
      <div className={styles.rows}>
        {bars.map((bar, index) => (
          <div key={bar.id} className={styles.row}>
            <div className={styles.name}>
              <span className={bar.note ? 'type-strong' : undefined}>{bar.name}</span>
              {bar.note && <span className="type-small type-second">{bar.note}</span>}
            </div>
            <BarShape id={`${id}-${index}`} bar={bar} end={end} room={room} height={height} />
          </div>
        ))}
      </div>
    </div>
  );
}

function BarShape(props: {
  readonly id: string;
  readonly bar: Bar;
  readonly end: number;
  readonly room: number;
  readonly height: 'usual' | 'small';
}): ReactNode {
  const { id, bar, end, room } = props;
  const { fill = '#1D4E9E', hatch = 'cream' } = bar;
  const [high, top] = bar.before === undefined ? [props.height === 'small' ? 24 : 32, 1] : [12, 16];
  const width = placePercent(bar.value, end, room);
  return (
    <svg aria-hidden="true" width="100%" height={bar.before === undefined ? high + 2 : 30} overflow="visible">
      <defs>
        <HatchPattern id={id} hatch={hatch} ink={markOn(fill)} strength={0.6} scale={0.8} />
        <HatchPattern id={`${id}-before`} hatch="oil" scale={0.75} />
      </defs>
      {bar.before !== undefined && (
        <>
          <rect y={1} width={placePercent(bar.before, end, room)} height={12} fill="#FFFFFF" />
          <rect y={1} width={placePercent(bar.before, end, room)} height={12} fill={`url(#${id}-before)`} stroke={INK} strokeWidth={1.5} />
        </>
      )}
      <rect y={top} width={width} height={high} fill={fill} />
      <rect y={top} width={width} height={high} fill={`url(#${id})`} stroke={INK} strokeWidth={1.5} />
      <text
        x={bar.before === undefined ? width : '100%'}
        dx={bar.before === undefined ? 10 : 0}
        y={bar.before === undefined ? high / 2 + 1 : 16}
        textAnchor={bar.before === undefined ? 'start' : 'end'}
        dominantBaseline="central"
        className={styles.number}
      >
        {bar.text}
      </text>
    </svg>
  );
}

/** Grid lines behind the rows and tick labels under them. */
export function Grid(props: {
  readonly ticks: readonly number[];
  readonly end: number;
  readonly format: (value: number) => string;
  readonly room?: number;
}): ReactNode {
  const { ticks, end, format, room = ROOM } = props;
  return (
    <svg className={styles.grid} width="100%" height="100%" overflow="visible" aria-hidden="true">
      <svg aria-hidden="true" height="100%" width="100%" overflow="visible" className={styles.lines}>
        {ticks.map((tick) => (
          <line
            key={tick}
            x1={placePercent(tick, end, room)}
            x2={placePercent(tick, end, room)}
            y1="0"
            y2="100%"
            stroke={tick === 0 ? INK : '#C9D3D1'}
            strokeWidth={tick === 0 ? 2 : 1.5}
          />
        ))}
      </svg>
      {ticks.map((tick) => (
        <text key={tick} x={placePercent(tick, end, room)} y="100%" dy="1.4em" textAnchor="middle" className={styles.tick}>
          {format(tick)}
        </text>
      ))}
    </svg>
  );
}
