// How to reach a customer in a recall: kept apart from the order and erased after a while.
import { eq } from 'drizzle-orm';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { contact } from './schema-orders.ts';

export type Contact = Row<typeof contact>;

const byOrder = prepared((orm) =>
  orm
    .select()
    .from(contact)
    .where(eq(contact.orderId, given('orderId')))
    .prepare(),
);

export const insertContact: (tx: Writing, row: Contact) => void = inserting(contact);
export const findContact = (tx: Reading, orderId: string): Contact | undefined => byOrder(tx).get({ orderId });
