// Weighing: what is refused and why, what a reading moves, and what never happens twice.
import { describe, expect, test } from 'vitest';
import { confirmStep } from '#app/_flows/confirm-step.ts';
import { decideLot, receiveLot } from '#app/_flows/receive-lot.ts';
import type { ReadingAsked } from '#app/_flows/record-reading.ts';
import { recordReading } from '#app/_flows/record-reading.ts';
import { voidReading } from '#app/_flows/void-reading.ts';
import { listJarFacts } from '#db/jar-facts.ts';
import { ledgerSeqNo } from '#db/ledger.ts';
import { findLotByCode, insertLotUse } from '#db/lots.ts';
import { findRequest } from '#db/requests.ts';
import { insertStop } from '#db/stops.ts';
import { gramsToUg, massDifferenceUg, massUg } from '#lib/units/mass.ts';
import { addDays } from '#lib/units/time.ts';
import { aKey, benchOrder, doStep, dueReading, mixUntil, orderJar } from '#test/support/a-bench-order.ts';
import { TEST_DAY } from '#test/support/a-demo-book.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop, took } from '#test/support/a-shop.ts';

const BLEND_LOT = 'FRN-B-105';

/** A jar that waits for its first powder (1.04 g, 0.94 to 1.14 g, in a boat). */
function atFirstPowder() {
  const shop = aShop();
  const orderId = mixUntil(shop, orderJar(shop), { lineNo: 1 });
  return { shop, orderId };
}

function tryReading(shop: AShop, orderId: string, bend: Partial<ReadingAsked>) {
  const outcome = recordReading(shop.as('mixer', 3), dueReading(shop, orderId, bend));
  return outcome.ok ? null : outcome.refusal;
}

function readings(shop: AShop, orderId: string) {
  const jarCode = benchOrder(shop, orderId).view.jar?.batchCode ?? '';
  return shop.db.read((tx) => listJarFacts(tx, jarCode).readings);
}

describe('a reading', () => {
  test('in the band it is a fact, typed; its lot is open from now on, has lost it, and owes the order nothing more', () => {
    const { shop, orderId } = atFirstPowder();
    const before = shop.db.read((tx) => findLotByCode(tx, BLEND_LOT));
    expect(before).toMatchObject({ openedAtMs: null, reservedUg: gramsToUg(1.04) });
    expect(tryReading(shop, orderId, { massUg: gramsToUg(1.1), againUg: gramsToUg(1.1) })).toBeNull();
    expect(readings(shop, orderId)).toMatchObject([
      { lineNo: 1, weighingNo: 1, kind: 'line', source: 'typed', massUg: 1_100_000, secondAccountId: null },
    ]);
    const after = shop.db.read((tx) => findLotByCode(tx, BLEND_LOT));
    expect(after).toMatchObject({ reservedUg: 0, leftUg: gramsToUg(400 - 1.1) });
    expect(after?.openedAtMs).not.toBeNull();
    expect(benchOrder(shop, orderId).step).toMatchObject({ kind: 'weigh', lineNo: 2 });
  });

  test('both ends of the band are inside', () => {
    for (const grams of [0.94, 1.14]) {
      const { shop, orderId } = atFirstPowder();
      expect(tryReading(shop, orderId, { massUg: gramsToUg(grams), againUg: gramsToUg(grams) })).toBeNull();
    }
  });

  test.each<[string, Partial<ReadingAsked>, object]>([
    ['another line than the one that is due', { lineNo: 2 }, { kind: 'not-this-step' }],
    ['typed differently the second time', { againUg: gramsToUg(1.05) }, { kind: 'entries-differ' }],
    [
      'between two steps of the scale',
      { massUg: massUg(1_045_000), againUg: massUg(1_045_000) },
      { kind: 'between-steps', stepUg: 10_000 },
    ],
    [
      'more than the scale weighs',
      { massUg: gramsToUg(700), againUg: gramsToUg(700) },
      { kind: 'over-capacity', capacityUg: gramsToUg(600) },
    ],
    ['too little', { massUg: gramsToUg(0.93), againUg: gramsToUg(0.93) }, { kind: 'too-little', addUg: gramsToUg(0.11) }],
    [
      'too much, not said to lie there',
      { massUg: gramsToUg(1.15), againUg: gramsToUg(1.15) },
      { kind: 'too-much', overUg: gramsToUg(0.01) },
    ],
    [
      'a lot of something else',
      { lotCode: 'KAO-N-101' },
      { kind: 'lot', fault: 'other-stock', expectedCode: BLEND_LOT, shownCode: 'KAO-N-101' },
    ],
    [
      'a lot that nobody knows',
      { lotCode: ' frn-b-999 ' },
      { kind: 'lot', fault: 'unknown', expectedCode: BLEND_LOT, shownCode: 'FRN-B-999' },
    ],
  ])('%s is refused, and nothing is written', (_what, bend, refusal) => {
    const { shop, orderId } = atFirstPowder();
    const before = shop.db.read(ledgerSeqNo);
    const asked = dueReading(shop, orderId, bend);
    const outcome = recordReading(shop.as('mixer', 3), asked);
    expect(outcome).toEqual({ ok: false, refusal });
    expect(shop.db.read(ledgerSeqNo)).toBe(before);
    expect(shop.db.read((tx) => findRequest(tx, asked.requestKey, 'a'.repeat(64)))).toEqual({ kind: 'new' });
    expect(readings(shop, orderId)).toEqual([]);
  });

  test('the code of a lot may be typed in small letters', () => {
    const { shop, orderId } = atFirstPowder();
    expect(tryReading(shop, orderId, { lotCode: BLEND_LOT.toLowerCase() })).toBeNull();
  });

  test('the same key again weighs nothing a second time; with another weight it is refused', () => {
    const { shop, orderId } = atFirstPowder();
    const asked = dueReading(shop, orderId);
    took(recordReading(shop.as('mixer', 3), asked));
    const before = shop.db.read(ledgerSeqNo);
    took(recordReading(shop.as('mixer', 4), asked));
    expect([shop.db.read(ledgerSeqNo), readings(shop, orderId).length]).toEqual([before, 1]);
    const other = recordReading(shop.as('mixer', 4), { ...asked, massUg: gramsToUg(1), againUg: gramsToUg(1) });
    expect(other).toEqual({ ok: false, refusal: { kind: 'other-content' } });
  });

  test('a power cut between two statements leaves all of it or nothing', () => {
    const { shop, orderId } = atFirstPowder();
    shop.sqlite.exec(`CREATE TRIGGER cut BEFORE INSERT ON ledger WHEN NEW.kind = 'weighed' BEGIN SELECT RAISE(ABORT, 'power cut'); END`);
    const asked = dueReading(shop, orderId);
    expect(() => recordReading(shop.as('mixer', 3), asked)).toThrow('power cut');
    expect(readings(shop, orderId)).toEqual([]);
    expect(shop.db.read((tx) => findLotByCode(tx, BLEND_LOT))).toMatchObject({ openedAtMs: null, reservedUg: gramsToUg(1.04) });
    shop.sqlite.exec('DROP TRIGGER cut');
    took(recordReading(shop.as('mixer', 4), asked));
    expect(readings(shop, orderId)).toHaveLength(1);
  });
});

describe('the lot in hand', () => {
  const lotId = (shop: AShop): string => shop.db.read((tx) => findLotByCode(tx, BLEND_LOT))?.lot.id ?? '';

  function otherLot(shop: AShop): string {
    const first = shop.db.read((tx) => findLotByCode(tx, BLEND_LOT))?.lot;
    if (!first) throw new Error('no lot');
    const { id: _id, receivedAtMs: _at, byAccountId: _by, ...rest } = first;
    const { lotId: other } = took(receiveLot(shop.as('mixer'), { ...rest, code: 'FRN-B-200' }));
    took(decideLot(shop.as('mixer'), { lotId: other, kind: 'released', reason: 'certificate checked' }));
    return 'FRN-B-200';
  }

  test('another released lot of the same stock is refused while the card’s is fit', () => {
    const { shop, orderId } = atFirstPowder();
    expect(tryReading(shop, orderId, { lotCode: otherLot(shop) })).toEqual({
      kind: 'lot',
      fault: 'not-on-card',
      expectedCode: BLEND_LOT,
      shownCode: 'FRN-B-200',
    });
  });

  test('held: the lot is refused, and another released one may take its place', () => {
    const { shop, orderId } = atFirstPowder();
    took(decideLot(shop.as('mixer'), { lotId: lotId(shop), kind: 'held', reason: 'smells odd' }));
    expect(tryReading(shop, orderId, {})).toMatchObject({ kind: 'lot', fault: 'not-released' });
    expect(tryReading(shop, orderId, { lotCode: otherLot(shop) })).toBeNull();
  });

  test('empty by the records', () => {
    const { shop, orderId } = atFirstPowder();
    const flow = shop.as('mixer');
    const use = {
      lotId: lotId(shop),
      kind: 'spill',
      leftMassUg: massDifferenceUg(gramsToUg(399.5)),
      leftCount: null,
      reason: 'dropped',
      jarCode: null,
    } as const;
    shop.db.write((tx) => insertLotUse(tx, { ...use, id: flow.newId(), byAccountId: shop.accountId('mixer'), atMs: flow.now }));
    expect(tryReading(shop, orderId, {})).toMatchObject({ kind: 'lot', fault: 'too-little' });
  });

  test('expired since the card was issued', () => {
    const { shop, orderId } = atFirstPowder();
    const expiry = shop.db.read((tx) => findLotByCode(tx, BLEND_LOT))?.lot.expiryDay ?? TEST_DAY;
    expect(expiry > addDays(TEST_DAY, 30)).toBe(true);
    shop.sqlite.exec('DROP TRIGGER lot_no_update');
    shop.sqlite.prepare('UPDATE lot SET expiry_day = ? WHERE code = ?').run(addDays(TEST_DAY, -1), BLEND_LOT);
    expect(tryReading(shop, orderId, {})).toMatchObject({ kind: 'lot', fault: 'expired' });
  });

  test('stopped: nothing of the jar goes on', () => {
    const { shop, orderId } = atFirstPowder();
    const flow = shop.as('formulator');
    const subjectId = lotId(shop);
    shop.db.write((tx) =>
      insertStop(tx, {
        id: flow.newId(),
        subjectKind: 'lot',
        subjectId,
        reason: 'recalled by its maker',
        byAccountId: shop.accountId('formulator'),
        atMs: flow.now,
      }),
    );
    expect(tryReading(shop, orderId, {})).toEqual({ kind: 'stopped', reasons: ['recalled by its maker'] });
  });
});

describe('a line that a second person checks', () => {
  /** At the niacinamide: 1.04 g, 0.99 to 1.09 g, a look-alike. */
  function atFlagged() {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 4 });
    const second = { lotCode: 'NIA-N-106', massUg: gramsToUg(1.04), accountId: shop.accountId('checker') };
    return { shop, orderId, second };
  }

  test('waits for one, and for nobody before the first reading is in its band', () => {
    const { shop, orderId } = atFlagged();
    expect(tryReading(shop, orderId, { second: null })).toEqual({ kind: 'second-needed' });
    expect(tryReading(shop, orderId, { massUg: gramsToUg(0.5), againUg: gramsToUg(0.5), second: null })).toMatchObject({
      kind: 'too-little',
    });
  });

  test('two people who read something else agree on nothing', () => {
    const { shop, orderId, second } = atFlagged();
    expect(tryReading(shop, orderId, { second: { ...second, massUg: gramsToUg(1.05) } })).toEqual({ kind: 'second-differs' });
    expect(tryReading(shop, orderId, { second: { ...second, lotCode: 'PAN-75-107' } })).toEqual({ kind: 'second-differs' });
  });

  test('both stand on record', () => {
    const { shop, orderId, second } = atFlagged();
    expect(tryReading(shop, orderId, { second: { ...second, lotCode: 'nia-n-106' } })).toBeNull();
    expect(readings(shop, orderId).at(-1)).toMatchObject({
      byAccountId: shop.accountId('mixer'),
      secondAccountId: shop.accountId('checker'),
    });
  });
});

describe('taking the last reading back', () => {
  const takeBack = (shop: AShop, orderId: string) =>
    voidReading(shop.as('mixer', 5), { requestKey: aKey(), orderId, reason: 'typed wrongly' });

  test('the reading stays on record beside the fact that it does not count, its lot has the mass back, and the line waits again', () => {
    const { shop, orderId } = atFirstPowder();
    expect(tryReading(shop, orderId, {})).toBeNull();
    took(takeBack(shop, orderId));
    expect(readings(shop, orderId)).toHaveLength(1);
    expect(benchOrder(shop, orderId).step).toMatchObject({ kind: 'weigh', lineNo: 1 });
    expect(shop.db.read((tx) => findLotByCode(tx, BLEND_LOT))?.leftUg).toBe(gramsToUg(400));
    expect(tryReading(shop, orderId, { massUg: gramsToUg(1.05), againUg: gramsToUg(1.05) })).toBeNull();
    expect(shop.db.read((tx) => findLotByCode(tx, BLEND_LOT))?.leftUg).toBe(gramsToUg(400 - 1.05));
  });

  test('once, and not after a step that followed it', () => {
    const { shop, orderId } = atFirstPowder();
    expect(takeBack(shop, orderId)).toEqual({ ok: false, refusal: { kind: 'nothing-to-take-back' } });
    doStep(shop, orderId, 2);
    doStep(shop, orderId, 3);
    took(confirmStep(shop.as('mixer', 4), { requestKey: aKey(), orderId, step: { kind: 'paste' } }));
    expect(takeBack(shop, orderId)).toEqual({ ok: false, refusal: { kind: 'nothing-to-take-back' } });
  });
});
