// Puts a backup in a shop's place. The file that is there is kept aside whole, and gives way only when the new one is complete, checked
// and on the disk. The shop then lives a new incarnation: whoever reads its ledger from outside sees that it went back in time.
import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { InstantMs } from '#lib/units/time.ts';
import type { Manifest } from './backup.ts';
import { readBackup } from './backup.ts';
import { copyDurably, forceToDisk } from './file-hash.ts';
import { appendLedger, lastLedgerRow } from './ledger.ts';
import { migrateFile } from './migrate.ts';
import { openShopDb, UnfitFile } from './open.ts';
import { evidenceDir, shopFile } from './paths.ts';
import { beginIncarnation, stampIn } from './shop.ts';
import { verifyShop } from './verify.ts';

export interface Restoring {
  /** Held by the caller (see lock.ts). */
  readonly dataDir: string;
  readonly backupFolder: string;
  readonly atMs: InstantMs;
  readonly newId: () => string;
}

export interface Restored {
  readonly manifest: Manifest;
  readonly incarnationId: string;
  /** Where the file that stood there before is now; null when there was none. */
  readonly asideFolder: string | null;
}

/** @throws UnfitFile (nothing was changed), Outage */
export function restoreShop({ dataDir, backupFolder, atMs, newId }: Restoring): Restored {
  const manifest = readBackup(backupFolder);
  const ready = `${shopFile(dataDir)}.restoring`;
  removeDatabase(ready);
  const incarnationId = newId();
  try {
    copyFileSync(shopFile(backupFolder), ready);
    const older = migrateFile(ready);
    if (older !== null) rmSync(older);
    bringEvidence(manifest, backupFolder, dataDir);
    const { problems } = verifyShop(ready, null);
    if (problems.length > 0) throw new UnfitFile(`The backup is not sound: ${problems.slice(0, 3).join(' ')}`);
    beginLife(ready, { manifest, incarnationId, atMs, newId });
    const asideFolder = putAside(dataDir, atMs);
    takePlace(ready, shopFile(dataDir));
    return { manifest, incarnationId, asideFolder };
  } finally {
    removeDatabase(ready);
  }
}

/** Evidence is only ever added: its name is its hash. */
function bringEvidence({ files }: Manifest, backupFolder: string, dataDir: string): void {
  mkdirSync(evidenceDir(dataDir), { recursive: true });
  for (const { path } of files.filter((file) => file.path !== 'shop.db')) copyDurably(join(backupFolder, path), join(dataDir, path));
}

type Beginning = Pick<Restoring, 'atMs' | 'newId'> & { readonly manifest: Manifest; readonly incarnationId: string };

function beginLife(file: string, { manifest, incarnationId, atMs, newId }: Beginning): void {
  const db = openShopDb(file);
  try {
    db.write((tx) => {
      beginIncarnation(tx, { id: incarnationId, origin: 'restored', startedAtMs: atMs });
      appendLedger(tx, {
        ...stampIn(tx, atMs),
        id: newId(),
        kind: 'restored',
        schemaVersionNo: 1,
        body: { fromIncarnationId: manifest.incarnationId, fromSeqNo: lastLedgerRow(tx)?.seqNo ?? 0, backupMadeAtMs: manifest.madeAtMs },
        accountId: null,
        stationId: null,
        editionHash: null,
      });
    });
    db.checkpoint();
  } finally {
    db.close();
  }
  forceToDisk(file);
}

/** Copies the old file with its WAL as it is: it may be too damaged to be opened. */
function putAside(dataDir: string, atMs: InstantMs): string | null {
  const old = shopFile(dataDir);
  if (!existsSync(old)) return null;
  const folder = join(dataDir, `before-restore-${new Date(atMs).toISOString().slice(0, 19).replaceAll(':', '')}Z`);
  mkdirSync(folder);
  for (const ending of ['', '-wal']) if (existsSync(old + ending)) copyDurably(old + ending, shopFile(folder) + ending);
  forceToDisk(folder);
  return folder;
}

/** The old WAL goes first: SQLite would play it into whatever file stands beside it. */
function takePlace(ready: string, place: string): void {
  for (const ending of ['-wal', '-shm']) rmSync(place + ending, { force: true });
  renameSync(ready, place);
  forceToDisk(dirname(place));
}

function removeDatabase(file: string): void {
  for (const ending of ['', '-wal', '-shm']) rmSync(file + ending, { force: true });
}
