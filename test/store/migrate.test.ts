// Migrations: a copy first, all or nothing, and no row lost on the way.
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { configure, shopDbOver } from '#db/connection.ts';
import { MIGRATIONS_DIR, migrateFile, migrateShop, readMigrations } from '#db/migrate.ts';
import { APPLICATION_ID, openShopDb, UnfitFile } from '#db/open.ts';
import { endOrderClaim, findOrder, insertOrderClaim } from '#db/orders.ts';
import { shopFile } from '#db/paths.ts';
import { freshFolder } from '#test/support/shop-db.ts';
import { BENCH, CHECKER, insertLots, insertShop, later, MIXER, placeOrder, publish } from '#test/support/shop-facts.ts';

const REAL = readMigrations(MIGRATIONS_DIR);

const PARENT_AND_CHILD = `
  CREATE TABLE parent (id INTEGER PRIMARY KEY, name TEXT) STRICT;
  CREATE TABLE child (id INTEGER PRIMARY KEY, parent_id INTEGER NOT NULL REFERENCES parent(id) ON DELETE CASCADE) STRICT;`;

/** How drizzle-kit changes a column: a new table, the rows over, the old table away. */
const REBUILD_PARENT = `
  PRAGMA foreign_keys=OFF;--> statement-breakpoint
  CREATE TABLE __new_parent (id INTEGER PRIMARY KEY, name TEXT NOT NULL) STRICT;--> statement-breakpoint
  INSERT INTO __new_parent SELECT id, name FROM parent;--> statement-breakpoint
  DROP TABLE parent;--> statement-breakpoint
  ALTER TABLE __new_parent RENAME TO parent;--> statement-breakpoint
  PRAGMA foreign_keys=ON;`;

/** A file at the first migration with one parent and two children. */
function family(): string {
  const file = join(freshFolder(), 'family.db');
  migrateFile(file, [PARENT_AND_CHILD]);
  const sqlite = new Database(file);
  sqlite.exec("INSERT INTO parent VALUES (1, 'one'); INSERT INTO child VALUES (1, 1), (2, 1);");
  sqlite.close();
  return file;
}

function ask(file: string, sql: string): unknown {
  const sqlite = new Database(file, { readonly: true });
  const found = sqlite.prepare(sql).pluck().get();
  sqlite.close();
  return found;
}

describe('a new file', () => {
  test('gets every migration, its mark and its version, and no copy', () => {
    const folder = freshFolder();
    expect(migrateShop(folder)).toBeNull();
    expect(ask(shopFile(folder), 'PRAGMA user_version')).toBe(REAL.length);
    expect(ask(shopFile(folder), 'PRAGMA application_id')).toBe(APPLICATION_ID);
    expect(migrateShop(folder)).toBeNull();
  });

  test('that an earlier start left empty is made all the same', () => {
    const file = join(freshFolder(), 'shop.db');
    new Database(file).close();
    migrateFile(file);
    openShopDb(file).close();
  });
});

describe('a table that is rebuilt', () => {
  test('keeps the rows that point to it', () => {
    const file = family();
    migrateFile(file, [PARENT_AND_CHILD, REBUILD_PARENT]);
    expect(ask(file, 'SELECT count(*) FROM child')).toBe(2);
    expect(ask(file, 'PRAGMA user_version')).toBe(2);
  });

  test('would lose them with foreign keys on, which a transaction cannot switch off', () => {
    const sqlite = new Database(family());
    sqlite.pragma('foreign_keys = ON');
    sqlite.transaction(() => sqlite.exec(REBUILD_PARENT))();
    expect(sqlite.prepare('SELECT count(*) FROM child').pluck().get()).toBe(0);
    sqlite.close();
  });

  test('of the real schema keeps the rows that point to it', () => {
    const file = join(freshFolder(), 'shop.db');
    migrateFile(file);
    const db = openShopDb(file);
    db.write(insertShop);
    db.close();
    const made = String(ask(file, "SELECT sql FROM sqlite_schema WHERE name = 'station'"));
    const rebuilt = [
      made.replace('`station`', '`__new_station`').replaceAll('"station".', '"__new_station".'),
      'INSERT INTO __new_station SELECT * FROM station',
      'DROP TABLE station',
      'ALTER TABLE __new_station RENAME TO station',
    ];
    migrateFile(file, [...REAL, `${rebuilt.join(';\n')};`]);
    expect(ask(file, 'SELECT count(*) FROM station')).toBe(2);
    expect(ask(file, 'SELECT count(*) FROM station_scale')).toBe(1);
  });
});

describe('an older file', () => {
  test('with a claimed order keeps the claim, and the order can then change hands', () => {
    const file = join(freshFolder(), 'shop.db');
    migrateFile(file, REAL.slice(0, 1));
    const sqlite = new Database(file);
    configure(sqlite);
    const { orderId } = shopDbOver(sqlite).write((tx) => {
      insertShop(tx);
      insertLots(tx);
      return placeOrder(tx, 1, publish(tx, 'First').hash);
    });
    sqlite.prepare('INSERT INTO order_claim VALUES (?, ?, ?, ?)').run(orderId, MIXER, BENCH, later(1));
    sqlite.close();
    migrateFile(file);
    const db = openShopDb(file);
    const claim = db.write((tx) => {
      const before = findOrder(tx, orderId)?.claim ?? null;
      endOrderClaim(tx, before, { byAccountId: MIXER, reason: 'handed over', atMs: later(2) });
      insertOrderClaim(tx, { orderId, byAccountId: CHECKER, stationId: BENCH, atMs: later(2) });
      return { before, after: findOrder(tx, orderId)?.claim };
    });
    db.close();
    expect(claim.before).toEqual({ orderId, claimNo: 1, byAccountId: MIXER, stationId: BENCH, atMs: later(1) });
    expect(claim.after).toMatchObject({ claimNo: 2, byAccountId: CHECKER });
  });

  test('is copied whole before anything changes', () => {
    const file = family();
    const copy = migrateFile(file, [PARENT_AND_CHILD, REBUILD_PARENT]);
    expect(copy).toBe(`${file}.schema-1`);
    expect(ask(copy ?? '', 'SELECT count(*) FROM child')).toBe(2);
    expect(ask(copy ?? '', 'PRAGMA user_version')).toBe(1);
  });

  test('stays as it was when a migration fails halfway', () => {
    const file = family();
    const failing = "INSERT INTO parent VALUES (2, 'two'); SELECT no_such_thing;";
    expect(() => migrateFile(file, [PARENT_AND_CHILD, failing])).toThrow(/no_such_thing/);
    expect(ask(file, 'SELECT count(*) FROM parent')).toBe(1);
    expect(ask(file, 'PRAGMA user_version')).toBe(1);
  });

  test('stays as it was when a migration leaves rows that point nowhere', () => {
    const file = family();
    expect(() => migrateFile(file, [PARENT_AND_CHILD, 'DELETE FROM parent;'])).toThrow(/migration 2 leaves rows that point nowhere/);
    expect(ask(file, 'SELECT count(*) FROM parent')).toBe(1);
    expect(ask(file, 'SELECT count(*) FROM child')).toBe(2);
  });
});

describe('a file that does not fit', () => {
  test('of another program is left alone', () => {
    const file = join(freshFolder(), 'other.db');
    const other = new Database(file);
    other.exec('CREATE TABLE theirs (id INTEGER PRIMARY KEY)');
    other.close();
    expect(() => migrateFile(file)).toThrow(UnfitFile);
    expect(() => openShopDb(file)).toThrow(/is not a shop's file/);
    expect(ask(file, 'SELECT count(*) FROM sqlite_schema')).toBe(1);
  });

  test('of a newer version asks for a newer program', () => {
    const file = join(freshFolder(), 'shop.db');
    migrateFile(file, [...REAL, 'CREATE TABLE tomorrow (id INTEGER PRIMARY KEY) STRICT;']);
    expect(() => migrateFile(file)).toThrow(/newer version/);
    expect(() => openShopDb(file)).toThrow(/newer version/);
  });

  test('of an older version is not opened before it is migrated', () => {
    const file = join(freshFolder(), 'shop.db');
    migrateFile(file, []);
    const sqlite = new Database(file);
    sqlite.pragma(`application_id = ${APPLICATION_ID}`);
    sqlite.close();
    expect(() => openShopDb(file)).toThrow(/older schema \(0 of \d+\): start the shop once/);
  });
});
