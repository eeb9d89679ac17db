// Every caution that a customer is owed at the kiosk: those of the mask and those of their answers. None is ever left out.
import type { Person } from '#lib/answers/person.ts';
import { invariant } from '#lib/base/invariant.ts';
import { cautionsForMarket } from '#lib/label/cautions-for-market.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import type { Caution } from '#lib/rulebook/questionnaire.ts';
import type { Plan } from '#lib/rulebook/variant.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { judge } from '#lib/verdict/judge.ts';
import type { CautionOwed } from '#lib/verdict/verdict.ts';

export interface OwedCaution {
  readonly id: string;
  readonly text: string;
  /** Its form for the label, or the whole text. */
  readonly short: string;
  readonly mustTick: boolean;
  /** The jar's label prints it; any other is the customer's to take along, since nobody else keeps it. */
  readonly isOnJar: boolean;
}

export interface OwedAtKiosk {
  /** Those with a tick of their own first, then those of this mask, then general directions; equals in the rulebook's order. */
  readonly cautions: readonly OwedCaution[];
  /** Owed by the mask whoever buys it: what an order may keep. */
  readonly variantCautionIds: readonly string[];
  /** Whether an answer added any: all that an order may keep of these. */
  readonly hasPersonal: boolean;
}

export interface Owing {
  readonly plan: Plan;
  readonly day: LocalDay;
  readonly person: Person;
  readonly lang: Lang;
  /** Of the verdict with this person in it. */
  readonly ofVerdict: readonly CautionOwed[];
}

export function owedCautions(book: Book, { plan, day, person, lang, ofVerdict }: Owing): OwedAtKiosk {
  const bare = judge(book, plan, { day });
  const ofVariant = bare.kind === 'permitted' ? bare.cautions : [];
  const variantCautionIds = idsOf(ofVariant);
  const printed = printedIds(book, ofVariant);
  const answered = new Map(person.cautions.map((owed) => [owed.cautionId, owed.mustTick]));
  const ofJar = new Set(ofVerdict.map((owed) => owed.cautionId));
  const isShown = (caution: Caution): boolean => answered.has(caution.id) || (ofJar.has(caution.id) && caution.places.includes('kiosk'));
  const shown = book.rulebook.cautions.filter((caution) => caution.audience === 'customer' && isShown(caution));
  const ranked = shown
    .map((caution, index) => ({ caution, index, mustTick: caution.mustTick || answered.get(caution.id) === true }))
    .sort((a, b) => rankOf(a) - rankOf(b) || a.index - b.index);
  return {
    cautions: ranked.map(({ caution, mustTick }) => ({ ...wordsOf(book, lang, caution), mustTick, isOnJar: printed.has(caution.id) })),
    variantCautionIds,
    hasPersonal: shown.some((caution) => !variantCautionIds.includes(caution.id)),
  };
}

const idsOf = (owed: readonly CautionOwed[]): readonly string[] => [...new Set(owed.map((one) => one.cautionId))].sort();

/** Those that the label of the market that the shop sells in, the edition's first, prints. */
function printedIds(book: Book, ofVariant: readonly CautionOwed[]): ReadonlySet<string> {
  const [market] = book.rulebook.markets;
  const due = new Set(market ? cautionsForMarket(book, ofVariant, market.id) : []);
  return new Set(book.rulebook.cautions.filter(({ id, places }) => due.has(id) && places.includes('label')).map(({ id }) => id));
}

function rankOf({ caution, mustTick }: { readonly caution: Caution; readonly mustTick: boolean }): number {
  if (mustTick) return 0;
  return caution.triggers.some((trigger) => trigger.kind === 'always') ? 2 : 1;
}

function wordsOf(book: Book, lang: Lang, { id, textId, labelTextId }: Caution): Pick<OwedCaution, 'id' | 'text' | 'short'> {
  const text = book.rulebook.texts[lang]?.[textId];
  invariant(text !== undefined, `no text ${textId} in ${lang}`);
  return { id, text, short: (labelTextId === undefined ? undefined : book.rulebook.texts[lang]?.[labelTextId]) ?? text };
}

export const mustTickIds = ({ cautions }: OwedAtKiosk): readonly string[] => cautions.filter((one) => one.mustTick).map((one) => one.id);
