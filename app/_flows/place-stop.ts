// One person stops a thing at once, with a reason. Kiosks offer nothing with it from then on; open orders with it wait.
import { findCard } from '#db/cards.ts';
import type { Reading } from '#db/connection.ts';
import { findLot } from '#db/lots.ts';
import { listOpenOrders } from '#db/orders.ts';
import type { StopSubject } from '#db/schema-afterwards.ts';
import type { Stop } from '#db/stops.ts';
import { insertStop, listStopsInForce } from '#db/stops.ts';
import { assertNever } from '#lib/base/invariant.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { pairKey } from '#lib/rulebook/book.ts';
import { addDays } from '#lib/units/time.ts';
import { editionByHash, editionInForce } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import { record, staffOf, stampOf } from './flow.ts';
import { stopsOnPlan } from './shop-context.ts';
import { OPEN_DAYS } from './show-queue.ts';
import { storedCard } from './stored-card.ts';

export interface StopAsked {
  readonly subjectKind: StopSubject;
  readonly subjectId: string;
  readonly reason: string;
}

export type StopRefusal = { readonly kind: 'no-such-subject' | 'stopped-already' | 'not-open' };

/** @returns the short codes of open orders that wait because of it */
export function placeStop(flow: Flow, asked: StopAsked): Result<{ readonly waitingCodes: readonly string[] }, StopRefusal> {
  return flow.db.write((tx) => {
    const edition = editionInForce(tx, flow);
    if (!edition) return refuse({ kind: 'not-open' });
    const subjectId = subjectOf(tx, edition.book, asked);
    if (subjectId === null) return refuse({ kind: 'no-such-subject' });
    const { subjectKind, reason } = asked;
    const standing = listStopsInForce(tx);
    if (standing.some((one) => one.subjectKind === subjectKind && one.subjectId === subjectId)) return refuse({ kind: 'stopped-already' });
    const stop: Stop = { id: flow.newId(), subjectKind, subjectId, reason, byAccountId: staffOf(flow).accountId, atMs: flow.now };
    insertStop(tx, stop);
    record(tx, flow, { kind: 'stop-placed', body: { stopId: stop.id, subjectKind, subjectId, reason }, editionHash: edition.head.hash });
    return accept({ waitingCodes: ordersWith(tx, flow, stop) });
  });
}

/** The id as stops hold it; null for a thing that this shop does not have. */
function subjectOf(tx: Reading, book: Book, { subjectKind, subjectId }: StopAsked): string | null {
  const known = (map: ReadonlyMap<string, unknown>): string | null => (map.has(subjectId) ? subjectId : null);
  switch (subjectKind) {
    case 'material':
      return known(book.materials);
    case 'stock':
      return known(book.stocks);
    case 'shade':
      return known(book.shades);
    case 'active':
      return known(book.actives);
    case 'lot':
      return findLot(tx, subjectId) ? subjectId : null;
    case 'pair': {
      const [a = '', b = '', ...more] = subjectId.split('|');
      return more.length === 0 && a !== b && book.materials.has(a) && book.materials.has(b) ? pairKey(a, b) : null;
    }
    case 'variant':
      return book.shades.has(subjectId.split('|', 1)[0] ?? '') ? subjectId : null;
    default:
      return assertNever(subjectKind);
  }
}

function ordersWith(tx: Reading, flow: Flow, stop: Stop): readonly string[] {
  const { localDay } = stampOf(tx, flow.now);
  return listOpenOrders(tx, addDays(localDay, -OPEN_DAYS)).flatMap(({ order }) => {
    const issued = findCard(tx, order.id);
    const edition = editionByHash(tx, flow, issued?.editionHash ?? order.editionHash);
    if (!edition) return [];
    const lots = issued ? storedCard(flow, issued).lines.flatMap((line) => line.lots) : [];
    const isHit =
      stopsOnPlan(edition.book, [stop], order.plan).length > 0 ||
      (stop.subjectKind === 'lot' && lots.some((lot) => lot.lotId === stop.subjectId));
    return isHit ? [order.shortCode] : [];
  });
}
