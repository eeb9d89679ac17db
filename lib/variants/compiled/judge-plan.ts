// Does a plan pass checks 2 to 12? The verdict's answer without its findings, by the compiled numbers; what runs along a curve is asked of
// the checks themselves.
import { invariant } from '../../base/invariant.ts';
import { checkCaps } from '../../chemistry/caps.ts';
import { predictedJarPh } from '../../chemistry/jar-ph.ts';
import { checkPreservation } from '../../chemistry/preservation.ts';
import { checkSolubility } from '../../chemistry/solubility.ts';
import { composePlan } from '../../composition/compose.ts';
import type { Book } from '../../rulebook/book.ts';
import type { ChosenActive, Plan, PlanLine, Variant } from '../../rulebook/variant.ts';
import { sharePpm } from '../../units/share.ts';
import type { CompiledBook, EndTest, LimitRule, RefusingRule } from './compile-book.ts';
import type { Option } from './compile-offer.ts';
import type { LinearTest, PlanShares } from './linear.ts';
import { holds } from './linear.ts';

/** A plan after netting. */
export interface NettedPlan extends PlanShares {
  readonly adjuster: ChosenActive | null;
  readonly wanted: readonly PlanLine[];
  /** Which of the wanted lines each line is. */
  readonly kept: Int32Array;
}

/** Options side by side with carriers netted; null where a carrier brings more than the recipe wants, or a share is no whole ppm. */
export function netOptions(book: CompiledBook, options: readonly Option[], adjuster: ChosenActive | null): NettedPlan | null {
  const stocks = options.flatMap((option) => option.stocks);
  const materials = options.flatMap((option) => option.materials);
  const wanted = options.flatMap((option) => option.lines);
  const plan: NettedPlan = {
    stocks: new Int32Array(stocks.length),
    sharesPpm: new Float64Array(stocks.length),
    kept: new Int32Array(stocks.length),
    count: 0,
    adjuster,
    wanted,
  };
  for (const [line, stock] of stocks.entries()) {
    const share = nettedShare(book, { stocks, materials, wanted }, line);
    if (share === null) return null;
    if (share === 0) continue;
    plan.stocks[plan.count] = stock;
    plan.sharesPpm[plan.count] = share;
    plan.kept[plan.count] = line;
    plan.count += 1;
  }
  return plan;
}

interface Unnetted {
  readonly stocks: readonly number[];
  readonly materials: readonly number[];
  readonly wanted: readonly PlanLine[];
}

function nettedShare(
  { neatOf, heldPpm, materialsCount }: CompiledBook,
  { stocks, materials, wanted }: Unnetted,
  line: number,
): number | null {
  const share = wanted[line]?.sharePpm ?? 0;
  const material = materials[line] ?? -1;
  if (material < 0 || (neatOf[stocks[line] ?? 0] ?? -1) < 0) return share;
  let broughtPpm2 = 0;
  for (const [other, stock] of stocks.entries()) {
    const purpose = materials[other] ?? -1;
    if (other !== line && purpose >= 0 && purpose !== material) {
      broughtPpm2 += (wanted[other]?.sharePpm ?? 0) * (heldPpm[stock * materialsCount + material] ?? 0);
    }
  }
  const left = share - broughtPpm2 / 1_000_000;
  return left < 0 || !Number.isInteger(left) ? null : left;
}

/** Checks 3 to 12 of a plan; approval and structure are asked of the variant. */
export function planPasses(book: CompiledBook, plan: NettedPlan, variant: Variant): boolean {
  let additionsPpm = 0;
  for (let line = 0; line < plan.count; line += 1) additionsPpm += plan.sharesPpm[line] ?? 0;
  return (
    additionsPpm <= book.allowancePpm &&
    stocksMeet(book, plan) &&
    windowsHold(book, plan) &&
    allHold(book.refusing, plan) &&
    !book.classRules.some((rule) => speaks(rule, plan)) &&
    (allHold(book.curved, plan) || curvesHold(book.book, planOf(plan, variant)))
  );
}

/** What depends on the pH along a curve: free acid, weak acids that dissolve better with the pH, acid preservatives. */
function curvesHold(book: Book, plan: Plan): boolean {
  const jar = composePlan(book, plan);
  const jarPh = predictedJarPh(book, jar);
  return [checkCaps, checkSolubility, checkPreservation].every((check) => check(book, jar, jarPh).length === 0);
}

function allHold(tests: readonly LinearTest[], plan: PlanShares): boolean {
  for (const test of tests) if (!holds(test, plan)) return false;
  return true;
}

const endHolds = (end: EndTest | null | undefined, plan: PlanShares): boolean =>
  end === null || (end !== undefined && end !== 'never' && holds(end, plan));

function stocksMeet(book: CompiledBook, plan: PlanShares): boolean {
  const width = book.stockCodes.length;
  const { clash, barred, limitRules } = book;
  for (let one = 0; one < plan.count; one += 1) {
    const row = (plan.stocks[one] ?? 0) * width;
    if (barred[plan.stocks[one] ?? 0]) return false;
    for (let other = 0; other <= one; other += 1) if (clash[row + (plan.stocks[other] ?? 0)]) return false;
  }
  for (let one = 0; one < plan.count; one += 1) {
    const row = (plan.stocks[one] ?? 0) * width;
    for (let other = 0; other <= one; other += 1) {
      const rules = limitRules[row + (plan.stocks[other] ?? 0)];
      if (rules && !rules.every((rule) => limitHolds(rule, plan))) return false;
    }
  }
  return true;
}

const limitHolds = ({ tests, lower, upper }: LimitRule, plan: PlanShares): boolean =>
  allHold(tests, plan) && endHolds(lower, plan) && endHolds(upper, plan);

const speaks = ({ sides, lower, upper }: RefusingRule, plan: PlanShares): boolean =>
  sides.every((side) => !holds(side, plan)) && !(lower !== null && endHolds(lower, plan) && endHolds(upper, plan));

function windowsHold(book: CompiledBook, plan: PlanShares): boolean {
  let { minX100, maxX100 } = book.baseWindow;
  for (let line = 0; line < plan.count; line += 1) {
    minX100 = Math.max(minX100, book.lowestX100[plan.stocks[line] ?? 0] ?? 0);
    maxX100 = Math.min(maxX100, book.highestX100[plan.stocks[line] ?? 0] ?? 0);
  }
  if (minX100 > maxX100 || !endHolds(book.lowerEnds.get(minX100), plan) || !endHolds(book.upperEnds.get(maxX100), plan)) return false;
  for (const end of book.alwaysEnds) if (!endHolds(end, plan)) return false;
  return true;
}

/** The same plan as the verdict reads it. */
export function planOf({ wanted, kept, sharesPpm, count, adjuster }: NettedPlan, variant: Variant): Plan {
  const lines = Array.from({ length: count }, (_, line) => {
    const before = wanted[kept[line] ?? 0];
    invariant(before !== undefined, 'a line of a plan comes from a line that is wanted');
    return { ...before, sharePpm: sharePpm(sharesPpm[line] ?? 0) };
  });
  return { variant, adjuster, lines };
}
