// Orders at the bench of a test shop, and a mixer who does what the card says until told otherwise.

import type { BenchOrder } from '#app/_flows/bench-order.ts';
import { readBenchOrder } from '#app/_flows/bench-order.ts';
import { claimOrder } from '#app/_flows/claim-order.ts';
import { confirmStep } from '#app/_flows/confirm-step.ts';
import { editionInForce } from '#app/_flows/edition-in-force.ts';
import { stampOf } from '#app/_flows/flow.ts';
import { cardHere, issueCard } from '#app/_flows/issue-card.ts';
import { recordCheck } from '#app/_flows/record-check.ts';
import { recordFitness } from '#app/_flows/record-fitness.ts';
import type { ReadingAsked } from '#app/_flows/record-reading.ts';
import { recordReading } from '#app/_flows/record-reading.ts';
import { releaseJar } from '#app/_flows/release-jar.ts';
import { readShopStand, shopChecks } from '#app/_flows/shop-context.ts';
import { insertOrder, nextDayNo } from '#db/orders.ts';
import { insertRequest } from '#db/requests.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { gramsToUg, massDifferenceUg, massUg } from '#lib/units/mass.ts';
import { temperatureC } from '#lib/units/material-property.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { factorPpm } from '#lib/units/share.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import type { StepKind } from '#lib/weighing/card.ts';
import { nextWeighing } from '#lib/weighing/next-weighing.ts';
import { variantFrom } from './a-demo-book.ts';
import type { AShop } from './a-shop.ts';
import { took } from './a-shop.ts';

/** Weighed on a scale of 0.01 g with a blend, two additions (niacinamide is checked by a second person) and no acid. */
export const FERN_JAR = 'fern-bank|niacinamide@20000+panthenol@3000';
/** With an acid: its pH is measured whatever the day. */
export const ACID_JAR = 'chalk-down|lactic-acid@10000';

const keys = { last: 0 };
/** A new request key each time. */
export function aKey(): string {
  keys.last += 1;
  return `00000000-0000-4000-8000-${String(keys.last).padStart(12, '0')}`;
}

/** An order as the kiosk leaves it: judged, with its card and its promised lots. @returns its id */
export function orderJar(shop: AShop, key = FERN_JAR, minutes = 0): string {
  const flow = shop.asNobody(minutes);
  return shop.db.write((tx) => {
    const edition = editionInForce(tx, flow);
    const jarSize = edition?.book.rulebook.jarSizes[0];
    if (!edition || !jarSize) throw new Error('the shop has no edition');
    const { book, head } = edition;
    const stand = readShopStand(tx, flow, book);
    const { plan, verdict } = judgeVariant(book, variantFrom(key), { day: stand.day, ...shopChecks(book, stand, jarSize) });
    if (!plan || verdict.kind !== 'permitted') throw new Error(`not permitted: ${JSON.stringify(verdict)}`);
    const card = took(cardHere(tx, stand, { book, plan, jarSize }));
    const orderId = flow.newId();
    const requestKey = aKey();
    const { localDay, isoWeek } = stampOf(tx, flow.now);
    const dayNo = nextDayNo(tx, localDay);
    insertRequest(tx, { key: requestKey, sha256: 'a'.repeat(64), outcome: {}, atMs: flow.now });
    insertOrder(tx, {
      id: orderId,
      requestKey,
      localDay,
      dayNo,
      isoWeek,
      shortCode: `K${200 + dayNo}`,
      editionHash: head.hash,
      variantKey: variantKey(plan.variant),
      plan,
      jarSizeId: jarSize.id,
      priceMinor: moneyMinor(1_750),
      lang: 'en',
      variantCautionIds: [...new Set(verdict.cautions.map((one) => one.cautionId))].sort(),
      wasPersonalCautionShown: false,
      stationId: shop.kioskId,
      placedAtMs: flow.now,
    });
    issueCard(tx, flow, { orderId, editionHash: head.hash, card, reason: 'ordered' });
    return orderId;
  });
}

export function benchOrder(shop: AShop, orderId: string): BenchOrder {
  const bench = shop.db.read((tx) => readBenchOrder(tx, shop.as('mixer'), orderId));
  if (!bench) throw new Error('no such order');
  return bench;
}

/** What the mixer would send for the line that is due: the right lot, exactly what is wanted, the checker where one is needed. */
export function dueReading(shop: AShop, orderId: string, bend: Partial<ReadingAsked> = {}): ReadingAsked {
  const { card, progress, step } = benchOrder(shop, orderId);
  if (step.kind !== 'weigh' && step.kind !== 'cream') throw new Error(`nothing is weighed at ${step.kind}`);
  const { wantedUg, lot, lineNo } = nextWeighing(card, progress.state, step.lineNo);
  const line = card.lines.find((one) => one.lineNo === lineNo);
  const seen = { lotCode: lot?.lotCode ?? line?.lots[0]?.lotCode ?? '', massUg: bend.massUg ?? wantedUg };
  const second = line?.needsSecondPerson ? { ...seen, accountId: shop.accountId('checker') } : null;
  return { requestKey: aKey(), orderId, lineNo, ...seen, againUg: seen.massUg, isPoured: false, second, ...bend };
}

/** Scale and meter pass their checks of the day. */
export function makeFit(shop: AShop, minutes = 0): void {
  const flow = shop.as('mixer', minutes);
  const check = { kind: 'scale', scaleId: shop.scaleId, zeroUg: massDifferenceUg(0), shownUg: [gramsToUg(1), gramsToUg(50)] } as const;
  took(recordFitness(flow, { requestKey: aKey(), check }));
  took(
    recordFitness(flow, {
      requestKey: aKey(),
      check: { kind: 'ph-meter', shownPhX100: [phX100(400), phX100(700)], slopePpm: factorPpm(990_000) },
    }),
  );
}

/** Does the step that is due, well. */
export function doStep(shop: AShop, orderId: string, minutes = 1): void {
  const flow = shop.as('mixer', minutes);
  const { step, view } = benchOrder(shop, orderId);
  const asked = { requestKey: aKey(), orderId };
  switch (step.kind) {
    case 'fitness':
      return void makeFit(shop, minutes);
    case 'clearance':
      return void took(
        confirmStep(flow, { ...asked, step: { kind: 'clearance', items: ['bench-empty', 'tools-clean', 'fully-cleaned'] } }),
      );
    case 'protection':
      return void took(confirmStep(flow, { ...asked, step: { kind: 'protection', items: ['mask-on', 'eyes-covered', 'extractor-on'] } }));
    case 'bind-jar':
      return void took(confirmStep(flow, { ...asked, step: { kind: 'bind-jar', tareUg: gramsToUg(42), againUg: gramsToUg(42) } }));
    case 'weigh':
    case 'cream':
      return void took(recordReading(flow, dueReading(shop, orderId)));
    case 'paste':
    case 'dissolve':
      return void took(confirmStep(flow, { ...asked, step: { kind: step.kind } }));
    case 'temperature':
      return void took(recordCheck(flow, { ...asked, check: { kind: 'temperature', temperatureC: temperatureC(22) } }));
    case 'draw-down':
      return void took(recordCheck(flow, { ...asked, check: { kind: 'draw-down', hasPassed: true, note: '' } }));
    case 'inspect':
      return void took(recordCheck(flow, { ...asked, check: { kind: 'look', hasPassed: true, note: '' } }));
    case 'ph':
      return void took(
        recordCheck(flow, { ...asked, check: { kind: 'ph', phX100: phX100(Math.round((step.minPhX100 + step.maxPhX100) / 2)) } }),
      );
    case 'fill':
      return void took(recordCheck(flow, { ...asked, check: { kind: 'gross', grossUg: massUg(92_100_000), againUg: massUg(92_100_000) } }));
    case 'release':
      return void took(releaseJar(flow, { ...asked, jarCode: view.jar?.batchCode ?? '' }));
  }
}

/** Claims the order and goes through its card until a step is due. @returns the order's id */
export function mixUntil(shop: AShop, orderId: string, due: StepKind | { readonly lineNo: number }, minutes = 1): string {
  if (benchOrder(shop, orderId).stage === 'placed') took(claimOrder(shop.as('mixer'), { requestKey: aKey(), orderId }));
  const isDue = (): boolean => {
    const { step } = benchOrder(shop, orderId);
    return typeof due === 'string' ? step.kind === due : 'lineNo' in step && step.lineNo === due.lineNo;
  };
  for (let turn = 0; turn < 40 && !isDue(); turn += 1) doStep(shop, orderId, minutes);
  if (!isDue()) throw new Error(`the card never came to ${JSON.stringify(due)}`);
  return orderId;
}
