// The end of the bench: steps done, checks, the decision to release, and the day's proof that scales and meters can be trusted.

import { sql } from 'drizzle-orm';
import { check, index, primaryKey, sqliteTable } from 'drizzle-orm/sqlite-core';
import {
  flag,
  instantMs,
  isOneOf,
  isoWeek,
  jsonOf,
  localDay,
  massUg,
  moneyMinor,
  oneOf,
  phX100,
  plainText,
  temperatureC,
  uuid,
  whole,
} from './columns.ts';
import { findingsShape, fitnessShape, labelContentShape } from './json-shapes.ts';
import { jar } from './schema-bench.ts';
import { account, station, stationScale } from './schema-people.ts';

export const stepDone = sqliteTable(
  'step_done',
  {
    jarCode: plainText()
      .notNull()
      .references(() => jar.batchCode),
    stepId: plainText().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
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
    jarCode: plainText()
      .notNull()
      .references(() => jar.batchCode),
    kind: oneOf(BENCH_CHECKS)().notNull(),
    phX100: phX100(),
    massUg: massUg(),
    temperatureC: temperatureC(),
    hasPassed: flag().notNull(),
    note: plainText().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
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
    jarCode: plainText()
      .primaryKey()
      .references(() => jar.batchCode),
    outcome: oneOf(RELEASE_OUTCOMES)().notNull(),
    findings: jsonOf(findingsShape)().notNull(),
    label: jsonOf(labelContentShape)().notNull(),
    useByDay: localDay().notNull(),
    materialCostMinor: moneyMinor(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    atMs: instantMs().notNull(),
    localDay: localDay().notNull(),
    isoWeek: isoWeek().notNull(),
  },
  (t) => [
    check('jar_release_outcome', isOneOf(t.outcome, RELEASE_OUTCOMES)),
    index('jar_release_week').on(t.isoWeek),
    index('jar_release_use_by').on(t.useByDay),
  ],
);

export const HOLD_DECISIONS = ['released', 'discarded'] as const;

/** What became of a held jar: two people decide. */
export const holdDecision = sqliteTable(
  'hold_decision',
  {
    jarCode: plainText()
      .primaryKey()
      .references(() => jarRelease.jarCode),
    decision: oneOf(HOLD_DECISIONS)().notNull(),
    reason: plainText().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    secondAccountId: uuid()
      .notNull()
      .references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [
    check('hold_decision_decision', isOneOf(t.decision, HOLD_DECISIONS)),
    check('hold_decision_two_people', sql`${t.byAccountId} <> ${t.secondAccountId}`),
  ],
);

export const labelPrint = sqliteTable(
  'label_print',
  {
    jarCode: plainText()
      .notNull()
      .references(() => jarRelease.jarCode),
    copyNo: whole().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
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
    stationId: uuid()
      .notNull()
      .references(() => station.id),
    kind: oneOf(FITNESS_KINDS)().notNull(),
    scaleId: uuid().references(() => stationScale.id),
    readings: jsonOf(fitnessShape)().notNull(),
    hasPassed: flag().notNull(),
    validDay: localDay().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [
    check('fitness_kind', isOneOf(t.kind, FITNESS_KINDS)),
    check('fitness_scale', sql`(${t.kind} = 'scale') = (${t.scaleId} is not null)`),
    index('fitness_day').on(t.stationId, t.validDay),
  ],
);
