// The shop itself, its incarnations (a new one after every restore), and the ledger: one chained list of all facts that matter outside their row.

import { sql } from 'drizzle-orm';
import { check, index, sqliteTable } from 'drizzle-orm/sqlite-core';
import { flag, instantMs, isOneOf, isoWeek, localDay, oneOf, plainText, sha256Hex, uuid, whole } from './columns.ts';
import { edition } from './schema-editions.ts';
import { account, station } from './schema-people.ts';

/** One row, written when the shop is founded. */
export const shop = sqliteTable(
  'shop',
  {
    rowNo: whole().primaryKey(),
    shopCode: plainText().notNull(),
    name: plainText().notNull(),
    zone: plainText().notNull(),
    sealingSecret: plainText().notNull(),
    isDemo: flag().notNull(),
    notice: plainText().notNull(),
    foundedAtMs: instantMs().notNull(),
  },
  (t) => [check('shop_one_row', sql`${t.rowNo} = 1`), check('shop_code_letters', sql`${t.shopCode} glob '[A-Z][A-Z]'`)],
);

export const INCARNATION_ORIGINS = ['founded', 'restored'] as const;

/** A life of the shop's file. Head office can then tell a shop that went back in time from one that went on. */
export const incarnation = sqliteTable(
  'incarnation',
  {
    incarnationNo: whole().primaryKey(),
    id: uuid().notNull().unique(),
    origin: oneOf(INCARNATION_ORIGINS)().notNull(),
    startedAtMs: instantMs().notNull(),
  },
  (t) => [check('incarnation_origin', isOneOf(t.origin, INCARNATION_ORIGINS))],
);

/** The chain covers hashes, never bodies: a body may be purged without breaking it. */
export const ledger = sqliteTable(
  'ledger',
  {
    seqNo: whole().primaryKey(),
    incarnationId: uuid()
      .notNull()
      .references(() => incarnation.id),
    id: uuid().notNull().unique(),
    kind: plainText().notNull(),
    schemaVersionNo: whole().notNull(),
    bodySha256: sha256Hex().notNull(),
    /** Of the row before; sixty-four zeros for the first. Unique, so that the chain cannot fork. */
    prevSha256: sha256Hex().notNull().unique(),
    /** Of this row's own header, canonical JSON of every other column. */
    rowSha256: sha256Hex().notNull().unique(),
    atMs: instantMs().notNull(),
    localDay: localDay().notNull(),
    isoWeek: isoWeek().notNull(),
    accountId: uuid().references(() => account.id),
    stationId: uuid().references(() => station.id),
    editionHash: sha256Hex().references(() => edition.hash),
  },
  (t) => [index('ledger_local_day').on(t.localDay), index('ledger_kind').on(t.kind, t.seqNo)],
);

/** Erasable: only with its row in `purged`. */
export const ledgerBody = sqliteTable(
  'ledger_body',
  {
    seqNo: whole()
      .primaryKey()
      .references(() => ledger.seqNo),
    body: plainText().notNull(),
  },
  (t) => [check('ledger_body_json', sql`json_valid(${t.body})`)],
);

export const purged = sqliteTable('purged', {
  seqNo: whole()
    .primaryKey()
    .references(() => ledger.seqNo),
  atMs: instantMs().notNull(),
  reason: plainText().notNull(),
});

/** Receipts: the same key with the same content is answered with the same outcome. */
export const request = sqliteTable(
  'request',
  { key: plainText().primaryKey(), sha256: sha256Hex().notNull(), outcome: plainText().notNull(), atMs: instantMs().notNull() },
  (t) => [
    check('request_outcome_json', sql`json_valid(${t.outcome})`),
    check('request_key_length', sql`length(${t.key}) between 16 and 64`),
  ],
);

/** A file of evidence in the data folder, named by its hash. */
export const evidenceFile = sqliteTable('evidence_file', {
  sha256: sha256Hex().primaryKey(),
  name: plainText().notNull(),
  mediaType: plainText().notNull(),
  sizeBytes: whole().notNull(),
  atMs: instantMs().notNull(),
});
