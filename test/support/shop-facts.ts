// A small shop's facts, written through the real queries: people, a counter and a bench, one edition, two lots, an order and its jar.
// Ids are UUIDv7 in form, numbered, so that a failing test names rows one can read.

import { insertCard } from '#db/cards.ts';
import type { Writing } from '#db/connection.ts';
import { saveDraft } from '#db/drafts.ts';
import type { EditionHead } from '#db/editions.ts';
import { insertEdition, insertEditionSignature } from '#db/editions.ts';
import { insertBenchCheck, insertClearance, insertJar, insertStepDone, recordReading } from '#db/jars.ts';
import type { Stamp } from '#db/ledger.ts';
import { appendLedger } from '#db/ledger.ts';
import { insertLot, insertLotEvent } from '#db/lots.ts';
import { insertOrder, insertOrderClaim, insertOrderEnd, nextDayNo } from '#db/orders.ts';
import { insertAccount } from '#db/people.ts';
import { insertRelease } from '#db/releases.ts';
import { insertRequest } from '#db/requests.ts';
import { insertReservation } from '#db/reservations.ts';
import { foundShop } from '#db/shop.ts';
import { insertStation, insertStationScale } from '#db/stations.ts';
import type { LabelContent } from '#lib/label/label-content.ts';
import type { Plan } from '#lib/rulebook/variant.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { massUg } from '#lib/units/mass.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { sharePpm } from '#lib/units/share.ts';
import type { InstantMs } from '#lib/units/time.ts';
import { instantMs, isoWeek, localDay } from '#lib/units/time.ts';

/** A UUIDv7 that shows its number. */
export const idOf = (no: number): string => `01930000-0000-7000-8000-${String(no).padStart(12, '0')}`;

/** New ids from a thousand upwards, each once. */
export function numberedIds(fromNo = 1_000): () => string {
  const last = { no: fromNo };
  return () => {
    last.no += 1;
    return idOf(last.no);
  };
}

export const T0 = instantMs(Date.UTC(2026, 10, 25, 10, 0));
export const later = (minutes: number): InstantMs => instantMs(T0 + minutes * 60_000);
export const DAY = localDay('2026-11-25');
export const stampAt = (minutes: number): Stamp => ({ atMs: later(minutes), localDay: DAY, isoWeek: isoWeek(DAY) });

export const MIXER = idOf(1);
export const CHECKER = idOf(2);
export const FORMULATOR = idOf(3);
export const SECOND_FORMULATOR = idOf(4);
export const MANAGER = idOf(5);
export const KIOSK = idOf(11);
export const BENCH = idOf(12);
export const SCALE = idOf(21);
export const KAOLIN_LOT = idOf(31);
export const CREAM_LOT = idOf(32);

const PEOPLE = [
  [MIXER, 'mixer', 'mixer'],
  [CHECKER, 'checker', 'checker'],
  [FORMULATOR, 'formulator', 'formulator'],
  [SECOND_FORMULATOR, 'second-formulator', 'formulator'],
  [MANAGER, 'manager', 'manager'],
] as const;

export function insertShop(tx: Writing): void {
  const founded = {
    shopCode: 'ML',
    name: 'Test shop',
    zone: 'Europe/Paris',
    sealingSecret: 'ab'.repeat(32),
    isDemo: true,
    notice: 'invented',
  };
  foundShop(tx, { ...founded, foundedAtMs: T0 }, idOf(900));
  for (const [id, code, role] of PEOPLE) insertAccount(tx, { id, code, name: code, role, createdAtMs: T0 });
  insertStation(tx, { id: KIOSK, kind: 'kiosk', code: 'K7', name: 'Counter', createdAtMs: T0 });
  insertStation(tx, { id: BENCH, kind: 'bench', code: 'B1', name: 'Bench', createdAtMs: T0 });
  const stricter = { stricterStepUg: null, stricterRepeatabilityUg: null, stricterCapacityUg: null };
  insertStationScale(tx, { id: SCALE, stationId: BENCH, profileId: 'fine', code: 'S1', ...stricter, boundAtMs: T0 });
}

/** Publishes a document (any JSON will do for the store) that takes effect some minutes after T0. */
export function publish(tx: Writing, title: string, minutes = 0): EditionHead {
  const saved = saveDraft(tx, {
    parentRevisionNo: lastRevisionNo(tx),
    document: JSON.stringify({ title }),
    byAccountId: FORMULATOR,
    changed: title,
    atMs: T0,
  });
  if (!saved.ok) throw new Error('the draft moved');
  const head = insertEdition(tx, {
    documentOf: (editionNo) => JSON.stringify({ title, editionNo }),
    variantsCount: 12_345_678_901_234_567_890n,
    publishedAtMs: T0,
    effectiveAtMs: later(minutes),
    authorAccountId: FORMULATOR,
    approverAccountId: SECOND_FORMULATOR,
    fromRevisionNo: saved.value.revisionNo,
  });
  insertEditionSignature(tx, { editionHash: head.hash, accountId: SECOND_FORMULATOR, meaning: 'I approve this edition.', atMs: T0 });
  return head;
}

const lastRevisionNo = (tx: Writing): number | null =>
  tx.orm.$client.prepare<[], number | null>('SELECT max(revision_no) FROM draft_revision').pluck().get() ?? null;

export function insertLots(tx: Writing): void {
  const common = {
    receivedCount: null,
    costMinor: null,
    measuredPhX100: null,
    supplier: 'a supplier',
    certificate: {},
    byAccountId: MANAGER,
    receivedAtMs: T0,
  };
  insertLot(tx, {
    ...common,
    id: KAOLIN_LOT,
    kind: 'stock',
    refId: 'kaolin',
    code: 'KA-1',
    expiryDay: localDay('2027-06-30'),
    receivedMassUg: massUg(100_000_000),
  });
  insertLot(tx, {
    ...common,
    id: CREAM_LOT,
    kind: 'base-cream',
    refId: 'base',
    code: 'CR-1',
    expiryDay: localDay('2027-03-31'),
    receivedMassUg: massUg(500_000_000),
  });
  for (const lotId of [KAOLIN_LOT, CREAM_LOT])
    insertLotEvent(tx, { lotId, kind: 'released', reason: 'certificate in order', byAccountId: MANAGER, atMs: T0 });
}

export const PLAN: Plan = {
  variant: { shadeId: 'chalk', actives: [{ activeId: 'niacinamide', levelPpm: sharePpm(20_000) }] },
  adjuster: null,
  lines: [{ stockId: 'kaolin', sharePpm: sharePpm(15_000), purpose: 'shade', materialId: 'kaolin' }],
};

export interface Placed {
  readonly orderId: string;
  readonly jarCode: string;
}

/** A numbered order of the plan with its card and 1 g of kaolin reserved. */
export function placeOrder(tx: Writing, no: number, editionHash: string): Placed {
  const orderId = idOf(100 + no);
  const requestKey = `order-${String(no).padStart(12, '0')}`;
  insertRequest(tx, { key: requestKey, sha256: 'a'.repeat(64), outcome: { orderId }, atMs: T0 });
  insertOrder(tx, {
    id: orderId,
    requestKey,
    localDay: DAY,
    dayNo: nextDayNo(tx, DAY),
    shortCode: `K7-${200 + no}`,
    editionHash,
    variantKey: variantKey(PLAN.variant),
    plan: PLAN,
    jarSizeId: 'jar-50',
    priceMinor: moneyMinor(2_450),
    lang: 'en',
    variantCautionIds: ['sun'],
    wasPersonalCautionShown: true,
    stationId: KIOSK,
    placedAtMs: later(no),
    isoWeek: isoWeek(DAY),
  });
  insertCard(tx, { orderId, editionHash, body: { lines: ['kaolin'] }, reason: 'issued', atMs: T0 });
  insertReservation(tx, { id: idOf(200 + no), orderId, lotId: KAOLIN_LOT, massUg: massUg(1_000_000), atMs: T0 });
  appendLedger(tx, {
    ...stampAt(no),
    id: idOf(300 + no),
    kind: 'order-placed',
    schemaVersionNo: 1,
    body: { orderId },
    accountId: null,
    stationId: KIOSK,
    editionHash,
  });
  return { orderId, jarCode: `ML26329${String(no).padStart(4, '0')}X` };
}

/** Claims an order and binds its jar. */
export function bindJar(tx: Writing, { orderId, jarCode }: Placed): void {
  insertOrderClaim(tx, { orderId, byAccountId: MIXER, stationId: BENCH, atMs: later(1) });
  insertClearance(tx, {
    id: idOf(Number(orderId.slice(-3)) + 300),
    orderId,
    stationId: BENCH,
    items: ['bench empty'],
    wasFullClean: false,
    byAccountId: MIXER,
    atMs: later(1),
  });
  const batchNo = Number(jarCode.slice(7, 11));
  insertJar(tx, {
    batchCode: jarCode,
    orderId,
    localDay: DAY,
    batchNo,
    tareUg: massUg(42_000_000),
    jarLotId: null,
    stationId: BENCH,
    byAccountId: MIXER,
    boundAtMs: later(2),
  });
}

export interface Weighing {
  readonly jarCode: string;
  readonly grams: number;
  readonly id: string;
  readonly lineNo?: number;
  readonly weighingNo?: number;
  readonly lotId?: string;
}

export function weigh(
  tx: Writing,
  { jarCode, grams, id, lineNo = 1, weighingNo = 1, lotId = KAOLIN_LOT }: Weighing,
  newId: () => string,
): number {
  const requestKey = `reading-${id}`;
  insertRequest(tx, { key: requestKey, sha256: 'b'.repeat(64), outcome: {}, atMs: later(3) });
  const row = {
    id,
    requestKey,
    jarCode,
    lineNo,
    weighingNo,
    kind: 'line',
    source: 'scale',
    massUg: massUg(Math.round(grams * 1_000_000)),
  } as const;
  return recordReading(
    tx,
    { ...row, scaleId: SCALE, lotId, lotEntry: 'scanned', byAccountId: MIXER, secondAccountId: null, atMs: later(3) },
    newId,
  );
}

/** Checks and releases (or holds) a jar. */
export function release(tx: Writing, jarCode: string, outcome: 'released' | 'held' = 'released'): void {
  insertStepDone(tx, { jarCode, stepId: 'paste', byAccountId: MIXER, atMs: later(4) });
  const none = { phX100: null, massUg: null, temperatureC: null };
  insertBenchCheck(tx, {
    ...none,
    id: idOf(Number(jarCode.slice(7, 11)) + 500),
    jarCode,
    kind: 'look',
    hasPassed: true,
    note: '',
    byAccountId: MIXER,
    atMs: later(4),
  });
  insertRelease(tx, {
    jarCode,
    outcome,
    findings: [],
    label: aLabel(jarCode),
    useByDay: localDay('2027-05-25'),
    materialCostMinor: moneyMinor(310),
    byAccountId: MIXER,
    ...stampAt(5),
  });
}

export const collect = (tx: Writing, orderId: string): void =>
  insertOrderEnd(tx, { orderId, kind: 'collected', reason: '', byAccountId: MIXER, ...stampAt(6) });

/** A jar with 0.78 g kaolin, released. */
export function makeJar(tx: Writing, no: number, editionHash: string, outcome: 'released' | 'held' = 'released'): Placed {
  const newId = numberedIds(10_000 * no);
  const placed = placeOrder(tx, no, editionHash);
  bindJar(tx, placed);
  weigh(tx, { jarCode: placed.jarCode, grams: 0.78, id: newId() }, newId);
  release(tx, placed.jarCode, outcome);
  return placed;
}

export const aLabel = (batchCode: string): LabelContent => ({
  marketId: 'EU',
  lang: 'en',
  productName: 'Clay mask',
  variantNames: ['Pale'],
  netContent: { gramsText: '50', ouncesText: null },
  ingredientsText: 'AQUA',
  cautions: [],
  batchCode,
  durability: { kind: 'opening-period', openedMonths: 6 },
  responsiblePerson: { name: 'Maker', address: 'Lane 1', contact: 'care@maker.example' },
  shop: { name: 'Shop', address: 'Lane 2' },
  directions: 'Rinse off.',
  code: null,
});
