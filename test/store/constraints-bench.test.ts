// The impossible cannot be stored: jars and stops.
import { describe } from 'vitest';
import type { Writing } from '#db/connection.ts';
import { insertClearance, insertJar, recordMend, recordReadingVoid } from '#db/jars.ts';
import { inserting } from '#db/query.ts';
import { insertHoldDecision } from '#db/releases.ts';
import { insertRequest } from '#db/requests.ts';
import { jarWaste, reading } from '#db/schema-bench.ts';
import { jarRelease } from '#db/schema-release.ts';
import { insertStop, insertStopLifted } from '#db/stops.ts';
import { massUg } from '#lib/units/mass.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { refuses } from '#test/support/refuses.ts';
import {
  aLabel,
  BENCH,
  bindJar,
  CHECKER,
  DAY,
  FORMULATOR,
  idOf,
  KAOLIN_LOT,
  MIXER,
  makeJar,
  numberedIds,
  placeOrder,
  release,
  SCALE,
  stampAt,
  T0,
  weigh,
} from '#test/support/shop-facts.ts';

/** A bound jar of order 1. */
function bound(tx: Writing, editionHash: string): string {
  const placed = placeOrder(tx, 1, editionHash);
  bindJar(tx, placed);
  return placed.jarCode;
}

const newId = numberedIds();
const mend = (tx: Writing, jarCode: string, change: object): number =>
  recordMend(
    tx,
    {
      id: newId(),
      jarCode,
      kind: 'discard',
      newBatchMassUg: null,
      lines: null,
      stockId: null,
      lotId: null,
      massUg: null,
      wasteCostMinor: null,
      reason: '',
      byAccountId: MIXER,
      secondAccountId: null,
      atMs: T0,
      ...change,
    },
    newId,
  );
const correction = { kind: 'correct', stockId: 'citrate', lotId: KAOLIN_LOT, massUg: massUg(1), secondAccountId: CHECKER };

function rawReading(tx: Writing, jarCode: string, change: object): void {
  const requestKey = `reading-${newId()}`;
  insertRequest(tx, { key: requestKey, sha256: 'a'.repeat(64), outcome: {}, atMs: T0 });
  const people = { byAccountId: MIXER, secondAccountId: null };
  const where = { jarCode, factNo: 1, lineNo: 1, weighingNo: 1, lotId: KAOLIN_LOT, scaleId: SCALE };
  inserting(reading)(tx, {
    id: newId(),
    requestKey,
    ...where,
    ...people,
    kind: 'line',
    source: 'scale',
    massUg: massUg(1),
    lotEntry: 'scanned',
    atMs: T0,
    ...change,
  });
}

describe('the bench', () => {
  refuses([
    [
      'a jar of an order that nobody claimed',
      /only for a claimed, open order/,
      (tx, at) => {
        const { orderId, jarCode } = placeOrder(tx, 1, at.editionHash);
        insertJar(tx, {
          batchCode: jarCode,
          orderId,
          localDay: DAY,
          batchNo: 1,
          tareUg: massUg(1),
          jarLotId: null,
          stationId: BENCH,
          byAccountId: MIXER,
          boundAtMs: T0,
        });
      },
    ],
    [
      'two jars of one order',
      /UNIQUE.*jar\.order_id/,
      (tx, at) => {
        const jarCode = bound(tx, at.editionHash);
        insertJar(tx, {
          batchCode: `${jarCode}2`,
          orderId: idOf(101),
          localDay: DAY,
          batchNo: 2,
          tareUg: massUg(1),
          jarLotId: null,
          stationId: BENCH,
          byAccountId: MIXER,
          boundAtMs: T0,
        });
      },
    ],
    [
      'a clearance at no station',
      /FOREIGN KEY/,
      (tx, at) =>
        insertClearance(tx, {
          id: newId(),
          orderId: placeOrder(tx, 1, at.editionHash).orderId,
          stationId: idOf(99),
          items: [],
          wasFullClean: false,
          byAccountId: MIXER,
          atMs: T0,
        }),
    ],
    [
      'a reading checked by the one who weighed',
      /reading_two_people/,
      (tx, at) => rawReading(tx, bound(tx, at.editionHash), { secondAccountId: MIXER }),
    ],
    ['a reading from no lot', /FOREIGN KEY/, (tx, at) => rawReading(tx, bound(tx, at.editionHash), { lotId: idOf(99) })],
    ['a fact number left out', /numbered without a gap/, (tx, at) => rawReading(tx, bound(tx, at.editionHash), { factNo: 2 })],
    [
      'a fact number used by another kind of fact',
      /numbered without a gap/,
      (tx, at) => {
        const jarCode = bound(tx, at.editionHash);
        rawReading(tx, jarCode, {});
        inserting(jarWaste)(tx, {
          id: newId(),
          jarCode,
          factNo: 1,
          lineNo: 1,
          lotId: KAOLIN_LOT,
          massUg: massUg(1),
          reason: '',
          byAccountId: MIXER,
          atMs: T0,
        });
      },
    ],
    [
      'a reading voided twice',
      /UNIQUE.*reading_void/,
      (tx, at) => {
        const jarCode = bound(tx, at.editionHash);
        weigh(tx, { jarCode, grams: 1, id: idOf(70) }, newId);
        const voided = { readingId: idOf(70), jarCode, hadLeftLot: false, reason: '', byAccountId: MIXER, atMs: T0 };
        recordReadingVoid(tx, voided, newId);
        recordReadingVoid(tx, voided, newId);
      },
    ],
    [
      'a void in another jar',
      /of the same jar/,
      (tx, at) => {
        weigh(tx, { jarCode: bound(tx, at.editionHash), grams: 1, id: idOf(70) }, newId);
        const other = placeOrder(tx, 2, at.editionHash);
        bindJar(tx, other);
        recordReadingVoid(
          tx,
          { readingId: idOf(70), jarCode: other.jarCode, hadLeftLot: false, reason: '', byAccountId: MIXER, atMs: T0 },
          newId,
        );
      },
    ],
    [
      'a larger batch without its mass',
      /mend_grown/,
      (tx, at) => mend(tx, bound(tx, at.editionHash), { kind: 'grow', secondAccountId: CHECKER, lines: [] }),
    ],
    ['a correction without a lot', /mend_corrected/, (tx, at) => mend(tx, bound(tx, at.editionHash), { ...correction, lotId: null })],
    [
      'a correction by one person',
      /mend_two_people/,
      (tx, at) => mend(tx, bound(tx, at.editionHash), { ...correction, secondAccountId: null }),
    ],
    [
      'a correction by the same person twice',
      /mend_two_people/,
      (tx, at) => mend(tx, bound(tx, at.editionHash), { ...correction, secondAccountId: MIXER }),
    ],
    [
      'a second correction',
      /UNIQUE.*mend/,
      (tx, at) => {
        const jarCode = bound(tx, at.editionHash);
        mend(tx, jarCode, correction);
        mend(tx, jarCode, correction);
      },
    ],
    [
      'a reading of a discarded jar',
      /the jar is closed/,
      (tx, at) => {
        const jarCode = bound(tx, at.editionHash);
        mend(tx, jarCode, {});
        weigh(tx, { jarCode, grams: 1, id: idOf(70) }, newId);
      },
    ],
    [
      'a release of a discarded jar',
      /the jar is closed/,
      (tx, at) => {
        const jarCode = bound(tx, at.editionHash);
        mend(tx, jarCode, {});
        inserting(jarRelease)(tx, {
          jarCode,
          outcome: 'released',
          findings: [],
          label: aLabel(jarCode),
          useByDay: DAY,
          materialCostMinor: moneyMinor(1),
          byAccountId: MIXER,
          ...stampAt(9),
        });
      },
    ],
    [
      'a reading of a released jar',
      /the jar is closed/,
      (tx, at) => weigh(tx, { jarCode: makeJar(tx, 1, at.editionHash).jarCode, grams: 1, id: idOf(70) }, newId),
    ],
    ['a second release', /closed|UNIQUE/, (tx, at) => release(tx, makeJar(tx, 1, at.editionHash).jarCode)],
    [
      'a decision on a jar that is not held',
      /the jar is not held/,
      (tx, at) =>
        insertHoldDecision(tx, {
          jarCode: makeJar(tx, 1, at.editionHash).jarCode,
          decision: 'released',
          reason: '',
          byAccountId: FORMULATOR,
          secondAccountId: CHECKER,
          atMs: T0,
        }),
    ],
    [
      'a decision by one person',
      /hold_decision_two_people/,
      (tx, at) =>
        insertHoldDecision(tx, {
          jarCode: makeJar(tx, 1, at.editionHash, 'held').jarCode,
          decision: 'released',
          reason: '',
          byAccountId: CHECKER,
          secondAccountId: CHECKER,
          atMs: T0,
        }),
    ],
    [
      'a stop lifted by one person',
      /stop_lifted_two_people/,
      (tx) => {
        insertStop(tx, { id: idOf(80), subjectKind: 'shade', subjectId: 'chalk', reason: 'x', byAccountId: MIXER, atMs: T0 });
        insertStopLifted(tx, { stopId: idOf(80), firstAccountId: CHECKER, secondAccountId: CHECKER, reason: '', atMs: T0 });
      },
    ],
  ]);
});
