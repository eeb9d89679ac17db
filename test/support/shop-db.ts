// Real SQLite for tests: the schema is made once per test file, and every test opens its own copy of the bytes.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { onTestFinished } from 'vitest';
import type { ShopDb } from '#db/connection.ts';
import { configure, shopDbOver } from '#db/connection.ts';
import { MIGRATIONS_DIR, readMigrations } from '#db/migrate.ts';

const template: { bytes?: Buffer } = {};

/** The file that all migrations make, as bytes. */
export function migratedBytes(): Buffer {
  if (template.bytes) return template.bytes;
  const sqlite = new Database(':memory:');
  for (const migration of readMigrations(MIGRATIONS_DIR)) sqlite.exec(migration);
  template.bytes = sqlite.serialize();
  sqlite.close();
  return template.bytes;
}

export interface TestShop {
  readonly db: ShopDb;
  /** The same connection, for trying what the queries would never do. */
  readonly sqlite: Database.Database;
}

/** An empty, migrated shop in memory; closed with the test. */
export function freshShop(): TestShop {
  const sqlite = new Database(migratedBytes());
  configure(sqlite);
  onTestFinished(() => void sqlite.close());
  return { db: shopDbOver(sqlite), sqlite };
}

/** An empty folder that goes with the test. */
export function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'jarwright-store-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
