// Who may come in, and where they are signed in.

import { describe, expect, test } from 'vitest';
import type { Writing } from '#db/connection.ts';
import {
  countWrongAttempts,
  findAccountByCode,
  findSecretHash,
  insertAccountClosed,
  insertAuthAttempt,
  insertSecretHash,
  listAccounts,
} from '#db/people.ts';
import { findOpenSession, insertSession, insertSessionEnd, listOpenSessions } from '#db/sessions.ts';
import { findIncarnation, readShop } from '#db/shop.ts';
import { insertStationScaleRemoved, listStationScales } from '#db/stations.ts';
import { shopWithEdition } from '#test/support/founded-shop.ts';
import { BENCH, idOf, KIOSK, later, MANAGER, MIXER, SCALE } from '#test/support/shop-facts.ts';

describe('shop, people, sessions', () => {
  test('a founded shop has a row and a first incarnation', () => {
    const { db } = shopWithEdition();
    db.read((tx) => {
      expect(readShop(tx)).toMatchObject({ shopCode: 'ML', zone: 'Europe/Paris', isDemo: true });
      expect(findIncarnation(tx)).toMatchObject({ incarnationNo: 1, origin: 'founded' });
    });
  });

  test('an account is found by code, closed or not, and its latest secret counts', () => {
    const { db } = shopWithEdition();
    db.write((tx) => {
      insertSecretHash(tx, { accountId: MIXER, hash: '$argon2id$one', atMs: later(1) });
      insertSecretHash(tx, { accountId: MIXER, hash: '$argon2id$two', atMs: later(2) });
      insertAccountClosed(tx, { accountId: MIXER, byAccountId: MANAGER, reason: 'left', atMs: later(3) });
    });
    db.read((tx) => {
      expect(findSecretHash(tx, MIXER)).toBe('$argon2id$two');
      expect(findAccountByCode(tx, 'mixer')).toMatchObject({ id: MIXER, role: 'mixer', closedAtMs: later(3) });
      expect(findAccountByCode(tx, 'manager')?.closedAtMs).toBeNull();
      expect(listAccounts(tx).map(({ code }) => code)).toEqual(['checker', 'formulator', 'manager', 'mixer', 'second-formulator']);
      expect(findAccountByCode(tx, 'nobody')).toBeUndefined();
    });
  });

  test('wrong tries count from the last right one and from an instant', () => {
    const { db } = shopWithEdition();
    const attempt = (tx: Writing, minutes: number, outcome: 'wrong' | 'passed') =>
      insertAuthAttempt(tx, { id: idOf(2_000 + minutes), accountId: MIXER, stationId: null, outcome, atMs: later(minutes) });
    db.write((tx) => {
      attempt(tx, 1, 'wrong');
      attempt(tx, 2, 'passed');
      attempt(tx, 3, 'wrong');
      attempt(tx, 9, 'wrong');
    });
    db.read((tx) => {
      expect(countWrongAttempts(tx, MIXER, later(0))).toBe(2);
      expect(countWrongAttempts(tx, MIXER, later(5))).toBe(1);
      expect(countWrongAttempts(tx, MANAGER, later(0))).toBe(0);
    });
  });

  test('a session counts until it ends, expires or its account is closed', () => {
    const { db } = shopWithEdition();
    const token = (digit: string): string => digit.repeat(64);
    const open = (atMinutes: number, digit: string) => db.read((tx) => findOpenSession(tx, token(digit), later(atMinutes)));
    db.write((tx) => {
      for (const digit of ['a', 'b'])
        insertSession(tx, { tokenSha256: token(digit), accountId: MIXER, stationId: BENCH, createdAtMs: later(0), expiresAtMs: later(60) });
      insertSession(tx, { tokenSha256: token('c'), accountId: null, stationId: KIOSK, createdAtMs: later(0), expiresAtMs: later(60) });
    });
    expect(open(59, 'a')).toMatchObject({ account: { code: 'mixer' }, station: { code: 'B1' } });
    expect(open(60, 'a')).toBeUndefined();
    expect(open(1, 'c')).toMatchObject({ account: null, station: { code: 'K7' } });
    db.write((tx) => insertSessionEnd(tx, { tokenSha256: token('a'), reason: 'signed-out', atMs: later(2) }));
    expect(open(3, 'a')).toBeUndefined();
    expect(db.read((tx) => listOpenSessions(tx, MIXER, later(3))).map((row) => row.tokenSha256)).toEqual([token('b')]);
    db.write((tx) => insertAccountClosed(tx, { accountId: MIXER, byAccountId: MANAGER, reason: 'left', atMs: later(4) }));
    expect(open(5, 'b')).toBeUndefined();
  });

  test('a scale that was removed no longer stands at its station', () => {
    const { db } = shopWithEdition();
    expect(db.read((tx) => listStationScales(tx, BENCH)).map(({ code }) => code)).toEqual(['S1']);
    db.write((tx) => insertStationScaleRemoved(tx, { scaleId: SCALE, byAccountId: MANAGER, reason: 'broken', atMs: later(1) }));
    expect(db.read((tx) => listStationScales(tx, BENCH))).toEqual([]);
  });
});
