// Queries are built once per connection and then only run: building costs more than running.
import type { InferSelectModel } from 'drizzle-orm';
import { getTableColumns, sql } from 'drizzle-orm';
import type { SQLiteTable } from 'drizzle-orm/sqlite-core';
import { invariant } from '#lib/base/invariant.ts';
import type { Orm, Reading, Writing } from './connection.ts';

/** A row of a table as a domain value: every column, nulls spelled out. */
export type Row<T extends SQLiteTable> = Readonly<InferSelectModel<T>>;

/** Builds a query on first use of a connection, and refuses to run it outside a unit of work. */
export function prepared<Q>(build: (orm: Orm) => Q): (tx: Reading) => Q {
  const built = new WeakMap<Orm, Q>();
  return ({ orm }) => {
    invariant(orm.$client.inTransaction, 'a query runs inside a unit of work');
    const known = built.get(orm);
    if (known !== undefined) return known;
    const made = build(orm);
    built.set(orm, made);
    return made;
  };
}

/** The one way a row gets into a table. */
export function inserting<T extends SQLiteTable>(table: T): (tx: Writing, row: Row<T>) => void {
  const names = Object.keys(getTableColumns(table));
  const insert = prepared((orm) => {
    const places = Object.fromEntries(names.map((name) => [name, sql.placeholder(name)]));
    return orm
      .insert(table)
      .values(places as T['$inferInsert'])
      .prepare();
  });
  return (tx, row) => void insert(tx).run(row);
}

/** A named value of a query, e.g. `eq(jar.batchCode, given('batchCode'))`. */
export const given = sql.placeholder;
