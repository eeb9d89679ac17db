// Mending a jar that went off its card. There is no way to go on all the same.
import { describe, expect, test } from 'vitest';
import { claimOrder } from '#app/_flows/claim-order.ts';
import { correctPh } from '#app/_flows/correct-ph.ts';
import type { Mending } from '#app/_flows/mend-jar.ts';
import { mendJar } from '#app/_flows/mend-jar.ts';
import { recordCheck } from '#app/_flows/record-check.ts';
import { recordReading } from '#app/_flows/record-reading.ts';
import { showCard } from '#app/_flows/show-card.ts';
import { listJarFacts } from '#db/jar-facts.ts';
import { findLotByCode } from '#db/lots.ts';
import { findOrder, orderStage } from '#db/orders.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { gramsToUg } from '#lib/units/mass.ts';
import { ACID_JAR, aKey, benchOrder, doStep, dueReading, mixUntil, orderJar } from '#test/support/a-bench-order.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop, took } from '#test/support/a-shop.ts';

/** Everything is weighed in the vessel, so that too much cannot be taken out again. */
const allInVessel = (rulebook: Rulebook): Rulebook => ({ ...rulebook, house: { ...rulebook.house, boatBelowUg: 0 } });
const vesselShop = (): AShop => aShop('all-in-vessel', allInVessel);

const poured = (shop: AShop, orderId: string, grams: number) =>
  recordReading(shop.as('mixer', 3), dueReading(shop, orderId, { massUg: gramsToUg(grams), againUg: gramsToUg(grams), isPoured: true }));
const mend = (shop: AShop, orderId: string, asked: Mending) => mendJar(shop.as('mixer', 4), { requestKey: aKey(), orderId, mend: asked });
const grow = (shop: AShop, orderId: string) => mend(shop, orderId, { kind: 'grow', secondAccountId: shop.accountId('checker') });
const stateOf = (shop: AShop, orderId: string) => benchOrder(shop, orderId).progress.state;
const doing = (shop: AShop, orderId: string) => showCard(shop.as('mixer'), orderId)?.doing;

describe('too much in the boat', () => {
  test('is taken out to waste; what stays is weighed again, and the lot has lost both', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 1 });
    took(poured(shop, orderId, 1.3));
    expect(doing(shop, orderId)).toMatchObject({ kind: 'mend', container: 'boat', outUg: gramsToUg(0.26), grow: null });
    expect(recordReading(shop.as('mixer', 4), { ...dueReadingOf(shop, orderId), massUg: gramsToUg(1.04) })).toMatchObject({
      refusal: { kind: 'not-this-step' },
    });
    took(mend(shop, orderId, { kind: 'take-out', outUg: gramsToUg(0.26) }));
    expect(benchOrder(shop, orderId).step).toMatchObject({ kind: 'weigh', lineNo: 1 });
    expect(doing(shop, orderId)).toMatchObject({ kind: 'weigh', isLeftOver: true });
    doStep(shop, orderId);
    expect(doing(shop, orderId)).toMatchObject({ kind: 'weigh', isLeftOver: false });
    expect(showCard(shop.as('mixer'), orderId)?.discard.stepUg).toBe(gramsToUg(0.01));
    expect(stateOf(shop, orderId)).toMatchObject({ wasteUg: gramsToUg(0.26), weighedUg: gramsToUg(1.04) });
    expect(shop.db.read((tx) => findLotByCode(tx, 'FRN-B-105'))?.leftUg).toBe(gramsToUg(400 - 1.3));
  });

  test('no more can come out than lies there, and a boat never grows', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 1 });
    took(poured(shop, orderId, 1.3));
    expect(mend(shop, orderId, { kind: 'take-out', outUg: gramsToUg(1.3) })).toMatchObject({
      ok: false,
      refusal: { kind: 'over-capacity' },
    });
    expect(grow(shop, orderId)).toMatchObject({ ok: false, refusal: { kind: 'cannot-mend' } });
  });
});

/** A reading for a jar whose screen still shows the line. */
function dueReadingOf(shop: AShop, orderId: string) {
  const line = benchOrder(shop, orderId).card.lines[0];
  return {
    requestKey: aKey(),
    orderId,
    lineNo: 1,
    lotCode: line?.lots[0]?.lotCode ?? '',
    massUg: gramsToUg(1.04),
    againUg: gramsToUg(1.04),
    isPoured: false,
    second: null,
  };
}

describe('too much in the vessel', () => {
  test('before the cream: the batch grows, what is weighed already gets a top-up into the paste, and the jar is released', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 2 });
    // Oil 2.40 g where 2.08 g was the most: 2.40 / (1.98848 / 52) = 62.77, up to the step of 0.01 g.
    took(poured(shop, orderId, 2.4));
    expect(doing(shop, orderId)).toMatchObject({
      kind: 'mend',
      container: 'vessel',
      grow: { fromUg: gramsToUg(52), toUg: gramsToUg(62.77), needsSecondPaste: false },
    });
    took(grow(shop, orderId));
    const grown = stateOf(shop, orderId);
    expect([grown.batchUg, grown.isGrown, grown.lines[0]?.topUpInto, grown.lines[1]?.stage]).toEqual([
      gramsToUg(62.77),
      true,
      'paste',
      'in-band',
    ]);
    mixUntil(shop, orderId, 'release');
    doStep(shop, orderId);
    expect(benchOrder(shop, orderId).stage).toBe('ready');
    const { readings, mends } = shop.db.read((tx) => listJarFacts(tx, findOrder(tx, orderId)?.jar?.batchCode ?? ''));
    expect(readings.filter((one) => one.lineNo === 1).map((one) => one.kind)).toEqual(['line', 'top-up']);
    expect(mends).toMatchObject([{ kind: 'grow', secondAccountId: shop.accountId('checker') }]);
    expect(mends[0]?.wasteCostMinor).toBeGreaterThan(0);
  });

  test('after the cream: powder and oil come as a second paste, which is proved smooth by itself', () => {
    const shop = vesselShop();
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 4 });
    // Niacinamide 1.30 g at 2 %: the batch becomes 65.00 g.
    took(poured(shop, orderId, 1.3));
    took(grow(shop, orderId));
    expect(stateOf(shop, orderId).batchUg).toBe(gramsToUg(65));
    expect(benchOrder(shop, orderId).step).toMatchObject({ kind: 'weigh', lineNo: 1 });
    expect(doing(shop, orderId)).toMatchObject({
      kind: 'weigh',
      isTopUp: true,
      isSecondPaste: true,
      lotCode: null,
      wantedUg: gramsToUg(0.26),
    });
    mixUntil(shop, orderId, 'paste');
    expect(doing(shop, orderId)).toEqual({ kind: 'paste', isSecond: true });
    mixUntil(shop, orderId, 'release');
    doStep(shop, orderId);
    expect(benchOrder(shop, orderId).stage).toBe('ready');
  });

  test('only where the house permits it', () => {
    const shop = aShop('never-grow', (rulebook) => ({ ...rulebook, house: { ...rulebook.house, mayGrow: false } }));
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 2 });
    took(poured(shop, orderId, 2.4));
    expect(doing(shop, orderId)).toMatchObject({ grow: null, growRefusals: ['not-permitted'] });
    expect(grow(shop, orderId)).toEqual({ ok: false, refusal: { kind: 'cannot-mend', why: ['not-permitted'] } });
  });

  test('nothing grows that is not too heavy', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 2 });
    expect(grow(shop, orderId)).toEqual({ ok: false, refusal: { kind: 'cannot-mend', why: [] } });
    expect(mend(shop, orderId, { kind: 'take-out', outUg: gramsToUg(0.1) })).toEqual({
      ok: false,
      refusal: { kind: 'cannot-mend', why: [] },
    });
  });
});

describe('throwing a jar away', () => {
  test('ends its order, frees its lots, and another order with the same mask is in the same hands at once', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop, ACID_JAR), { lineNo: 3 });
    const remakeOrderId = shop.as('mixer').newId();
    const request = { requestKey: aKey(), orderId, mend: { kind: 'discard', reason: 'the beaker fell', remakeOrderId } as const };
    took(mendJar(shop.as('mixer', 4), request));
    const before = benchOrder(shop, orderId);
    const after = benchOrder(shop, remakeOrderId);
    expect(before.stage).toBe('discarded');
    expect(after).toMatchObject({
      stage: 'claimed',
      view: {
        link: { kind: 'remake', jarCode: before.view.jar?.batchCode },
        order: { shortCode: `${before.view.order.shortCode}b`, placedAtMs: before.view.order.placedAtMs },
      },
    });
    expect(shop.db.read((tx) => findLotByCode(tx, 'LAC-50-108'))?.reservedUg).toBe(gramsToUg(1.04));
    const { mends } = shop.db.read((tx) => listJarFacts(tx, before.view.jar?.batchCode ?? ''));
    expect(mends).toMatchObject([{ kind: 'discard', reason: 'the beaker fell' }]);
    expect(mends[0]?.wasteCostMinor).toBeGreaterThan(0);
    took(mendJar(shop.as('mixer', 5), { ...request, mend: { ...request.mend, remakeOrderId: shop.as('mixer').newId() } }));
    expect(showCard(shop.as('mixer'), orderId)?.remadeAsOrderId).toBe(remakeOrderId);
    mixUntil(shop, remakeOrderId, 'release', 6);
  });

  test('is possible even under a stop, and the new order then waits on hold', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 2 });
    shop.sqlite
      .prepare(
        `INSERT INTO stop (id, subject_kind, subject_id, reason, by_account_id, at_ms) VALUES (?, 'shade', 'fern-bank', 'streaks', ?, 1)`,
      )
      .run(shop.as('mixer').newId(), shop.accountId('formulator'));
    const remakeOrderId = shop.as('mixer').newId();
    took(mend(shop, orderId, { kind: 'discard', reason: 'stopped', remakeOrderId }));
    const view = shop.db.read((tx) => findOrder(tx, remakeOrderId));
    expect(view && orderStage(view)).toBe('held');
    expect(view?.hold?.findings).toMatchObject([{ code: 'stopped' }]);
    expect(claimOrder(shop.as('mixer'), { requestKey: aKey(), orderId: remakeOrderId })).toMatchObject({ ok: false });
  });
});

describe('a pH outside its window', () => {
  /** The acid jar at its pH, 3.80 to 5.00, measured once at 3.50. */
  function tooAcid() {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop, ACID_JAR), 'ph');
    took(recordCheck(shop.as('mixer', 3), { requestKey: aKey(), orderId, check: { kind: 'ph', phX100: phX100(350) } }));
    return { shop, orderId };
  }
  const correct = (shop: AShop, orderId: string, grams: number, seconds = grams) => {
    const seen = { lotCode: 'CBF-20-109', massUg: gramsToUg(grams) };
    const second = { ...seen, massUg: gramsToUg(seconds), accountId: shop.accountId('checker') };
    return correctPh(shop.as('mixer', 5), { requestKey: aKey(), orderId, ...seen, againUg: seen.massUg, second });
  };

  test('stays on record and stays due', () => {
    const { shop, orderId } = tooAcid();
    expect(doing(shop, orderId)).toMatchObject({ kind: 'ph', lastPhX100: 350, correction: { mostUg: gramsToUg(0.26) } });
  });

  test('is corrected once, within the house’s 0.5 % of what is in the vessel, by two people', () => {
    const { shop, orderId } = tooAcid();
    expect(correct(shop, orderId, 0.27)).toMatchObject({ ok: false, refusal: { kind: 'correction-too-large' } });
    expect(correct(shop, orderId, 0.2, 0.21)).toEqual({ ok: false, refusal: { kind: 'second-differs' } });
    took(correct(shop, orderId, 0.2));
    expect(benchOrder(shop, orderId).step.kind).toBe('ph');
    expect(correct(shop, orderId, 0.05)).toMatchObject({ ok: false, refusal: { kind: 'cannot-mend' } });
    expect(shop.db.read((tx) => findLotByCode(tx, 'CBF-20-109'))?.leftUg).toBe(gramsToUg(400 - 0.2));
    mixUntil(shop, orderId, 'release', 6);
  });

  test('nothing is corrected before it was measured', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop, ACID_JAR), 'ph');
    expect(correct(shop, orderId, 0.2)).toMatchObject({ ok: false, refusal: { kind: 'cannot-mend' } });
  });
});
