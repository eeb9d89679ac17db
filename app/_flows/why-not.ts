// For the mask in hand: every other shade and every active that it lacks, with "fits" or all reasons.
import type { Answer } from '#lib/answers/read-answers.ts';
import type { Result } from '#lib/base/result.ts';
import { accept } from '#lib/base/result.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import type { Fits } from '#lib/variants/what-fits.ts';
import { whatFits } from '#lib/variants/what-fits.ts';
import type { Flow } from './flow.ts';
import { readShopStand } from './shop-context.ts';
import type { VisitRefusal } from './visit-question.ts';
import { openVisit } from './visit-question.ts';

export interface WhyNotAsked {
  readonly editionHash: string;
  readonly answers: readonly Answer[];
  readonly variant: Variant;
}

export const whyNotOthers = (flow: Flow, asked: WhyNotAsked): Result<{ readonly fits: Fits; readonly book: Book }, VisitRefusal> =>
  flow.db.read((tx): Result<{ readonly fits: Fits; readonly book: Book }, VisitRefusal> => {
    const visit = openVisit(tx, flow, asked);
    if (!visit.ok) return visit;
    const { edition, person } = visit.value;
    const { day } = readShopStand(tx, flow, edition.book);
    return accept({ fits: whatFits(edition.book, asked.variant, { day, person }), book: edition.book });
  });
