// An order: judged again, then written with its card and its promised lots in one transaction. The answers decide and are gone; what is
// kept is the recipe, the edition, the cautions of the variant, and whether personal cautions were shown.
import type { Reading, Writing } from '#db/connection.ts';
import type { OrderStage } from '#db/orders.ts';
import { insertOrder, listOpenOrders, nextDayNo, orderStage } from '#db/orders.ts';
import { findRequest, insertRequest } from '#db/requests.ts';
import { findStationByCode } from '#db/stations.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import { orderVariant, variantKey } from '#lib/rulebook/variant.ts';
import type { LocalDay } from '#lib/units/time.ts';
import type { Card } from '#lib/weighing/card.ts';
import type { Flow } from './flow.ts';
import { record, stampOf } from './flow.ts';
import { cardHere, issueCard } from './issue-card.ts';
import { orderCode } from './order-code.ts';
import type { Offer } from './order-offer.ts';
import { offerNow } from './order-offer.ts';
import { mustTickIds } from './owed-cautions.ts';
import type { VisitAsked, VisitRefusal } from './visit-question.ts';

export interface OrderAsked extends VisitAsked {
  /** Made by the browser; the same key again is the same order. */
  readonly requestKey: string;
  readonly variant: Variant;
  readonly counterCode: string;
  readonly tickedCautionIds: readonly string[];
  readonly hasReadAll: boolean;
}

/** Plain JSON without a trace of an answer: it is stored. */
export interface OrderReceipt {
  readonly code: string;
  readonly priceMinor: number;
  readonly aheadCount: number;
}

export type OrderRefusal =
  | VisitRefusal
  | { readonly kind: 'other-content' | 'no-longer-offered' | 'no-counter' }
  | { readonly kind: 'not-ticked'; readonly cautionIds: readonly string[]; readonly hasReadAll: boolean };

/** The same key again gives the same receipt; the same key for another jar is refused. Its hash covers edition, variant and size only. */
export function placeOrder(flow: Flow, asked: OrderAsked): Result<OrderReceipt, OrderRefusal> {
  const { editionHash, jarSizeId } = asked;
  const variant = orderVariant(asked.variant);
  const sha256 = flow.sha256(canonicalJson({ editionHash, variant: variantKey(variant), jarSizeId }));
  return flow.db.write((tx): Result<OrderReceipt, OrderRefusal> => {
    const known = findRequest(tx, asked.requestKey, sha256);
    if (known.kind === 'other-content') return refuse({ kind: 'other-content' });
    if (known.kind === 'repeated') return accept(known.outcome as OrderReceipt);
    const decided = decide(tx, flow, { ...asked, variant });
    return decided.ok ? accept(save(tx, flow, { asked: { ...asked, variant }, sha256, ...decided.value })) : decided;
  });
}

interface Decided {
  readonly offer: Offer;
  readonly card: Card;
  readonly stationId: string;
}

function decide(tx: Reading, flow: Flow, asked: OrderAsked): Result<Decided, OrderRefusal> {
  const offered = offerNow(tx, flow, asked);
  if (!offered.ok) return offered;
  const { visit, plan, owed } = offered.value;
  const open = mustTickIds(owed).filter((id) => !asked.tickedCautionIds.includes(id));
  if (open.length > 0 || !asked.hasReadAll) return refuse({ kind: 'not-ticked', cautionIds: open, hasReadAll: asked.hasReadAll });
  const counter = findStationByCode(tx, asked.counterCode);
  if (counter?.kind !== 'kiosk') return refuse({ kind: 'no-counter' });
  const card = cardHere(tx, visit.stand, { book: visit.edition.book, plan, jarSize: visit.jarSize });
  return card.ok ? accept({ offer: offered.value, card: card.value, stationId: counter.id }) : refuse({ kind: 'no-longer-offered' });
}

interface Saving extends Decided {
  readonly asked: OrderAsked;
  readonly sha256: string;
}

function save(tx: Writing, flow: Flow, { asked, sha256, offer, card, stationId }: Saving): OrderReceipt {
  const { localDay, isoWeek } = stampOf(tx, flow.now);
  const { visit, plan, owed, priceMinor } = offer;
  const dayNo = nextDayNo(tx, localDay);
  const orderId = flow.newId();
  const editionHash = visit.edition.head.hash;
  const receipt = { code: orderCode(localDay, dayNo), priceMinor, aheadCount: aheadCount(tx, localDay) };
  insertRequest(tx, { key: asked.requestKey, sha256, outcome: receipt, atMs: flow.now });
  insertOrder(tx, {
    id: orderId,
    requestKey: asked.requestKey,
    localDay,
    dayNo,
    shortCode: receipt.code,
    editionHash,
    variantKey: variantKey(asked.variant),
    plan,
    jarSizeId: visit.jarSize.id,
    priceMinor,
    lang: visit.lang,
    variantCautionIds: owed.variantCautionIds,
    wasPersonalCautionShown: owed.hasPersonal,
    stationId,
    placedAtMs: flow.now,
    isoWeek,
  });
  issueCard(tx, flow, { orderId, editionHash, card, reason: 'ordered' });
  const body = { orderId, shortCode: receipt.code, variantKey: variantKey(asked.variant), jarSizeId: visit.jarSize.id, priceMinor };
  record(tx, flow, { kind: 'order-placed', body, editionHash });
  return receipt;
}

const STILL_TO_MAKE: readonly OrderStage[] = ['placed', 'claimed', 'mixing'];

/** Orders of today that are still to be made. */
const aheadCount = (tx: Reading, day: LocalDay): number =>
  listOpenOrders(tx, day).filter((view) => STILL_TO_MAKE.includes(orderStage(view))).length;
