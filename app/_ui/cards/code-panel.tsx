// The code that a person shows or says at the counter, with its 2D twin in a cell of its own.
import type { ReactNode } from 'react';
import { Digits } from '../weighing/digits.tsx';
import styles from './code-panel.module.css';

export interface CodePanelProps {
  readonly word: string;
  readonly code: string;
  readonly note: ReactNode;
  /** The 2D code as an SVG of its own. */
  readonly symbol?: ReactNode;
}

export function CodePanel({ word, code, note, symbol }: CodePanelProps): ReactNode {
  return (
    <section className={styles.panel}>
      <div className={styles.words}>
        <p className="type-label type-second">{word}</p>
        <p className={styles.code}>
          <Digits look="code" text={code} />
        </p>
        <p className="type-label type-second">{note}</p>
      </div>
      {symbol && <div className={styles.symbol}>{symbol}</div>}
    </section>
  );
}
