// Up to three masks for the answers of one visit, or the outcome that ends it. Reads only: a visit that buys nothing leaves nothing.
import type { Result } from '#lib/base/result.ts';
import { accept } from '#lib/base/result.ts';
import type { Outcome } from '#lib/rulebook/questionnaire.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import { threeMasks } from '#lib/variants/three-masks.ts';
import { absentStocks } from './absent-stocks.ts';
import type { Flow } from './flow.ts';
import type { ShownMask } from './mask-view.ts';
import { maskView } from './mask-view.ts';
import type { VisitAsked, VisitRefusal } from './visit-question.ts';
import { openVisit } from './visit-question.ts';

export type MasksAnswer =
  | {
      readonly kind: 'masks';
      readonly masks: readonly { readonly variant: Variant; readonly shown: ShownMask }[];
      readonly noActiveFits: boolean;
    }
  | { readonly kind: 'outcome'; readonly outcome: Outcome; readonly others: readonly Outcome[] };

export function findMasks(flow: Flow, asked: VisitAsked): Result<MasksAnswer, VisitRefusal> {
  return flow.db.read((tx): Result<MasksAnswer, VisitRefusal> => {
    const visit = openVisit(tx, flow, asked);
    if (!visit.ok) return visit;
    const { edition, person, jarSize, context, stand } = visit.value;
    const [outcome, ...others] = person.outcomes;
    if (outcome !== undefined) return accept({ kind: 'outcome', outcome, others });
    const permitted = flow.editions.permitted(edition.head.hash, edition.book, context.day);
    const absentStockIds = absentStocks(edition.book, stand);
    const { masks, noActiveFits } = threeMasks(edition.book, permitted, { person, jarSizeId: jarSize.id, context, absentStockIds });
    const [first] = masks;
    if (!first) return accept({ kind: 'outcome', outcome: 'none', others: [] });
    return accept({
      kind: 'masks',
      noActiveFits,
      masks: masks.map((mask) => ({ variant: mask.variant, shown: maskView(visit.value, mask, first.variant) })),
    });
  });
}
