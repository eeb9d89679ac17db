// pH windows on one axis: an open bar a window, the common window as a band, the prediction as a dot with its error.
import type { ReactNode } from 'react';
import { INK } from '../drawing/lightness.ts';
import styles from './window-bars.module.css';

export interface Window {
  readonly id: string;
  readonly name: ReactNode;
  readonly from: number;
  readonly to: number;
}

export interface WindowBarsProps {
  readonly label: string;
  readonly axis: { readonly from: number; readonly to: number; readonly ticks: readonly { readonly at: number; readonly text: string }[] };
  readonly windows: readonly Window[];
  /** Left out where the windows do not meet. */
  readonly common?: { readonly from: number; readonly to: number };
  readonly prediction?: { readonly name: ReactNode; readonly at: number; readonly error: number };
}

export function WindowBars({ label, axis, windows, common, prediction }: WindowBarsProps): ReactNode {
  const place = (at: number): string =>
    `${(((Math.min(axis.to, Math.max(axis.from, at)) - axis.from) / (axis.to - axis.from)) * 100).toFixed(3)}%`;
  const length = (from: number, to: number): string => `${(((to - from) / (axis.to - axis.from)) * 100).toFixed(3)}%`;
  return (
    <div className={styles.plot} role="img" aria-label={label}>
      {common && (
        <svg aria-hidden="true" className={styles.band} overflow="visible">
          <rect x={place(common.from)} width={length(common.from, common.to)} height="100%" fill="#E3F2E8" />
          <line x1={place(common.from)} x2={place(common.from)} y1="0" y2="100%" stroke="#17633A" strokeWidth={2.5} />
          <line x1={place(common.to)} x2={place(common.to)} y1="0" y2="100%" stroke="#17633A" strokeWidth={2.5} />
        </svg>
      )}
      {windows.map((window) => (
        <div key={window.id} className={styles.row}>
          <span>{window.name}</span>
          <svg aria-hidden="true" width="100%" height={16} overflow="visible">
            <rect
              x={place(window.from)}
              y={1}
              width={length(Math.max(axis.from, window.from), Math.min(axis.to, window.to))}
              height={14}
              fill="#FFFFFF"
              stroke={INK}
              strokeWidth={2}
            />
          </svg>
        </div>
      ))}
      <div className={styles.row}>
        <span className="type-strong">{prediction?.name}</span>
        <svg aria-hidden="true" width="100%" height={26} overflow="visible">
          <line x1="0" x2="100%" y1={13} y2={13} stroke={INK} strokeWidth={2} />
          {axis.ticks.map((tick) => (
            <line key={tick.at} x1={place(tick.at)} x2={place(tick.at)} y1={8} y2={18} stroke={INK} strokeWidth={2} />
          ))}
          {prediction && <Prediction place={place} at={prediction.at} error={prediction.error} />}
        </svg>
      </div>
      <div className={styles.row}>
        <span />
        <svg aria-hidden="true" width="100%" height="1.4em" overflow="visible">
          {axis.ticks.map((tick) => (
            <text key={tick.at} x={place(tick.at)} y="1em" textAnchor="middle" className={styles.tick}>
              {tick.text}
            </text>
          ))}
        </svg>
      </div>
    </div>
  );
}

function Prediction(props: { readonly place: (at: number) => string; readonly at: number; readonly error: number }): ReactNode {
  const { place, at, error } = props;
  const survey = '#1D4E9E';
  return (
    <>
      <line x1={place(at - error)} x2={place(at + error)} y1={13} y2={13} stroke={survey} strokeWidth={9} />
      <line x1={place(at - error)} x2={place(at - error)} y1={3} y2={23} stroke={survey} strokeWidth={2.5} />
      <line x1={place(at + error)} x2={place(at + error)} y1={3} y2={23} stroke={survey} strokeWidth={2.5} />
      <circle cx={place(at)} cy={13} r={8} fill="#FFFFFF" stroke={survey} strokeWidth={5} />
    </>
  );
}
