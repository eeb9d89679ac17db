// Who takes an order on, and what stands in the way. Invented orders; the rules are the house's own.
import { describe, expect, test } from 'vitest';
import { claimOrder } from '#app/_flows/claim-order.ts';
import { lapseOrders } from '#app/_flows/lapse-orders.ts';
import { showQueue } from '#app/_flows/show-queue.ts';
import { ledgerSeqNo } from '#db/ledger.ts';
import { findLotByCode } from '#db/lots.ts';
import { findOrder, insertOrderHold, orderStage } from '#db/orders.ts';
import { insertStop } from '#db/stops.ts';
import { ACID_JAR, aKey, benchOrder, mixUntil, orderJar } from '#test/support/a-bench-order.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop, took } from '#test/support/a-shop.ts';

const MINUTES_A_DAY = 24 * 60;
const seqOf = ({ db }: AShop): number => db.read(ledgerSeqNo);

function stopped(shop: AShop, subjectKind: 'shade' | 'lot', subjectId: string): void {
  const flow = shop.as('formulator');
  shop.db.write((tx) =>
    insertStop(tx, {
      id: flow.newId(),
      subjectKind,
      subjectId,
      reason: 'it came out streaky',
      byAccountId: shop.accountId('formulator'),
      atMs: flow.now,
    }),
  );
}

describe('taking an order on', () => {
  test('the first gets it; the second is told so, and nothing is written', () => {
    const shop = aShop();
    const orderId = orderJar(shop);
    took(claimOrder(shop.as('mixer'), { requestKey: aKey(), orderId }));
    const before = seqOf(shop);
    expect(claimOrder(shop.as('second-mixer'), { requestKey: aKey(), orderId })).toEqual({
      ok: false,
      refusal: { kind: 'already-claimed' },
    });
    expect(seqOf(shop)).toBe(before);
    expect(benchOrder(shop, orderId).view.claim?.byAccountId).toBe(shop.accountId('mixer'));
  });

  test('the same key again is the same claim; for another order it is refused', () => {
    const shop = aShop();
    const asked = { requestKey: aKey(), orderId: orderJar(shop) };
    took(claimOrder(shop.as('mixer'), asked));
    const before = seqOf(shop);
    expect(claimOrder(shop.as('mixer'), asked)).toEqual({ ok: true, value: null });
    expect(seqOf(shop)).toBe(before);
    expect(claimOrder(shop.as('mixer'), { ...asked, orderId: orderJar(shop) })).toEqual({ ok: false, refusal: { kind: 'other-content' } });
  });

  test('a bench holds one jar at a time', () => {
    const shop = aShop();
    const first = orderJar(shop);
    took(claimOrder(shop.as('mixer'), { requestKey: aKey(), orderId: first }));
    const { shortCode } = benchOrder(shop, first).view.order;
    expect(claimOrder(shop.as('mixer'), { requestKey: aKey(), orderId: orderJar(shop) })).toEqual({
      ok: false,
      refusal: { kind: 'bench-busy', shortCode },
    });
  });

  test('an order that is not there', () => {
    const shop = aShop();
    expect(claimOrder(shop.as('mixer'), { requestKey: aKey(), orderId: shop.benchId })).toEqual({
      ok: false,
      refusal: { kind: 'no-such-order' },
    });
  });

  test.each([
    ['its shade', 'shade', () => 'fern-bank'],
    ['a lot of its card', 'lot', (shop: AShop) => shop.db.read((tx) => findLotByCode(tx, 'NIA-N-106'))?.lot.id ?? ''],
  ] as const)('a stop on %s is in the way, and the queue says why', (_what, kind, subject) => {
    const shop = aShop();
    const orderId = orderJar(shop);
    stopped(shop, kind, subject(shop));
    expect(claimOrder(shop.as('mixer'), { requestKey: aKey(), orderId })).toEqual({
      ok: false,
      refusal: { kind: 'stopped', reasons: ['it came out streaky'] },
    });
    expect(showQueue(shop.as('mixer')).rows[0]).toMatchObject({ orderId, stage: 'placed', stops: ['it came out streaky'] });
  });

  test('a held order waits for its customer', () => {
    const shop = aShop();
    const orderId = orderJar(shop);
    const flow = shop.asNobody();
    shop.db.write((tx) =>
      insertOrderHold(tx, { id: flow.newId(), orderId, reason: 'A new edition', findings: [], byAccountId: null, atMs: flow.now }),
    );
    expect(claimOrder(shop.as('mixer'), { requestKey: aKey(), orderId })).toEqual({ ok: false, refusal: { kind: 'not-ready' } });
    expect(showQueue(shop.as('mixer')).rows[0]).toMatchObject({ stage: 'held', heldBecause: 'A new edition' });
  });
});

describe('the close of the day', () => {
  const freeUg = (shop: AShop): number | null | undefined => shop.db.read((tx) => findLotByCode(tx, 'LAC-50-108'))?.leftUg;

  test('an unclaimed order lapses on the next day and frees what was promised to it; a claimed one stays', () => {
    const shop = aShop();
    const full = freeUg(shop);
    const orderId = orderJar(shop, ACID_JAR);
    const kept = mixUntil(shop, orderJar(shop), 'clearance');
    expect(freeUg(shop)).toBeLessThan(full ?? 0);
    expect(lapseOrders(shop.asNobody(60))).toBe(0);
    expect(lapseOrders(shop.asNobody(MINUTES_A_DAY))).toBe(1);
    expect(freeUg(shop)).toBe(full);
    const stageOf = (id: string) => shop.db.read((tx) => orderStage(findOrder(tx, id) ?? expect.fail('no such order')));
    expect([stageOf(orderId), stageOf(kept)]).toEqual(['lapsed', 'claimed']);
  });

  test('whoever takes an order on lapses the old ones first', () => {
    const shop = aShop();
    const old = orderJar(shop);
    const today = orderJar(shop, ACID_JAR, MINUTES_A_DAY);
    took(claimOrder(shop.as('mixer', MINUTES_A_DAY + 1), { requestKey: aKey(), orderId: today }));
    expect(benchOrder(shop, old).stage).toBe('lapsed');
  });
});

test('the queue is in the order in which customers came, with what each jar needs: the first base jar of the day and any acid have their pH measured', () => {
  const shop = aShop();
  const second = orderJar(shop, ACID_JAR, 5);
  const first = orderJar(shop, undefined, 1);
  expect(showQueue(shop.as('mixer', 6)).rows.map((row) => [row.orderId, row.weighingsCount, row.checksCount, row.hasDust])).toEqual([
    [first, 5, 3, true],
    [second, 5, 4, true],
  ]);
});
