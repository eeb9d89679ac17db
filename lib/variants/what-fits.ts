// For a jar that is partly chosen: which further choice is permitted when added now, and why the others are not.
import type { Finding } from '../base/finding.ts';
import type { Book } from '../rulebook/book.ts';
import type { ChosenActive, Variant } from '../rulebook/variant.ts';
import { findingsOf, judgeVariant } from '../verdict/judge.ts';
import type { JudgeContext } from '../verdict/verdict.ts';

export type Fit = { readonly fits: true } | { readonly fits: false; readonly findings: readonly Finding[] };

export interface Fits {
  readonly shades: readonly { readonly shadeId: string; readonly fit: Fit }[];
  readonly levels: readonly { readonly chosen: ChosenActive; readonly fit: Fit }[];
}

/** Every other shade, and every level of every active that is not chosen yet. */
export function whatFits(book: Book, chosen: Variant, context: JudgeContext): Fits {
  const fit = (variant: Variant): Fit => whyNot(book, variant, context);
  const taken = new Set(chosen.actives.map((one) => one.activeId));
  const open = book.rulebook.actives.filter((active) => active.role === 'active' && !taken.has(active.id));
  return {
    shades: book.rulebook.shades
      .filter((shade) => shade.id !== chosen.shadeId)
      .map((shade) => ({ shadeId: shade.id, fit: fit({ ...chosen, shadeId: shade.id }) })),
    levels: open.flatMap((active) =>
      active.levels.map(({ levelPpm }) => {
        const added = { activeId: active.id, levelPpm };
        return { chosen: added, fit: fit({ ...chosen, actives: [...chosen.actives, added] }) };
      }),
    ),
  };
}

/** All reasons against a variant, or that it fits. */
export function whyNot(book: Book, variant: Variant, context: JudgeContext): Fit {
  const { verdict } = judgeVariant(book, variant, context);
  return verdict.kind === 'permitted' ? { fits: true } : { fits: false, findings: findingsOf(verdict) };
}
