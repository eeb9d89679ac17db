// A table of attempts to store the impossible, each in a founded shop of its own.
import { expect, test } from 'vitest';
import type { Writing } from '#db/connection.ts';
import { shopWithEdition } from './founded-shop.ts';

/** What is tried in a founded shop, and how the refusal names its rule. */
export type Case = readonly [name: string, says: RegExp, broken: (tx: Writing, at: { editionHash: string }) => unknown];

export const refuses = (cases: readonly Case[]): void => {
  test.each(cases)('%s', (_, says, broken) => {
    const { db, editionHash } = shopWithEdition();
    expect(() => db.write((tx) => broken(tx, { editionHash }))).toThrow(says);
  });
};
