// What else fits into a mask that is partly chosen, judged for this person, bench and shop now.
import type { Result } from '#lib/base/result.ts';
import { accept } from '#lib/base/result.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import { whatFits } from '#lib/variants/what-fits.ts';
import type { Choice } from './choices.ts';
import { choicesBeside } from './choices.ts';
import type { Flow } from './flow.ts';
import type { VisitAsked, VisitRefusal } from './visit-question.ts';
import { openVisit } from './visit-question.ts';

export const whatElseFits = (flow: Flow, asked: VisitAsked & { readonly variant: Variant }): Result<readonly Choice[], VisitRefusal> =>
  flow.db.read((tx): Result<readonly Choice[], VisitRefusal> => {
    const visit = openVisit(tx, flow, asked);
    if (!visit.ok) return visit;
    const fits = whatFits(visit.value.edition.book, asked.variant, visit.value.context);
    return accept(choicesBeside(visit.value, asked.variant, fits));
  });
