// A jar's facts: their order, what they take from lots, and the fold they feed.

import { describe, expect, test } from 'vitest';
import { findLastClearance, insertFitness, listFitness } from '#db/bench-day.ts';
import type { ShopDb } from '#db/connection.ts';
import { listBenchFacts } from '#db/jar-facts.ts';
import { listBenchChecks, listStepsDone, nextBatchNo, recordJarWaste, recordMend, recordReadingVoid } from '#db/jars.ts';
import { findLot } from '#db/lots.ts';
import { findOrder, orderStage } from '#db/orders.ts';
import { findHoldDecision, findRelease, insertHoldDecision, insertLabelPrint, listHeldJars } from '#db/releases.ts';
import { massUg } from '#lib/units/mass.ts';
import { addDays } from '#lib/units/time.ts';
import { shopWithEdition } from '#test/support/founded-shop.ts';
import {
  BENCH,
  bindJar,
  CHECKER,
  CREAM_LOT,
  DAY,
  FORMULATOR,
  idOf,
  KAOLIN_LOT,
  later,
  MIXER,
  makeJar,
  numberedIds,
  placeOrder,
  SCALE,
  weigh,
} from '#test/support/shop-facts.ts';

/** A jar that was just bound; its order holds 1 g of kaolin. */
function boundJar() {
  const shop = shopWithEdition();
  const placed = shop.db.write((tx) => {
    const made = placeOrder(tx, 1, shop.editionHash);
    bindJar(tx, made);
    return made;
  });
  return { ...shop, ...placed, newId: numberedIds() };
}

const leftUg = (db: ShopDb, lotId: string) => db.read((tx) => findLot(tx, lotId))?.leftUg;

const noMend = {
  newBatchMassUg: null,
  lines: null,
  stockId: null,
  lotId: null,
  massUg: null,
  wasteCostMinor: null,
  byAccountId: MIXER,
  atMs: later(4),
};

describe('what a jar takes from its lots', () => {
  test('a reading leaves its lot and frees what was reserved there', () => {
    const { db, jarCode, newId } = boundJar();
    expect(leftUg(db, KAOLIN_LOT)).toBe(99_000_000);
    db.write((tx) => weigh(tx, { jarCode, grams: 0.78, id: idOf(70) }, newId));
    expect(leftUg(db, KAOLIN_LOT)).toBe(99_220_000);
  });

  test('a later reading of the same weighing takes the place of the earlier one; another weighing adds', () => {
    const { db, jarCode, newId } = boundJar();
    db.write((tx) => weigh(tx, { jarCode, grams: 0.5, id: idOf(70) }, newId));
    db.write((tx) => weigh(tx, { jarCode, grams: 0.78, id: idOf(71) }, newId));
    expect(leftUg(db, KAOLIN_LOT)).toBe(99_220_000);
    db.write((tx) => weigh(tx, { jarCode, grams: 0.7, id: idOf(72) }, newId));
    expect(leftUg(db, KAOLIN_LOT)).toBe(99_300_000);
    db.write((tx) => weigh(tx, { jarCode, grams: 0.1, id: idOf(73), weighingNo: 2 }, newId));
    expect(leftUg(db, KAOLIN_LOT)).toBe(99_200_000);
  });

  test('a voided reading gives back what never left, and keeps what did', () => {
    const { db, jarCode, newId } = boundJar();
    const voided = (readingId: string, hadLeftLot: boolean) =>
      db.write((tx) =>
        recordReadingVoid(tx, { readingId, jarCode, hadLeftLot, reason: 'wrong boat', byAccountId: MIXER, atMs: later(4) }, newId),
      );
    db.write((tx) => weigh(tx, { jarCode, grams: 0.78, id: idOf(70) }, newId));
    voided(idOf(70), false);
    expect(leftUg(db, KAOLIN_LOT)).toBe(100_000_000);
    db.write((tx) => weigh(tx, { jarCode, grams: 0.78, id: idOf(71) }, newId));
    voided(idOf(71), true);
    expect(leftUg(db, KAOLIN_LOT)).toBe(99_220_000);
    db.write((tx) => weigh(tx, { jarCode, grams: 0.78, id: idOf(72) }, newId));
    expect(leftUg(db, KAOLIN_LOT)).toBe(98_440_000);
  });

  test('waste and a correction leave their lots too', () => {
    const { db, jarCode, newId } = boundJar();
    const waste = {
      id: idOf(70),
      jarCode,
      lineNo: 1,
      lotId: KAOLIN_LOT,
      massUg: massUg(120_000),
      reason: 'too much in the boat',
      byAccountId: MIXER,
      atMs: later(4),
    };
    db.write((tx) => recordJarWaste(tx, waste, newId));
    const correct = {
      ...noMend,
      id: idOf(71),
      jarCode,
      kind: 'correct',
      stockId: 'citrate',
      lotId: CREAM_LOT,
      massUg: massUg(300_000),
      reason: 'pH 6.9',
      secondAccountId: CHECKER,
    } as const;
    db.write((tx) => recordMend(tx, correct, newId));
    expect(leftUg(db, KAOLIN_LOT)).toBe(98_880_000);
    expect(leftUg(db, CREAM_LOT)).toBe(499_700_000);
  });
});

describe('the facts of a jar', () => {
  test('come back in the order in which they were written', () => {
    const { db, jarCode, newId } = boundJar();
    const line = {
      lineNo: 1,
      exactUgText: '900000',
      targetUg: massUg(900_000),
      loUg: massUg(810_000),
      hiUg: massUg(990_000),
      topUpUg: massUg(0),
      plannedWeighingsCount: 1,
      into: null,
    };
    db.write((tx) => {
      weigh(tx, { jarCode, grams: 0.5, id: idOf(70) }, newId);
      recordReadingVoid(
        tx,
        { readingId: idOf(70), jarCode, hadLeftLot: false, reason: 'typed twice', byAccountId: MIXER, atMs: later(4) },
        newId,
      );
      weigh(tx, { jarCode, grams: 0.9, id: idOf(71) }, newId);
      recordJarWaste(
        tx,
        { id: idOf(72), jarCode, lineNo: 2, lotId: CREAM_LOT, massUg: massUg(10_000), reason: 'drop', byAccountId: MIXER, atMs: later(4) },
        newId,
      );
      recordMend(
        tx,
        {
          ...noMend,
          id: idOf(73),
          jarCode,
          kind: 'grow',
          newBatchMassUg: massUg(60_000_000),
          lines: [line],
          reason: 'kaolin',
          secondAccountId: CHECKER,
        },
        newId,
      );
      recordMend(
        tx,
        {
          ...noMend,
          id: idOf(74),
          jarCode,
          kind: 'correct',
          stockId: 'citrate',
          lotId: CREAM_LOT,
          massUg: massUg(5),
          reason: 'pH',
          secondAccountId: CHECKER,
        },
        newId,
      );
    });
    expect(db.read((tx) => listBenchFacts(tx, jarCode))).toEqual([
      { kind: 'reading', seq: 1, lineNo: 1, weighingNo: 1, lotId: KAOLIN_LOT, massUg: 500_000 },
      { kind: 'void', seq: 2, voidedSeq: 1 },
      { kind: 'reading', seq: 3, lineNo: 1, weighingNo: 1, lotId: KAOLIN_LOT, massUg: 900_000 },
      { kind: 'waste', seq: 4, lineNo: 2, lotId: CREAM_LOT, massUg: 10_000 },
      { kind: 'grown', seq: 5, batchUg: 60_000_000, lines: [line] },
      { kind: 'correction', seq: 6, stockId: 'citrate', lotId: CREAM_LOT, massUg: 5 },
    ]);
  });

  test('a discarded jar is no bench fact, but its order says so', () => {
    const { db, jarCode, orderId, newId } = boundJar();
    db.write((tx) =>
      recordMend(tx, { ...noMend, id: idOf(70), jarCode, kind: 'discard', reason: 'dropped', secondAccountId: null }, newId),
    );
    const view = db.read((tx) => findOrder(tx, orderId));
    expect(view && orderStage(view)).toBe('jar-discarded');
    expect(db.read((tx) => listBenchFacts(tx, jarCode))).toEqual([]);
  });
});

describe('checks, releases and the day', () => {
  test('steps, checks, release and copies of the label', () => {
    const { db, editionHash } = shopWithEdition();
    const { jarCode } = db.write((tx) => makeJar(tx, 1, editionHash));
    const print = () => db.write((tx) => insertLabelPrint(tx, { jarCode, byAccountId: MIXER, atMs: later(8) }));
    expect([print(), print()]).toEqual([1, 2]);
    db.read((tx) => {
      expect(listStepsDone(tx, jarCode)).toMatchObject([{ stepId: 'paste' }]);
      expect(listBenchChecks(tx, jarCode)).toMatchObject([{ kind: 'look', hasPassed: true, phX100: null }]);
      expect(findRelease(tx, jarCode)).toMatchObject({
        outcome: 'released',
        useByDay: '2027-05-25',
        label: { batchCode: jarCode, ingredientsText: 'AQUA' },
      });
      expect(nextBatchNo(tx, DAY)).toBe(2);
      expect(nextBatchNo(tx, addDays(DAY, 1))).toBe(1);
    });
  });

  test('held jars are listed until somebody decides', () => {
    const { db, editionHash } = shopWithEdition();
    const { jarCode } = db.write((tx) => makeJar(tx, 1, editionHash, 'held'));
    expect(db.read(listHeldJars).map((row) => row.jarCode)).toEqual([jarCode]);
    const decided = {
      jarCode,
      decision: 'discarded',
      reason: 'separated',
      byAccountId: FORMULATOR,
      secondAccountId: CHECKER,
      atMs: later(9),
    } as const;
    db.write((tx) => insertHoldDecision(tx, decided));
    expect(db.read(listHeldJars)).toEqual([]);
    expect(db.read((tx) => findHoldDecision(tx, jarCode))).toEqual(decided);
  });

  test("a station's fitness is asked by day", () => {
    const { db, editionHash } = shopWithEdition();
    db.write((tx) => makeJar(tx, 1, editionHash));
    const readings = [{ kind: 'weight' as const, nominalUg: massUg(50_000_000), shownUg: massUg(50_010_000) }];
    db.write((tx) =>
      insertFitness(tx, {
        id: idOf(70),
        stationId: BENCH,
        kind: 'scale',
        scaleId: SCALE,
        readings,
        hasPassed: true,
        validDay: DAY,
        byAccountId: MIXER,
        atMs: later(0),
      }),
    );
    db.read((tx) => {
      expect(listFitness(tx, BENCH, DAY)).toMatchObject([{ kind: 'scale', readings }]);
      expect(listFitness(tx, BENCH, addDays(DAY, 1))).toEqual([]);
      expect(findLastClearance(tx, BENCH)).toMatchObject({ items: ['bench empty'] });
    });
  });
});
