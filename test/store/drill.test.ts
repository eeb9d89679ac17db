// The restore drill: back up a living shop, damage it, see the check name the damage, restore, compare.
import { copyFileSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, onTestFinished, test } from 'vitest';
import type { Backup } from '#db/backup.ts';
import { backupShop, readBackup } from '#db/backup.ts';
import type { ShopDb } from '#db/connection.ts';
import { insertEvidenceFile } from '#db/evidence-files.ts';
import { listLedger } from '#db/ledger.ts';
import { migrateShop } from '#db/migrate.ts';
import { openShopDb } from '#db/open.ts';
import { evidenceDir, shopFile } from '#db/paths.ts';
import { restoreShop } from '#db/restore.ts';
import { sha256 } from '#db/sha256.ts';
import { findIncarnation } from '#db/shop.ts';
import { verifyShop } from '#db/verify.ts';
import { freshFolder } from '#test/support/shop-db.ts';
import { idOf, insertLots, insertShop, later, makeJar, numberedIds, placeOrder, publish } from '#test/support/shop-facts.ts';

const EVIDENCE = 'stability of the first edition: no separation after twelve weeks';
const newId = numberedIds(7_000);

interface Live {
  readonly dataDir: string;
  readonly db: ShopDb;
  readonly editionHash: string;
}

/** A shop on disk with a released jar and an evidence file. */
function liveShop(): Live {
  const dataDir = freshFolder();
  migrateShop(dataDir);
  mkdirSync(evidenceDir(dataDir));
  writeFileSync(join(evidenceDir(dataDir), sha256(EVIDENCE)), EVIDENCE);
  const db = openShopDb(shopFile(dataDir));
  onTestFinished(() => db.close());
  const editionHash = db.write((tx) => {
    insertShop(tx);
    insertLots(tx);
    insertEvidenceFile(tx, {
      sha256: sha256(EVIDENCE),
      name: 'stability.txt',
      mediaType: 'text/plain',
      sizeBytes: EVIDENCE.length,
      atMs: later(0),
    });
    const { hash } = publish(tx, 'first');
    makeJar(tx, 1, hash);
    return hash;
  });
  return { dataDir, db, editionHash };
}

const backupOf = (dataDir: string, minutes = 60): Backup => backupShop({ dataDir, toDir: join(dataDir, 'backups'), atMs: later(minutes) });
const problemsIn = (dataDir: string): readonly string[] => verifyShop(shopFile(dataDir), evidenceDir(dataDir)).problems;
const restore = (dataDir: string, backupFolder: string) => restoreShop({ dataDir, backupFolder, atMs: later(120), newId });

/** Changes rows of a closed file as no query would. */
function tamper(file: string, table: string, sql: string): void {
  const sqlite = new Database(file);
  sqlite.pragma('foreign_keys = OFF');
  sqlite.exec(`DROP TRIGGER ${table}_no_update; DROP TRIGGER ${table}_no_delete; ${sql}`);
  sqlite.close();
}

/** Every row of every table, as text. */
function contents(file: string): Readonly<Record<string, readonly string[]>> {
  const sqlite = new Database(file, { readonly: true });
  const tables = sqlite.prepare<[], string>("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name").pluck().all();
  const rows = tables.map(
    (table) =>
      [
        table,
        sqlite
          .prepare(`SELECT * FROM ${table}`)
          .all()
          .map((row) => JSON.stringify(row))
          .sort(),
      ] as const,
  );
  sqlite.close();
  return Object.fromEntries(rows);
}

test('the drill', () => {
  const { dataDir, db, editionHash } = liveShop();
  expect(problemsIn(dataDir)).toEqual([]);
  const { folder } = backupOf(dataDir);
  db.write((tx) => placeOrder(tx, 2, editionHash));
  db.close();

  tamper(shopFile(dataDir), 'edition', `UPDATE edition SET document = '{"title":"worst"}'`);
  expect(problemsIn(dataDir)).toEqual(['Edition 1 was changed after it was frozen.']);

  const { asideFolder, incarnationId } = restore(dataDir, folder);
  expect(problemsIn(dataDir)).toEqual([]);
  const { incarnation, ledger, ledger_body, ...rest } = contents(shopFile(dataDir));
  const kept = contents(shopFile(folder));
  expect(rest).toEqual(Object.fromEntries(Object.entries(kept).filter(([table]) => table in rest)));
  expect(ledger?.filter((row) => kept.ledger?.includes(row))).toEqual(kept.ledger);
  expect([incarnation?.length, ledger?.length, ledger_body?.length]).toEqual([2, 2, 2]);
  expect(contents(shopFile(asideFolder ?? '')).customer_order).toHaveLength(2);

  const again = openShopDb(shopFile(dataDir));
  again.read((tx) => {
    expect(findIncarnation(tx)).toMatchObject({ incarnationNo: 2, id: incarnationId, origin: 'restored' });
    expect(listLedger(tx, 1, 9)).toMatchObject([
      { row: { kind: 'restored', incarnationId }, body: expect.stringContaining(`"fromIncarnationId":"${idOf(900)}"`) },
    ]);
  });
  again.close();
});

describe('what the check finds', () => {
  test.each([
    ['card', `UPDATE card SET body = '{}'`, /^Card 1 of order .* was changed/],
    ['draft_revision', `UPDATE draft_revision SET document = '{}'`, /^Draft revision 1 was changed/],
    [
      'reading',
      'UPDATE reading SET mass_ug = mass_ug + 10000',
      /^Jar ML26329\S* weighed 790000 µg from lot \S*, but 780000 µg left that lot/,
    ],
    ['lot_use', 'DELETE FROM lot_use', /^Jar \S* weighed 780000 µg from lot \S*, but 0 µg left/],
    ['lot', "DELETE FROM lot WHERE code = 'CR-1'", /^Row \d+ of lot_event points to a row of lot that is not there/],
    ['ledger_body', "UPDATE ledger_body SET body = '{}'", /^Ledger row 1 \(order-placed\): its body was changed/],
    ['reading', "UPDATE reading SET kind = 'line', mass_ug = -5", /^The jars cannot be read: MassUg must be a whole number/],
  ])('in %s', (table, sql, says) => {
    const { dataDir, db } = liveShop();
    db.close();
    tamper(shopFile(dataDir), table, sql);
    const problems = problemsIn(dataDir);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(says);
  });

  test('among the evidence files', () => {
    const { dataDir } = liveShop();
    const path = join(evidenceDir(dataDir), sha256(EVIDENCE));
    writeFileSync(path, 'all well');
    expect(problemsIn(dataDir)).toEqual([`The evidence file "stability.txt" (${sha256(EVIDENCE)}) was changed.`]);
    rmSync(path);
    expect(problemsIn(dataDir)).toEqual([`The evidence file "stability.txt" (${sha256(EVIDENCE)}) is missing.`]);
  });

  test('in a file whose pages are damaged, and in one that is no database', () => {
    const { dataDir, db } = liveShop();
    db.close();
    const bytes = readFileSync(shopFile(dataDir));
    writeFileSync(shopFile(dataDir), bytes.fill(0x5a, 4_096 * 3, 4_096 * 40));
    expect(problemsIn(dataDir).join(' ')).toMatch(/cannot be read|finds the file damaged/);
    writeFileSync(shopFile(dataDir), 'not a database at all, whatever its name says'.repeat(100));
    expect(problemsIn(dataDir)).toEqual([expect.stringMatching(/file is not a database/)]);
  });
});

describe('a backup', () => {
  test('is made while somebody is writing, and holds what was there before', () => {
    const { dataDir, db, editionHash } = liveShop();
    const made = db.write((tx) => {
      placeOrder(tx, 2, editionHash);
      return backupOf(dataDir);
    });
    expect(contents(shopFile(made.folder)).customer_order).toHaveLength(1);
    expect(contents(shopFile(dataDir)).customer_order).toHaveLength(2);
  });

  test('lists its files with their hashes and where the ledger stood', () => {
    const { dataDir } = liveShop();
    const { folder, manifest, missing } = backupOf(dataDir);
    expect(folder).toMatch(/shop-2026-11-25T110000Z$/);
    expect(missing).toEqual([]);
    expect(manifest).toMatchObject({ shopCode: 'ML', incarnationId: idOf(900), ledgerSeqNo: 1 });
    expect(manifest.files.map(({ path }) => path)).toEqual(['shop.db', `evidence/${sha256(EVIDENCE)}`]);
    expect(readBackup(folder)).toEqual(manifest);
  });

  test('says which evidence the shop has lost, and is made all the same', () => {
    const { dataDir } = liveShop();
    rmSync(join(evidenceDir(dataDir), sha256(EVIDENCE)));
    expect(backupOf(dataDir).missing).toEqual([sha256(EVIDENCE)]);
  });

  test('of the same second does not overwrite the one before', () => {
    const { dataDir } = liveShop();
    backupOf(dataDir);
    expect(() => backupOf(dataDir)).toThrow(/is there already/);
  });
});

describe('a restore', () => {
  test('refuses a backup that was changed, and changes nothing', () => {
    const { dataDir, db } = liveShop();
    const { folder } = backupOf(dataDir);
    db.close();
    const before = contents(shopFile(dataDir));
    const refused = (change: () => void, says: RegExp): void => {
      change();
      expect(() => restore(dataDir, folder)).toThrow(says);
      expect(contents(shopFile(dataDir))).toEqual(before);
    };
    refused(
      () => writeFileSync(join(folder, 'evidence', sha256(EVIDENCE)), 'all well'),
      /evidence\/\S+ of the backup was changed or damaged/,
    );
    refused(() => rmSync(join(folder, 'evidence', sha256(EVIDENCE))), /The backup lacks evidence/);
    refused(() => writeFileSync(join(folder, 'manifest.json'), '{}'), /manifest\.json is damaged/);
    refused(() => rmSync(join(folder, 'manifest.json')), /is not a backup/);
  });

  test('refuses a backup whose list was made to fit a tampered file', () => {
    const { dataDir, db } = liveShop();
    const { folder, manifest } = backupOf(dataDir);
    db.close();
    tamper(shopFile(folder), 'card', `UPDATE card SET body = '{}'`);
    const bytes = readFileSync(shopFile(folder));
    const files = manifest.files.map((file) =>
      file.path === 'shop.db' ? { ...file, sizeBytes: bytes.length, sha256: sha256(bytes) } : file,
    );
    writeFileSync(join(folder, 'manifest.json'), JSON.stringify({ ...manifest, files }));
    const before = contents(shopFile(dataDir));
    expect(() => restore(dataDir, folder)).toThrow(/The backup is not sound: Card 1/);
    expect(contents(shopFile(dataDir))).toEqual(before);
    expect(existsSync(`${shopFile(dataDir)}.restoring`)).toBe(false);
  });

  test('into an empty folder makes the shop anew, evidence and all', () => {
    const { dataDir } = liveShop();
    const { folder } = backupOf(dataDir);
    const elsewhere = freshFolder();
    expect(restore(elsewhere, folder).asideFolder).toBeNull();
    expect(problemsIn(elsewhere)).toEqual([]);
    expect(readFileSync(join(evidenceDir(elsewhere), sha256(EVIDENCE)), 'utf8')).toBe(EVIDENCE);
  });

  test('over a file that a power cut left with its WAL plays none of it into the new one', () => {
    const { dataDir, db, editionHash } = liveShop();
    const { folder } = backupOf(dataDir);
    db.write((tx) => placeOrder(tx, 2, editionHash));
    const cut = freshFolder();
    for (const ending of ['', '-wal']) copyFileSync(shopFile(dataDir) + ending, shopFile(cut) + ending);
    const { asideFolder } = restore(cut, folder);
    expect(contents(shopFile(cut)).customer_order).toHaveLength(1);
    expect(contents(shopFile(asideFolder ?? '')).customer_order).toHaveLength(2);
    expect(problemsIn(cut)).toEqual([]);
  });
});
