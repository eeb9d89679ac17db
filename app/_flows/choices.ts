// One shade or one active beside a mask: it fits, with the mask that it would make, or the plain reasons why not.
import type { CustomerReason } from '#lib/answers/customer-reason.ts';
import { customerReasons } from '#lib/answers/customer-reason.ts';
import { need } from '#lib/rulebook/book.ts';
import type { Variant } from '#lib/rulebook/variant.ts';
import type { Fit, Fits } from '#lib/variants/what-fits.ts';
import type { OpenVisit } from './visit-question.ts';

export interface Choice {
  readonly kind: 'shade' | 'active';
  readonly name: string;
  /** The mask with this choice in it; null where it does not fit. */
  readonly variant: Variant | null;
  readonly reasons: readonly CustomerReason[];
}

/** Every other shade, then every active not in the mask: at its lowest level that fits, else for the reasons of its lowest level. */
export function choicesBeside(visit: OpenVisit, mask: Variant, fits: Fits): readonly Choice[] {
  const { book } = visit.edition;
  const levels = Map.groupBy(fits.levels, ({ chosen }) => chosen.activeId);
  return [
    ...fits.shades.map(({ shadeId, fit }): Choice => {
      const name = need(book.shades, shadeId).name[visit.lang] ?? shadeId;
      return { kind: 'shade', name, ...outcomeOf(visit, fit, { ...mask, shadeId }) };
    }),
    ...[...levels].flatMap(([activeId, atLevels]): Choice[] => {
      const nearest = atLevels.find(({ fit }) => fit.fits) ?? atLevels[0];
      if (!nearest) return [];
      const name = need(book.actives, activeId).name[visit.lang] ?? activeId;
      return [{ kind: 'active', name, ...outcomeOf(visit, nearest.fit, { ...mask, actives: [...mask.actives, nearest.chosen] }) }];
    }),
  ];
}

function outcomeOf({ edition, lang, person }: OpenVisit, fit: Fit, variant: Variant): Pick<Choice, 'variant' | 'reasons'> {
  return fit.fits ? { variant, reasons: [] } : { variant: null, reasons: customerReasons(edition.book, lang, fit.findings, person) };
}
