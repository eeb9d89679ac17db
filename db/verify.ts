// Looks a shop's file over: SQLite's own checks, the ledger's chain, the hash of every frozen document, and the masses of every jar.
// Finds damage and tampering; changes nothing.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Fault } from '#lib/base/invariant.ts';
import type { Reading } from './connection.ts';
import { listEvidenceFiles } from './evidence-files.ts';
import { fileBytes } from './file-hash.ts';
import { listJarFacts, lotFactsOf, takenByLotRecorded } from './jar-facts.ts';
import { massTakenByLot } from './lot-account.ts';
import { openShopDb, UnfitFile } from './open.ts';
import { sqliteCode } from './outage.ts';
import { prepared } from './query.ts';
import { sha256 } from './sha256.ts';
import type { ChainReport } from './verify-ledger.ts';
import { verifyLedger } from './verify-ledger.ts';

export interface VerifyReport {
  /** Full sentences; empty means sound. */
  readonly problems: readonly string[];
  readonly chain: ChainReport | null;
}

/**
 * Verifies a shop's file, and the folder of its evidence files where one is given. A running shop is not disturbed.
 * @throws Outage
 */
export function verifyShop(file: string, evidenceFolder: string | null): VerifyReport {
  const opened = attempt(file, () => openShopDb(file, { readonly: true }));
  if (!opened.ok) return { problems: [opened.problem], chain: null };
  try {
    return opened.value.read((tx) => verifyAll(tx, evidenceFolder));
  } finally {
    opened.value.close();
  }
}

function verifyAll(tx: Reading, evidenceFolder: string | null): VerifyReport {
  const chain = attempt('The ledger', () => verifyLedger(tx));
  const checks: readonly (readonly [string, () => readonly string[]])[] = [
    ['The file', () => fileProblems(tx)],
    ['The editions', () => documentProblems(tx)],
    ['The evidence files', () => (evidenceFolder === null ? [] : evidenceProblems(tx, evidenceFolder))],
    ['The jars', () => jarProblems(tx)],
  ];
  const found = checks.flatMap(([what, check]) => {
    const done = attempt(what, check);
    return done.ok ? done.value : [done.problem];
  });
  return { problems: [...(chain.ok ? chain.value.problems : [chain.problem]), ...found], chain: chain.ok ? chain.value : null };
}

type Attempt<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: string };

/** What cannot be read is a finding here, not an accident: a check must go on to name the rest. */
function attempt<T>(what: string, work: () => T): Attempt<T> {
  try {
    return { ok: true, value: work() };
  } catch (error) {
    if (error instanceof UnfitFile) return { ok: false, problem: error.message };
    const isDamage =
      error instanceof Fault || error instanceof SyntaxError || /^SQLITE_(CORRUPT|NOTADB|ERROR)/.test(sqliteCode(error) ?? '');
    if (!isDamage) throw error;
    return { ok: false, problem: `${what} cannot be read: ${error instanceof Error ? error.message : ''}.` };
  }
}

function fileProblems(tx: Reading): readonly string[] {
  const sqlite = tx.orm.$client;
  const integrity = sqlite.pragma('integrity_check') as readonly { readonly integrity_check: string }[];
  const orphans = sqlite.pragma('foreign_key_check') as readonly {
    readonly table: string;
    readonly rowid: number;
    readonly parent: string;
  }[];
  return [
    ...integrity
      .map((row) => row.integrity_check)
      .filter((said) => said !== 'ok')
      .map((said) => `SQLite finds the file damaged: ${said}.`),
    ...orphans.map(({ table, rowid, parent }) => `Row ${rowid} of ${table} points to a row of ${parent} that is not there.`),
  ];
}

const documents = prepared((orm) =>
  orm.$client.prepare<[], { readonly what: string; readonly hash: string; readonly text: string }>(`
    SELECT 'Edition ' || edition_no AS what, hash, document AS text FROM edition
    UNION ALL SELECT 'Draft revision ' || revision_no, sha256, document FROM draft_revision
    UNION ALL SELECT 'Card ' || issue_no || ' of order ' || order_id, sha256, body FROM card`),
);

function documentProblems(tx: Reading): readonly string[] {
  return [...documents(tx).iterate()]
    .filter(({ hash, text }) => sha256(text) !== hash)
    .map(({ what }) => `${what} was changed after it was frozen.`);
}

function evidenceProblems(tx: Reading, folder: string): readonly string[] {
  return listEvidenceFiles(tx).flatMap(({ sha256: hash, name }) => {
    const path = join(folder, hash);
    if (!existsSync(path)) return [`The evidence file "${name}" (${hash}) is missing.`];
    return fileBytes(path).sha256 === hash ? [] : [`The evidence file "${name}" (${hash}) was changed.`];
  });
}

const jarCodes = prepared((orm) => orm.$client.prepare<[], string>('SELECT batch_code FROM jar ORDER BY batch_code').pluck());

/** Each jar's readings, replayed, must come to what stands as taken from each lot. */
function jarProblems(tx: Reading): readonly string[] {
  return jarCodes(tx)
    .all()
    .flatMap((jarCode) => {
      const replayed = massTakenByLot(lotFactsOf(listJarFacts(tx, jarCode)));
      const recorded = takenByLotRecorded(tx, jarCode);
      return [...new Set([...replayed.keys(), ...recorded.keys()])]
        .filter((lotId) => (replayed.get(lotId) ?? 0) !== (recorded.get(lotId) ?? 0))
        .map(
          (lotId) =>
            `Jar ${jarCode} weighed ${replayed.get(lotId) ?? 0} µg from lot ${lotId}, but ${recorded.get(lotId) ?? 0} µg left that lot.`,
        );
    });
}
