// The card's order holds whatever a screen or an address asks for, and the day's checks come before everything.
import { describe, expect, test } from 'vitest';
import type { Confirmation } from '#app/_flows/confirm-step.ts';
import { confirmStep } from '#app/_flows/confirm-step.ts';
import { recordCheck } from '#app/_flows/record-check.ts';
import { recordFitness } from '#app/_flows/record-fitness.ts';
import { recordReading } from '#app/_flows/record-reading.ts';
import { listClearances } from '#db/jars.ts';
import { ledgerSeqNo } from '#db/ledger.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { gramsToUg, massDifferenceUg } from '#lib/units/mass.ts';
import { temperatureC } from '#lib/units/material-property.ts';
import { factorPpm } from '#lib/units/share.ts';
import { ACID_JAR, aKey, benchOrder, doStep, dueReading, makeFit, mixUntil, orderJar } from '#test/support/a-bench-order.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop } from '#test/support/a-shop.ts';

const confirm = (shop: AShop, orderId: string, step: Confirmation) =>
  confirmStep(shop.as('mixer', 2), { requestKey: aKey(), orderId, step });
const refusalOf = (outcome: { readonly ok: boolean; readonly refusal?: unknown }) => (outcome.ok ? null : outcome.refusal);
const ALL = ['bench-empty', 'tools-clean', 'mask-on', 'eyes-covered', 'extractor-on'];

const scaleCheck = (shop: AShop, zeroG: number, shownG: readonly number[]) =>
  recordFitness(shop.as('mixer', 2), {
    requestKey: aKey(),
    check: { kind: 'scale', scaleId: shop.scaleId, zeroUg: massDifferenceUg(Math.round(zeroG * 1e6)), shownUg: shownG.map(gramsToUg) },
  });
const meterCheck = (shop: AShop, shown: readonly [number, number], slopePpm: number) =>
  recordFitness(shop.as('mixer', 2), {
    requestKey: aKey(),
    check: { kind: 'ph-meter', shownPhX100: shown.map(phX100), slopePpm: factorPpm(slopePpm) },
  });

describe('fitness of the day', () => {
  test('the demonstration scale: zero and two weights within the profile, ends included', () => {
    const shop = aShop();
    const passes = (zeroG: number, shownG: readonly number[]) => {
      const outcome = scaleCheck(shop, zeroG, shownG);
      return outcome.ok && outcome.value.hasPassed;
    };
    expect([passes(0.01, [1.02, 49.98]), passes(-0.01, [0.98, 50.02])]).toEqual([true, true]);
    expect([passes(0.02, [1, 50]), passes(-0.02, [1, 50]), passes(0, [1.03, 50]), passes(0, [1, 49.97])]).toEqual([
      false,
      false,
      false,
      false,
    ]);
  });

  // Slope 95 to 105 % of the ideal electrode: common practice, no source.
  test('the meter: two buffers and a slope of 95 to 105 %', () => {
    const shop = aShop();
    const passes = (shown: readonly [number, number], slopePpm: number) => {
      const outcome = meterCheck(shop, shown, slopePpm);
      return outcome.ok && outcome.value.hasPassed;
    };
    expect([passes([405, 695], 950_000), passes([400, 700], 1_050_000)]).toEqual([true, true]);
    expect([
      passes([406, 700], 1_000_000),
      passes([400, 694], 1_000_000),
      passes([400, 700], 949_999),
      passes([400, 700], 1_050_001),
    ]).toEqual([false, false, false, false]);
  });

  test('a scale that is not at this bench, or too few weights', () => {
    const shop = aShop();
    expect(refusalOf(scaleCheck(shop, 0, [1]))).toEqual({ kind: 'no-bench' });
    const other = recordFitness(shop.as('mixer'), {
      requestKey: aKey(),
      check: { kind: 'scale', scaleId: shop.kioskId, zeroUg: massDifferenceUg(0), shownUg: [gramsToUg(1), gramsToUg(50)] },
    });
    expect(refusalOf(other)).toEqual({ kind: 'no-bench' });
  });

  test('an instrument that fails later in the day takes the jar back to its check, and the jar goes on where it stood', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 2 });
    scaleCheck(shop, 0.05, [1, 50]);
    expect(benchOrder(shop, orderId).step.kind).toBe('fitness');
    makeFit(shop, 3);
    expect(benchOrder(shop, orderId).step).toMatchObject({ kind: 'weigh', lineNo: 2 });
  });

  test('yesterday proves nothing today', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), 'clearance');
    const tomorrow = shop.as('mixer', 24 * 60);
    expect(refusalOf(confirmStep(tomorrow, { requestKey: aKey(), orderId, step: { kind: 'clearance', items: ALL } }))).toEqual({
      kind: 'not-this-step',
    });
  });
});

describe('the order of the card', () => {
  test('no step can be asked for before its turn', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), 'clearance');
    const flow = shop.as('mixer', 2);
    const before = shop.db.read(ledgerSeqNo);
    const asked = { requestKey: aKey(), orderId };
    const early = [
      confirm(shop, orderId, { kind: 'protection', items: ALL }),
      confirm(shop, orderId, { kind: 'bind-jar', tareUg: gramsToUg(42), againUg: gramsToUg(42) }),
      confirm(shop, orderId, { kind: 'paste' }),
      recordReading(flow, {
        ...asked,
        lineNo: 1,
        lotCode: 'FRN-B-105',
        massUg: gramsToUg(1.04),
        againUg: gramsToUg(1.04),
        isPoured: false,
        second: null,
      }),
      recordCheck(flow, { ...asked, check: { kind: 'look', hasPassed: true, note: '' } }),
      recordCheck(flow, { ...asked, check: { kind: 'gross', grossUg: gramsToUg(92), againUg: gramsToUg(92) } }),
    ];
    expect(early.map(refusalOf)).toEqual(early.map(() => ({ kind: 'not-this-step' })));
    expect(shop.db.read(ledgerSeqNo)).toBe(before);
  });

  test('clearance and protection name what was not confirmed, and stand apart on record', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), 'clearance');
    expect(refusalOf(confirm(shop, orderId, { kind: 'clearance', items: ['bench-empty'] }))).toEqual({
      kind: 'not-confirmed',
      items: ['tools-clean'],
    });
    doStep(shop, orderId);
    expect(refusalOf(confirm(shop, orderId, { kind: 'protection', items: ['mask-on'] }))).toEqual({
      kind: 'not-confirmed',
      items: ['eyes-covered', 'extractor-on'],
    });
    doStep(shop, orderId);
    expect(shop.db.read((tx) => listClearances(tx, orderId)).map((row) => row.items)).toEqual([
      ['bench-empty', 'tools-clean'],
      ['mask-on', 'eyes-covered', 'extractor-on'],
    ]);
  });

  test('the tare is typed twice alike, and is what a scale can show', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), 'bind-jar');
    const tare = (g: number, again: number) =>
      refusalOf(confirm(shop, orderId, { kind: 'bind-jar', tareUg: gramsToUg(g), againUg: gramsToUg(again) }));
    expect(tare(42, 24)).toEqual({ kind: 'entries-differ' });
    expect(tare(42.005, 42.005)).toEqual({ kind: 'between-steps', stepUg: gramsToUg(0.01) });
    expect(tare(601, 601)).toEqual({ kind: 'over-capacity', capacityUg: gramsToUg(600) });
    expect(tare(42, 42)).toBeNull();
    // Shop, year 26, day 329, running number 1; the check character of ISO/IEC 7064 MOD 37,36 was worked out apart.
    expect(benchOrder(shop, orderId).view.jar?.batchCode).toBe('ML263290001D');
  });

  test('only whoever claimed it works on it', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 1 });
    expect(refusalOf(recordReading(shop.as('second-mixer'), dueReading(shop, orderId)))).toEqual({ kind: 'not-yours' });
  });

  test('too warm: the temperature is taken again', () => {
    const shop = aShop();
    const orderId = mixUntil(shop, orderJar(shop, ACID_JAR), 'temperature');
    const take = (celsius: number) =>
      recordCheck(shop.as('mixer', 2), {
        requestKey: aKey(),
        orderId,
        check: { kind: 'temperature', temperatureC: temperatureC(celsius) },
      });
    take(41);
    expect(benchOrder(shop, orderId).step.kind).toBe('temperature');
    take(40);
    expect(benchOrder(shop, orderId).step).toMatchObject({ kind: 'weigh', lineNo: 5 });
  });
});

test('after a jar with an allergen the bench is cleaned fully before the next', () => {
  const withOat = (rulebook: Rulebook): Rulebook => ({
    ...rulebook,
    materials: rulebook.materials.map((one) => (one.id === 'titanium-dioxide' ? { ...one, tags: ['oat'] } : one)),
  });
  const shop = aShop('oat', withOat);
  const orderId = mixUntil(shop, orderJar(shop, ACID_JAR), 'release');
  doStep(shop, orderId);
  const next = mixUntil(shop, orderJar(shop), 'clearance');
  expect(refusalOf(confirm(shop, next, { kind: 'clearance', items: ['bench-empty', 'tools-clean'] }))).toEqual({
    kind: 'not-confirmed',
    items: ['fully-cleaned'],
  });
  doStep(shop, next);
  expect(shop.db.read((tx) => listClearances(tx, next))[0]?.wasFullClean).toBe(true);
  expect(benchOrder(shop, next).step.kind).toBe('protection');
});
