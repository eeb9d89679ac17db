// Check 14, second half: would the label of this jar fit its size? Asked before anything is weighed, in every language on sale, for the
// market that the shop sells in, which is the edition's first.
import type { Finding } from '../base/finding.ts';
import { composePlan } from '../composition/compose.ts';
import { labelIngredients } from '../law/label-order.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { JarSize } from '../rulebook/offer.ts';
import type { Plan } from '../rulebook/variant.ts';
import type { LocalDay } from '../units/time.ts';
import { judge } from '../verdict/judge.ts';
import { cautionsForMarket } from './cautions-for-market.ts';
import { labelContent } from './label-content.ts';
import { labelFit } from './label-fit.ts';

export interface LabelQuestion {
  readonly book: Book;
  readonly jarSize: JarSize;
  readonly day: LocalDay;
}

/** Findings for texts that are too long. A plan that is refused for what it holds has no label; a missing text is the soundness check's. */
export function labelFindings({ book, jarSize, day }: LabelQuestion): (plan: Plan) => readonly Finding[] {
  const [market] = book.rulebook.markets;
  const size = need(book.labelSizes, jarSize.labelSizeId);
  return (plan) => {
    const verdict = judge(book, plan, { day });
    if (!market || verdict.kind !== 'permitted') return [];
    const ingredients = labelIngredients(book, composePlan(book, plan), market);
    const cautionIds = cautionsForMarket(book, verdict.cautions, market.id);
    return book.rulebook.languages.flatMap((lang) => {
      const content = labelContent({
        book,
        market,
        lang,
        variant: plan.variant,
        netUg: jarSize.netUg,
        ingredients,
        cautionIds,
        batchCode: null,
        durability: { kind: 'opening-period', openedMonths: book.rulebook.house.openedLabelMonths },
        shop: { name: '', address: null },
      });
      return content.ok ? labelFit(content.value, size) : [];
    });
  };
}
