// A delivery comes in and waits in quarantine; it may be used only after somebody checked its certificate and released it.
import type { Lot } from '#db/lots.ts';
import { findLot, findLotByCode, insertLot, insertLotEvent } from '#db/lots.ts';
import type { LotEventKind } from '#db/schema-lots.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Flow } from './flow.ts';
import { record, staffOf } from './flow.ts';

export type NewLot = Omit<Lot, 'id' | 'receivedAtMs' | 'byAccountId'>;

export type LotRefusal = { readonly kind: 'lot-code-taken' } | { readonly kind: 'no-such-lot' };

export function receiveLot(flow: Flow, lot: NewLot): Result<{ readonly lotId: string }, LotRefusal> {
  return flow.db.write((tx): Result<{ readonly lotId: string }, LotRefusal> => {
    if (findLotByCode(tx, lot.code)) return refuse({ kind: 'lot-code-taken' });
    const id = flow.newId();
    insertLot(tx, { ...lot, id, receivedAtMs: flow.now, byAccountId: staffOf(flow).accountId });
    record(tx, flow, { kind: 'lot-received', body: { lotId: id, code: lot.code, kind: lot.kind, refId: lot.refId } });
    return accept({ lotId: id });
  });
}

/** Released, held, opened, spent or rejected, with a reason; the last word counts. */
export function decideLot(
  flow: Flow,
  { lotId, kind, reason }: { readonly lotId: string; readonly kind: LotEventKind; readonly reason: string },
): Result<null, LotRefusal> {
  return flow.db.write((tx): Result<null, LotRefusal> => {
    if (!findLot(tx, lotId)) return refuse({ kind: 'no-such-lot' });
    insertLotEvent(tx, { lotId, kind, reason, byAccountId: staffOf(flow).accountId, atMs: flow.now });
    record(tx, flow, { kind: `lot-${kind}`, body: { lotId, reason } });
    return accept(null);
  });
}
