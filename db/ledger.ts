// The ledger: every fact that matters outside its own row, in one contiguous chained list, written in the same transaction as the fact.
// The chain covers hashes of bodies, so that a body may go (retention, erasure) while the chain stays whole.
import { asc, desc, eq, gt } from 'drizzle-orm';
import type { Json } from '#lib/base/canonical-json.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { InstantMs, IsoWeek, LocalDay } from '#lib/units/time.ts';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { incarnation, ledger, ledgerBody, purged } from './schema-shop.ts';
import { sha256 } from './sha256.ts';

export type LedgerRow = Row<typeof ledger>;

/** When something happened: computed once per request in the shop's zone. */
export interface Stamp {
  readonly atMs: InstantMs;
  readonly localDay: LocalDay;
  readonly isoWeek: IsoWeek;
}

export interface LedgerEntry extends Stamp {
  /** A new UUIDv7. */
  readonly id: string;
  readonly kind: string;
  readonly schemaVersionNo: number;
  /** No personal data and no answers: a body is kept for years. */
  readonly body: Json;
  readonly accountId: string | null;
  readonly stationId: string | null;
  readonly editionHash: string | null;
}

/** What stands before the first row. */
export const NO_ROW_SHA256 = '0'.repeat(64);

const last = prepared((orm) => orm.select().from(ledger).orderBy(desc(ledger.seqNo)).limit(1).prepare());
const currentIncarnation = prepared((orm) => orm.select().from(incarnation).orderBy(desc(incarnation.incarnationNo)).limit(1).prepare());
const insertRow = inserting(ledger);
const insertBody = inserting(ledgerBody);

/** The newest row; its seqNo doubles as the version of everything in the shop. */
export const lastLedgerRow = (tx: Reading): LedgerRow | undefined => last(tx).get();

/** 0 in a shop where nothing has happened yet. */
export const ledgerSeqNo = (tx: Reading): number => lastLedgerRow(tx)?.seqNo ?? 0;

/** Writes one fact at the end of the chain. */
export function appendLedger(tx: Writing, { body, ...entry }: LedgerEntry): LedgerRow {
  const before = lastLedgerRow(tx);
  const living = currentIncarnation(tx).get();
  invariant(living, 'the shop has not been founded');
  const text = canonicalJson(body);
  const header = {
    ...entry,
    seqNo: (before?.seqNo ?? 0) + 1,
    incarnationId: living.id,
    bodySha256: sha256(text),
    prevSha256: before?.rowSha256 ?? NO_ROW_SHA256,
  };
  const row = { ...header, rowSha256: headerSha256(header) };
  insertRow(tx, row);
  insertBody(tx, { seqNo: row.seqNo, body: text });
  return row;
}

/** SHA-256 over the canonical JSON of every column but the hash itself. */
export function headerSha256(header: Omit<LedgerRow, 'rowSha256'>): string {
  const {
    seqNo,
    incarnationId,
    id,
    kind,
    schemaVersionNo,
    bodySha256,
    prevSha256,
    atMs,
    localDay,
    isoWeek,
    accountId,
    stationId,
    editionHash,
  } = header;
  return sha256(
    canonicalJson({
      seqNo,
      incarnationId,
      id,
      kind,
      schemaVersionNo,
      bodySha256,
      prevSha256,
      atMs,
      localDay,
      isoWeek,
      accountId,
      stationId,
      editionHash,
    }),
  );
}

const page = prepared((orm) =>
  orm
    .select({ row: ledger, body: ledgerBody.body, purgedAtMs: purged.atMs })
    .from(ledger)
    .leftJoin(ledgerBody, eq(ledgerBody.seqNo, ledger.seqNo))
    .leftJoin(purged, eq(purged.seqNo, ledger.seqNo))
    .where(gt(ledger.seqNo, given('afterSeqNo')))
    .orderBy(asc(ledger.seqNo))
    .limit(given('mostCount'))
    .prepare(),
);

export interface LedgerFact {
  readonly row: LedgerRow;
  /** Canonical JSON; null once purged. */
  readonly body: string | null;
  readonly purgedAtMs: InstantMs | null;
}

/** The facts after a sequence number, oldest first. */
export const listLedger = (tx: Reading, afterSeqNo: number, mostCount: number): readonly LedgerFact[] =>
  page(tx).all({ afterSeqNo, mostCount });
