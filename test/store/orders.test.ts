// Orders: where each stands, how it is found, and the receipt that a second sending gets.

import { describe, expect, test } from 'vitest';
import { findCard, insertCard, listCardIssues } from '#db/cards.ts';
import type { ShopDb } from '#db/connection.ts';
import { findContact, insertContact } from '#db/contacts.ts';
import type { OrderStage } from '#db/orders.ts';
import {
  findOrder,
  findOrderByJar,
  findOrderByRequestKey,
  findOrderByShortCode,
  insertOrderEnd,
  insertOrderHold,
  insertOrderHoldEnd,
  insertOrderLink,
  listOpenOrders,
  listOrderedVariantKeys,
  listOrdersOfDay,
  nextDayNo,
  orderStage,
} from '#db/orders.ts';
import { insertHoldDecision } from '#db/releases.ts';
import { findRequest, insertRequest } from '#db/requests.ts';
import { sha256 } from '#db/sha256.ts';
import { invariant } from '#lib/base/invariant.ts';
import { addDays } from '#lib/units/time.ts';
import { shopWithEdition } from '#test/support/founded-shop.ts';
import {
  bindJar,
  CHECKER,
  collect,
  DAY,
  FORMULATOR,
  idOf,
  later,
  MIXER,
  makeJar,
  PLAN,
  placeOrder,
  publish,
  release,
  stampAt,
} from '#test/support/shop-facts.ts';

function stageOf(db: ShopDb, orderId: string): OrderStage {
  const view = db.read((tx) => findOrder(tx, orderId));
  invariant(view, `no order ${orderId}`);
  return orderStage(view);
}

describe('the stage', () => {
  test('follows the facts from placed to collected', () => {
    const { db, editionHash } = shopWithEdition();
    const placed = db.write((tx) => placeOrder(tx, 1, editionHash));
    const stage = () => stageOf(db, placed.orderId);
    expect(stage()).toBe('placed');
    db.write((tx) =>
      insertOrderHold(tx, {
        id: idOf(60),
        orderId: placed.orderId,
        reason: 'new edition',
        findings: [],
        byAccountId: null,
        atMs: later(1),
      }),
    );
    expect(stage()).toBe('held');
    db.write((tx) => insertOrderHoldEnd(tx, { holdId: idOf(60), byAccountId: MIXER, reason: 'customer agrees', atMs: later(1) }));
    db.write((tx) => bindJar(tx, placed));
    expect(stage()).toBe('mixing');
    db.write((tx) => release(tx, placed.jarCode));
    expect(stage()).toBe('ready');
    db.write((tx) => collect(tx, placed.orderId));
    expect(stage()).toBe('collected');
  });

  test.each([
    ['released', 'ready'],
    ['discarded', 'jar-discarded'],
  ] as const)('of a held jar that two people %s', (decision, then) => {
    const { db, editionHash } = shopWithEdition();
    const { orderId, jarCode } = db.write((tx) => makeJar(tx, 1, editionHash, 'held'));
    expect(stageOf(db, orderId)).toBe('jar-held');
    db.write((tx) =>
      insertHoldDecision(tx, { jarCode, decision, reason: 'looked at', byAccountId: FORMULATOR, secondAccountId: CHECKER, atMs: later(9) }),
    );
    expect(stageOf(db, orderId)).toBe(then);
  });
});

describe('finding orders', () => {
  test('by id, jar, code and request key', () => {
    const { db, editionHash } = shopWithEdition();
    const { orderId, jarCode } = db.write((tx) => makeJar(tx, 1, editionHash));
    db.read((tx) => {
      const byId = findOrder(tx, orderId);
      expect(byId?.order).toMatchObject({
        id: orderId,
        plan: PLAN,
        variantKey: 'chalk|niacinamide@20000',
        variantCautionIds: ['sun'],
        wasPersonalCautionShown: true,
      });
      expect(findOrderByJar(tx, jarCode)).toEqual(byId);
      expect(findOrderByShortCode(tx, 'K7-201')).toEqual(byId);
      expect(findOrderByRequestKey(tx, 'order-000000000001')).toEqual(byId);
      expect(findOrder(tx, idOf(999))).toBeUndefined();
    });
  });

  test('the queue holds what has not ended, in the order of the day', () => {
    const { db, editionHash } = shopWithEdition();
    const [first, second, third] = db.write((tx) => [1, 2, 3].map((no) => placeOrder(tx, no, editionHash).orderId));
    const queue = () => db.read((tx) => listOpenOrders(tx, DAY)).map(({ order }) => order.id);
    expect(queue()).toEqual([first, second, third]);
    db.write((tx) =>
      insertOrderEnd(tx, { orderId: second ?? '', kind: 'lapsed', reason: 'closed for the day', byAccountId: null, ...stampAt(9) }),
    );
    expect(queue()).toEqual([first, third]);
    db.read((tx) => {
      expect(listOrdersOfDay(tx, DAY)).toHaveLength(3);
      expect(listOpenOrders(tx, addDays(DAY, 1))).toEqual([]);
      expect(nextDayNo(tx, DAY)).toBe(4);
      expect(nextDayNo(tx, addDays(DAY, 1))).toBe(1);
      expect(listOrderedVariantKeys(tx, DAY)).toEqual(['chalk|niacinamide@20000']);
    });
  });

  test('a remake names the jar it stands in for', () => {
    const { db, editionHash } = shopWithEdition();
    const { jarCode } = db.write((tx) => makeJar(tx, 1, editionHash));
    const remake = db.write((tx) => {
      const placed = placeOrder(tx, 2, editionHash);
      insertOrderLink(tx, { orderId: placed.orderId, kind: 'remake', jarCode });
      return placed.orderId;
    });
    expect(db.read((tx) => findOrder(tx, remake))?.link).toEqual({ kind: 'remake', jarCode });
  });
});

describe('cards, contacts, receipts', () => {
  test('the newest issue of a card counts, and each carries the hash of its bytes', () => {
    const { db, editionHash } = shopWithEdition();
    const { orderId } = db.write((tx) => placeOrder(tx, 1, editionHash));
    const again = db.write((tx) =>
      insertCard(tx, { orderId, editionHash: publish(tx, 'second').hash, body: { b: 1, a: 2 }, reason: 're-issued', atMs: later(9) }),
    );
    expect(again).toMatchObject({ issueNo: 2, body: '{"a":2,"b":1}', sha256: sha256('{"a":2,"b":1}') });
    db.read((tx) => {
      expect(findCard(tx, orderId)).toEqual(again);
      expect(listCardIssues(tx, orderId).map(({ reason }) => reason)).toEqual(['issued', 're-issued']);
    });
  });

  test('a contact stands beside its order', () => {
    const { db, editionHash } = shopWithEdition();
    const { orderId } = db.write((tx) => placeOrder(tx, 1, editionHash));
    db.write((tx) => insertContact(tx, { orderId, contact: 'someone@example.org', atMs: later(1) }));
    expect(db.read((tx) => findContact(tx, orderId))?.contact).toBe('someone@example.org');
  });

  test('the same key is new once, then repeated, and never for other content', () => {
    const { db } = shopWithEdition();
    const key = 'c0ffee00-0000-4000';
    const ask = (content: string) => db.read((tx) => findRequest(tx, key, sha256(content)));
    expect(ask('one jar')).toEqual({ kind: 'new' });
    db.write((tx) => insertRequest(tx, { key, sha256: sha256('one jar'), outcome: { shortCode: 'K7-201' }, atMs: later(1) }));
    expect(ask('one jar')).toEqual({ kind: 'repeated', outcome: { shortCode: 'K7-201' } });
    expect(ask('another jar')).toEqual({ kind: 'other-content' });
  });
});
