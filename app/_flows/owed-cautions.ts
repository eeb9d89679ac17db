// Every caution that a customer is owed at the kiosk: those of the jar and those of their answers, in the rulebook's order.
import type { Person } from '#lib/answers/person.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { Caution } from '#lib/rulebook/questionnaire.ts';
import type { CautionOwed } from '#lib/verdict/verdict.ts';

export interface OwedAtKiosk {
  readonly caution: Caution;
  readonly mustTick: boolean;
  /** Owed because of an answer: shown, and never stored by name. */
  readonly isPersonal: boolean;
}

export function owedCautions(book: Book, ofJar: readonly CautionOwed[], person: Person): readonly OwedAtKiosk[] {
  const jarIds = new Set(ofJar.map((owed) => owed.cautionId));
  const personal = new Map(person.cautions.map((owed) => [owed.cautionId, owed.mustTick]));
  return book.rulebook.cautions
    .filter((caution) => caution.audience === 'customer' && (personal.has(caution.id) || (jarIds.has(caution.id) && caution.places.includes('kiosk'))))
    .map((caution) => ({ caution, mustTick: caution.mustTick || personal.get(caution.id) === true, isPersonal: personal.has(caution.id) && !jarIds.has(caution.id) }));
}

export const mustTickIds = (owed: readonly OwedAtKiosk[]): readonly string[] => owed.filter((one) => one.mustTick).map((one) => one.caution.id);
