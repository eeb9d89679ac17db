// An order: judged again, written with its card and its promised lots in one transaction. The answers decide and are gone; what is kept is the recipe,
// the edition, the cautions of the variant, and that personal cautions were shown.
import type { Writing } from '#db/connection.ts';
import { insertOrder, nextDayNo } from '#db/orders.ts';
import { findRequest, insertRequest } from '#db/requests.ts';
import { listStations } from '#db/stations.ts';
import type { Answer } from '#lib/answers/read-answers.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import type { Plan, Variant } from '#lib/rulebook/variant.ts';
import { orderVariant, variantKey } from '#lib/rulebook/variant.ts';
import type { MoneyMinor } from '#lib/units/money.ts';
import { priceOf } from '#lib/variants/price.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import type { Flow } from './flow.ts';
import { record, stampOf } from './flow.ts';
import { cardHere, issueCard } from './issue-card.ts';
import { mustTickIds, owedCautions } from './owed-cautions.ts';
import { readShopStand, shopChecks } from './shop-context.ts';
import type { VisitQuestion, VisitRefusal } from './visit-question.ts';
import { openVisit } from './visit-question.ts';

export interface OrderAsked {
  readonly requestKey: string;
  readonly editionHash: string;
  readonly variant: Variant;
  readonly jarSizeId: string;
  readonly answers: readonly Answer[];
  readonly tickedCautionIds: readonly string[];
  readonly hasReadDirections: boolean;
  readonly lang: Lang;
}

export interface OrderReceipt {
  readonly code: string;
  readonly priceMinor: MoneyMinor;
}

export type OrderRefusal =
  | VisitRefusal
  | { readonly kind: 'no-such-size' }
  | { readonly kind: 'other-content' }
  | { readonly kind: 'not-ticked'; readonly cautionIds: readonly string[] }
  | { readonly kind: 'no-longer-permitted' }
  | { readonly kind: 'no-counter' };

/** The same key again gives the same receipt; the same key for another jar is refused. The key's hash covers edition, variant and size only. */
export function placeOrder(flow: Flow, asked: OrderAsked): Result<OrderReceipt, OrderRefusal> {
  const variant = orderVariant(asked.variant);
  const sha256 = flow.sha256(canonicalJson({ edition: asked.editionHash, variant: variantKey(variant), size: asked.jarSizeId }));
  return flow.db.write((tx): Result<OrderReceipt, OrderRefusal> => {
    const known = findRequest(tx, asked.requestKey, sha256);
    if (known.kind === 'other-content') return refuse({ kind: 'other-content' });
    if (known.kind === 'repeated') return accept(known.outcome as OrderReceipt);
    const visit = openVisit(tx, flow, asked);
    if (!visit.ok) return visit;
    return decide(tx, flow, { ...asked, variant, sha256, visit: visit.value });
  });
}

type Deciding = OrderAsked & { readonly sha256: string; readonly visit: VisitQuestion };

function decide(tx: Writing, flow: Flow, asked: Deciding): Result<OrderReceipt, OrderRefusal> {
  const { book } = asked.visit.edition;
  const { person } = asked.visit;
  const jarSize = book.jarSizes.get(asked.jarSizeId);
  if (!jarSize) return refuse({ kind: 'no-such-size' });
  const stand = readShopStand(tx, flow, book);
  const { plan, verdict } = judgeVariant(book, asked.variant, { day: stand.day, person, ...shopChecks(book, stand, jarSize) });
  if (!plan || verdict.kind !== 'permitted' || person.outcomes.length > 0) return refuse({ kind: 'no-longer-permitted' });
  const owed = owedCautions(book, verdict.cautions, person);
  const open = mustTickIds(owed).filter((id) => !asked.tickedCautionIds.includes(id));
  if (open.length > 0 || !asked.hasReadDirections) return refuse({ kind: 'not-ticked', cautionIds: open });
  const card = cardHere(tx, stand, { book, plan, jarSize });
  if (!card.ok) return refuse({ kind: 'no-longer-permitted' });
  const stationId = counterOf(tx, flow);
  if (stationId === null) return refuse({ kind: 'no-counter' });
  const cautionIds = [...new Set(verdict.cautions.map((one) => one.cautionId))].sort();
  const saved = save(tx, flow, { ...asked, plan, stationId, cautionIds, priceMinor: priceOf(book, asked.variant, jarSize.id), isPersonal: owed.some((one) => one.isPersonal) });
  issueCard(tx, flow, { orderId: saved.orderId, editionHash: asked.editionHash, card: card.value, reason: 'ordered' });
  return accept(saved.receipt);
}

/** The counter that the order comes from: the kiosk's own, else the first of the shop. */
function counterOf(tx: Writing, flow: Flow): string | null {
  if (flow.actor.kind === 'kiosk') return flow.actor.stationId;
  return listStations(tx).find((station) => station.kind === 'kiosk')?.id ?? null;
}

type Saving = Deciding & { readonly plan: Plan; readonly stationId: string; readonly cautionIds: readonly string[]; readonly priceMinor: MoneyMinor; readonly isPersonal: boolean };

function save(tx: Writing, flow: Flow, asked: Saving): { readonly orderId: string; readonly receipt: OrderReceipt } {
  const { localDay, isoWeek } = stampOf(tx, flow.now);
  const dayNo = nextDayNo(tx, localDay);
  const orderId = flow.newId();
  const receipt = { code: shortCode(localDay, dayNo), priceMinor: asked.priceMinor };
  insertRequest(tx, { key: asked.requestKey, sha256: asked.sha256, outcome: receipt, atMs: flow.now });
  insertOrder(tx, {
    id: orderId,
    requestKey: asked.requestKey,
    localDay,
    dayNo,
    shortCode: receipt.code,
    editionHash: asked.editionHash,
    variantKey: variantKey(asked.variant),
    plan: asked.plan,
    jarSizeId: asked.jarSizeId,
    priceMinor: asked.priceMinor,
    lang: asked.lang,
    variantCautionIds: asked.cautionIds,
    wasPersonalCautionShown: asked.isPersonal,
    stationId: asked.stationId,
    placedAtMs: flow.now,
    isoWeek,
  });
  record(tx, flow, { kind: 'order-placed', body: { orderId, variantKey: variantKey(asked.variant), jarSizeId: asked.jarSizeId, priceMinor: asked.priceMinor }, editionHash: asked.editionHash });
  return { orderId, receipt };
}

const LETTERS = 'BCDFGHJKLMNPQRSTVWXZ';

/** A letter for the day of the month and the day's number: short to say, and nothing can be read from it. */
const shortCode = (day: string, dayNo: number): string => `${LETTERS[Number(day.slice(8, 10)) % LETTERS.length] ?? 'K'}${String(dayNo).padStart(3, '0')}`;
