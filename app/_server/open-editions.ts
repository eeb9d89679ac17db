// Editions opened in this process. An edition never changes, so what was parsed or found for its hash holds until the process ends.
import type { OpenEditions } from '#app/_flows/flow.ts';
import { invariant } from '#lib/base/invariant.ts';
import { parseRulebook } from '#lib/contracts/rulebook.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Permitted } from '#lib/variants/permitted.ts';
import { lawOfDay, permittedVariants } from '#lib/variants/permitted.ts';

/** Books kept open; a shop works with the edition in force and a few before it. */
const MOST_BOOKS = 8;

export function makeOpenEditions(): OpenEditions {
  const books = new Map<string, Book>();
  const permitted = new Map<string, readonly Permitted[]>();
  return {
    book: (hash, document) => kept(books, hash, () => bookOf(document())),
    permitted: (hash, book, day) => kept(permitted, `${hash} ${lawOfDay(book, day)}`, () => permittedVariants(book, day)),
  };
}

/** Throws a Fault when a stored document does not fit its contract: it was checked when it was published. */
export function bookOf(document: string): Book {
  const parsed = parseRulebook(JSON.parse(document));
  invariant(parsed.ok, 'a published edition does not fit the contract of this version');
  return openBook(parsed.value);
}

/** The oldest goes first. */
function kept<T>(store: Map<string, T>, key: string, make: () => T): T {
  const found = store.get(key);
  if (found !== undefined) return found;
  const made = make();
  const [oldest] = store.keys();
  if (store.size >= MOST_BOOKS && oldest !== undefined) store.delete(oldest);
  store.set(key, made);
  return made;
}
