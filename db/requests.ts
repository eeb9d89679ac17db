// Receipts of requests that change something: a browser that never heard the answer sends the same key again and gets the same answer.
import { eq } from 'drizzle-orm';
import type { Json } from '#lib/base/canonical-json.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { InstantMs } from '#lib/units/time.ts';
import type { Reading, Writing } from './connection.ts';
import { given, inserting, prepared } from './query.ts';
import { request } from './schema-shop.ts';

/** `other-content`: the key was used before for something else (a 409). */
export type KnownRequest =
  | { readonly kind: 'new' }
  | { readonly kind: 'repeated'; readonly outcome: unknown }
  | { readonly kind: 'other-content' };

export interface Receipt {
  /** Made by the browser, 16 to 64 characters. */
  readonly key: string;
  /** Of what the request asks for; of an order: edition, variant and size only, never an answer. */
  readonly sha256: string;
  readonly outcome: Json;
  readonly atMs: InstantMs;
}

const byKey = prepared((orm) =>
  orm
    .select()
    .from(request)
    .where(eq(request.key, given('key')))
    .prepare(),
);
const insert = inserting(request);

export function findRequest(tx: Reading, key: string, sha256: string): KnownRequest {
  const known = byKey(tx).get({ key });
  if (known === undefined) return { kind: 'new' };
  return known.sha256 === sha256 ? { kind: 'repeated', outcome: JSON.parse(known.outcome) } : { kind: 'other-content' };
}

/** Stored before the facts that carry its key. */
export const insertRequest = (tx: Writing, receipt: Receipt): void => insert(tx, { ...receipt, outcome: canonicalJson(receipt.outcome) });
