// The migrated file is the schema of the code, in full, and every table of it is strict and guarded.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { generateSQLiteDrizzleJson, generateSQLiteMigration } from 'drizzle-kit/api';
import { describe, expect, onTestFinished, test } from 'vitest';
import { MIGRATIONS_DIR, readMigrations } from '#db/migrate.ts';
import { SCHEMA_VERSION } from '#db/open.ts';
import { schema } from '#test/support/schema-tables.ts';
import { freshShop } from '#test/support/shop-db.ts';

interface Part {
  readonly type: string;
  readonly name: string;
  readonly sql: string;
}

/** Tables and indexes as SQLite keeps them, with what is written by hand (STRICT) taken off. */
const partsOf = (sqlite: Database.Database): readonly Part[] =>
  sqlite
    .prepare<[], Part>("SELECT type, name, sql FROM sqlite_schema WHERE type IN ('table', 'index') AND sql IS NOT NULL ORDER BY type, name")
    .all()
    .map((part) => ({ ...part, sql: part.sql.replace(/\s+/g, ' ').replace(/ STRICT$/, '') }));

const tableNames = (sqlite: Database.Database): readonly string[] =>
  sqlite
    .prepare<[], string>("SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND name NOT LIKE 'sqlite_%'")
    .pluck()
    .all();

const nothing = await generateSQLiteDrizzleJson({});
const fromCode = await generateSQLiteDrizzleJson({ ...schema }, nothing.id, 'snake_case');

describe('the migrated schema', () => {
  test('is the one that the code describes', async () => {
    const made = new Database(':memory:');
    onTestFinished(() => void made.close());
    for (const statement of await generateSQLiteMigration(nothing, fromCode)) made.exec(statement);
    expect(partsOf(freshShop().sqlite)).toEqual(partsOf(made));
  });

  test('has nothing pending against the last snapshot', async () => {
    const last = String(readMigrations(MIGRATIONS_DIR).length - 1).padStart(4, '0');
    const snapshot = JSON.parse(readFileSync(join(MIGRATIONS_DIR, 'meta', `${last}_snapshot.json`), 'utf8'));
    expect(await generateSQLiteMigration(snapshot, fromCode)).toEqual([]);
  });

  test('is as many migrations old as the code says', () => expect(readMigrations(MIGRATIONS_DIR)).toHaveLength(SCHEMA_VERSION));

  test('lists no table that is not STRICT', () => {
    const lax = "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'";
    expect(freshShop().sqlite.prepare(lax).pluck().all()).toEqual([]);
  });

  test('guards every table against change and removal', () => {
    const { sqlite } = freshShop();
    const guards = new Set(sqlite.prepare("SELECT name FROM sqlite_schema WHERE type = 'trigger'").pluck().all());
    const names = tableNames(sqlite);
    expect(names.length).toBeGreaterThan(50);
    expect(names.flatMap((name) => [`${name}_no_update`, `${name}_no_delete`]).filter((guard) => !guards.has(guard))).toEqual([]);
  });
});
