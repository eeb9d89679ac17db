// A section: heading, then a rule, then rows parted by seams. Rules and rhythm in place of boxes.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import styles from './section-head.module.css';

export function SectionHead(props: {
  readonly title: ReactNode;
  readonly end?: ReactNode;
  readonly level?: 2 | 3;
  readonly id?: string;
}): ReactNode {
  const Heading = props.level === 3 ? 'h3' : 'h2';
  return (
    <div className={styles.head}>
      <Heading id={props.id} className="type-heading">
        {props.title}
      </Heading>
      {props.end && <span className={classNames(styles.end, 'type-small', 'type-second')}>{props.end}</span>}
    </div>
  );
}

export interface RuledRow {
  readonly id: string;
  /** An icon, a mark or a small core. */
  readonly sign?: ReactNode;
  readonly title: ReactNode;
  readonly note?: ReactNode;
  /** A date, a count. */
  readonly end?: ReactNode;
  readonly action?: ReactNode;
}

/** `top` draws the section rule above; `plain` keeps titles regular, for lists of sentences. */
export const RuledList = (props: { readonly rows: readonly RuledRow[]; readonly top?: boolean; readonly plain?: boolean }): ReactNode => (
  <ul className={classNames(props.top && styles.top, props.plain && styles.plain)}>
    {props.rows.map((row) => (
      <li key={row.id} className={styles.row}>
        {row.sign && <span className={styles.sign}>{row.sign}</span>}
        <div className={styles.text}>
          <p className={styles.title}>{row.title}</p>
          {row.note && <p className="type-small type-second">{row.note}</p>}
        </div>
        {row.end && <span className={styles.side}>{row.end}</span>}
        {row.action && <span className={styles.action}>{row.action}</span>}
      </li>
    ))}
  </ul>
);
