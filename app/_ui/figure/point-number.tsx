// Numbers of one column line up on the point: whole part right, fraction left, both in tabular digits of one width.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import styles from './point-number.module.css';

export function PointNumber(props: {
  /** A number already in the reader's language, such as "24.6". */
  readonly text: string;
  readonly decimalSign: '.' | ',';
  readonly wholeDigits: 1 | 2 | 3 | 4 | 5 | 6;
  readonly fractionDigits: 0 | 1 | 2 | 3 | 4;
}): ReactNode {
  const { text, decimalSign, wholeDigits, fractionDigits } = props;
  const at = text.lastIndexOf(decimalSign);
  const whole = at < 0 ? text : text.slice(0, at);
  const fraction = at < 0 ? '' : text.slice(at);
  return (
    <bdi dir="ltr" className={classNames(styles.number, 'type-mono')}>
      <span className={classNames(styles.whole, styles[`w${wholeDigits}`])}>{whole}</span>
      {fractionDigits > 0 && <span className={classNames(styles.fraction, styles[`f${fractionDigits}`])}>{fraction}</span>}
    </bdi>
  );
}
