// What the review and the safety screens are fed with: sales, counters, stops, complaints.

import { describe, expect, test } from 'vitest';
import {
  findComplaint,
  insertComplaint,
  insertComplaintPerson,
  insertComplaintStep,
  listComplaintSteps,
  listComplaints,
  listComplaintsOfJar,
} from '#db/complaints.ts';
import { insertCounterBucket, listCounters, listVisits } from '#db/counters.ts';
import { insertOrderEnd, insertOrderLink } from '#db/orders.ts';
import { listEndedOrders, listSoldCombinations, listSoldJars } from '#db/sales.ts';
import { findStop, insertStop, insertStopLifted, listStops, listStopsInForce } from '#db/stops.ts';
import { isoWeek, isoWeekOf } from '#lib/units/time.ts';
import { shopWithEdition } from '#test/support/founded-shop.ts';
import { CHECKER, collect, DAY, FORMULATOR, idOf, later, MIXER, makeJar, placeOrder, stampAt } from '#test/support/shop-facts.ts';

const WEEKS = { fromWeek: isoWeek(DAY), toWeek: isoWeek(DAY) };
const NEXT_WEEK = { fromWeek: isoWeekOf(202_649), toWeek: isoWeekOf(202_649) };

describe('sales', () => {
  test('collected jars count by week, variant and size; a jar still standing does not', () => {
    const { db, editionHash } = shopWithEdition();
    db.write((tx) => {
      const jars = [1, 2, 3].map((no) => makeJar(tx, no, editionHash));
      insertOrderLink(tx, { orderId: jars[1]?.orderId ?? '', kind: 'remake', jarCode: jars[0]?.jarCode ?? '' });
      for (const { orderId } of jars.slice(0, 2)) collect(tx, orderId);
      insertOrderEnd(tx, { orderId: placeOrder(tx, 4, editionHash).orderId, kind: 'lapsed', reason: '', byAccountId: null, ...stampAt(9) });
    });
    db.read((tx) => {
      expect(listSoldCombinations(tx, WEEKS)).toEqual([
        {
          isoWeek: 202_648,
          variantKey: 'chalk|niacinamide@20000',
          jarSizeId: 'jar-50',
          jarsCount: 2,
          revenueMinor: 4_900,
          materialCostMinor: 620,
          costedCount: 2,
          remakesCount: 1,
        },
      ]);
      expect(listSoldCombinations(tx, NEXT_WEEK)).toEqual([]);
      expect(listEndedOrders(tx, WEEKS)).toEqual([
        { isoWeek: 202_648, kind: 'collected', ordersCount: 2 },
        { isoWeek: 202_648, kind: 'lapsed', ordersCount: 1 },
      ]);
    });
  });

  test('one row a sold jar, however many complaints it has', () => {
    const { db, editionHash } = shopWithEdition();
    db.write((tx) => {
      const { orderId, jarCode } = makeJar(tx, 1, editionHash);
      collect(tx, orderId);
      for (const no of [80, 81])
        insertComplaint(tx, { id: idOf(no), jarCode, kind: 'look', seriousness: 'not-serious', byAccountId: MIXER, ...stampAt(20) });
    });
    expect(db.read((tx) => listSoldJars(tx, WEEKS))).toMatchObject([
      {
        jarCode: 'ML263290001X',
        priceMinor: 2_450,
        materialCostMinor: 310,
        complaintsCount: 2,
        mendsCount: 0,
        link: null,
        claimedAtMs: later(1),
        releasedAtMs: later(5),
      },
    ]);
  });
});

describe('counters', () => {
  test('buckets add up by week, kind and subject', () => {
    const { db } = shopWithEdition();
    const bucket = (no: number, visitsCount: number, hydrationCount: number) =>
      db.write((tx) =>
        insertCounterBucket(tx, { id: idOf(no), isoWeek: isoWeek(DAY), visitsCount, flushedAtMs: later(1) }, [
          { kind: 'concern', subject: 'dryness', visitsCount: hydrationCount },
          { kind: 'finding', subject: 'ph-too-low', visitsCount: 1 },
        ]),
      );
    bucket(80, 5, 3);
    bucket(81, 7, 4);
    db.read((tx) => {
      expect(listVisits(tx, WEEKS)).toEqual([{ isoWeek: 202_648, visitsCount: 12 }]);
      expect(listCounters(tx, WEEKS)).toEqual([
        { isoWeek: 202_648, kind: 'concern', subject: 'dryness', visitsCount: 7 },
        { isoWeek: 202_648, kind: 'finding', subject: 'ph-too-low', visitsCount: 2 },
      ]);
    });
  });

  test('a bucket of four visits leaves nothing behind', () => {
    const { db } = shopWithEdition();
    const small = () =>
      db.write((tx) => insertCounterBucket(tx, { id: idOf(80), isoWeek: isoWeek(DAY), visitsCount: 4, flushedAtMs: later(1) }, []));
    expect(small).toThrow(/counter_bucket_five/);
    expect(db.read((tx) => listVisits(tx, WEEKS))).toEqual([]);
  });
});

describe('stops and complaints', () => {
  test('a stop is in force until two people lift it', () => {
    const { db } = shopWithEdition();
    const stop = { id: idOf(80), subjectKind: 'lot', subjectId: 'KA-1', reason: 'grit', byAccountId: MIXER, atMs: later(1) } as const;
    db.write((tx) => insertStop(tx, stop));
    expect(db.read(listStopsInForce)).toEqual([stop]);
    const lifted = { stopId: stop.id, firstAccountId: FORMULATOR, secondAccountId: CHECKER, reason: 'sieved', atMs: later(2) };
    db.write((tx) => insertStopLifted(tx, lifted));
    expect(db.read(listStopsInForce)).toEqual([]);
    expect(db.read((tx) => findStop(tx, stop.id))).toEqual({ stop, lifted });
    expect(db.read(listStops)).toEqual([{ stop, lifted }]);
  });

  test('a complaint has numbered steps, and its person apart', () => {
    const { db, editionHash } = shopWithEdition();
    const { jarCode } = db.write((tx) => makeJar(tx, 1, editionHash));
    const complaint = { id: idOf(80), jarCode, kind: 'reaction', seriousness: 'serious', byAccountId: MIXER, ...stampAt(20) } as const;
    const person = { complaintId: complaint.id, said: 'It stung.', contact: 'someone@example.org' };
    db.write((tx) => {
      insertComplaint(tx, complaint);
      insertComplaintPerson(tx, person);
      for (const kind of ['told-responsible-person', 'answered'] as const)
        insertComplaintStep(tx, { complaintId: complaint.id, kind, note: '', byAccountId: MIXER, atMs: later(30) });
    });
    db.read((tx) => {
      expect(findComplaint(tx, complaint.id)).toEqual({ complaint, person });
      expect(listComplaintsOfJar(tx, jarCode)).toEqual([complaint]);
      expect(listComplaints(tx, WEEKS)).toEqual([complaint]);
      expect(listComplaints(tx, NEXT_WEEK)).toEqual([]);
      expect(listComplaintSteps(tx, complaint.id)).toMatchObject([
        { stepNo: 1, kind: 'told-responsible-person' },
        { stepNo: 2, kind: 'answered' },
      ]);
    });
  });
});
