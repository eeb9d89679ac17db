// A whole copy of a shop in one dated folder: the database as of one instant, its evidence files, and a list of what belongs to it with
// every hash. Made beside a running shop; the folder gets its name only once it is complete and on the disk.
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { z } from 'zod';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { InstantMs } from '#lib/units/time.ts';
import { listEvidenceFiles } from './evidence-files.ts';
import { copyDurably, fileBytes, forceToDisk } from './file-hash.ts';
import { lastLedgerRow } from './ledger.ts';
import { connect, openShopDb, SCHEMA_VERSION, UnfitFile } from './open.ts';
import { asOutage } from './outage.ts';
import { evidenceDir, shopFile } from './paths.ts';
import { findIncarnation, findShop } from './shop.ts';

export const MANIFEST = 'manifest.json';

const manifestShape = z.strictObject({
  madeAtMs: z.int(),
  schemaVersionNo: z.int(),
  shopCode: z.string(),
  incarnationId: z.string(),
  ledgerSeqNo: z.int(),
  ledgerSha256: z.string().nullable(),
  files: z.array(z.strictObject({ path: z.string().regex(/^(shop\.db|evidence\/[0-9a-f]{64})$/), sizeBytes: z.int(), sha256: z.string() })),
});
export type Manifest = z.output<typeof manifestShape>;

export interface Backup {
  readonly folder: string;
  readonly manifest: Manifest;
  /** Evidence files that the shop names but no longer has. */
  readonly missing: readonly string[];
}

/** @throws UnfitFile, Outage */
export function backupShop({ dataDir, toDir, atMs }: { dataDir: string; toDir: string; atMs: InstantMs }): Backup {
  const folder = join(toDir, `shop-${new Date(atMs).toISOString().slice(0, 19).replaceAll(':', '')}Z`);
  if (existsSync(folder)) throw new UnfitFile(`${folder} is there already: wait a second and try again.`);
  const part = `${folder}.part`;
  rmSync(part, { recursive: true, force: true });
  mkdirSync(join(part, 'evidence'), { recursive: true });
  copyDatabase(shopFile(dataDir), shopFile(part));
  const found = inventory(part, dataDir);
  const files = found.present.map((path) => ({ path, ...fileBytes(join(part, path)) }));
  const manifest = { ...found.head, madeAtMs: atMs, schemaVersionNo: SCHEMA_VERSION, files };
  writeFileSync(join(part, MANIFEST), `${canonicalJson(manifest)}\n`);
  for (const path of [MANIFEST, 'evidence', '.']) forceToDisk(join(part, path));
  renameSync(part, folder);
  forceToDisk(dirname(folder));
  return { folder, manifest, missing: found.missing };
}

/** One snapshot of a file that may be in use, checked by being read as a whole. */
function copyDatabase(from: string, to: string): void {
  const sqlite = connect(from, { readonly: true });
  try {
    sqlite.prepare('VACUUM INTO ?').run(to);
  } catch (error) {
    throw asOutage(error);
  } finally {
    sqlite.close();
  }
  forceToDisk(to);
}

/** Brings over the evidence that the copied database names, and says what the copy is of. */
function inventory(part: string, dataDir: string) {
  const db = openShopDb(shopFile(part), { readonly: true });
  try {
    return db.read((tx) => {
      const shop = findShop(tx);
      const incarnation = findIncarnation(tx);
      if (!shop || !incarnation) throw new UnfitFile('There is no shop to back up yet.');
      const last = lastLedgerRow(tx);
      const hashes = listEvidenceFiles(tx).map((file) => file.sha256);
      const has = (hash: string): boolean => existsSync(join(evidenceDir(dataDir), hash));
      for (const hash of hashes.filter(has)) copyDurably(join(evidenceDir(dataDir), hash), join(evidenceDir(part), hash));
      return {
        head: {
          shopCode: shop.shopCode,
          incarnationId: incarnation.id,
          ledgerSeqNo: last?.seqNo ?? 0,
          ledgerSha256: last?.rowSha256 ?? null,
        },
        present: ['shop.db', ...hashes.filter(has).map((hash) => `evidence/${hash}`)],
        missing: hashes.filter((hash) => !has(hash)),
      };
    });
  } finally {
    db.close();
  }
}

/** Reads a backup's list and compares every file with it. @throws UnfitFile with the sentence to show */
export function readBackup(folder: string): Manifest {
  const path = join(folder, MANIFEST);
  if (!existsSync(path)) throw new UnfitFile(`${folder} is not a backup: it has no ${MANIFEST}.`);
  const read = manifestShape.safeParse(parsedJson(readFileSync(path, 'utf8')));
  if (!read.success) throw new UnfitFile(`${path} is damaged: take another backup.`);
  for (const { path: name, sizeBytes, sha256 } of read.data.files) {
    const file = join(folder, name);
    if (!existsSync(file)) throw new UnfitFile(`The backup lacks ${name}: take another backup.`);
    const found = fileBytes(file);
    if (found.sizeBytes !== sizeBytes || found.sha256 !== sha256)
      throw new UnfitFile(`${name} of the backup was changed or damaged: take another backup.`);
  }
  return read.data;
}

function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
}
