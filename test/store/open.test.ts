// A connection has what it was promised, a unit of work is all or nothing, and an outage is told from a fault.
import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, onTestFinished, test } from 'vitest';
import type { Reading, ShopDb, Writing } from '#db/connection.ts';
import { migrateFile } from '#db/migrate.ts';
import { openShopDb } from '#db/open.ts';
import { Outage } from '#db/outage.ts';
import { findShop } from '#db/shop.ts';
import { listStations } from '#db/stations.ts';
import { Fault } from '#lib/base/invariant.ts';
import { freshFolder } from '#test/support/shop-db.ts';
import { insertShop } from '#test/support/shop-facts.ts';

function shopOnDisk(): { file: string; db: ShopDb } {
  const file = join(freshFolder(), 'shop.db');
  migrateFile(file);
  const db = openShopDb(file);
  onTestFinished(() => db.close());
  return { file, db };
}

function outageOf(work: () => unknown): Outage {
  try {
    work();
  } catch (error) {
    if (error instanceof Outage) return error;
    throw error;
  }
  throw new Error('no outage');
}

const pragma = (db: ShopDb, name: string): unknown => db.read((tx) => tx.orm.$client.pragma(name, { simple: true }));

describe('an opened file', () => {
  test.each([
    ['journal_mode', 'wal'],
    ['synchronous', 2],
    ['foreign_keys', 1],
    ['trusted_schema', 0],
    ['recursive_triggers', 1],
    ['secure_delete', 1],
    ['busy_timeout', 2_000],
    ['application_id', 0x4a41_5257],
  ])('has %s = %s, the second time too', (name, value) => {
    const { file, db } = shopOnDisk();
    expect(pragma(db, name)).toBe(value);
    const again = openShopDb(file);
    expect(pragma(again, name)).toBe(value);
    again.close();
  });

  test('that is not there is an outage, and is not made', () => {
    const file = join(freshFolder(), 'none.db');
    expect(outageOf(() => openShopDb(file))).toMatchObject({ kind: 'unreachable', code: 'SQLITE_CANTOPEN' });
    expect(existsSync(file)).toBe(false);
  });
});

describe('a unit of work', () => {
  test('that throws leaves nothing behind', () => {
    const { db } = shopOnDisk();
    const broken = () =>
      db.write((tx) => {
        insertShop(tx);
        throw new Error('changed my mind');
      });
    expect(broken).toThrow('changed my mind');
    expect(db.read(findShop)).toBeUndefined();
    expect(() => db.write(insertShop)).not.toThrow();
  });

  test('may not start another', () => {
    const { db } = shopOnDisk();
    expect(() => db.write(() => db.write(() => 0))).toThrow(Fault);
    expect(() => db.read(() => db.read(() => 0))).toThrow(Fault);
  });

  test('may not return a promise, and is undone', () => {
    const { db } = shopOnDisk();
    const later = () =>
      db.write((tx) => {
        insertShop(tx);
        return Promise.resolve();
      });
    expect(later).toThrow(/synchronous/);
    expect(db.read(findShop)).toBeUndefined();
  });

  test('cannot be kept for later', () => {
    const { db } = shopOnDisk();
    const kept: Reading[] = [];
    db.read((tx) => void kept.push(tx));
    expect(() => listStations(kept[0] as Reading)).toThrow(/inside a unit of work/);
  });

  test('reads one snapshot, whatever is written meanwhile', () => {
    const { file, db } = shopOnDisk();
    const other = openShopDb(file);
    db.read((tx) => {
      expect(listStations(tx)).toEqual([]);
      other.write(insertShop);
      expect(listStations(tx)).toEqual([]);
    });
    expect(db.read(listStations)).toHaveLength(2);
    other.close();
  });

  test('is on the disk after a checkpoint, with an empty WAL', () => {
    const { file, db } = shopOnDisk();
    db.write(insertShop);
    expect(statSync(`${file}-wal`).size).toBeGreaterThan(0);
    db.checkpoint();
    expect(statSync(`${file}-wal`).size).toBe(0);
  });
});

describe('an outage', () => {
  test('is a file that somebody else writes to', () => {
    const { file, db } = shopOnDisk();
    const other = new Database(file);
    onTestFinished(() => void other.close());
    other.exec('BEGIN IMMEDIATE');
    db.read((tx) => tx.orm.$client.pragma('busy_timeout = 10'));
    expect(outageOf(() => db.write(insertShop))).toMatchObject({ kind: 'busy', code: 'SQLITE_BUSY' });
    other.exec('ROLLBACK');
    db.write(insertShop);
    expect(db.read(listStations)).toHaveLength(2);
  });

  test('is a full disk, after which the file is as before', () => {
    const { db } = shopOnDisk();
    const fill = (tx: Writing): void => {
      tx.orm.$client.pragma(`max_page_count = ${Number(tx.orm.$client.pragma('page_count', { simple: true })) + 1}`);
      const insert = tx.orm.$client.prepare(
        "INSERT INTO evidence_file (sha256, name, media_type, size_bytes, at_ms) VALUES (?, ?, '', 0, 0)",
      );
      for (const digit of '0123456789abcdef') insert.run(digit.repeat(64), 'x'.repeat(4_000));
    };
    expect(outageOf(() => db.write(fill))).toMatchObject({ kind: 'full', code: 'SQLITE_FULL' });
    db.read((tx) => {
      expect(tx.orm.$client.prepare('SELECT count(*) FROM evidence_file').pluck().get()).toBe(0);
      expect(tx.orm.$client.pragma('integrity_check', { simple: true })).toBe('ok');
    });
  });

  test('is a write to a file opened for reading', () => {
    const { file } = shopOnDisk();
    const reader = openShopDb(file, { readonly: true });
    expect(outageOf(() => reader.write(insertShop))).toMatchObject({ kind: 'readonly' });
    expect(reader.read(findShop)).toBeUndefined();
    reader.close();
  });

  test('is not a broken constraint, nor a fault', () => {
    const { db } = shopOnDisk();
    db.write(insertShop);
    const twice = () => db.write(insertShop);
    expect(twice).toThrow();
    expect(twice).not.toThrow(Outage);
  });
});
