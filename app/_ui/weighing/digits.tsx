// Large mono figures: gaps around point and hyphen look too wide there, so both are pulled in. Readers hear the plain text.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import styles from './digits.module.css';

export function Digits(props: {
  readonly text: string;
  readonly unit?: string;
  readonly look: 'digits' | 'code' | 'target' | 'mono';
  readonly className?: string;
}): ReactNode {
  const { text, unit, look, className } = props;
  return (
    <bdi dir="ltr" className={classNames(styles.line, `type-${look}`, className)}>
      <span className="for-readers">{unit ? `${text} ${unit}` : text}</span>
      <span aria-hidden="true" className={styles.figures}>
        {[...text].map((sign, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a sign is its place in the text
          <span key={index} className={narrow.has(sign) ? styles.narrow : undefined}>
            {sign}
          </span>
        ))}
      </span>
      {unit && (
        <span aria-hidden="true" className={styles.unit}>
          {unit}
        </span>
      )}
    </bdi>
  );
}

const narrow: ReadonlySet<string> = new Set(['.', ',', '-', '\u00a0']);
