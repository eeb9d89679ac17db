// Which lot is in hand, right or wrong, after a scan.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import { Icon } from '../marks/icon.tsx';
import styles from './lot-chip.module.css';

export function LotChip(props: {
  readonly tone: 'ok' | 'stop' | 'plain';
  readonly before: string;
  readonly code: string;
  readonly after?: string;
}): ReactNode {
  return (
    <p className={classNames(styles.chip, styles[props.tone])}>
      <span className={styles.icon}>
        <Icon name="scan" size="1.3em" />
      </span>
      <span>
        {props.before}{' '}
        <bdi dir="ltr" className="type-strong">
          {props.code}
        </bdi>
        {props.after && ` ${props.after}`}
      </span>
    </p>
  );
}
