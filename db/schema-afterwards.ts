// What comes after the sale: stops, complaints, and counters that no visit can be found in.

import { sql } from 'drizzle-orm';
import { check, index, primaryKey, sqliteTable } from 'drizzle-orm/sqlite-core';
import { instantMs, isOneOf, isoWeek, localDay, oneOf, plainText, uuid, whole } from './columns.ts';
import { jar } from './schema-bench.ts';
import { account } from './schema-people.ts';

export const STOP_SUBJECTS = ['material', 'stock', 'lot', 'pair', 'shade', 'active', 'variant'] as const;
export type StopSubject = (typeof STOP_SUBJECTS)[number];

/** One person stops, at once, with a reason. */
export const stop = sqliteTable(
  'stop',
  {
    id: uuid().primaryKey(),
    subjectKind: oneOf(STOP_SUBJECTS)().notNull(),
    /** The id in the rulebook; a lot's id; a pair's or variant's key. */
    subjectId: plainText().notNull(),
    reason: plainText().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [check('stop_subject_kind', isOneOf(t.subjectKind, STOP_SUBJECTS)), index('stop_subject').on(t.subjectKind, t.subjectId)],
);

/** Two people lift. */
export const stopLifted = sqliteTable(
  'stop_lifted',
  {
    stopId: uuid()
      .primaryKey()
      .references(() => stop.id),
    firstAccountId: uuid()
      .notNull()
      .references(() => account.id),
    secondAccountId: uuid()
      .notNull()
      .references(() => account.id),
    reason: plainText().notNull(),
    atMs: instantMs().notNull(),
  },
  (t) => [check('stop_lifted_two_people', sql`${t.firstAccountId} <> ${t.secondAccountId}`)],
);

/** A handful of visits counted together. Fewer than five are never written. */
export const counterBucket = sqliteTable(
  'counter_bucket',
  {
    id: uuid().primaryKey(),
    isoWeek: isoWeek().notNull(),
    visitsCount: whole().notNull(),
    flushedAtMs: instantMs().notNull(),
  },
  (t) => [check('counter_bucket_five', sql`${t.visitsCount} >= 5`), index('counter_bucket_week').on(t.isoWeek)],
);

export const COUNTED_KINDS = ['concern', 'outcome', 'finding'] as const;
export type CountedKind = (typeof COUNTED_KINDS)[number];

export const counter = sqliteTable(
  'counter',
  {
    bucketId: uuid()
      .notNull()
      .references(() => counterBucket.id),
    kind: oneOf(COUNTED_KINDS)().notNull(),
    /** A concern's id, an outcome or a finding's code. */
    subject: plainText().notNull(),
    visitsCount: whole().notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.bucketId, t.kind, t.subject] }),
    check('counter_kind', isOneOf(t.kind, COUNTED_KINDS)),
    check('counter_something', sql`${t.visitsCount} > 0`),
  ],
);

export const COMPLAINT_KINDS = ['reaction', 'look', 'smell', 'separation', 'packaging', 'other'] as const;
export const SERIOUSNESS = ['not-serious', 'serious'] as const;

export const complaint = sqliteTable(
  'complaint',
  {
    id: uuid().primaryKey(),
    jarCode: plainText()
      .notNull()
      .references(() => jar.batchCode),
    kind: oneOf(COMPLAINT_KINDS)().notNull(),
    seriousness: oneOf(SERIOUSNESS)().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    atMs: instantMs().notNull(),
    localDay: localDay().notNull(),
    isoWeek: isoWeek().notNull(),
  },
  (t) => [
    check('complaint_kind', isOneOf(t.kind, COMPLAINT_KINDS)),
    check('complaint_seriousness', isOneOf(t.seriousness, SERIOUSNESS)),
    index('complaint_jar').on(t.jarCode),
    index('complaint_week').on(t.isoWeek),
  ],
);

/** What the person said, and how to reach them. Erasable: only with its row in `complaint_erased`. */
export const complaintPerson = sqliteTable('complaint_person', {
  complaintId: uuid()
    .primaryKey()
    .references(() => complaint.id),
  said: plainText().notNull(),
  contact: plainText().notNull(),
});

export const complaintErased = sqliteTable('complaint_erased', {
  complaintId: uuid()
    .primaryKey()
    .references(() => complaint.id),
  reason: plainText().notNull(),
  atMs: instantMs().notNull(),
});

export const COMPLAINT_STEPS = [
  'told-responsible-person',
  'told-authority',
  'jar-returned',
  'sample-kept',
  'answered',
  'reclassified-serious',
  'closed',
] as const;

/** What was done about a complaint; clocks run between these. */
export const complaintStep = sqliteTable(
  'complaint_step',
  {
    complaintId: uuid()
      .notNull()
      .references(() => complaint.id),
    stepNo: whole().notNull(),
    kind: oneOf(COMPLAINT_STEPS)().notNull(),
    note: plainText().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [primaryKey({ columns: [t.complaintId, t.stepNo] }), check('complaint_step_kind', isOneOf(t.kind, COMPLAINT_STEPS))],
);
