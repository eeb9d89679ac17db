// Brings a shop's file to today's schema, or makes a new one. The file's user_version counts the migrations it has had.
// Foreign keys are off meanwhile: a table rebuilt with them on would take its children's rows along through cascades.
import { readFileSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type Database from 'better-sqlite3';
import { z } from 'zod';
import { setPragma } from './connection.ts';
import { APPLICATION_ID, connect, schemaVersionOf, UnfitFile } from './open.ts';
import { asOutage } from './outage.ts';
import { shopFile } from './paths.ts';

export const MIGRATIONS_DIR = fileURLToPath(new URL('./migrations', import.meta.url));

const journalShape = z.object({ entries: z.array(z.object({ idx: z.int(), tag: z.string() })) });

/** The migrations in order, each as the text of its file. */
export function readMigrations(folder: string): readonly string[] {
  const journal = journalShape.parse(JSON.parse(readFileSync(join(folder, 'meta', '_journal.json'), 'utf8')));
  return journal.entries.map(({ tag }) => readFileSync(join(folder, `${tag}.sql`), 'utf8'));
}

/**
 * Makes or migrates the shop's file of a data folder that this process holds. An older file is first copied beside itself.
 * @returns the path of that copy, null when nothing was pending or the file is new
 * @throws UnfitFile, Outage
 */
export const migrateShop = (dataDir: string): string | null => migrateFile(shopFile(dataDir));

/** The same for any file and any list of migrations. */
export function migrateFile(file: string, migrations: readonly string[] = readMigrations(MIGRATIONS_DIR)): string | null {
  const sqlite = connect(file, { fileMustExist: false });
  try {
    const version = isEmpty(sqlite) ? 0 : schemaVersionOf(sqlite, file);
    if (version > migrations.length) throw new UnfitFile(`${file} was made by a newer version: update this program.`);
    const pending = migrations.slice(version);
    if (pending.length === 0) return null;
    const copy = version === 0 ? null : copyBeside(sqlite, `${file}.schema-${version}`);
    runAll(sqlite, pending, version);
    return copy;
  } catch (error) {
    throw asOutage(error);
  } finally {
    sqlite.close();
  }
}

/** A file without a single table is new, or was left by a start that got no further. */
const isEmpty = (sqlite: Database.Database): boolean => sqlite.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() === 0;

/** A whole, compact copy at a path; an older one of the same name gives way only once the new one is complete. */
function copyBeside(sqlite: Database.Database, copy: string): string {
  const part = `${copy}.part`;
  rmSync(part, { force: true });
  sqlite.prepare('VACUUM INTO ?').run(part);
  renameSync(part, copy);
  return copy;
}

function runAll(sqlite: Database.Database, pending: readonly string[], version: number): void {
  setPragma(sqlite, 'foreign_keys', 0);
  for (const [index, migration] of pending.entries()) {
    sqlite
      .transaction(() => {
        sqlite.exec(migration);
        const broken = sqlite.pragma('foreign_key_check') as readonly unknown[];
        if (broken.length > 0)
          throw new Error(`migration ${version + index + 1} leaves rows that point nowhere: ${JSON.stringify(broken.slice(0, 3))}`);
        sqlite.pragma(`application_id = ${APPLICATION_ID}`);
        sqlite.pragma(`user_version = ${version + index + 1}`);
      })
      .exclusive();
  }
  setPragma(sqlite, 'foreign_keys', 1);
}
