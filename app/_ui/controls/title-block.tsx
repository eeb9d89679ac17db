// Facts about a document in one ruled strip, as on a survey sheet.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import styles from './title-block.module.css';

export interface TitleCell {
  readonly label: string;
  readonly value: ReactNode;
  readonly note?: ReactNode;
  /** Codes and hashes in the mono face, left to right. */
  readonly code?: boolean;
  readonly stop?: boolean;
}

export function TitleBlock({ cells, large }: { readonly cells: readonly TitleCell[]; readonly large?: boolean }): ReactNode {
  return (
    <dl className={classNames(styles.block, large && styles.large)} data-keep="">
      {cells.map((cell) => (
        <div key={cell.label} className={styles.cell}>
          <dt className="type-small type-second">{cell.label}</dt>
          <dd className={classNames(styles.value, cell.code && 'type-mono', cell.stop && styles.stop)}>
            {cell.code ? <bdi dir="ltr">{cell.value}</bdi> : cell.value}
          </dd>
          {cell.note && <dd className="type-small">{cell.note}</dd>}
        </div>
      ))}
    </dl>
  );
}
