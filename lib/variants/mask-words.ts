// What may be said of a mask to the customer who asked for it: which wishes it answers, and whose good and less good point it carries.

import type { Person } from '../answers/person.ts';
import { invariant } from '../base/invariant.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Claims, Level } from '../rulebook/offer.ts';
import type { ChosenActive, Variant } from '../rulebook/variant.ts';
import { scoreOf } from './rank.ts';

const levelOf = (book: Book, { activeId, levelPpm }: ChosenActive): Level | undefined =>
  need(book.actives, activeId).levels.find((level) => level.levelPpm === levelPpm);

/** Σ weight × benefit of one active for these wishes, not held at the whole: only to tell actives of one mask apart. */
const servesBy = (book: Book, chosen: ChosenActive, wishes: Person['wishes']): number =>
  (levelOf(book, chosen)?.benefits ?? []).reduce(
    (sum, { concernId, benefitMilli }) => sum + (wishes.get(concernId) ?? 0) * benefitMilli,
    0,
  );

/** Concerns that the customer wished for and that some active of the mask answers, in the rulebook's order. */
export function concernsServed(book: Book, variant: Variant, wishes: Person['wishes']): readonly string[] {
  const benefits = variant.actives.flatMap((chosen) => levelOf(book, chosen)?.benefits ?? []);
  const served = new Set(benefits.filter((benefit) => benefit.benefitMilli > 0).map((benefit) => benefit.concernId));
  return book.rulebook.concerns.filter(({ id }) => served.has(id) && (wishes.get(id) ?? 0) > 0).map(({ id }) => id);
}

/** The claims of the two actives that serve the wishes most, in the order of the mask; of the shade where none serves any. */
export function claimsShown(book: Book, variant: Variant, wishes: Person['wishes']): readonly Claims[] {
  const serving = variant.actives
    .map((chosen) => ({ chosen, serves: servesBy(book, chosen, wishes) }))
    .filter(({ serves }) => serves > 0)
    .sort((a, b) => b.serves - a.serves);
  if (serving.length === 0) return [need(book.shades, variant.shadeId).claims];
  const best = new Set(serving.slice(0, MOST_CLAIMS).map(({ chosen }) => chosen));
  return variant.actives
    .filter((chosen) => best.has(chosen))
    .map((chosen) => {
      const { claims } = need(book.actives, chosen.activeId);
      invariant(claims !== undefined, `an active without claims is on sale: ${chosen.activeId}`);
      return claims;
    });
}

const MOST_CLAIMS = 2;

/** Wishes for which a mask does less than another, in the rulebook's order: what a milder or cheaper one gives away. */
export function concernsServedLess(
  book: Book,
  { variant, than }: { readonly variant: Variant; readonly than: Variant },
  wishes: Person['wishes'],
): readonly string[] {
  const served = (of: Variant, concernId: string): number => scoreOf(book, of, new Map([[concernId, 1]]));
  const wished = book.rulebook.concerns.filter(({ id }) => (wishes.get(id) ?? 0) > 0);
  return wished.filter(({ id }) => served(variant, id) < served(than, id)).map(({ id }) => id);
}
