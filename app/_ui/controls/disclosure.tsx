// What is shown only when asked for, between two rules. Native, so that it opens without script and every reader knows it.
import type { ReactNode } from 'react';
import { Icon } from '../marks/icon.tsx';
import styles from './disclosure.module.css';

export function Disclosure(props: { readonly summary: ReactNode; readonly children: ReactNode; readonly open?: boolean }): ReactNode {
  return (
    <details className={styles.details} open={props.open}>
      <summary className={styles.summary}>
        <span className={styles.sign}>
          <Icon name="chevron-end" size="1em" />
        </span>
        {props.summary}
      </summary>
      <div className={styles.body}>{props.children}</div>
    </details>
  );
}
