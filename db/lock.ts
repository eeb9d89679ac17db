// One writer per data folder: a second SQLite file, held exclusively for the life of the process. The operating system frees it with
// the process, however that ends, so there is never a stale lock to clear by hand.
import './driver-guard.ts';
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { asOutage, Outage } from './outage.ts';
import { lockFile, lockHolderFile } from './paths.ts';

/** Another process has the data folder. */
export class LockHeld extends Error {
  override readonly name = 'LockHeld';
  /** In the words that the holder gave. */
  readonly holder: string;

  constructor(holder: string) {
    super(`the data folder is held by ${holder}`);
    this.holder = holder;
  }
}

export interface ShopLock {
  release(): void;
}

/** Kept reachable: a connection that is garbage-collected would let go. */
const held = new Set<Database.Database>();

/**
 * Takes the folder for this process.
 * @param holder who takes it, in words for whoever asks next
 * @throws LockHeld, Outage
 */
export function takeLock(dataDir: string, holder: string): ShopLock {
  const sqlite = new Database(lockFile(dataDir), { timeout: 0 });
  try {
    sqlite.exec('BEGIN EXCLUSIVE');
    writeFileSync(lockHolderFile(dataDir), holder);
  } catch (error) {
    sqlite.close();
    const outage = asOutage(error);
    throw outage instanceof Outage && outage.kind === 'busy' ? new LockHeld(holderOf(dataDir)) : outage;
  }
  held.add(sqlite);
  return { release: () => release(sqlite, dataDir) };
}

function release(sqlite: Database.Database, dataDir: string): void {
  if (!held.delete(sqlite)) return;
  rmSync(lockHolderFile(dataDir), { force: true });
  sqlite.close();
}

/** Whoever holds the lock writes its words a moment after taking it. */
function holderOf(dataDir: string): string {
  const file = lockHolderFile(dataDir);
  return existsSync(file) ? readFileSync(file, 'utf8') : 'another process';
}
