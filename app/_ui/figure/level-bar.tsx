// How much of a limit is used, as one bar with the end mark at what is used; the words above give the numbers.
import type { ReactNode } from 'react';
import { useId } from 'react';
import type { Hatch } from '../drawing/hatch.tsx';
import { HatchPattern } from '../drawing/hatch.tsx';
import { INK } from '../drawing/lightness.ts';
import styles from './level-bar.module.css';

export function LevelBar(props: {
  readonly name: ReactNode;
  readonly words: ReactNode;
  readonly usedPpm: number;
  readonly hatch?: Hatch;
  readonly broken?: boolean;
}): ReactNode {
  const id = `level-${useId()}`;
  const { name, words, usedPpm, hatch = 'oil', broken } = props;
  const used = `${Math.min(100, usedPpm / 10_000)}%`;
  const edge = broken ? '#9B1B2E' : '#1D4E9E';
  return (
    <div className={styles.level}>
      <p className={styles.words}>
        <span className="type-heading">{name}</span>
        <span className="type-strong">{words}</span>
      </p>
      <svg width="100%" height={28} className={styles.bar} aria-hidden="true">
        <defs>
          <HatchPattern id={id} hatch={hatch} scale={0.8} />
        </defs>
        <rect width="100%" height="100%" fill="#FFFFFF" />
        <rect width={used} height="100%" fill={broken ? '#FCE6E8' : '#E5EDF8'} />
        <rect width={used} height="100%" fill={`url(#${id})`} />
        <rect width="100%" height="100%" fill="none" stroke={INK} strokeWidth={4} />
        <line x1={used} x2={used} y1="0" y2="100%" stroke={edge} strokeWidth={5} />
      </svg>
    </div>
  );
}
