// "Why not the others?": every shade and every active that no shown mask has, beside the first of them, which is closest to the wish.
import { invariant } from '#lib/base/invariant.ts';
import type { Result } from '#lib/base/result.ts';
import { accept } from '#lib/base/result.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import { whatFits } from '#lib/variants/what-fits.ts';
import type { Choice } from './choices.ts';
import { choicesBeside } from './choices.ts';
import type { Flow } from './flow.ts';
import type { VisitAsked, VisitRefusal } from './visit-question.ts';
import { openVisit } from './visit-question.ts';

export const whyNotOthers = (
  flow: Flow,
  asked: VisitAsked & { readonly shown: readonly Variant[] },
): Result<readonly Choice[], VisitRefusal> =>
  flow.db.read((tx): Result<readonly Choice[], VisitRefusal> => {
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
    return accept(choicesBeside(visit.value, closest, others));
  });
