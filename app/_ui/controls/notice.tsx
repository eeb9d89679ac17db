// One thing that a person should know now. One a view; the mark and the bold sentence carry it without colour.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import type { Tone } from '../marks/state-mark.tsx';
import { StateMark } from '../marks/state-mark.tsx';
import styles from './notice.module.css';

export interface NoticeProps {
  readonly tone: Extract<Tone, 'ok' | 'care' | 'stop' | 'plain'>;
  readonly title: ReactNode;
  readonly children?: ReactNode;
  /** A link or a button at the end. */
  readonly end?: ReactNode;
  readonly mark?: ReactNode;
  /** "alert" interrupts a reader, "status" waits for a pause. */
  readonly role?: 'alert' | 'status';
  /** The finding of the page: title in heading size. */
  readonly large?: boolean;
  readonly id?: string;
}

export function Notice({ tone, title, children, end, mark, role, large, id }: NoticeProps): ReactNode {
  return (
    <div id={id} role={role} className={classNames(styles.notice, styles[tone], large && styles.large)}>
      <span className={styles.mark}>{mark ?? <StateMark tone={tone} />}</span>
      <div className={styles.text}>
        <p className={large ? 'type-heading' : 'type-strong'}>{title}</p>
        {children && <div className={styles.more}>{children}</div>}
      </div>
      {end && <span className={styles.end}>{end}</span>}
    </div>
  );
}
