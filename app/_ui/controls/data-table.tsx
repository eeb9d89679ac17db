// A real table for reading: caption, scoped heads, numbers right or on the point. Editing grids are another thing. In a narrow office page
// each row becomes a block whose cells carry the words of their heads: a table of many columns never scrolls sideways.
import type { ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import { PointNumber } from '../figure/point-number.tsx';
import styles from './data-table.module.css';

export interface TableColumn {
  readonly id: string;
  /** The unit belongs here: "Add, g". */
  readonly head: ReactNode;
  /** point: cells are number texts that line up on the decimal sign. */
  readonly align?: 'start' | 'end' | 'point';
  readonly wholeDigits?: 1 | 2 | 3 | 4 | 5 | 6;
  readonly fractionDigits?: 0 | 1 | 2 | 3 | 4;
  readonly sort?: { readonly href: string; readonly direction: 'ascending' | 'descending' | 'none' };
}

export interface TableRow {
  readonly id: string;
  readonly cells: readonly ReactNode[];
  readonly look?: 'plain' | 'current' | 'care' | 'strong';
}

export interface DataTableProps {
  readonly caption: ReactNode;
  readonly showCaption?: boolean;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  readonly density?: 'compact' | 'usual' | 'roomy';
  readonly decimalSign?: '.' | ',';
  /** Said in place of rows: what it is, why it is empty, what to do. */
  readonly empty?: ReactNode;
  /** Head and first column stay while the rest scrolls. */
  readonly sticky?: boolean;
}

const FEW_COLUMNS = 4;

export function DataTable(props: DataTableProps): ReactNode {
  const { caption, showCaption, columns, rows, density = 'usual', decimalSign = '.', empty, sticky } = props;
  const table = (
    <table className={classNames(styles.table, styles[density], sticky && styles.sticky, columns.length > FEW_COLUMNS && styles.many)}>
      <caption className={showCaption ? classNames(styles.caption, 'type-heading') : 'for-readers'}>{caption}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column.id} scope="col" className={styles[column.align ?? 'start']} aria-sort={column.sort?.direction}>
              {column.sort ? <SortLink column={column} sort={column.sort} /> : column.head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.id} className={styles[row.look ?? 'plain']}>
            {columns.map((column, index) => (
              <Cell key={column.id} column={column} first={index === 0} decimalSign={decimalSign}>
                {row.cells[index]}
              </Cell>
            ))}
          </tr>
        ))}
        {rows.length === 0 && empty && (
          <tr>
            <td colSpan={columns.length} className={styles.empty}>
              {empty}
            </td>
          </tr>
        )}
      </tbody>
    </table>
  );
  return sticky ? <div className={styles.scroll}>{table}</div> : table;
}

function Cell(props: {
  readonly column: TableColumn;
  readonly first: boolean;
  readonly decimalSign: '.' | ',';
  readonly children: ReactNode;
}): ReactNode {
  const { column, first, decimalSign, children } = props;
  const align = styles[column.align ?? 'start'];
  if (first) {
    return (
      <th scope="row" className={align}>
        {children}
      </th>
    );
  }
  const onPoint = column.align === 'point' && typeof children === 'string';
  return (
    <td className={align} data-head={typeof column.head === 'string' ? column.head : undefined}>
      {onPoint ? (
        <PointNumber
          text={children}
          decimalSign={decimalSign}
          wholeDigits={column.wholeDigits ?? 3}
          fractionDigits={column.fractionDigits ?? 2}
        />
      ) : (
        children
      )}
    </td>
  );
}

function SortLink({ column, sort }: { readonly column: TableColumn; readonly sort: NonNullable<TableColumn['sort']> }): ReactNode {
  return (
    <a href={sort.href} className={styles.sort}>
      {column.head}
      <svg width="0.7em" height="1em" viewBox="0 0 10 14" fill="currentColor" aria-hidden="true">
        {sort.direction !== 'descending' && <path d="M5 1L9 6H1Z" />}
        {sort.direction !== 'ascending' && <path d="M5 13L1 8H9Z" />}
      </svg>
    </a>
  );
}
