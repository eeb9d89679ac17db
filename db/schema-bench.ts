// One jar from binding to release. Readings are what the scale said; a wrong one is voided by a fact of its own, never edited.
import { check, index, primaryKey, sqliteTable, unique, uniqueIndex } from 'drizzle-orm/sqlite-core';
import { sql } from 'drizzle-orm';
import { difference, flag, instantMs, isOneOf, isoWeek, jsonOf, localDay, massDifferenceUg, massUg, moneyMinor, oneOf, phX100, plainText, temperatureC, uuid, whole } from './columns.ts';
import { findingsShape, fitnessShape, jsonShape, textsShape } from './json-shapes.ts';
import { lot } from './schema-lots.ts';
import { customerOrder } from './schema-orders.ts';
import { account, station, stationScale } from './schema-people.ts';
import { request } from './schema-shop.ts';

/** The bench was found empty and clean before this order. */
export const clearance = sqliteTable(
  'clearance',
  {
    id: uuid().primaryKey(),
    orderId: uuid().notNull().references(() => customerOrder.id),
    stationId: uuid().notNull().references(() => station.id),
    items: jsonOf(textsShape)().notNull(),
    wasFullClean: flag().notNull(),
    byAccountId: uuid().notNull().references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [index('clearance_order').on(t.orderId), index('clearance_station').on(t.stationId, t.atMs)],
);

export const jar = sqliteTable(
  'jar',
  {
    batchCode: plainText().primaryKey(),
    orderId: uuid().notNull().unique().references(() => customerOrder.id),
    /** Running number of the day, inside the batch code too. */
    localDay: localDay().notNull(),
    batchNo: whole().notNull(),
    tareUg: massUg().notNull(),
    jarLotId: uuid().references(() => lot.id),
    stationId: uuid().notNull().references(() => station.id),
    byAccountId: uuid().notNull().references(() => account.id),
    boundAtMs: instantMs().notNull(),
  },
  (t) => [unique('jar_batch_no').on(t.localDay, t.batchNo)],
);

export const ORDER_LINKS = ['remake', 'again'] as const;

/** An order that goes back to an older jar: made anew in its place, or wanted again. */
export const orderLink = sqliteTable(
  'order_link',
  {
    orderId: uuid().primaryKey().references(() => customerOrder.id),
    kind: oneOf(ORDER_LINKS)().notNull(),
    jarCode: plainText().notNull().references(() => jar.batchCode),
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
    requestKey: plainText().notNull().unique().references(() => request.key),
    jarCode: plainText().notNull().references(() => jar.batchCode),
    lineNo: whole().notNull(),
    kind: oneOf(READING_KINDS)().notNull(),
    source: oneOf(READING_SOURCES)().notNull(),
    massUg: massUg().notNull(),
    scaleId: uuid().notNull().references(() => stationScale.id),
    lotId: uuid().notNull().references(() => lot.id),
    lotEntry: oneOf(LOT_ENTRIES)().notNull(),
    byAccountId: uuid().notNull().references(() => account.id),
    secondAccountId: uuid().references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [
    check('reading_kind', isOneOf(t.kind, READING_KINDS)),
    check('reading_source', isOneOf(t.source, READING_SOURCES)),
    check('reading_lot_entry', isOneOf(t.lotEntry, LOT_ENTRIES)),
    check('reading_something', sql`${t.massUg} > 0`),
    check('reading_two_people', sql`${t.secondAccountId} is null or ${t.secondAccountId} <> ${t.byAccountId}`),
    index('reading_jar').on(t.jarCode, t.lineNo),
    index('reading_lot').on(t.lotId),
  ],
);

export const readingVoid = sqliteTable('reading_void', {
  readingId: uuid().primaryKey().references(() => reading.id),
  /** True when the stuff had left its lot all the same, e.g. to waste. */
  hadLeftLot: flag().notNull(),
  reason: plainText().notNull(),
  byAccountId: uuid().notNull().references(() => account.id),
  atMs: instantMs().notNull(),
});

export const LOT_USE_KINDS = ['use', 'waste', 'spill', 'stock-take', 'void'] as const;
export type LotUseKind = (typeof LOT_USE_KINDS)[number];

/** What left a lot. Only a stock-take or a voided reading may bring something back. */
export const lotUse = sqliteTable(
  'lot_use',
  {
    id: uuid().primaryKey(),
    lotId: uuid().notNull().references(() => lot.id),
    kind: oneOf(LOT_USE_KINDS)().notNull(),
    leftMassUg: massDifferenceUg(),
    leftCount: difference(),
    reason: plainText().notNull(),
    readingId: uuid().references(() => reading.id),
    orderId: uuid().references(() => customerOrder.id),
    byAccountId: uuid().notNull().references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [
    check('lot_use_kind', isOneOf(t.kind, LOT_USE_KINDS)),
    check('lot_use_one_measure', sql`(${t.leftMassUg} is null) <> (${t.leftCount} is null)`),
    check('lot_use_direction', sql`${t.kind} in ('stock-take', 'void') or coalesce(${t.leftMassUg}, ${t.leftCount}) > 0`),
    index('lot_use_lot').on(t.lotId, t.leftMassUg, t.leftCount),
    index('lot_use_reading').on(t.readingId),
    index('lot_use_order').on(t.orderId),
  ],
);

export const MEND_KINDS = ['grow', 'correct', 'discard'] as const;
export type MendKind = (typeof MEND_KINDS)[number];

/** A jar that went off its card: grown to a new batch mass, its pH corrected once, or thrown away. */
export const mend = sqliteTable(
  'mend',
  {
    id: uuid().primaryKey(),
    jarCode: plainText().notNull().references(() => jar.batchCode),
    kind: oneOf(MEND_KINDS)().notNull(),
    lineNo: whole(),
    newBatchMassUg: massUg(),
    wasteMassUg: massUg(),
    wasteCostMinor: moneyMinor(),
    reason: plainText().notNull(),
    byAccountId: uuid().notNull().references(() => account.id),
    secondAccountId: uuid().references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [
    check('mend_kind', isOneOf(t.kind, MEND_KINDS)),
    check('mend_grow_mass', sql`(${t.kind} = 'grow') = (${t.newBatchMassUg} is not null)`),
    check('mend_two_people', sql`(${t.kind} = 'discard' or ${t.secondAccountId} is not null) and ${t.secondAccountId} is not ${t.byAccountId}`),
    uniqueIndex('mend_corrected_once').on(t.jarCode).where(sql`kind = 'correct'`),
    uniqueIndex('mend_discarded_once').on(t.jarCode).where(sql`kind = 'discard'`),
    index('mend_jar').on(t.jarCode),
  ],
);

export const stepDone = sqliteTable(
  'step_done',
  {
    jarCode: plainText().notNull().references(() => jar.batchCode),
    stepId: plainText().notNull(),
    byAccountId: uuid().notNull().references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [primaryKey({ columns: [t.jarCode, t.stepId] })],
);

export const BENCH_CHECKS = ['ph', 'look', 'draw-down', 'net', 'gross', 'temperature'] as const;
export type BenchCheckKind = (typeof BENCH_CHECKS)[number];

/** A value in the one column of its kind; a look or a draw-down has none. */
export const benchCheck = sqliteTable(
  'bench_check',
  {
    id: uuid().primaryKey(),
    jarCode: plainText().notNull().references(() => jar.batchCode),
    kind: oneOf(BENCH_CHECKS)().notNull(),
    phX100: phX100(),
    massUg: massUg(),
    temperatureC: temperatureC(),
    hasPassed: flag().notNull(),
    note: plainText().notNull(),
    byAccountId: uuid().notNull().references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [
    check('bench_check_kind', isOneOf(t.kind, BENCH_CHECKS)),
    check('bench_check_ph', sql`(${t.kind} = 'ph') = (${t.phX100} is not null)`),
    check('bench_check_mass', sql`(${t.kind} in ('net', 'gross')) = (${t.massUg} is not null)`),
    check('bench_check_temperature', sql`(${t.kind} = 'temperature') = (${t.temperatureC} is not null)`),
    index('bench_check_jar').on(t.jarCode),
  ],
);

export const RELEASE_OUTCOMES = ['released', 'held'] as const;

/** The one decision at the end of the bench. Label and use-by stand as printed. */
export const jarRelease = sqliteTable(
  'jar_release',
  {
    jarCode: plainText().primaryKey().references(() => jar.batchCode),
    outcome: oneOf(RELEASE_OUTCOMES)().notNull(),
    findings: jsonOf(findingsShape)().notNull(),
    label: jsonOf(jsonShape)().notNull(),
    useByDay: localDay().notNull(),
    materialCostMinor: moneyMinor(),
    byAccountId: uuid().notNull().references(() => account.id),
    atMs: instantMs().notNull(),
    localDay: localDay().notNull(),
    isoWeek: isoWeek().notNull(),
  },
  (t) => [check('jar_release_outcome', isOneOf(t.outcome, RELEASE_OUTCOMES)), index('jar_release_week').on(t.isoWeek), index('jar_release_use_by').on(t.useByDay)],
);

export const HOLD_DECISIONS = ['released', 'discarded'] as const;

/** What became of a held jar: two people decide. */
export const holdDecision = sqliteTable(
  'hold_decision',
  {
    jarCode: plainText().primaryKey().references(() => jarRelease.jarCode),
    decision: oneOf(HOLD_DECISIONS)().notNull(),
    reason: plainText().notNull(),
    byAccountId: uuid().notNull().references(() => account.id),
    secondAccountId: uuid().notNull().references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [check('hold_decision_decision', isOneOf(t.decision, HOLD_DECISIONS)), check('hold_decision_two_people', sql`${t.byAccountId} <> ${t.secondAccountId}`)],
);

export const labelPrint = sqliteTable(
  'label_print',
  {
    jarCode: plainText().notNull().references(() => jarRelease.jarCode),
    copyNo: whole().notNull(),
    byAccountId: uuid().notNull().references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [primaryKey({ columns: [t.jarCode, t.copyNo] })],
);

export const FITNESS_KINDS = ['scale', 'ph-meter'] as const;

/** The day's proof that a scale or a pH meter can be trusted. */
export const fitness = sqliteTable(
  'fitness',
  {
    id: uuid().primaryKey(),
    stationId: uuid().notNull().references(() => station.id),
    kind: oneOf(FITNESS_KINDS)().notNull(),
    scaleId: uuid().references(() => stationScale.id),
    readings: jsonOf(fitnessShape)().notNull(),
    hasPassed: flag().notNull(),
    validDay: localDay().notNull(),
    byAccountId: uuid().notNull().references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [
    check('fitness_kind', isOneOf(t.kind, FITNESS_KINDS)),
    check('fitness_scale', sql`(${t.kind} = 'scale') = (${t.scaleId} is not null)`),
    index('fitness_day').on(t.stationId, t.validDay),
  ],
);
