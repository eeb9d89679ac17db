// Opens a shop's file, and nothing else: a file of another program, of a newer version, or not yet migrated is refused with a sentence.
import './driver-guard.ts';
import Database from 'better-sqlite3';
import type { ShopDb } from './connection.ts';
import { BUSY_TIMEOUT_MS, configure, setPragma, shopDbOver } from './connection.ts';
import { asOutage } from './outage.ts';

/** Says "this file is a shop" to SQLite's tools: 'JARW' in ASCII. */
export const APPLICATION_ID = 0x4a41_5257;

/** How many migrations make today's schema; the file carries the same number as its user_version. */
export const SCHEMA_VERSION = 2;

/** The file is not one that this program can work with; the message says what to do. */
export class UnfitFile extends Error {
  override readonly name = 'UnfitFile';
}

export interface OpenSettings {
  /** For backups and checks beside a running shop. Writing is then an Outage. */
  readonly readonly?: boolean;
  /** For a file that nobody relies on before it is closed: only closing brings it safely to the disk. */
  readonly isInTheMaking?: boolean;
  /** Sees every statement before it runs. */
  readonly onStatement?: (statement: unknown) => void;
}

/** @throws UnfitFile, Outage */
export function openShopDb(file: string, { readonly = false, isInTheMaking = false, onStatement }: OpenSettings = {}): ShopDb {
  const sqlite = connect(file, { readonly, ...(onStatement && { verbose: onStatement }) });
  return closingOnFailure(sqlite, () => {
    refuseUnfit(sqlite, file);
    if (isInTheMaking) setPragma(sqlite, 'synchronous', 1);
    return shopDbOver(sqlite);
  });
}

/** A configured connection to an existing file, whatever its version. @throws Outage */
export function connect(file: string, options: Database.Options = {}): Database.Database {
  const sqlite = orOutage(() => new Database(file, { fileMustExist: true, timeout: BUSY_TIMEOUT_MS, ...options }));
  return closingOnFailure(sqlite, () => {
    if (!options.readonly) setPragma(sqlite, 'journal_mode', 'wal');
    configure(sqlite);
    return sqlite;
  });
}

/** The file's own version. @throws UnfitFile when it belongs to another program */
export function schemaVersionOf(sqlite: Database.Database, file: string): number {
  const applicationId = sqlite.pragma('application_id', { simple: true });
  if (applicationId !== APPLICATION_ID) throw new UnfitFile(`${file} is not a shop's file.`);
  return Number(sqlite.pragma('user_version', { simple: true }));
}

function refuseUnfit(sqlite: Database.Database, file: string): void {
  const version = schemaVersionOf(sqlite, file);
  if (version > SCHEMA_VERSION)
    throw new UnfitFile(`${file} was made by a newer version (schema ${version}, this one knows ${SCHEMA_VERSION}): update this program.`);
  if (version < SCHEMA_VERSION)
    throw new UnfitFile(`${file} has an older schema (${version} of ${SCHEMA_VERSION}): start the shop once, which brings it up to date.`);
}

function closingOnFailure<T>(sqlite: Database.Database, work: () => T): T {
  try {
    return orOutage(work);
  } catch (error) {
    sqlite.close();
    throw error;
  }
}

function orOutage<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    throw asOutage(error);
  }
}
