// Up to three masks for the answers of one visit, or the outcome that ends it. Reads only: a visit that buys nothing leaves nothing.
import type { Answer } from '#lib/answers/read-answers.ts';
import type { Person } from '#lib/answers/person.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { Outcome } from '#lib/rulebook/questionnaire.ts';
import type { Mask } from '#lib/variants/three-masks.ts';
import { threeMasks } from '#lib/variants/three-masks.ts';
import type { Flow } from './flow.ts';
import { readShopStand, shopChecks } from './shop-context.ts';
import type { VisitRefusal } from './visit-question.ts';
import { openVisit } from './visit-question.ts';

export interface MasksAsked {
  readonly editionHash: string;
  readonly answers: readonly Answer[];
  readonly jarSizeId: string;
}

export type MasksAnswer =
  | { readonly kind: 'masks'; readonly masks: readonly Mask[]; readonly noActiveFits: boolean; readonly book: Book; readonly person: Person }
  | { readonly kind: 'outcome'; readonly outcome: Outcome; readonly others: readonly Outcome[] };

export function findMasks(flow: Flow, asked: MasksAsked): Result<MasksAnswer, VisitRefusal | { readonly kind: 'no-such-size' }> {
  return flow.db.read((tx): Result<MasksAnswer, VisitRefusal | { readonly kind: 'no-such-size' }> => {
    const visit = openVisit(tx, flow, asked);
    if (!visit.ok) return visit;
    const { edition, person } = visit.value;
    const { book, head } = edition;
    const jarSize = book.jarSizes.get(asked.jarSizeId);
    if (!jarSize) return refuse({ kind: 'no-such-size' });
    const [outcome, ...others] = person.outcomes;
    if (outcome !== undefined) return accept({ kind: 'outcome', outcome, others });
    const stand = readShopStand(tx, flow, book);
    const permitted = flow.editions.permitted(head.hash, book, stand.day);
    const found = threeMasks(book, permitted, { person, jarSizeId: jarSize.id, context: { day: stand.day, ...shopChecks(book, stand, jarSize) } });
    return accept(found.masks.length === 0 ? { kind: 'outcome', outcome: 'none', others: [] } : { kind: 'masks', ...found, book, person });
  });
}
