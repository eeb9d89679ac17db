// The bench: one dark strip that says where you are, the steps at the inline start, one thing to do beside them.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import { SkipLink } from '../controls/skip-link.tsx';
import { BrandMark } from '../drawing/brand-mark.tsx';
import { Digits } from '../weighing/digits.tsx';
import styles from './bench-frame.module.css';

export interface BenchFrameProps {
  readonly word: string;
  readonly place: string;
  /** The order or jar in hand. */
  readonly code?: string;
  /** Scale heard, who is here, the time. */
  readonly end?: ReactNode;
  readonly skip: string;
  /** What went wrong: it lies over the strip, so that nothing under the finger moves. */
  readonly alert?: ReactNode;
  readonly rail?: ReactNode;
  /** Buttons in one row at the foot. */
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}

export function BenchFrame({ word, place, code, end, skip, alert, rail, actions, children }: BenchFrameProps): ReactNode {
  return (
    <div data-face="bench" className={classNames(styles.bench, 'type-body')}>
      <SkipLink>{skip}</SkipLink>
      <header className={styles.header} data-ground="ink" data-screen-only="">
        <BrandMark heightEm={1.5} ink="on-ink" />
        <span className={styles.word}>{word}</span>
        <span>{place}</span>
        {code && <Digits look="mono" text={code} className={styles.code} />}
        {end && <span className={styles.end}>{end}</span>}
        <div role="alert" className={styles.alert}>
          {alert}
        </div>
      </header>
      <div className={classNames(styles.body, rail !== undefined && styles.railed)}>
        {rail}
        <main id="main" className={styles.main} tabIndex={-1}>
          <div className={styles.content}>{children}</div>
          {actions && <div className={styles.actions}>{actions}</div>}
        </main>
      </div>
    </div>
  );
}
