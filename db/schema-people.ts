// Staff, the places they work at, and who is signed in where. A role is part of an account: whoever changes role gets a new one,
// so that an old signature always says what its author was.

import { sql } from 'drizzle-orm';
import { check, index, primaryKey, sqliteTable } from 'drizzle-orm/sqlite-core';
import { instantMs, isOneOf, massUg, oneOf, plainText, sha256Hex, uuid, whole } from './columns.ts';

export const ROLES = ['mixer', 'checker', 'formulator', 'manager'] as const;
export type Role = (typeof ROLES)[number];

export const account = sqliteTable(
  'account',
  {
    id: uuid().primaryKey(),
    /** What a person signs in with. */
    code: plainText().notNull().unique(),
    name: plainText().notNull(),
    role: oneOf(ROLES)().notNull(),
    createdAtMs: instantMs().notNull(),
  },
  (t) => [check('account_role', isOneOf(t.role, ROLES))],
);

/** argon2id hashes in their own text form; the latest counts. */
export const accountSecret = sqliteTable(
  'account_secret',
  {
    accountId: uuid()
      .notNull()
      .references(() => account.id),
    versionNo: whole().notNull(),
    hash: plainText().notNull(),
    atMs: instantMs().notNull(),
  },
  (t) => [primaryKey({ columns: [t.accountId, t.versionNo] }), check('account_secret_hash', sql`${t.hash} glob '$argon2id$*'`)],
);

export const accountClosed = sqliteTable('account_closed', {
  accountId: uuid()
    .primaryKey()
    .references(() => account.id),
  byAccountId: uuid()
    .notNull()
    .references(() => account.id),
  reason: plainText().notNull(),
  atMs: instantMs().notNull(),
});

export const STATION_KINDS = ['kiosk', 'bench', 'office'] as const;
export type StationKind = (typeof STATION_KINDS)[number];

export const station = sqliteTable(
  'station',
  {
    id: uuid().primaryKey(),
    kind: oneOf(STATION_KINDS)().notNull(),
    code: plainText().notNull().unique(),
    name: plainText().notNull(),
    createdAtMs: instantMs().notNull(),
  },
  (t) => [check('station_kind', isOneOf(t.kind, STATION_KINDS))],
);

/** A real scale bound to a profile of the rulebook. Its own figures may only be stricter, which the flow decides. */
export const stationScale = sqliteTable(
  'station_scale',
  {
    id: uuid().primaryKey(),
    stationId: uuid()
      .notNull()
      .references(() => station.id),
    profileId: plainText().notNull(),
    code: plainText().notNull().unique(),
    stricterStepUg: massUg(),
    stricterRepeatabilityUg: massUg(),
    stricterCapacityUg: massUg(),
    boundAtMs: instantMs().notNull(),
  },
  (t) => [index('station_scale_station').on(t.stationId)],
);

export const stationScaleRemoved = sqliteTable('station_scale_removed', {
  scaleId: uuid()
    .primaryKey()
    .references(() => stationScale.id),
  byAccountId: uuid()
    .notNull()
    .references(() => account.id),
  reason: plainText().notNull(),
  atMs: instantMs().notNull(),
});

/** A browser that is let in: a member of staff, or (account null) a kiosk that stands for its station alone. */
export const session = sqliteTable(
  'session',
  {
    tokenSha256: sha256Hex().primaryKey(),
    accountId: uuid().references(() => account.id),
    stationId: uuid().references(() => station.id),
    createdAtMs: instantMs().notNull(),
    expiresAtMs: instantMs().notNull(),
  },
  (t) => [
    check('session_somebody', sql`${t.accountId} is not null or ${t.stationId} is not null`),
    check('session_ends_later', sql`${t.expiresAtMs} > ${t.createdAtMs}`),
    index('session_account').on(t.accountId),
  ],
);

export const SESSION_ENDS = ['signed-out', 'switched', 'revoked'] as const;

export const sessionEnd = sqliteTable(
  'session_end',
  {
    tokenSha256: sha256Hex()
      .primaryKey()
      .references(() => session.tokenSha256),
    reason: oneOf(SESSION_ENDS)().notNull(),
    atMs: instantMs().notNull(),
  },
  (t) => [check('session_end_reason', isOneOf(t.reason, SESSION_ENDS))],
);

export const AUTH_OUTCOMES = ['passed', 'wrong', 'locked', 'closed'] as const;
export type AuthOutcome = (typeof AUTH_OUTCOMES)[number];

/** What was typed for an unknown account is not kept: people type passwords there. */
export const authAttempt = sqliteTable(
  'auth_attempt',
  {
    id: uuid().primaryKey(),
    accountId: uuid().references(() => account.id),
    stationId: uuid().references(() => station.id),
    outcome: oneOf(AUTH_OUTCOMES)().notNull(),
    atMs: instantMs().notNull(),
  },
  (t) => [
    check('auth_attempt_outcome', isOneOf(t.outcome, AUTH_OUTCOMES)),
    index('auth_attempt_account').on(t.accountId, t.atMs),
    index('auth_attempt_station').on(t.stationId, t.atMs),
  ],
);
