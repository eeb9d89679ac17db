// Every variant that the rulebook's structure allows, one at a time and in the stable order of lists:
// shade code, number of actives, active codes, levels. A generator, since the set can be far too large to hold.
import type { Book } from '#lib/rulebook/book.ts';
import type { Active } from '#lib/rulebook/offer.ts';
import type { ChosenActive, Variant } from '#lib/rulebook/variant.ts';

const byCode = <T extends { readonly code: string }>(items: readonly T[]): readonly T[] =>
  [...items].sort((a, b) => (a.code < b.code ? -1 : 1));

export function* allVariants(book: Book): Generator<Variant> {
  const actives = byCode(book.rulebook.actives.filter((active) => active.role === 'active'));
  for (const shade of byCode(book.rulebook.shades)) {
    for (let count = 0; count <= book.rulebook.base.mostActivesCount; count += 1) {
      for (const chosen of choices(actives, count)) yield { shadeId: shade.id, actives: chosen };
    }
  }
}

/** Every set of `count` actives in code order, each with every tuple of levels. */
function* choices(actives: readonly Active[], count: number): Generator<readonly ChosenActive[]> {
  for (const set of subsets(actives, count)) yield* levelTuples(set);
}

function* subsets<T>(items: readonly T[], count: number): Generator<readonly T[]> {
  if (count === 0) {
    yield [];
    return;
  }
  for (const [index, first] of items.entries()) {
    for (const rest of subsets(items.slice(index + 1), count - 1)) yield [first, ...rest];
  }
}

function* levelTuples(set: readonly Active[]): Generator<readonly ChosenActive[]> {
  const [first, ...rest] = set;
  if (!first) {
    yield [];
    return;
  }
  for (const level of [...first.levels].sort((a, b) => a.levelPpm - b.levelPpm)) {
    for (const tail of levelTuples(rest)) yield [{ activeId: first.id, levelPpm: level.levelPpm }, ...tail];
  }
}
