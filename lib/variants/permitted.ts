// What an edition permits on a day, and the whole numbers that masks are ranked by.
import { irritancyLoad } from '../chemistry/caps.ts';
import { composePlan } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Plan, Variant } from '../rulebook/variant.ts';
import type { MoneyMinor } from '../units/money.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';
import { judgeVariant } from '../verdict/judge.ts';
import { allVariants } from './enumerate.ts';
import { additionsPrice } from './price.ts';

export interface Permitted {
  readonly variant: Variant;
  /** The first plan that passes checks 1 to 12. */
  readonly plan: Plan;
  /** Irritancy of that plan in the house's steps, rounded up. */
  readonly irritancyStepsCount: number;
  readonly additionsPriceMinor: MoneyMinor;
}

/** Permitted variants of the edition in list order. Lazy: stop whenever enough has been seen. */
export function* permittedVariants(book: Book, day: LocalDay): Generator<Permitted> {
  for (const variant of allVariants(book)) {
    const { plan, verdict } = judgeVariant(book, variant, { day });
    if (plan && verdict.kind === 'permitted') yield permitted(book, variant, plan);
  }
}

function permitted(book: Book, variant: Variant, plan: Plan): Permitted {
  return { variant, plan, irritancyStepsCount: irritancySteps(book, plan), additionsPriceMinor: additionsPrice(book, variant) };
}

/** ⌈load / step⌉, exactly. */
export function irritancySteps(book: Book, plan: Plan): number {
  const jar = composePlan(book, plan);
  const step = BigInt(book.rulebook.house.ranking.irritancyStepUnits) * jar.whole;
  return Number((irritancyLoad(book, jar) * BigInt(WHOLE_PPM) + step - 1n) / step);
}

/** Exact number of permitted variants. */
export function countVariants(book: Book, day: LocalDay): number {
  let count = 0;
  for (const _ of permittedVariants(book, day)) count += 1;
  return count;
}

/** Rows from..from+size of the list; fewer at its end. */
export function pageOfVariants(
  book: Book,
  day: LocalDay,
  page: { readonly fromCount: number; readonly sizeCount: number },
): readonly Permitted[] {
  const rows: Permitted[] = [];
  let index = 0;
  for (const one of permittedVariants(book, day)) {
    if (index >= page.fromCount + page.sizeCount) break;
    if (index >= page.fromCount) rows.push(one);
    index += 1;
  }
  return rows;
}

/** The colour family of a variant's shade. */
export const colourFamily = (book: Book, variant: Variant): string => need(book.shades, variant.shadeId).colour.family;
