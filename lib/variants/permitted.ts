// What an edition permits on a day, and the whole numbers that masks are ranked by.
import { irritancyLoad } from '../chemistry/caps.ts';
import { composePlan } from '../composition/compose.ts';
import { isInForce } from '../law/limits.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Plan, Variant } from '../rulebook/variant.ts';
import type { MoneyMinor } from '../units/money.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';
import { compileBook } from './compiled/compile-book.ts';
import type { ActiveChoice } from './compiled/compile-offer.ts';
import type { FoundPlan, GoOn } from './compiled/find-permitted.ts';
import { eachPermitted, foundVariant } from './compiled/find-permitted.ts';
import { additionsPrice } from './price.ts';

export interface Permitted {
  readonly variant: Variant;
  /** The first plan that passes checks 1 to 12. */
  readonly plan: Plan;
  /** Irritancy of that plan in the house's steps, rounded up. */
  readonly irritancyStepsCount: number;
  readonly additionsPriceMinor: MoneyMinor;
  /** Shade code, then active codes with their levels: the last tie-break, which no renumbering of ids can move. */
  readonly codeKey: string;
}

/** Every permitted variant of the edition in list order: shade code, number of actives, active codes, levels. */
export function permittedVariants(book: Book, day: LocalDay): readonly Permitted[] {
  const compiled = compileBook(book, day);
  const found: FoundPlan[] = [];
  eachPermitted(compiled, (one) => void found.push(one));
  return found.sort(inListOrder).map((one) => {
    const { variant, plan } = foundVariant(one);
    return {
      variant,
      plan,
      irritancyStepsCount: irritancySteps(book, plan),
      additionsPriceMinor: additionsPrice(book, variant),
      codeKey: codeKey(book, variant),
    };
  });
}

function codeKey(book: Book, variant: Variant): string {
  const actives = variant.actives.map(
    ({ activeId, levelPpm }) => `${need(book.actives, activeId).code}@${String(levelPpm).padStart(7, '0')}`,
  );
  return `${need(book.shades, variant.shadeId).code}|${actives.sort().join('+')}`;
}

function inListOrder(a: FoundPlan, b: FoundPlan): number {
  return a.shade.number - b.shade.number || a.actives.length - b.actives.length || byActives(a, b) || byLevels(a, b);
}

function firstDifference(a: FoundPlan, b: FoundPlan, of: (choice: ActiveChoice) => number): number {
  for (const [index, mine] of a.actives.entries()) {
    const theirs = b.actives[index];
    if (theirs && of(mine) !== of(theirs)) return of(mine) - of(theirs);
  }
  return 0;
}

const byActives = (a: FoundPlan, b: FoundPlan): number => firstDifference(a, b, (choice) => choice.activeNumber);
const byLevels = (a: FoundPlan, b: FoundPlan): number => firstDifference(a, b, (choice) => choice.number);

/** ⌈load / step⌉, exactly. */
export function irritancySteps(book: Book, plan: Plan): number {
  const jar = composePlan(book, plan);
  const step = BigInt(book.rulebook.house.ranking.irritancyStepUnits) * jar.whole;
  return Number((irritancyLoad(book, jar) * BigInt(WHOLE_PPM) + step - 1n) / step);
}

/** Days on which the same rows of law stand permit the same variants: one text for all of them. */
export const lawOfDay = (book: Book, day: LocalDay): string =>
  book.rulebook.limits
    .filter((row) => isInForce(row, day))
    .map((row) => row.id)
    .join(' ');

/** Exact number of permitted variants; null where `goOn` ended the count. */
export function countVariants(book: Book, day: LocalDay, goOn?: GoOn): number | null {
  const so = { count: 0 };
  const isWhole = eachPermitted(
    compileBook(book, day),
    () => {
      so.count += 1;
    },
    goOn,
  );
  return isWhole ? so.count : null;
}

/** Rows from..from+size of the list; fewer at its end. */
export function pageOfVariants(
  book: Book,
  day: LocalDay,
  page: { readonly fromCount: number; readonly sizeCount: number },
): readonly Permitted[] {
  return permittedVariants(book, day).slice(page.fromCount, page.fromCount + page.sizeCount);
}

/** The colour family of a variant's shade. */
export const colourFamily = (book: Book, variant: Variant): string => need(book.shades, variant.shadeId).colour.family;
