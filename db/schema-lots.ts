// Deliveries and bench-made batches. What is left of a lot is never stored: it is what came in less what left and what is promised.

import { sql } from 'drizzle-orm';
import { check, index, primaryKey, sqliteTable, uniqueIndex } from 'drizzle-orm/sqlite-core';
import { instantMs, isOneOf, jsonOf, localDay, massUg, moneyMinor, oneOf, phX100, plainText, uuid, whole } from './columns.ts';
import { jsonShape } from './json-shapes.ts';
import { account } from './schema-people.ts';

export const LOT_KINDS = ['stock', 'base-cream', 'base-oil', 'jar', 'label'] as const;
export type LotKind = (typeof LOT_KINDS)[number];

export const lot = sqliteTable(
  'lot',
  {
    id: uuid().primaryKey(),
    kind: oneOf(LOT_KINDS)().notNull(),
    /** The stock, base, jar size or label size of the rulebook. */
    refId: plainText().notNull(),
    code: plainText().notNull().unique(),
    receivedAtMs: instantMs().notNull(),
    expiryDay: localDay().notNull(),
    receivedMassUg: massUg(),
    receivedCount: whole(),
    /** What the whole lot cost, where it is known. */
    costMinor: moneyMinor(),
    /** Of a base lot: shifts the predicted pH of its jars. */
    measuredPhX100: phX100(),
    supplier: plainText().notNull(),
    certificate: jsonOf(jsonShape)().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
  },
  (t) => [
    check('lot_kind', isOneOf(t.kind, LOT_KINDS)),
    check(
      'lot_mass_or_count',
      sql`case when ${t.kind} in ('jar', 'label') then ${t.receivedMassUg} is null and coalesce(${t.receivedCount}, 0) > 0 else ${t.receivedCount} is null and coalesce(${t.receivedMassUg}, 0) > 0 end`,
    ),
    index('lot_ref').on(t.kind, t.refId, t.expiryDay),
  ],
);

/** What a batch made at the bench was made from. */
export const lotParent = sqliteTable(
  'lot_parent',
  {
    lotId: uuid()
      .notNull()
      .references(() => lot.id),
    parentLotId: uuid()
      .notNull()
      .references(() => lot.id),
    massUg: massUg().notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.lotId, t.parentLotId] }),
    check('lot_parent_other', sql`${t.lotId} <> ${t.parentLotId}`),
    index('lot_parent_parent').on(t.parentLotId),
  ],
);

export const LOT_EVENTS = ['released', 'held', 'opened', 'spent', 'rejected'] as const;
export type LotEventKind = (typeof LOT_EVENTS)[number];

/** Numbered within the lot, so that its last word is never in doubt. */
export const lotEvent = sqliteTable(
  'lot_event',
  {
    lotId: uuid()
      .notNull()
      .references(() => lot.id),
    eventNo: whole().notNull(),
    kind: oneOf(LOT_EVENTS)().notNull(),
    reason: plainText().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.lotId, t.eventNo] }),
    check('lot_event_kind', isOneOf(t.kind, LOT_EVENTS)),
    uniqueIndex('lot_event_opened_once').on(t.lotId).where(sql`kind = 'opened'`),
    uniqueIndex('lot_event_ended_once').on(t.lotId).where(sql`kind in ('spent', 'rejected')`),
  ],
);
