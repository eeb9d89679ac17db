// The bench's queue: open orders of the last days with the stage that their facts give them, and what stands in the way of each.
import { listFitness } from '#db/bench-day.ts';
import { findCard } from '#db/cards.ts';
import type { Reading } from '#db/connection.ts';
import { findEditionInForce } from '#db/editions.ts';
import { ledgerSeqNo } from '#db/ledger.ts';
import type { OrderStage, OrderView } from '#db/orders.ts';
import { listOpenOrders, orderStage } from '#db/orders.ts';
import { listAccounts } from '#db/people.ts';
import { readShop } from '#db/shop.ts';
import { findStation } from '#db/stations.ts';
import type { Stop } from '#db/stops.ts';
import { listStopsInForce } from '#db/stops.ts';
import { compareBy } from '#lib/base/compare.ts';
import { need } from '#lib/rulebook/book.ts';
import type { MassUg } from '#lib/units/mass.ts';
import type { InstantMs } from '#lib/units/time.ts';
import { addDays, localDayIn } from '#lib/units/time.ts';
import { benchOf } from './bench-order.ts';
import { editionByHash, editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import type { PictureLayer } from './jar-picture.ts';
import { jarName, jarPicture } from './jar-picture.ts';
import { readShopStand, stopsOnPlan } from './shop-context.ts';
import { storedCard } from './stored-card.ts';

/** How far back an order can still be open. */
export const OPEN_DAYS = 30;

export interface QueueRow {
  readonly orderId: string;
  readonly shortCode: string;
  readonly name: string;
  readonly layers: readonly PictureLayer[];
  readonly stage: OrderStage;
  readonly netUg: MassUg;
  readonly weighingsCount: number;
  readonly checksCount: number;
  readonly hasDust: boolean;
  readonly placedAtMs: InstantMs;
  /** Who has it in hand. */
  readonly by: string | null;
  readonly isMine: boolean;
  /** In force and in its way; reasons as whoever set them wrote them. */
  readonly stops: readonly string[];
  readonly heldBecause: string | null;
  /** The card is of an edition that is no longer in force. */
  readonly isOfOlderEdition: boolean;
}

export interface Queue {
  readonly shopName: string;
  readonly benchName: string | null;
  readonly zone: string;
  readonly editionNo: number | null;
  readonly rows: readonly QueueRow[];
  readonly scales: readonly { readonly code: string; readonly stepUg: MassUg; readonly isFit: boolean }[];
  readonly isMeterFit: boolean;
}

export function showQueue(flow: Flow): Queue {
  return flow.db.read((tx) => {
    const { name, zone } = readShop(tx);
    const day = localDayIn(zone, flow.now);
    const edition = editionInForce(tx, flow);
    const stand = edition ? readShopStand(tx, flow, edition.book, benchOf(flow)) : null;
    const stationId = stand?.bench?.stationId ?? null;
    const fitness = stationId === null ? [] : listFitness(tx, stationId, day);
    const isFit = (id: string): boolean => fitness.findLast((check) => (check.scaleId ?? check.kind) === id)?.hasPassed === true;
    const stops = listStopsInForce(tx);
    const people = new Map(listAccounts(tx).map((account) => [account.id, account.name]));
    return {
      shopName: name,
      benchName: stationId === null ? null : (findStation(tx, stationId)?.name ?? null),
      zone,
      editionNo: edition?.head.editionNo ?? null,
      rows: listOpenOrders(tx, addDays(day, -OPEN_DAYS))
        .flatMap((view) => queueRow(tx, flow, { view, people, stops, inForceHash: edition?.head.hash ?? null }))
        .sort(
          compareBy(
            (row) => row.placedAtMs,
            (row) => row.shortCode,
          ),
        ),
      scales: (stand?.bench?.scales ?? []).map(({ id, code, stepUg }) => ({ code, stepUg, isFit: isFit(id) })),
      isMeterFit: isFit('ph-meter'),
    };
  });
}

interface Asked {
  readonly view: OrderView;
  readonly people: ReadonlyMap<string, string>;
  readonly stops: readonly Stop[];
  readonly inForceHash: string | null;
}

/** Empty for an order whose card is missing, which only a half-written test can have. */
function queueRow(tx: Reading, flow: Flow, { view, people, stops, inForceHash }: Asked): readonly QueueRow[] {
  const { order, claim, hold } = view;
  const issued = findCard(tx, order.id);
  const edition = editionByHash(tx, flow, issued?.editionHash ?? order.editionHash);
  if (!edition) return [];
  const card = issued ? storedCard(flow, issued) : null;
  const lotIds = new Set(card?.lines.flatMap((line) => line.lots.map((lot) => lot.lotId)));
  const inTheWay = [
    ...stopsOnPlan(edition.book, stops, order.plan),
    ...stops.filter((stop) => stop.subjectKind === 'lot' && lotIds.has(stop.subjectId)),
  ];
  return [
    {
      orderId: order.id,
      shortCode: order.shortCode,
      name: jarName(edition.book, order.plan.variant, 'en'),
      layers: jarPicture(edition.book, order.plan, 'en'),
      stage: orderStage(view),
      netUg: need(edition.book.jarSizes, order.jarSizeId).netUg,
      weighingsCount: card?.lines.length ?? 0,
      checksCount: card?.steps.filter((step) => ['draw-down', 'ph', 'inspect', 'fill'].includes(step.kind)).length ?? 0,
      hasDust: card?.steps.some((step) => step.kind === 'protection' && step.hasDust) ?? false,
      placedAtMs: order.placedAtMs,
      by: claim ? (people.get(claim.byAccountId) ?? null) : null,
      isMine: flow.actor.kind === 'staff' && claim?.byAccountId === flow.actor.accountId,
      stops: inTheWay.map((stop) => stop.reason),
      heldBecause: hold?.reason ?? null,
      isOfOlderEdition: inForceHash !== null && edition.head.hash !== inForceHash,
    },
  ];
}

/** Changes whenever the queue, or a jar on it, could look different to this person. */
export const benchVersion = (flow: Flow): string =>
  flow.db.read((tx) => {
    const day = localDayIn(readShop(tx).zone, flow.now);
    const who = flow.actor.kind === 'staff' ? flow.actor.accountId : flow.actor.kind;
    return `${ledgerSeqNo(tx)}-${findEditionInForce(tx, flow.now)?.editionNo ?? 0}-${day}-${who}`;
  });
