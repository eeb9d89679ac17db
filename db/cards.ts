// Mixing cards as they were issued, kept as the bytes that were signed by their hash.
import { asc, desc, eq } from 'drizzle-orm';
import type { Json } from '#lib/base/canonical-json.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { card } from './schema-orders.ts';
import { sha256 } from './sha256.ts';

export type Card = Row<typeof card>;

const latest = prepared((orm) =>
  orm
    .select()
    .from(card)
    .where(eq(card.orderId, given('orderId')))
    .orderBy(desc(card.issueNo))
    .limit(1)
    .prepare(),
);
const issues = prepared((orm) =>
  orm
    .select()
    .from(card)
    .where(eq(card.orderId, given('orderId')))
    .orderBy(asc(card.issueNo))
    .prepare(),
);
const insert = inserting(card);

/** The issue that counts at the bench. Its body is canonical JSON. */
export const findCard = (tx: Reading, orderId: string): Card | undefined => latest(tx).get({ orderId });
export const listCardIssues = (tx: Reading, orderId: string): readonly Card[] => issues(tx).all({ orderId });

/** Issues a card, the first or the next of its order. */
export function insertCard(tx: Writing, { body, ...rest }: Omit<Card, 'issueNo' | 'sha256' | 'body'> & { readonly body: Json }): Card {
  const text = canonicalJson(body);
  const issued = { ...rest, body: text, sha256: sha256(text), issueNo: (findCard(tx, rest.orderId)?.issueNo ?? 0) + 1 };
  insert(tx, issued);
  return issued;
}
