// Facts are added, never changed: tried on every table that holds a row.
import { expect, test } from 'vitest';
import { shopWithEdition } from '#test/support/founded-shop.ts';
import type { TestShop } from '#test/support/shop-db.ts';
import { collect, makeJar } from '#test/support/shop-facts.ts';

const count = (sqlite: TestShop['sqlite'], name: string): unknown => sqlite.prepare(`SELECT count(*) FROM ${name}`).pluck().get();

test('facts stay: no table with a row lets it be changed, taken away or replaced', () => {
  const { db, sqlite, editionHash } = shopWithEdition();
  db.write((tx) => collect(tx, makeJar(tx, 1, editionHash).orderId));
  const tables = sqlite.prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all();
  const filled = tables.filter((name) => count(sqlite, name) !== 0);
  expect(filled.length).toBeGreaterThan(25);
  for (const name of filled) {
    const before = count(sqlite, name);
    const column = String(sqlite.prepare(`SELECT name FROM pragma_table_info('${name}') LIMIT 1`).pluck().get());
    expect(() => sqlite.exec(`UPDATE ${name} SET ${column} = ${column}`), name).toThrow(/facts are never changed/);
    expect(() => sqlite.exec(`DELETE FROM ${name}`), name).toThrow(/never taken away|erased only with its row/);
    expect(() => sqlite.exec(`REPLACE INTO ${name} SELECT * FROM ${name}`), name).toThrow();
    expect(count(sqlite, name), name).toBe(before);
  }
});
