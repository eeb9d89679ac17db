// Is a jar the same under another edition, for the customer who ordered it? What its label prints, and every caution in its words.
import type { Order } from '#db/orders.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import { composePlan } from '#lib/composition/compose.ts';
import { labelContent } from '#lib/label/label-content.ts';
import { labelIngredients } from '#lib/law/label-order.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need } from '#lib/rulebook/book.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { judge } from '#lib/verdict/judge.ts';
import type { Verdict } from '#lib/verdict/verdict.ts';
import type { OpenEdition } from './edition-in-force.ts';

export type Promised = Pick<Order, 'plan' | 'lang' | 'jarSizeId'>;

/** A book that permits the plan, and the cautions that are owed under it. */
export interface Owing {
  readonly book: Book;
  readonly cautionIds: readonly string[];
}

/** The cautions that a permitted verdict owes, as an order keeps them. */
export const cautionIdsOf = (verdict: Verdict): readonly string[] =>
  verdict.kind === 'permitted' ? [...new Set(verdict.cautions.map((owed) => owed.cautionId))].sort() : [];

/** What the customer agreed to: as ordered, or, where it went on since under another edition, what that one owes. */
export function agreedUnder({ head, book }: OpenEdition, order: Order, day: LocalDay): Owing {
  const cautionIds = head.hash === order.editionHash ? order.variantCautionIds : cautionIdsOf(judge(book, order.plan, { day }));
  return { book, cautionIds };
}

export function isSameJar(order: Promised, before: Owing, after: Owing): boolean {
  const was = saidOf(order, before);
  return was !== null && was === saidOf(order, after);
}

/** The label of the first market, which is the one that is printed, and the cautions as they are read at the kiosk. Null: a text is missing. */
function saidOf({ plan, lang, jarSizeId }: Promised, { book, cautionIds }: Owing): string | null {
  const [market] = book.rulebook.markets;
  const label =
    market &&
    labelContent({
      book,
      market,
      lang,
      variant: plan.variant,
      netUg: need(book.jarSizes, jarSizeId).netUg,
      ingredients: labelIngredients(book, composePlan(book, plan), market),
      cautionIds,
      batchCode: null,
      durability: { kind: 'opening-period', openedMonths: book.rulebook.house.openedLabelMonths },
      shop: { name: '', address: '' },
    });
  if (!label?.ok) return null;
  const cautions = [...cautionIds].sort().map((id) => {
    const { textId, mustTick, places } = need(book.cautions, id);
    return { id, text: book.rulebook.texts[lang]?.[textId] ?? null, mustTick, places: [...places].sort() };
  });
  return canonicalJson({ label: label.value, jarLifeMonths: book.rulebook.house.jarLifeMonths, cautions });
}
