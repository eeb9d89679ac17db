// After which jars a bench is cleaned fully before the next: those that brought what some people must avoid in traces.
// The list is that of food-like and plant allergens among the tags (common practice, no source); the base is in every jar and not counted.
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { AvoidTag } from '../rulebook/material.ts';
import type { Plan } from '../rulebook/variant.ts';

const ALLERGENS: ReadonlySet<AvoidTag> = new Set<AvoidTag>([
  'nut',
  'seed-oil',
  'oat',
  'milk',
  'bee',
  'asteraceae',
  'gluten',
  'fragrance',
  'essential-oil',
]);

/** Allergen tags that a plan's own stocks bring, each once, in the order of the lines. */
export const allergenTagsOf = (book: Book, plan: Pick<Plan, 'lines'>): readonly AvoidTag[] => [
  ...new Set(
    plan.lines
      .flatMap((line) => need(book.stocks, line.stockId).parts)
      .flatMap((part) => need(book.materials, part.materialId).tags)
      .filter((tag) => ALLERGENS.has(tag)),
  ),
];
