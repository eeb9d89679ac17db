// Walks over every variant that could be permitted, shade by shade, and leaves a branch as soon as nothing that is added to it can pass:
// clashes, windows that do not meet, the allowance and missing approval only get worse. The pH does not, so it is asked of whole variants.
import { compareText } from '../../base/compare.ts';
import type { Plan, Variant } from '../../rulebook/variant.ts';
import { approved } from './approved.ts';
import type { CompiledBook } from './compile-book.ts';
import type { ActiveChoice, Option, ShadeChoice } from './compile-offer.ts';
import type { NettedPlan } from './judge-plan.ts';
import { netOptions, planOf, planPasses } from './judge-plan.ts';

export interface FoundPlan {
  readonly shade: ShadeChoice;
  readonly actives: readonly ActiveChoice[];
  readonly plan: NettedPlan;
}

/** Asked now and then with how far the walk is; false ends it. */
export type GoOn = (doneThousandths: number) => boolean;

/**
 * Calls `visit` for every permitted variant with its first passing plan; by shade, the actives in no order that means anything.
 * @returns false where `goOn` ended the walk: what was visited is then only a part.
 */
export function eachPermitted(book: CompiledBook, visit: (found: FoundPlan) => void, goOn: GoOn = () => true): boolean {
  if (!book.baseStands) return true;
  const branches = book.shades.length * (book.choices.length + 1);
  for (const shade of book.shades) {
    if (shade.options.length === 0 || shade.ownPpm > book.allowancePpm || !approved(book, shade, [], null)) continue;
    const open = book.choices.filter((choice) => book.beside[shade.number * book.choices.length + choice.number] === 1);
    const wanted = (choice: number): boolean => goOn(Math.floor((1000 * (shade.number * (book.choices.length + 1) + choice)) / branches));
    if (!walk(book, { shade, open, visit, wanted }, { actives: [], from: 0, leftPpm: book.allowancePpm - shade.ownPpm })) return false;
  }
  return true;
}

interface Walk {
  readonly shade: ShadeChoice;
  readonly open: readonly ActiveChoice[];
  readonly visit: (found: FoundPlan) => void;
  /** May the branch of this first choice be walked? */
  readonly wanted: (choice: number) => boolean;
}

interface Branch {
  readonly actives: readonly ActiveChoice[];
  readonly from: number;
  readonly leftPpm: number;
}

function walk(book: CompiledBook, at: Walk, { actives, from, leftPpm }: Branch): boolean {
  const plan = firstPassing(book, at.shade, actives);
  if (plan) at.visit({ shade: at.shade, actives, plan });
  if (actives.length >= book.mostActivesCount) return true;
  for (let next = from; next < at.open.length; next += 1) {
    const choice = at.open[next];
    if (!choice || choice.ownPpm > leftPpm || !standsWith(book, actives, choice)) continue;
    if (actives.length === 0 && !at.wanted(choice.number)) return false;
    const longer = [...actives, choice];
    if (!approved(book, at.shade, longer, null)) continue;
    if (!walk(book, at, { actives: longer, from: next + 1, leftPpm: leftPpm - choice.ownPpm })) return false;
  }
  return true;
}

function standsWith({ withChoice, choices }: CompiledBook, actives: readonly ActiveChoice[], choice: ActiveChoice): boolean {
  for (const one of actives) if (withChoice[one.number * choices.length + choice.number] !== 1) return false;
  return true;
}

/** The first plan that passes, in the verdict's order: no adjuster, then each; within that fewest lines, smallest additions, stock codes. */
export function firstPassing(book: CompiledBook, shade: ShadeChoice, actives: readonly ActiveChoice[]): NettedPlan | null {
  const variant = variantOf(shade, actives);
  const groups = [shade.options, ...actives.map((choice) => choice.options)];
  if (approved(book, shade, actives, null)) {
    const plan = firstOf(book, variant, plansOf(book, groups, null));
    if (plan) return plan;
  }
  for (const adjuster of book.adjusters) {
    const isPart = shade.wanted.has(adjuster.materialId) || actives.some((one) => one.materialId === adjuster.materialId);
    if (isPart || !approved(book, shade, actives, adjuster)) continue;
    const plan = firstOf(book, variant, plansOf(book, [...groups, adjuster.options], adjuster));
    if (plan) return plan;
  }
  return null;
}

const firstOf = (book: CompiledBook, variant: Variant, plans: readonly NettedPlan[]): NettedPlan | null =>
  plans.find((plan) => planPasses(book, plan, variant)) ?? null;

function plansOf(book: CompiledBook, groups: readonly (readonly Option[])[], adjuster: ActiveChoice | null): readonly NettedPlan[] {
  const combined = groups.reduce<readonly (readonly Option[])[]>(
    (done, group) => done.flatMap((one) => group.map((next) => [...one, next])),
    [[]],
  );
  const plans = combined.map((options) => netOptions(book, options, adjuster?.chosen ?? null)).filter((plan) => plan !== null);
  return plans.length > 1 ? plans.sort((a, b) => comparePlans(book, a, b)) : plans;
}

const additionsPpm = (plan: NettedPlan): number => plan.sharesPpm.reduce((sum, share) => sum + share, 0);
const codes = ({ stockCodes }: CompiledBook, { stocks, count }: NettedPlan): string =>
  Array.from({ length: count }, (_, line) => stockCodes[stocks[line] ?? 0]).join('+');

const comparePlans = (book: CompiledBook, a: NettedPlan, b: NettedPlan): number =>
  a.count - b.count || additionsPpm(a) - additionsPpm(b) || compareText(codes(book, a), codes(book, b));

export const variantOf = (shade: ShadeChoice, actives: readonly ActiveChoice[]): Variant => ({
  shadeId: shade.shadeId,
  actives: actives.map(({ chosen }) => chosen),
});

export const foundVariant = ({ shade, actives, plan }: FoundPlan): { readonly variant: Variant; readonly plan: Plan } => {
  const variant = variantOf(shade, actives);
  return { variant, plan: planOf(plan, variant) };
};
