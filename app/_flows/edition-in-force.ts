// The edition that counts now, opened. Every decision names its hash.

import type { Reading } from '#db/connection.ts';
import type { EditionHead } from '#db/editions.ts';
import { findEdition, findEditionDocument, findEditionInForce, findNewestEdition } from '#db/editions.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { Flow } from './flow.ts';

export interface OpenEdition {
  readonly head: EditionHead;
  readonly book: Book;
}

/** Null in a shop that has not published yet. */
export function editionInForce(tx: Reading, flow: Flow): OpenEdition | null {
  const head = findEditionInForce(tx, flow.now);
  return head ? open(tx, flow, head) : null;
}

/** The newest edition, which may still wait for its hour: what comes after it is compared with it. Null in a shop that has not published yet. */
export function newestEdition(tx: Reading, flow: Flow): OpenEdition | null {
  const head = findNewestEdition(tx);
  return head ? open(tx, flow, head) : null;
}

/** An edition by its hash, in force or not. Null when there is none. */
export function editionByHash(tx: Reading, flow: Flow, hash: string): OpenEdition | null {
  const head = findEdition(tx, hash);
  return head ? open(tx, flow, head) : null;
}

function open(tx: Reading, flow: Flow, head: EditionHead): OpenEdition {
  const book = flow.editions.book(head.hash, () => {
    const document = findEditionDocument(tx, head.hash);
    invariant(document !== undefined, `edition ${head.hash} has no document`);
    return document;
  });
  return { head, book };
}
