// Purging: what has had its time is gone from the file, the fact of its erasure stays, and the chain stays whole.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findComplaint, insertComplaint, insertComplaintPerson } from '#db/complaints.ts';
import type { ShopDb, Writing } from '#db/connection.ts';
import { findContact, insertContact } from '#db/contacts.ts';
import { listLedger } from '#db/ledger.ts';
import { migrateFile } from '#db/migrate.ts';
import { openShopDb } from '#db/open.ts';
import { insertOrderEnd } from '#db/orders.ts';
import type { Purged } from '#db/purge.ts';
import { purge } from '#db/purge.ts';
import { verifyLedger } from '#db/verify-ledger.ts';
import type { InstantMs } from '#lib/units/time.ts';
import { instantMs } from '#lib/units/time.ts';
import { shopWithEdition } from '#test/support/founded-shop.ts';
import { freshFolder } from '#test/support/shop-db.ts';
import {
  idOf,
  insertLots,
  insertShop,
  later,
  MIXER,
  makeJar,
  numberedIds,
  placeOrder,
  publish,
  stampAt,
} from '#test/support/shop-facts.ts';

const noonOf = (day: string): InstantMs => instantMs(Date.parse(`${day}T12:00:00Z`));
const newId = numberedIds(5_000);
const purgeOn = (db: ShopDb, day: string, retentionYears = 10): Purged =>
  db.write((tx) => purge(tx, { retentionYears, atMs: noonOf(day), newId }));

/** One released jar (use by 2027-05-25) and one cancelled order, both with a contact; one complaint. All of 2026-11-25. */
function insertPersons(tx: Writing, editionHash: string): void {
  const { orderId, jarCode } = makeJar(tx, 1, editionHash);
  insertContact(tx, { orderId, contact: 'jar@example.org', atMs: later(1) });
  const cancelled = placeOrder(tx, 2, editionHash).orderId;
  insertContact(tx, { orderId: cancelled, contact: 'cancelled@example.org', atMs: later(1) });
  insertOrderEnd(tx, { orderId: cancelled, kind: 'cancelled', reason: '', byAccountId: null, ...stampAt(9) });
  insertComplaint(tx, { id: idOf(80), jarCode, kind: 'reaction', seriousness: 'serious', byAccountId: MIXER, ...stampAt(20) });
  insertComplaintPerson(tx, { complaintId: idOf(80), said: 'It stung.', contact: 'complaint@example.org' });
}

function withPersons(): ShopDb {
  const { db, editionHash } = shopWithEdition();
  db.write((tx) => insertPersons(tx, editionHash));
  return db;
}

describe('contacts', () => {
  const has = (db: ShopDb, no: number): boolean => db.read((tx) => findContact(tx, idOf(100 + no)) !== undefined);

  test('of an order that came to nothing go six months after its end', () => {
    const db = withPersons();
    expect(purgeOn(db, '2027-05-25').contactsCount).toBe(0);
    expect(purgeOn(db, '2027-05-26').contactsCount).toBe(1);
    expect([has(db, 1), has(db, 2)]).toEqual([true, false]);
  });

  test('of a jar go six months after its use-by', () => {
    const db = withPersons();
    expect(purgeOn(db, '2027-11-25').contactsCount).toBe(1);
    expect(has(db, 1)).toBe(true);
    expect(purgeOn(db, '2027-11-26').contactsCount).toBe(1);
    expect(has(db, 1)).toBe(false);
  });
});

describe('past the retention', () => {
  test('ledger bodies and complaints go, a day early nothing does', () => {
    const db = withPersons();
    expect(purgeOn(db, '2036-11-25')).toMatchObject({ bodiesCount: 0, complaintsCount: 0 });
    expect(purgeOn(db, '2036-11-26')).toMatchObject({ bodiesCount: 2, complaintsCount: 1 });
    db.read((tx) => {
      expect(findComplaint(tx, idOf(80))).toMatchObject({ complaint: { seriousness: 'serious' }, person: null });
      expect(listLedger(tx, 0, 2)).toMatchObject([
        { body: null, purgedAtMs: noonOf('2036-11-26') },
        { body: null, purgedAtMs: noonOf('2036-11-26') },
      ]);
    });
  });

  test('the chain stays whole, and each purge is a fact of it', () => {
    const db = withPersons();
    purgeOn(db, '2036-11-26');
    const report = db.read(verifyLedger);
    expect(report.problems).toEqual([]);
    expect(report.rowsCount).toBe(3);
    expect(db.read((tx) => listLedger(tx, 2, 9))).toMatchObject([
      { row: { kind: 'purged' }, body: '{"bodiesCount":2,"complaintsCount":1,"contactsCount":2,"retentionYears":10}' },
    ]);
  });

  test('a second purge finds nothing left', () => {
    const db = withPersons();
    purgeOn(db, '2036-11-26');
    expect(purgeOn(db, '2036-11-26')).toEqual({ bodiesCount: 0, contactsCount: 0, complaintsCount: 0 });
  });
});

test('nothing erasable goes without the fact of its erasure', () => {
  const { db, sqlite, editionHash } = shopWithEdition();
  db.write((tx) => insertPersons(tx, editionHash));
  for (const table of ['ledger_body', 'contact', 'complaint_person'])
    expect(() => sqlite.exec(`DELETE FROM ${table}`), table).toThrow(/erased only with its row/);
});

test('what was erased is in no byte of the file or its WAL', () => {
  const file = join(freshFolder(), 'shop.db');
  migrateFile(file);
  const db = openShopDb(file);
  db.write((tx) => {
    insertShop(tx);
    insertLots(tx);
    insertPersons(tx, publish(tx, 'first').hash);
  });
  const holds = (text: string): boolean => [file, `${file}-wal`].filter(existsSync).some((path) => readFileSync(path).includes(text));
  db.checkpoint();
  expect(holds('jar@example.org')).toBe(true);
  purgeOn(db, '2036-11-26');
  db.checkpoint();
  for (const text of ['jar@example.org', 'cancelled@example.org', 'complaint@example.org', 'It stung.'])
    expect(holds(text), text).toBe(false);
  db.close();
});
