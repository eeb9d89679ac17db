// One connection to the shop's file and its two kinds of transaction. A unit of work is a plain synchronous function: it loads, decides
// and saves, and either all of it is on the disk or none of it.
import './driver-guard.ts';
import type Database from 'better-sqlite3';
import type { BetterSQLite3Database } from 'drizzle-orm/better-sqlite3';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import { invariant } from '#lib/base/invariant.ts';
import { asOutage } from './outage.ts';

export type Orm = BetterSQLite3Database & { readonly $client: Database.Database };

/** What a query needs: handed to a unit of work, worth nothing outside it. */
export interface Reading {
  readonly orm: Orm;
}

export interface Writing extends Reading {
  readonly mayWrite: true;
}

export interface ShopDb {
  /** Runs the work on one snapshot. @throws Outage */
  read<T>(work: (tx: Reading) => T): T;
  /** Runs the work as the only writer, durable on return, undone when it throws. @throws Outage */
  write<T>(work: (tx: Writing) => T): T;
  /** Brings everything written so far from the WAL into the file and empties the WAL. @throws Outage */
  checkpoint(): void;
  close(): void;
}

export const BUSY_TIMEOUT_MS = 2_000;

/** Sets what must hold on every open and reads it back: SQLite ignores what it does not know or cannot do. */
export function configure(sqlite: Database.Database): void {
  // Opening an existing WAL file would otherwise leave NORMAL, which may lose a weighed jar in a power cut.
  setPragma(sqlite, 'synchronous', 2);
  setPragma(sqlite, 'foreign_keys', 1);
  setPragma(sqlite, 'busy_timeout', BUSY_TIMEOUT_MS);
  setPragma(sqlite, 'trusted_schema', 0);
  // Without it, REPLACE takes rows away behind the back of the triggers.
  setPragma(sqlite, 'recursive_triggers', 1);
  // Erased means overwritten.
  setPragma(sqlite, 'secure_delete', 1);
}

export function setPragma(sqlite: Database.Database, name: string, value: number | string): void {
  sqlite.pragma(`${name} = ${value}`);
  const found = sqlite.pragma(name, { simple: true });
  invariant(found === value, `PRAGMA ${name} is ${String(found)}, not ${value}`);
}

/** The transactions over a configured connection. */
export function shopDbOver(sqlite: Database.Database): ShopDb {
  const orm: Orm = drizzle(sqlite, { casing: 'snake_case' });
  const begin = sqlite.prepare('BEGIN');
  const beginImmediate = sqlite.prepare('BEGIN IMMEDIATE');
  const commit = sqlite.prepare('COMMIT');
  const rollback = sqlite.prepare('ROLLBACK');

  const within = <T>(start: Database.Statement, work: () => T): T => {
    invariant(!sqlite.inTransaction, 'a unit of work may not start another');
    try {
      start.run();
      const result = work();
      invariant(!isThenable(result), 'a unit of work is synchronous: it may not return a promise');
      commit.run();
      return result;
    } catch (error) {
      // SQLite may have rolled back by itself, e.g. on a full disk.
      if (sqlite.inTransaction) rollback.run();
      throw asOutage(error);
    }
  };

  return {
    read: (work) => within(begin, () => work({ orm })),
    write: (work) => within(beginImmediate, () => work({ orm, mayWrite: true })),
    checkpoint: () => checkpoint(sqlite),
    close: () => void sqlite.close(),
  };
}

function checkpoint(sqlite: Database.Database): void {
  try {
    sqlite.pragma('wal_checkpoint(TRUNCATE)');
  } catch (error) {
    throw asOutage(error);
  }
}

const isThenable = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && 'then' in value && typeof value.then === 'function';
