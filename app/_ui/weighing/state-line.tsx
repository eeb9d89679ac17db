// What the scale says, in one line of mark and words, and the quiet legend of all five states under the gauge.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import type { WeighingState } from '../marks/weighing-mark.tsx';
import { WEIGHING_STATES, WeighingMark } from '../marks/weighing-mark.tsx';
import styles from './state-line.module.css';

export function StateLine(props: { readonly state: WeighingState; readonly words: ReactNode; readonly source?: ReactNode }): ReactNode {
  return (
    <div className={styles.line}>
      <p className={classNames(styles.words, 'type-title')} role="status">
        <WeighingMark state={props.state} />
        <span>{props.words}</span>
      </p>
      {props.source && <span className={classNames(styles.source, 'type-second')}>{props.source}</span>}
    </div>
  );
}

export function StateLegend(props: { readonly state: WeighingState; readonly words: Readonly<Record<WeighingState, string>> }): ReactNode {
  return (
    <ul className={styles.legend} aria-hidden="true">
      {WEIGHING_STATES.map((state) => (
        <li key={state} className={classNames(styles.entry, state === props.state && styles.now)}>
          <WeighingMark state={state} />
          {props.words[state]}
        </li>
      ))}
    </ul>
  );
}
