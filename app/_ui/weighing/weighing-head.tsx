// Two cells under the name of what is weighed: how much to weigh, and what lies on the scale now.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import { BenchName } from './bench-name.tsx';
import { Digits } from './digits.tsx';
import styles from './weighing-head.module.css';

export interface WeighingHeadProps {
  /** Name as the bench writes it; `spokenName` where letters are raised to tell look-alikes apart. */
  readonly name: string;
  readonly spokenName?: string;
  /** The lot chip. */
  readonly end?: ReactNode;
  readonly weigh: { readonly word: string; readonly target: string; readonly unit: string; readonly range: string };
  readonly now: { readonly word: string; readonly digits: string; readonly unit: string; readonly silent?: boolean };
}

export function WeighingHead({ name, spokenName, end, weigh, now }: WeighingHeadProps): ReactNode {
  return (
    <section className={styles.head}>
      <div className={styles.name}>
        <h1 className="type-title">
          <BenchName name={name} spokenName={spokenName} />
        </h1>
        {end}
      </div>
      <div className={styles.cells}>
        <div className={styles.weigh}>
          <p className="type-second">{weigh.word}</p>
          <p>
            <Digits look="target" text={weigh.target} unit={weigh.unit} />
          </p>
          <p className={classNames(styles.range, 'type-mono')}>
            <bdi dir="ltr">{weigh.range}</bdi>
          </p>
        </div>
        <div className={styles.now}>
          <p className="type-second">{now.word}</p>
          <p className={classNames(styles.live, now.silent && styles.silent)}>
            {now.silent ? now.digits : <Digits look="digits" text={now.digits} unit={now.unit} />}
          </p>
        </div>
      </div>
    </section>
  );
}
