// Done, caution, stop, waiting: mark and colour of a state. The word always stands beside it.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import { JudgementMark } from './judgement-mark.tsx';
import styles from './state-mark.module.css';
import { WeighingMark } from './weighing-mark.tsx';

export const TONES = ['ok', 'care', 'stop', 'hold', 'plain', 'open'] as const;
/** ok = done or permitted · care = caution or widens use · stop = stopped · hold = can still be stopped · plain = told only · open = still to do. */
export type Tone = (typeof TONES)[number];

const marks = {
  ok: <WeighingMark state="stable" size="1.25em" />,
  care: <JudgementMark kind="caution" size="1.25em" />,
  stop: <JudgementMark kind="never" size="1.25em" />,
  hold: <JudgementMark kind="limit" size="1.25em" />,
  plain: (
    <svg width="1.25em" height="1.25em" viewBox="0 0 24 24" fill="currentColor" aria-hidden="true">
      <circle cx={12} cy={12} r={5} />
    </svg>
  ),
  open: <JudgementMark kind="fine" size="1.25em" />,
} satisfies Record<Tone, ReactNode>;

export const StateMark = ({ tone }: { readonly tone: Tone }): ReactNode => (
  <span className={classNames(styles.mark, styles[tone])}>{marks[tone]}</span>
);

/** Mark and word in one line. */
export function StateWord(props: { readonly tone: Tone; readonly children: ReactNode }): ReactNode {
  return (
    <span className={classNames(styles.word, styles[props.tone], props.tone !== 'plain' && 'type-strong')}>
      {marks[props.tone]}
      <span>{props.children}</span>
    </span>
  );
}
