// What is left of lots, which may be used, and where they went.

import { describe, expect, test } from 'vitest';
import type { Writing } from '#db/connection.ts';
import type { Lot } from '#db/lots.ts';
import { findLot, insertLot, insertLotEvent, insertLotParent, insertLotUse, listStandingLots, listUsableLots } from '#db/lots.ts';
import { freeReservations, listOpenReservations } from '#db/reservations.ts';
import { listJarsOfLot, listLotsOfJar } from '#db/trace.ts';
import { invariant } from '#lib/base/invariant.ts';
import { massDifferenceUg, massUg } from '#lib/units/mass.ts';
import { localDay } from '#lib/units/time.ts';
import { shopWithEdition } from '#test/support/founded-shop.ts';
import {
  bindJar,
  CREAM_LOT,
  DAY,
  idOf,
  KAOLIN_LOT,
  later,
  MANAGER,
  MIXER,
  numberedIds,
  placeOrder,
  weigh,
} from '#test/support/shop-facts.ts';

function lotRow(tx: Writing, id: string): Lot {
  const found = findLot(tx, id);
  invariant(found, `no lot ${id}`);
  return found.lot;
}

describe('lots', () => {
  test('what is left is what came in, less uses, less open reservations', () => {
    const { db, editionHash } = shopWithEdition();
    const placed = db.write((tx) => placeOrder(tx, 1, editionHash));
    const left = () => db.read((tx) => findLot(tx, KAOLIN_LOT));
    expect(left()).toMatchObject({ status: 'released', reservedUg: 1_000_000, leftUg: 99_000_000, leftCount: null });
    db.write((tx) => {
      const spill = { lotId: KAOLIN_LOT, leftCount: null, reason: 'dropped', jarCode: null, byAccountId: MIXER, atMs: later(2) };
      insertLotUse(tx, { ...spill, id: idOf(50), kind: 'spill', leftMassUg: massDifferenceUg(9_000_000) });
      insertLotUse(tx, { ...spill, id: idOf(51), kind: 'stock-take', leftMassUg: massDifferenceUg(-2_000_000) });
    });
    expect(left()).toMatchObject({ leftUg: 92_000_000 });
    db.write((tx) => freeReservations(tx, { orderId: placed.orderId, reason: 'lapsed', atMs: later(3) }));
    expect(left()).toMatchObject({ reservedUg: 0, leftUg: 93_000_000 });
    expect(db.read((tx) => listOpenReservations(tx, placed.orderId))).toEqual([]);
  });

  test('usable lots are released and unexpired, first to expire first; the last word on a lot counts', () => {
    const { db } = shopWithEdition();
    db.write((tx) => {
      const lot = lotRow(tx, KAOLIN_LOT);
      insertLot(tx, { ...lot, id: idOf(33), code: 'KA-2', expiryDay: localDay('2027-01-31') });
      insertLot(tx, { ...lot, id: idOf(34), code: 'KA-3', expiryDay: localDay('2026-11-24') });
      insertLot(tx, { ...lot, id: idOf(35), code: 'KA-4', expiryDay: localDay('2026-12-31') });
      for (const lotId of [33, 34].map(idOf))
        insertLotEvent(tx, { lotId, kind: 'released', reason: '', byAccountId: MANAGER, atMs: later(1) });
    });
    const codes = () => db.read((tx) => listUsableLots(tx, { kind: 'stock', refId: 'kaolin', onDay: DAY })).map(({ lot }) => lot.code);
    expect(codes()).toEqual(['KA-2', 'KA-1']);
    expect(db.read((tx) => findLot(tx, idOf(35)))?.status).toBe('quarantine');
    const say = (kind: 'held' | 'opened' | 'released' | 'spent') =>
      db.write((tx) => insertLotEvent(tx, { lotId: KAOLIN_LOT, kind, reason: 'a reason', byAccountId: MANAGER, atMs: later(2) }));
    say('held');
    expect(codes()).toEqual(['KA-2']);
    say('released');
    say('opened');
    expect(codes()).toEqual(['KA-2', 'KA-1']);
    expect(db.read((tx) => findLot(tx, KAOLIN_LOT))).toMatchObject({ status: 'released', openedAtMs: later(2) });
    say('spent');
    expect(codes()).toEqual(['KA-2']);
    expect(db.read(listStandingLots).map(({ lot }) => lot.code)).toEqual(['KA-3', 'KA-4', 'KA-2', 'CR-1']);
  });

  test('a lot is traced through a bench-made batch to the jar, and back', () => {
    const { db, editionHash } = shopWithEdition();
    const premix = idOf(40);
    const jarCode = db.write((tx) => {
      insertLot(tx, { ...lotRow(tx, KAOLIN_LOT), id: premix, refId: 'premix', code: 'PX-1' });
      insertLotParent(tx, { lotId: premix, parentLotId: KAOLIN_LOT, massUg: massUg(80_000_000) });
      const placed = placeOrder(tx, 1, editionHash);
      bindJar(tx, placed);
      const newId = numberedIds();
      weigh(tx, { jarCode: placed.jarCode, grams: 0.26, id: newId(), lotId: premix }, newId);
      weigh(tx, { jarCode: placed.jarCode, grams: 47.47, id: newId(), lineNo: 2, lotId: CREAM_LOT }, newId);
      return placed.jarCode;
    });
    db.read((tx) => {
      expect(listJarsOfLot(tx, KAOLIN_LOT)).toEqual([{ jarCode, orderId: idOf(101), lotId: premix }]);
      expect(listJarsOfLot(tx, CREAM_LOT)).toEqual([{ jarCode, orderId: idOf(101), lotId: CREAM_LOT }]);
      expect(listLotsOfJar(tx, jarCode)).toEqual([
        { lotId: CREAM_LOT, lotCode: 'CR-1', madeIntoLotId: null },
        { lotId: KAOLIN_LOT, lotCode: 'KA-1', madeIntoLotId: premix },
        { lotId: premix, lotCode: 'PX-1', madeIntoLotId: null },
      ]);
    });
  });
});
