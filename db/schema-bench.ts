// One jar from binding to release. Readings are what the scale said; a wrong one is voided by a fact of its own, never edited.
// Readings, voids, waste and mends of a jar share one row of numbers (`factNo`, a trigger keeps it contiguous): their order is their meaning.

import { sql } from 'drizzle-orm';
import { check, index, sqliteTable, unique, uniqueIndex } from 'drizzle-orm/sqlite-core';
import {
  difference,
  flag,
  instantMs,
  isOneOf,
  jsonOf,
  localDay,
  massDifferenceUg,
  massUg,
  moneyMinor,
  oneOf,
  plainText,
  uuid,
  whole,
} from './columns.ts';
import { regrownLinesShape, textsShape } from './json-shapes.ts';
import { lot } from './schema-lots.ts';
import { customerOrder } from './schema-orders.ts';
import { account, station, stationScale } from './schema-people.ts';
import { request } from './schema-shop.ts';

/** The bench was found empty and clean before this order. */
export const clearance = sqliteTable(
  'clearance',
  {
    id: uuid().primaryKey(),
    orderId: uuid()
      .notNull()
      .references(() => customerOrder.id),
    stationId: uuid()
      .notNull()
      .references(() => station.id),
    items: jsonOf(textsShape)().notNull(),
    wasFullClean: flag().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [index('clearance_order').on(t.orderId), index('clearance_station').on(t.stationId, t.atMs)],
);

export const jar = sqliteTable(
  'jar',
  {
    batchCode: plainText().primaryKey(),
    orderId: uuid()
      .notNull()
      .unique()
      .references(() => customerOrder.id),
    /** Running number of the day, inside the batch code too. */
    localDay: localDay().notNull(),
    batchNo: whole().notNull(),
    tareUg: massUg().notNull(),
    jarLotId: uuid().references(() => lot.id),
    stationId: uuid()
      .notNull()
      .references(() => station.id),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    boundAtMs: instantMs().notNull(),
  },
  (t) => [unique('jar_batch_no').on(t.localDay, t.batchNo)],
);

export const ORDER_LINKS = ['remake', 'again'] as const;

/** An order that goes back to an older jar: made anew in its place, or wanted again. */
export const orderLink = sqliteTable(
  'order_link',
  {
    orderId: uuid()
      .primaryKey()
      .references(() => customerOrder.id),
    kind: oneOf(ORDER_LINKS)().notNull(),
    jarCode: plainText()
      .notNull()
      .references(() => jar.batchCode),
  },
  (t) => [check('order_link_kind', isOneOf(t.kind, ORDER_LINKS)), index('order_link_jar').on(t.jarCode)],
);

export const READING_KINDS = ['line', 'top-up'] as const;
export const READING_SOURCES = ['scale', 'typed'] as const;
export const LOT_ENTRIES = ['scanned', 'typed'] as const;

export const reading = sqliteTable(
  'reading',
  {
    id: uuid().primaryKey(),
    requestKey: plainText()
      .notNull()
      .unique()
      .references(() => request.key),
    jarCode: plainText()
      .notNull()
      .references(() => jar.batchCode),
    factNo: whole().notNull(),
    lineNo: whole().notNull(),
    /** A later reading of the same weighing takes the place of an earlier one. */
    weighingNo: whole().notNull(),
    kind: oneOf(READING_KINDS)().notNull(),
    source: oneOf(READING_SOURCES)().notNull(),
    massUg: massUg().notNull(),
    scaleId: uuid()
      .notNull()
      .references(() => stationScale.id),
    lotId: uuid()
      .notNull()
      .references(() => lot.id),
    lotEntry: oneOf(LOT_ENTRIES)().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    secondAccountId: uuid().references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [
    check('reading_kind', isOneOf(t.kind, READING_KINDS)),
    check('reading_source', isOneOf(t.source, READING_SOURCES)),
    check('reading_lot_entry', isOneOf(t.lotEntry, LOT_ENTRIES)),
    check('reading_two_people', sql`${t.secondAccountId} is null or ${t.secondAccountId} <> ${t.byAccountId}`),
    unique('reading_fact_no').on(t.jarCode, t.factNo),
    index('reading_lot').on(t.lotId),
  ],
);

export const readingVoid = sqliteTable(
  'reading_void',
  {
    readingId: uuid()
      .primaryKey()
      .references(() => reading.id),
    jarCode: plainText()
      .notNull()
      .references(() => jar.batchCode),
    factNo: whole().notNull(),
    /** True when the stuff had left its lot all the same, e.g. was poured. */
    hadLeftLot: flag().notNull(),
    reason: plainText().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [unique('reading_void_fact_no').on(t.jarCode, t.factNo)],
);

/** Taken out of a boat or thrown away: counts against the lot, not against the jar. */
export const jarWaste = sqliteTable(
  'jar_waste',
  {
    id: uuid().primaryKey(),
    jarCode: plainText()
      .notNull()
      .references(() => jar.batchCode),
    factNo: whole().notNull(),
    lineNo: whole().notNull(),
    lotId: uuid()
      .notNull()
      .references(() => lot.id),
    massUg: massUg().notNull(),
    reason: plainText().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [unique('jar_waste_fact_no').on(t.jarCode, t.factNo), check('jar_waste_something', sql`${t.massUg} > 0`)],
);

export const MEND_KINDS = ['grow', 'correct', 'discard'] as const;
export type MendKind = (typeof MEND_KINDS)[number];

/** A jar that went off its card: grown to a new batch mass, its pH corrected once, or thrown away. */
export const mend = sqliteTable(
  'mend',
  {
    id: uuid().primaryKey(),
    jarCode: plainText()
      .notNull()
      .references(() => jar.batchCode),
    factNo: whole().notNull(),
    kind: oneOf(MEND_KINDS)().notNull(),
    /** Of a grown jar. */
    newBatchMassUg: massUg(),
    lines: jsonOf(regrownLinesShape)(),
    /** Of a corrected jar. */
    stockId: plainText(),
    lotId: uuid().references(() => lot.id),
    massUg: massUg(),
    /** What the mend wastes, in money, as it was shown. */
    wasteCostMinor: moneyMinor(),
    reason: plainText().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    secondAccountId: uuid().references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [
    unique('mend_fact_no').on(t.jarCode, t.factNo),
    check('mend_kind', isOneOf(t.kind, MEND_KINDS)),
    check('mend_grown', sql`(${t.kind} = 'grow') = (${t.newBatchMassUg} is not null) and (${t.kind} = 'grow') = (${t.lines} is not null)`),
    check(
      'mend_corrected',
      sql`(${t.kind} = 'correct') = (${t.stockId} is not null and ${t.lotId} is not null and coalesce(${t.massUg}, 0) > 0)`,
    ),
    check(
      'mend_two_people',
      sql`(${t.kind} = 'discard' or ${t.secondAccountId} is not null) and ${t.secondAccountId} is not ${t.byAccountId}`,
    ),
    uniqueIndex('mend_corrected_once').on(t.jarCode).where(sql`kind = 'correct'`),
    uniqueIndex('mend_discarded_once').on(t.jarCode).where(sql`kind = 'discard'`),
  ],
);

export const LOT_USE_KINDS = ['use', 'waste', 'spill', 'stock-take'] as const;
export type LotUseKind = (typeof LOT_USE_KINDS)[number];

/** What left a lot. A use or a stock-take may bring something back: a later reading that shows less, a better count. */
export const lotUse = sqliteTable(
  'lot_use',
  {
    id: uuid().primaryKey(),
    lotId: uuid()
      .notNull()
      .references(() => lot.id),
    kind: oneOf(LOT_USE_KINDS)().notNull(),
    leftMassUg: massDifferenceUg(),
    leftCount: difference(),
    reason: plainText().notNull(),
    jarCode: plainText().references(() => jar.batchCode),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [
    check('lot_use_kind', isOneOf(t.kind, LOT_USE_KINDS)),
    check('lot_use_one_measure', sql`(${t.leftMassUg} is null) <> (${t.leftCount} is null)`),
    check('lot_use_direction', sql`${t.kind} in ('use', 'stock-take') or coalesce(${t.leftMassUg}, ${t.leftCount}) > 0`),
    index('lot_use_lot').on(t.lotId, t.leftMassUg, t.leftCount),
    index('lot_use_jar').on(t.jarCode),
  ],
);
