// Who takes an order on, and what stands in the way. Invented orders; the rules are the house's own.
import { describe, expect, test } from 'vitest';
import { claimOrder } from '#app/_flows/claim-order.ts';
import { closeOrder } from '#app/_flows/close-order.ts';
import { editionInForce } from '#app/_flows/edition-in-force.ts';
import type { Flow } from '#app/_flows/flow.ts';
import { lapseOrders } from '#app/_flows/lapse-orders.ts';
import { bindScale, openStation } from '#app/_flows/open-station.ts';
import { decideLot, receiveLot } from '#app/_flows/receive-lot.ts';
import { recordCheck } from '#app/_flows/record-check.ts';
import { readShopStand } from '#app/_flows/shop-context.ts';
import { showQueue } from '#app/_flows/show-queue.ts';
import { listCardIssues } from '#db/cards.ts';
import { isLotPhMeasured } from '#db/jar-facts.ts';
import { ledgerSeqNo } from '#db/ledger.ts';
import { findLotByCode, insertLotUse } from '#db/lots.ts';
import { findOrder, insertOrderHold, orderStage } from '#db/orders.ts';
import { listStationScales } from '#db/stations.ts';
import { insertStop } from '#db/stops.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { massDifferenceUg, massUg } from '#lib/units/mass.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { addDays } from '#lib/units/time.ts';
import { ACID_JAR, aKey, benchOrder, doStep, mixUntil, orderJar } from '#test/support/a-bench-order.ts';
import { TEST_DAY } from '#test/support/a-demo-book.ts';
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
    expect(claimOrder(shop.as('mixer'), { requestKey: aKey(), orderId })).toEqual({
      ok: false,
      refusal: { kind: 'order-held', reason: expect.any(String) },
    });
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

test('the queue is in the order in which customers came, with what each jar needs; until a jar of the base lot was measured today, each is', () => {
  const shop = aShop();
  const second = orderJar(shop, ACID_JAR, 5);
  const first = orderJar(shop, undefined, 1);
  expect(showQueue(shop.as('mixer', 6)).rows.map((row) => [row.orderId, row.weighingsCount, row.checksCount, row.hasDust])).toEqual([
    [first, 5, 4, true],
    [second, 5, 4, true],
  ]);
});

describe('the card when an order is taken on', () => {
  const issuesOf = (shop: AShop, orderId: string) => shop.db.read((tx) => listCardIssues(tx, orderId));
  const claim = (flow: Flow, orderId: string) => claimOrder(flow, { requestKey: aKey(), orderId });

  /** A second bench with scales of its own. */
  function secondBench(shop: AShop, profileId: string): { readonly flow: Flow; readonly scaleId: string } {
    const { stationId } = took(openStation(shop.asNobody(), { kind: 'bench', code: 'B2', name: 'Bench 2' }));
    const stricter = { stricterStepUg: null, stricterRepeatabilityUg: null, stricterCapacityUg: null };
    bindScale(shop.asNobody(), { stationId, profileId, code: 'CG-2', ...stricter });
    const scaleId = shop.db.read((tx) => listStationScales(tx, stationId))[0]?.id ?? '';
    const flow = shop.as('second-mixer', 1);
    return { flow: { ...flow, actor: { ...flow.actor, stationId } as Flow['actor'] }, scaleId };
  }

  test('is the one that was issued where nothing changed', () => {
    const shop = aShop();
    const orderId = orderJar(shop);
    took(claim(shop.as('mixer'), orderId));
    expect(issuesOf(shop, orderId)).toHaveLength(1);
  });

  test('at another bench names that bench’s scales, and promises no more than before', () => {
    const shop = aShop();
    const orderId = orderJar(shop);
    const reserved = () => shop.db.read((tx) => findLotByCode(tx, 'NIA-N-106'))?.reservedUg;
    const before = reserved();
    const { flow, scaleId } = secondBench(shop, 'bench-centigram');
    took(claim(flow, orderId));
    const { card, step } = benchOrder(shop, orderId);
    expect(new Set(card.lines.map((line) => line.scale.id))).toEqual(new Set([scaleId]));
    expect(step).toMatchObject({ kind: 'fitness', scaleIds: [scaleId] });
    expect([issuesOf(shop, orderId).length, reserved()]).toEqual([2, before]);
  });

  test('a bench without a scale for it is told so; nothing is written, and the first bench still can', () => {
    const shop = aShop();
    const orderId = orderJar(shop);
    const { flow } = secondBench(shop, 'gone-from-the-rulebook');
    const before = seqOf(shop);
    expect(claim(flow, orderId)).toEqual({ ok: false, refusal: { kind: 'cannot-make', findings: ['no-scale'] } });
    expect(seqOf(shop)).toBe(before);
    took(claim(shop.as('mixer'), orderId));
  });

  test('a scale that is worse than its profile is taken for what it is, and none for better', () => {
    const shop = aShop();
    const { stationId } = took(openStation(shop.asNobody(), { kind: 'bench', code: 'B2', name: 'Bench 2' }));
    const bind = (code: string, own: readonly [number, number, number]) =>
      bindScale(shop.asNobody(), {
        stationId,
        profileId: 'bench-centigram',
        code,
        stricterStepUg: massUg(own[0]),
        stricterRepeatabilityUg: massUg(own[1]),
        stricterCapacityUg: massUg(own[2]),
      });
    bind('WORSE', [50_000, 20_000, 200_000_000]);
    bind('BETTER', [1_000, 500, 2_000_000_000]);
    const { book } = shop.db.read((tx) => editionInForce(tx, shop.asNobody())) ?? expect.fail('no edition');
    const { bench } = shop.db.read((tx) => readShopStand(tx, shop.asNobody(), book, stationId));
    const own = ({ stepUg, repeatabilityUg, capacityUg }: { stepUg: number; repeatabilityUg: number; capacityUg: number }) => [
      stepUg,
      repeatabilityUg,
      capacityUg,
    ];
    const profile = own(book.scaleProfiles.get('bench-centigram') ?? expect.fail('no profile'));
    expect(new Map(bench?.scales.map((scale) => [scale.code, own(scale)]))).toEqual(
      new Map([
        ['WORSE', [50_000, 20_000, 200_000_000]],
        ['BETTER', profile],
      ]),
    );
  });

  test('another lot takes the place of a stopped one', () => {
    const shop = aShop();
    const orderId = orderJar(shop);
    const lot = shop.db.read((tx) => findLotByCode(tx, 'NIA-N-106'))?.lot;
    const { byAccountId: _by, id: lotId = '', receivedAtMs: _at, ...delivered } = lot ?? expect.fail('no lot');
    stopped(shop, 'lot', lotId);
    const other = took(receiveLot(shop.as('mixer'), { ...delivered, code: 'NIA-N-999' })).lotId;
    took(decideLot(shop.as('mixer'), { lotId: other, kind: 'released', reason: 'certificate checked' }));
    took(claim(shop.as('mixer'), orderId));
    const { card, stops } = benchOrder(shop, orderId);
    expect([card.lines.flatMap((line) => line.lots).some((share) => share.lotId === other), stops]).toEqual([true, []]);
  });

  test('what was promised is enough, though a new plan would ask for the most that a line may take', () => {
    const shop = aShop();
    const orderId = orderJar(shop, ACID_JAR);
    const lot = shop.db.read((tx) => findLotByCode(tx, 'LAC-50-108'));
    const spill = {
      kind: 'spill',
      leftMassUg: massDifferenceUg(lot?.leftUg ?? 0),
      leftCount: null,
      reason: 'fell',
      jarCode: null,
    } as const;
    const by = { byAccountId: shop.accountId('mixer'), atMs: shop.asNobody().now };
    shop.db.write((tx) => insertLotUse(tx, { id: shop.asNobody().newId(), lotId: lot?.lot.id ?? '', ...spill, ...by }));
    took(claim(shop.as('mixer'), orderId));
    expect(issuesOf(shop, orderId)).toHaveLength(1);
  });
});

describe('the pH of the first jar', () => {
  const isDue = (shop: AShop, orderId: string): boolean => benchOrder(shop, orderId).card.steps.some((step) => step.kind === 'ph');

  test('is measured until one of the same base lot has passed today: an order that came to nothing counts for nothing', () => {
    const shop = aShop();
    const [first, second, third] = [orderJar(shop), orderJar(shop, undefined, 1), orderJar(shop, undefined, 2)];
    took(closeOrder(shop.as('mixer'), { requestKey: aKey(), orderId: first, reason: 'changed their mind' }));
    mixUntil(shop, second, 'ph', 3);
    expect(isDue(shop, second)).toBe(true);
    doStep(shop, second, 4);
    mixUntil(shop, second, 'release', 5);
    doStep(shop, second, 6);
    mixUntil(shop, third, 'clearance', 7);
    expect(isDue(shop, third)).toBe(false);
  });

  test('a pH that was out, another base lot and another day prove nothing', () => {
    const shop = aShop();
    const first = mixUntil(shop, orderJar(shop), 'ph');
    took(recordCheck(shop.as('mixer', 3), { requestKey: aKey(), orderId: first, check: { kind: 'ph', phX100: phX100(300) } }));
    const later = orderJar(shop, undefined, 4);
    expect(isDue(shop, later)).toBe(true);
    doStep(shop, first, 5);
    const cream = benchOrder(shop, first).card.lines.find((line) => line.source.kind === 'cream')?.lots[0]?.lotId ?? '';
    const isProved = (lotId: string, day: LocalDay): boolean => shop.db.read((tx) => isLotPhMeasured(tx, lotId, day));
    expect([isProved(cream, TEST_DAY), isProved(shop.benchId, TEST_DAY), isProved(cream, addDays(TEST_DAY, 1))]).toEqual([
      true,
      false,
      false,
    ]);
  });
});
