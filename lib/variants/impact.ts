// What a changed draft does: exact numbers of variants lost and gained, a few examples, and which past orders were among the lost.
import type { Book } from '../rulebook/book.ts';
import type { Variant } from '../rulebook/variant.ts';
import { variantKey } from '../rulebook/variant.ts';
import type { LocalDay } from '../units/time.ts';
import { permittedVariants } from './permitted.ts';

export interface Impact {
  readonly lostCount: number;
  readonly gainedCount: number;
  readonly lostExamples: readonly Variant[];
  readonly gainedExamples: readonly Variant[];
  /** Keys of the asked variants that were permitted and no longer are. */
  readonly lostKeys: readonly string[];
}

const EXAMPLES_COUNT = 5;

/** Compares two books on one day; `askedKeys` are variant keys of past orders. */
export function impactOf(before: Book, after: Book, day: LocalDay, askedKeys: readonly string[]): Impact {
  const old = permittedByKey(before, day);
  const now = permittedByKey(after, day);
  const lost = [...old].filter(([key]) => !now.has(key));
  const gained = [...now].filter(([key]) => !old.has(key));
  const lostSet = new Set(lost.map(([key]) => key));
  return {
    lostCount: lost.length,
    gainedCount: gained.length,
    lostExamples: lost.slice(0, EXAMPLES_COUNT).map(([, variant]) => variant),
    gainedExamples: gained.slice(0, EXAMPLES_COUNT).map(([, variant]) => variant),
    lostKeys: [...new Set(askedKeys)].filter((key) => lostSet.has(key)).sort(),
  };
}

function permittedByKey(book: Book, day: LocalDay): ReadonlyMap<string, Variant> {
  const found = new Map<string, Variant>();
  for (const { variant } of permittedVariants(book, day)) found.set(variantKey(variant), variant);
  return found;
}
