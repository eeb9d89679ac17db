// What every use case is given. A flow loads, decides by pure functions and saves, in one transaction; it knows no HTTP and no screen.

import type { Reading, ShopDb, Writing } from '#db/connection.ts';
import type { LedgerRow, Stamp } from '#db/ledger.ts';
import { appendLedger } from '#db/ledger.ts';
import type { Role } from '#db/schema-people.ts';
import { stampIn } from '#db/shop.ts';
import type { Json } from '#lib/base/canonical-json.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { InstantMs, LocalDay } from '#lib/units/time.ts';
import type { Permitted } from '#lib/variants/permitted.ts';

/** For whom a flow runs. Nobody: the shop itself (start-up, closing of the day). */
export type FlowActor =
  | { readonly kind: 'staff'; readonly accountId: string; readonly role: Role; readonly stationId: string | null }
  | { readonly kind: 'kiosk'; readonly stationId: string }
  | { readonly kind: 'nobody' };

/** Opened editions, kept by the caller: parsing a document and finding what it permits are worth doing once. */
export interface OpenEditions {
  /** The opened book of an edition; `document` is asked for at most once per hash. */
  readonly book: (hash: string, document: () => string) => Book;
  /** What that edition permits on a day. */
  readonly permitted: (hash: string, book: Book, day: LocalDay) => readonly Permitted[];
}

export interface Flow {
  readonly db: ShopDb;
  /** One instant per request. */
  readonly now: InstantMs;
  readonly newId: () => string;
  /** SHA-256 as lower-case hex. */
  readonly sha256: (text: string) => string;
  readonly actor: FlowActor;
  readonly editions: OpenEditions;
}

/** The instant with the shop's local day and week, computed once. */
export const stampOf = (tx: Reading, now: InstantMs): Stamp => stampIn(tx, now);

/** Writes a fact to the ledger in the same transaction as the fact itself. */
export function record(
  tx: Writing,
  flow: Flow,
  fact: { readonly kind: string; readonly body: Json; readonly editionHash?: string | null },
): LedgerRow {
  return appendLedger(tx, {
    ...stampOf(tx, flow.now),
    id: flow.newId(),
    kind: fact.kind,
    schemaVersionNo: 1,
    body: fact.body,
    accountId: flow.actor.kind === 'staff' ? flow.actor.accountId : null,
    stationId: flow.actor.kind === 'nobody' ? null : flow.actor.stationId,
    editionHash: fact.editionHash ?? null,
  });
}

/** The member of staff a flow runs for. Throws a Fault for anybody else: the route has let in staff only. */
export function staffOf(flow: Flow): Extract<FlowActor, { kind: 'staff' }> {
  invariant(flow.actor.kind === 'staff', 'this use case is for staff');
  return flow.actor;
}
