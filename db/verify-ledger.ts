// Walks the ledger's chain from the first row and says which row is broken, and why. Reads what the file holds, untouched by the
// columns' constructors: a damaged value must be named, not stumbled over.
import type { Reading } from './connection.ts';
import type { LedgerRow } from './ledger.ts';
import { headerSha256, NO_ROW_SHA256 } from './ledger.ts';
import { prepared } from './query.ts';
import { sha256 } from './sha256.ts';

interface StoredFact extends LedgerRow {
  readonly body: string | null;
  readonly purgedAtMs: number | null;
}

const stored = prepared((orm) =>
  orm.$client.prepare<[], StoredFact>(`
    SELECT l.seq_no AS seqNo, l.incarnation_id AS incarnationId, l.id, l.kind, l.schema_version_no AS schemaVersionNo, l.body_sha256 AS bodySha256,
      l.prev_sha256 AS prevSha256, l.row_sha256 AS rowSha256, l.at_ms AS atMs, l.local_day AS localDay, l.iso_week AS isoWeek,
      l.account_id AS accountId, l.station_id AS stationId, l.edition_hash AS editionHash, b.body, p.at_ms AS purgedAtMs
    FROM ledger l LEFT JOIN ledger_body b ON b.seq_no = l.seq_no LEFT JOIN purged p ON p.seq_no = l.seq_no
    ORDER BY l.seq_no`),
);

export interface ChainReport {
  readonly rowsCount: number;
  /** Of the last row; note it apart from the shop's files and nobody can rewrite what stands before it. Null: nothing happened yet. */
  readonly headSha256: string | null;
  readonly problems: readonly string[];
}

export function verifyLedger(tx: Reading): ChainReport {
  const problems: string[] = [];
  const end = { rowsCount: 0, seqNo: 0, sha256: NO_ROW_SHA256 };
  for (const fact of stored(tx).iterate()) {
    problems.push(...rowProblems(fact, end).map((what) => `Ledger row ${fact.seqNo} (${fact.kind}): ${what}.`));
    Object.assign(end, { rowsCount: end.rowsCount + 1, seqNo: fact.seqNo, sha256: fact.rowSha256 });
  }
  return { rowsCount: end.rowsCount, headSha256: end.rowsCount === 0 ? null : end.sha256, problems };
}

function rowProblems(fact: StoredFact, before: { readonly seqNo: number; readonly sha256: string }): readonly string[] {
  const { body, purgedAtMs, rowSha256, ...header } = fact;
  const problems: string[] = [];
  if (fact.seqNo !== before.seqNo + 1) problems.push(`rows ${before.seqNo + 1} to ${fact.seqNo - 1} are missing before it`);
  if (fact.prevSha256 !== before.sha256) problems.push('it does not follow from the row before it');
  if (headerSha256(header) !== rowSha256) problems.push('it was changed after it was written');
  if (body === null && purgedAtMs === null) problems.push('its body is gone and was never purged');
  if (body !== null && sha256(body) !== fact.bodySha256) problems.push('its body was changed after it was written');
  return problems;
}
