// A figure: a finding as its title, the drawing and a table of the same numbers one switch apart, source and n under it.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import type { DataTableProps } from '../controls/data-table.tsx';
import { DataTable } from '../controls/data-table.tsx';
import { SegmentSwitch } from '../controls/segment-switch.tsx';
import { Icon } from '../marks/icon.tsx';
import styles from './figure.module.css';

export interface FigureProps {
  readonly id: string;
  /** A sentence that could be wrong: "Three combinations make up 46 % of sales". */
  readonly title: ReactNode;
  /** What is drawn, in one line. */
  readonly description: ReactNode;
  /** Source, range of dates and n. */
  readonly source: ReactNode;
  readonly table: Pick<DataTableProps, 'caption' | 'columns' | 'rows' | 'decimalSign'>;
  readonly csv?: { readonly href: string; readonly word: string };
  readonly words: { readonly view: string; readonly chart: string; readonly table: string };
  readonly children: ReactNode;
}

export function Figure({ id, title, description, source, table, csv, words, children }: FigureProps): ReactNode {
  return (
    <figure className={styles.figure} aria-labelledby={`${id}-title`}>
      <figcaption className={styles.caption}>
        <div className={styles.words}>
          <h3 id={`${id}-title`} className="type-heading">
            {title}
          </h3>
          <p className="type-second">{description}</p>
        </div>
        <SegmentSwitch
          legend={words.view}
          name={`${id}-view`}
          firstChosen="chart"
          segments={[
            { value: 'chart', label: words.chart, icon: 'chart' },
            { value: 'table', label: words.table },
          ]}
        />
      </figcaption>
      <div className={styles.chart}>{children}</div>
      <div className={styles.table}>
        <DataTable {...table} density="compact" />
      </div>
      <div className={classNames(styles.source, 'type-small', 'type-second')}>
        <span>{source}</span>
        {csv && (
          <a href={csv.href} download="" className={styles.csv}>
            <Icon name="download" size="1.1em" />
            {csv.word}
          </a>
        )}
      </div>
    </figure>
  );
}
