// The rulebook's life: revisions of the one draft, and the editions frozen from it. Documents are canonical JSON text; their hash is their name.

import { sql } from 'drizzle-orm';
import { check, index, primaryKey, sqliteTable } from 'drizzle-orm/sqlite-core';
import { bigCount, instantMs, plainText, sha256Hex, uuid, whole } from './columns.ts';
import { account } from './schema-people.ts';

/** Each revision has one child at most: two people who edit the same parent cannot both win. */
export const draftRevision = sqliteTable(
  'draft_revision',
  {
    revisionNo: whole().primaryKey(),
    parentRevisionNo: whole().unique(),
    document: plainText().notNull(),
    sha256: sha256Hex().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    changed: plainText().notNull(),
    atMs: instantMs().notNull(),
  },
  (t) => [
    check(
      'draft_revision_follows',
      sql`case when ${t.parentRevisionNo} is null then ${t.revisionNo} = 1 else ${t.revisionNo} = ${t.parentRevisionNo} + 1 end`,
    ),
    check('draft_revision_json', sql`json_valid(${t.document})`),
  ],
);

export const edition = sqliteTable(
  'edition',
  {
    editionNo: whole().primaryKey(),
    hash: sha256Hex().notNull().unique(),
    document: plainText().notNull(),
    variantsCount: bigCount().notNull(),
    publishedAtMs: instantMs().notNull(),
    effectiveAtMs: instantMs().notNull(),
    authorAccountId: uuid()
      .notNull()
      .references(() => account.id),
    approverAccountId: uuid()
      .notNull()
      .references(() => account.id),
    fromRevisionNo: whole()
      .notNull()
      .references(() => draftRevision.revisionNo),
  },
  (t) => [
    check('edition_two_people', sql`${t.authorAccountId} <> ${t.approverAccountId}`),
    check('edition_json', sql`json_valid(${t.document})`),
    check('edition_not_backdated', sql`${t.effectiveAtMs} >= ${t.publishedAtMs}`),
    index('edition_effective').on(t.effectiveAtMs),
  ],
);

export const editionSignature = sqliteTable(
  'edition_signature',
  {
    editionHash: sha256Hex()
      .notNull()
      .references(() => edition.hash),
    accountId: uuid()
      .notNull()
      .references(() => account.id),
    /** What the signature stands for, in words. */
    meaning: plainText().notNull(),
    atMs: instantMs().notNull(),
  },
  (t) => [primaryKey({ columns: [t.editionHash, t.accountId] })],
);
