// "Why not the others?": every shade and every active that no shown mask has, beside the first of them, which is closest to the wish.
import { invariant } from '#lib/base/invariant.ts';
import type { Result } from '#lib/base/result.ts';
import { accept } from '#lib/base/result.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import { priceOf } from '#lib/variants/price.ts';
import { whatFits } from '#lib/variants/what-fits.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import type { Choice } from './choices.ts';
import { choicesBeside } from './choices.ts';
import type { Flow } from './flow.ts';
import type { ShownMask } from './mask-view.ts';
import { maskView } from './mask-view.ts';
import type { OpenVisit, VisitAsked, VisitRefusal } from './visit-question.ts';
import { openVisit } from './visit-question.ts';

/** Where it fits, the whole mask, so that it can be chosen like those that were shown. */
export interface OtherChoice extends Choice {
  readonly shown: ShownMask | null;
}

export const whyNotOthers = (
  flow: Flow,
  asked: VisitAsked & { readonly shown: readonly Variant[] },
): Result<readonly OtherChoice[], VisitRefusal> =>
  flow.db.read((tx): Result<readonly OtherChoice[], VisitRefusal> => {
    const visit = openVisit(tx, flow, asked);
    if (!visit.ok) return visit;
    const [closest] = asked.shown;
    invariant(closest, 'at least one mask was shown');
    const shadeIds = new Set(asked.shown.map((mask) => mask.shadeId));
    const activeIds = new Set(asked.shown.flatMap((mask) => mask.actives.map((chosen) => chosen.activeId)));
    const { shades, levels } = whatFits(visit.value.edition.book, closest, visit.value.context);
    const others = {
      shades: shades.filter(({ shadeId }) => !shadeIds.has(shadeId)),
      levels: levels.filter(({ chosen }) => !activeIds.has(chosen.activeId)),
    };
    return accept(
      choicesBeside(visit.value, closest, others).map((choice) => ({
        ...choice,
        shown: choice.variant && shownBeside(visit.value, choice.variant, closest),
      })),
    );
  });

function shownBeside(visit: OpenVisit, variant: Variant, closest: Variant): ShownMask {
  const { edition, context, jarSize } = visit;
  const { plan, verdict } = judgeVariant(edition.book, variant, context);
  invariant(plan && verdict.kind === 'permitted', 'what fits is permitted');
  const priceMinor = priceOf(edition.book, variant, jarSize.id);
  return maskView(visit, { role: 'own-choice', variant, plan, verdict, priceMinor }, closest);
}
