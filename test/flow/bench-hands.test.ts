// Every order has a way out: back to the queue, into other hands, closed, off its hold. Invented orders; the rules are the house's own.
import { describe, expect, test } from 'vitest';
import { claimOrder } from '#app/_flows/claim-order.ts';
import { closeOrder } from '#app/_flows/close-order.ts';
import { collectOrder } from '#app/_flows/collect-order.ts';
import { decideHeldJar } from '#app/_flows/decide-held-jar.ts';
import { giveBackOrder } from '#app/_flows/give-back-order.ts';
import { lapseOrders } from '#app/_flows/lapse-orders.ts';
import { printLabel } from '#app/_flows/print-label.ts';
import { recordCheck } from '#app/_flows/record-check.ts';
import { releaseJar } from '#app/_flows/release-jar.ts';
import { resumeOrder } from '#app/_flows/resume-order.ts';
import { showCard } from '#app/_flows/show-card.ts';
import { takeOverOrder } from '#app/_flows/take-over-order.ts';
import { listCardIssues } from '#db/cards.ts';
import { ledgerSeqNo } from '#db/ledger.ts';
import { findLotByCode } from '#db/lots.ts';
import { insertOrderHold } from '#db/orders.ts';
import { findHoldDecision } from '#db/releases.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { gramsToUg } from '#lib/units/mass.ts';
import { ACID_JAR, aKey, benchOrder, doStep, mixUntil, orderJar } from '#test/support/a-bench-order.ts';
import type { AShop, Person } from '#test/support/a-shop.ts';
import { aShop, took } from '#test/support/a-shop.ts';

const MINUTES_A_DAY = 24 * 60;
const ACID_LOT = 'LAC-50-108';
const REASON = { reason: 'she had to leave' };
const refusalOf = (outcome: { readonly ok: boolean; readonly refusal?: unknown }) => (outcome.ok ? null : outcome.refusal);
const stageOf = (shop: AShop, orderId: string) => benchOrder(shop, orderId).stage;
const acidFreeUg = (shop: AShop) => shop.db.read((tx) => findLotByCode(tx, ACID_LOT))?.leftUg;

type Way = typeof giveBackOrder;
const go = (way: Way, shop: AShop, orderId: string, { by = 'mixer', minutes = 5 }: { by?: Person; minutes?: number } = {}) =>
  refusalOf(way(shop.as(by, minutes), { requestKey: aKey(), orderId, ...REASON }));

function hold(shop: AShop, orderId: string): string {
  const flow = shop.asNobody();
  shop.db.write((tx) =>
    insertOrderHold(tx, { id: flow.newId(), orderId, reason: 'A new edition', findings: [], byAccountId: null, atMs: flow.now }),
  );
  return orderId;
}

/** Spills the acid until no more than this is free. */
function spillBut(shop: AShop, freeUg: number): void {
  const lot = shop.db.read((tx) => findLotByCode(tx, ACID_LOT));
  shop.sqlite
    .prepare(`INSERT INTO lot_use VALUES (?, ?, 'spill', ?, NULL, 'fell', NULL, ?, 1)`)
    .run(shop.asNobody().newId(), lot?.lot.id, (lot?.leftUg ?? 0) - freeUg, shop.accountId('mixer'));
  expect(acidFreeUg(shop)).toBe(freeUg);
}

function stopShade(shop: AShop, shadeId: string): void {
  shop.sqlite
    .prepare(`INSERT INTO stop (id, subject_kind, subject_id, reason, by_account_id, at_ms) VALUES (?, 'shade', ?, 'streaks', ?, 1)`)
    .run(shop.as('mixer').newId(), shadeId, shop.accountId('formulator'));
}

describe('giving an order back', () => {
  test('by whoever has it, or by anybody else with a reason: it waits in the queue again and the bench is free', () => {
    for (const by of ['mixer', 'second-mixer'] as const) {
      const shop = aShop();
      const orderId = mixUntil(shop, orderJar(shop), 'clearance');
      const next = orderJar(shop, ACID_JAR);
      expect(refusalOf(claimOrder(shop.as(by), { requestKey: aKey(), orderId: next }))).toMatchObject({ kind: 'bench-busy' });
      expect(go(giveBackOrder, shop, orderId, { by })).toBeNull();
      expect(stageOf(shop, orderId)).toBe('placed');
      took(claimOrder(shop.as(by, 6), { requestKey: aKey(), orderId: next }));
    }
  });

  test('it can be taken on again, by another, and its bench is cleared again', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), 'protection');
    expect(go(giveBackOrder, shop, orderId)).toBeNull();
    took(claimOrder(shop.as('second-mixer', 6), { requestKey: aKey(), orderId }));
    const { view, step } = benchOrder(shop, orderId);
    expect([view.claim?.byAccountId, step.kind]).toEqual([shop.accountId('second-mixer'), 'clearance']);
  });

  test('it lapses at the end of its day like any other that nobody has', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), 'clearance');
    expect(go(giveBackOrder, shop, orderId)).toBeNull();
    expect(lapseOrders(shop.asNobody(MINUTES_A_DAY))).toBe(1);
  });

  test('not once a jar is bound, and not twice', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 1 });
    expect(go(giveBackOrder, shop, orderId)).toEqual({ kind: 'not-this-step' });
    expect(go(giveBackOrder, shop, orderJar(shop))).toEqual({ kind: 'not-this-step' });
  });

  test('the same key again is the same act', () => {
    const shop = aShop();
    const asked = { requestKey: aKey(), orderId: mixUntil(shop, orderJar(shop), 'clearance'), ...REASON };
    took(giveBackOrder(shop.as('mixer', 5), asked));
    const before = shop.db.read(ledgerSeqNo);
    took(giveBackOrder(shop.as('mixer', 5), asked));
    expect(shop.db.read(ledgerSeqNo)).toBe(before);
  });
});

describe('taking an order over', () => {
  test('a jar goes on where it stands, in the hands of whoever took it over and nobody else', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 2 });
    const { jar, claim } = benchOrder(shop, orderId).view;
    expect(go(takeOverOrder, shop, orderId, { by: 'second-mixer' })).toBeNull();
    const after = benchOrder(shop, orderId);
    expect(after.view.jar).toEqual(jar);
    expect(after.view.claim).toMatchObject({ byAccountId: shop.accountId('second-mixer'), stationId: claim?.stationId });
    expect(after.step).toMatchObject({ kind: 'weigh', lineNo: 2 });
    expect(() => doStep(shop, orderId)).toThrow(/not-yours/);
  });

  test('nobody takes over what is in their own hands or in nobody’s', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), 'clearance');
    expect(go(takeOverOrder, shop, orderId)).toEqual({ kind: 'not-this-step' });
    expect(go(takeOverOrder, shop, orderJar(shop))).toEqual({ kind: 'not-this-step' });
  });
});

describe('closing an order', () => {
  const waiting = (shop: AShop) => orderJar(shop, ACID_JAR);
  test.each([
    ['one that waits', waiting],
    ['one in hand', (shop: AShop) => mixUntil(shop, waiting(shop), 'clearance')],
    ['one on hold', (shop: AShop) => hold(shop, waiting(shop))],
  ] as const)('%s is cancelled, and what was promised to it is free', (_what, made) => {
    const shop = aShop();
    const full = acidFreeUg(shop);
    const orderId = made(shop);
    expect(acidFreeUg(shop)).toBeLessThan(full ?? 0);
    expect(go(closeOrder, shop, orderId, { by: 'checker' })).toBeNull();
    expect(acidFreeUg(shop)).toBe(full);
    expect(benchOrder(shop, orderId)).toMatchObject({
      stage: 'cancelled',
      view: { end: { reason: REASON.reason, byAccountId: shop.accountId('checker') } },
    });
    expect(go(closeOrder, shop, orderId)).toEqual({ kind: 'not-this-step' });
  });

  test('a stop after the claim is no dead end', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), 'clearance');
    stopShade(shop, 'fern-bank');
    expect(go(closeOrder, shop, orderId)).toBeNull();
    expect(stageOf(shop, orderId)).toBe('cancelled');
  });

  test('a released jar that nobody fetches is thrown away; one that is being mixed is discarded at its step', () => {
    const shop = aShop();
    const mixing = mixUntil(shop, orderJar(shop), { lineNo: 1 });
    expect(go(closeOrder, shop, mixing)).toEqual({ kind: 'not-this-step' });
    mixUntil(shop, mixing, 'release');
    doStep(shop, mixing);
    expect(go(closeOrder, shop, mixing)).toBeNull();
    expect(stageOf(shop, mixing)).toBe('discarded');
  });
});

describe('the end of a hold', () => {
  test('a jar that is permitted and can be made gets a new card and waits in the queue, in nobody’s hands', () => {
    const shop = aShop();
    const orderId = hold(shop, mixUntil(shop, orderJar(shop, ACID_JAR), 'clearance'));
    const promised = acidFreeUg(shop);
    expect(showCard(shop.as('mixer'), orderId)?.doing).toEqual({ kind: 'held', reason: 'A new edition', findings: [] });
    expect(go(resumeOrder, shop, orderId)).toBeNull();
    const { stage, view } = benchOrder(shop, orderId);
    expect([stage, view.claim, view.hold]).toEqual(['placed', null, null]);
    expect(acidFreeUg(shop)).toBe(promised);
    expect(shop.db.read((tx) => listCardIssues(tx, orderId)).at(-1)?.reason).toBe('off hold');
    mixUntil(shop, orderId, 'release', 6);
  });

  test('its own promise does not stand in its way', () => {
    const shop = aShop();
    const orderId = hold(shop, orderJar(shop, ACID_JAR));
    // 1.04 g are promised, and a plan asks for the 1.14 g that its band may take at most.
    spillBut(shop, gramsToUg(0.1));
    expect(go(resumeOrder, shop, orderId)).toBeNull();
  });

  test('what is stopped, or what cannot be made, stays on hold and says why', () => {
    const shop = aShop();
    const orderId = hold(shop, orderJar(shop));
    stopShade(shop, 'fern-bank');
    expect(showCard(shop.as('mixer'), orderId)?.doing).toMatchObject({ kind: 'held', findings: ['stopped'] });
    expect(go(resumeOrder, shop, orderId)).toEqual({ kind: 'cannot-make', findings: ['stopped'] });
    expect(stageOf(shop, orderId)).toBe('held');
    expect(go(resumeOrder, shop, orderJar(shop, ACID_JAR))).toEqual({ kind: 'not-this-step' });
  });

  test('whoever had it in hand, an order on hold lapses at the end of its day', () => {
    const shop = aShop();
    const full = acidFreeUg(shop);
    const orderId = hold(shop, mixUntil(shop, orderJar(shop, ACID_JAR), 'clearance'));
    expect(lapseOrders(shop.asNobody(MINUTES_A_DAY))).toBe(1);
    expect([stageOf(shop, orderId), acidFreeUg(shop)]).toEqual(['lapsed', full]);
  });
});

describe('a held jar', () => {
  function heldJar() {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop, ACID_JAR), 'ph');
    took(recordCheck(shop.as('mixer', 3), { requestKey: aKey(), orderId, check: { kind: 'ph', phX100: phX100(350) } }));
    const jarCode = benchOrder(shop, orderId).view.jar?.batchCode ?? '';
    took(releaseJar(shop.as('mixer', 4), { requestKey: aKey(), orderId, jarCode }));
    expect(stageOf(shop, orderId)).toBe('jar-held');
    return { shop, orderId, jarCode };
  }
  const decide = (shop: AShop, orderId: string, by: Person, second: Person, remakeOrderId: string | null = null) =>
    refusalOf(
      decideHeldJar(shop.as(by, 6), { requestKey: aKey(), orderId, ...REASON, secondAccountId: shop.accountId(second), remakeOrderId }),
    );

  test('is thrown away by two people, one of them a checker or a formulator; its order is closed', () => {
    const { shop, orderId, jarCode } = heldJar();
    expect(decide(shop, orderId, 'mixer', 'second-mixer')).toEqual({ kind: 'decider-needed' });
    expect(decide(shop, orderId, 'checker', 'checker')).toEqual({ kind: 'second-same-person' });
    expect(decide(shop, orderId, 'mixer', 'formulator')).toBeNull();
    expect(stageOf(shop, orderId)).toBe('discarded');
    expect(shop.db.read((tx) => findHoldDecision(tx, jarCode))).toMatchObject({
      decision: 'discarded',
      reason: REASON.reason,
      byAccountId: shop.accountId('mixer'),
      secondAccountId: shop.accountId('formulator'),
    });
    expect(decide(shop, orderId, 'checker', 'mixer')).toEqual({ kind: 'not-this-step' });
  });

  test('another can be made in its place: it waits in the queue, since the bench may hold another jar by now', () => {
    const { shop, orderId, jarCode } = heldJar();
    const inHand = mixUntil(shop, orderJar(shop), 'clearance');
    const remakeOrderId = shop.as('mixer').newId();
    expect(decide(shop, orderId, 'checker', 'mixer', remakeOrderId)).toBeNull();
    expect(benchOrder(shop, remakeOrderId)).toMatchObject({ stage: 'placed', view: { link: { kind: 'remake', jarCode } } });
    expect(stageOf(shop, inHand)).toBe('claimed');
  });

  test('is never handed over', () => {
    const { shop, orderId, jarCode } = heldJar();
    expect(refusalOf(printLabel(shop.as('mixer', 5), { requestKey: aKey(), orderId }))).toEqual({ kind: 'not-ready' });
    expect(refusalOf(collectOrder(shop.as('mixer', 5), { requestKey: aKey(), orderId, labelCode: jarCode }))).toEqual({
      kind: 'not-ready',
    });
  });
});
