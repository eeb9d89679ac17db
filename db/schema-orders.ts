// What customers ordered, and how each order ended. Its stage is read from these facts, never stored. No answer of a customer is here.

import { sql } from 'drizzle-orm';
import { check, foreignKey, index, primaryKey, sqliteTable, unique } from 'drizzle-orm/sqlite-core';
import { LANGS } from '#lib/rulebook/language.ts';
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
  plainText,
  sha256Hex,
  uuid,
  whole,
} from './columns.ts';
import { findingsShape, planShape, textsShape } from './json-shapes.ts';
import { edition } from './schema-editions.ts';
import { lot } from './schema-lots.ts';
import { account, station } from './schema-people.ts';
import { request } from './schema-shop.ts';

export const customerOrder = sqliteTable(
  'customer_order',
  {
    id: uuid().primaryKey(),
    requestKey: plainText()
      .notNull()
      .unique()
      .references(() => request.key),
    localDay: localDay().notNull(),
    dayNo: whole().notNull(),
    /** Shown to the customer, e.g. K7-204. */
    shortCode: plainText().notNull(),
    editionHash: sha256Hex()
      .notNull()
      .references(() => edition.hash),
    variantKey: plainText().notNull(),
    plan: jsonOf(planShape)().notNull(),
    jarSizeId: plainText().notNull(),
    priceMinor: moneyMinor().notNull(),
    lang: oneOf(LANGS)().notNull(),
    variantCautionIds: jsonOf(textsShape)().notNull(),
    /** That personal cautions were shown; never which. */
    wasPersonalCautionShown: flag().notNull(),
    stationId: uuid()
      .notNull()
      .references(() => station.id),
    placedAtMs: instantMs().notNull(),
    isoWeek: isoWeek().notNull(),
  },
  (t) => [
    unique('customer_order_day_no').on(t.localDay, t.dayNo),
    unique('customer_order_short_code').on(t.shortCode, t.localDay),
    check('customer_order_lang', isOneOf(t.lang, LANGS)),
    index('customer_order_week').on(t.isoWeek),
    index('customer_order_edition').on(t.editionHash),
  ],
);

/** The mixing card as issued; a later issue replaces an earlier one at the bench, not here. */
export const card = sqliteTable(
  'card',
  {
    orderId: uuid()
      .notNull()
      .references(() => customerOrder.id),
    issueNo: whole().notNull(),
    editionHash: sha256Hex()
      .notNull()
      .references(() => edition.hash),
    body: plainText().notNull(),
    sha256: sha256Hex().notNull(),
    reason: plainText().notNull(),
    atMs: instantMs().notNull(),
  },
  (t) => [primaryKey({ columns: [t.orderId, t.issueNo] }), check('card_json', sql`json_valid(${t.body})`)],
);

export const ORDER_ENDS = ['cancelled', 'lapsed', 'collected', 'discarded'] as const;
export type OrderEndKind = (typeof ORDER_ENDS)[number];

/** An order ends once, in one way. */
export const orderEnd = sqliteTable(
  'order_end',
  {
    orderId: uuid()
      .primaryKey()
      .references(() => customerOrder.id),
    kind: oneOf(ORDER_ENDS)().notNull(),
    reason: plainText().notNull(),
    byAccountId: uuid().references(() => account.id),
    atMs: instantMs().notNull(),
    localDay: localDay().notNull(),
    isoWeek: isoWeek().notNull(),
  },
  (t) => [
    check('order_end_kind', isOneOf(t.kind, ORDER_ENDS)),
    check('order_end_by', sql`${t.kind} in ('lapsed', 'cancelled') or ${t.byAccountId} is not null`),
    index('order_end_week').on(t.isoWeek),
  ],
);

/** A mixer took it on. Numbered within the order: one that was given back or handed over is claimed again. One open claim at a time (trigger). */
export const orderClaim = sqliteTable(
  'order_claim',
  {
    orderId: uuid()
      .notNull()
      .references(() => customerOrder.id),
    claimNo: whole().notNull(),
    byAccountId: uuid()
      .notNull()
      .references(() => account.id),
    stationId: uuid()
      .notNull()
      .references(() => station.id),
    atMs: instantMs().notNull(),
  },
  (t) => [primaryKey({ columns: [t.orderId, t.claimNo] })],
);

/** Out of those hands: back to the queue, or into another's. Nobody: the shop itself. */
export const orderClaimEnd = sqliteTable(
  'order_claim_end',
  {
    orderId: uuid().notNull(),
    claimNo: whole().notNull(),
    byAccountId: uuid().references(() => account.id),
    reason: plainText().notNull(),
    atMs: instantMs().notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.orderId, t.claimNo] }),
    foreignKey({ columns: [t.orderId, t.claimNo], foreignColumns: [orderClaim.orderId, orderClaim.claimNo] }),
  ],
);

/** Set aside, e.g. by a new edition or a stop, until somebody asked the customer. One open hold at a time (trigger). */
export const orderHold = sqliteTable(
  'order_hold',
  {
    id: uuid().primaryKey(),
    orderId: uuid()
      .notNull()
      .references(() => customerOrder.id),
    reason: plainText().notNull(),
    findings: jsonOf(findingsShape)().notNull(),
    byAccountId: uuid().references(() => account.id),
    atMs: instantMs().notNull(),
  },
  (t) => [index('order_hold_order').on(t.orderId)],
);

export const orderHoldEnd = sqliteTable('order_hold_end', {
  holdId: uuid()
    .primaryKey()
    .references(() => orderHold.id),
  byAccountId: uuid().references(() => account.id),
  reason: plainText().notNull(),
  atMs: instantMs().notNull(),
});

/** Mass promised to an order, so that two customers cannot be sold the same last gram. */
export const reservation = sqliteTable(
  'reservation',
  {
    id: uuid().primaryKey(),
    orderId: uuid()
      .notNull()
      .references(() => customerOrder.id),
    lotId: uuid()
      .notNull()
      .references(() => lot.id),
    massUg: massUg().notNull(),
    atMs: instantMs().notNull(),
  },
  (t) => [
    check('reservation_something', sql`${t.massUg} > 0`),
    index('reservation_order').on(t.orderId),
    index('reservation_lot').on(t.lotId, t.massUg),
  ],
);

export const RESERVATION_ENDS = ['used', 'lapsed', 'cancelled', 'planned-anew', 'discarded'] as const;

export const reservationFreed = sqliteTable(
  'reservation_freed',
  {
    reservationId: uuid()
      .primaryKey()
      .references(() => reservation.id),
    /** As in the reservation (a trigger sees to it), so that what is still promised is a difference of two sums. */
    lotId: uuid()
      .notNull()
      .references(() => lot.id),
    massUg: massUg().notNull(),
    reason: oneOf(RESERVATION_ENDS)().notNull(),
    atMs: instantMs().notNull(),
  },
  (t) => [check('reservation_freed_reason', isOneOf(t.reason, RESERVATION_ENDS)), index('reservation_freed_lot').on(t.lotId, t.massUg)],
);

/** How to reach a customer in a recall. Erasable: only with its row in `contact_erased`. */
export const contact = sqliteTable('contact', {
  orderId: uuid()
    .primaryKey()
    .references(() => customerOrder.id),
  contact: plainText().notNull(),
  atMs: instantMs().notNull(),
});

export const contactErased = sqliteTable('contact_erased', {
  orderId: uuid()
    .primaryKey()
    .references(() => customerOrder.id),
  reason: plainText().notNull(),
  atMs: instantMs().notNull(),
});
