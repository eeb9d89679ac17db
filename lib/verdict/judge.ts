// The definition of what is permitted. Whatever a search, a screen or a card offers has passed through here first.
import { compareText } from '../base/compare.ts';
import type { Finding } from '../base/finding.ts';
import { FINDING_CODES, finding } from '../base/finding.ts';
import { checkCaps } from '../chemistry/caps.ts';
import type { JarPh } from '../chemistry/jar-ph.ts';
import { measuredJarPh, predictedJarPh, shownPhX100 } from '../chemistry/jar-ph.ts';
import { checkPh } from '../chemistry/ph-check.ts';
import { checkPreservation } from '../chemistry/preservation.ts';
import { checkSolubility } from '../chemistry/solubility.ts';
import { checkWetting } from '../chemistry/wetting.ts';
import type { Composition } from '../composition/compose.ts';
import { composePlan } from '../composition/compose.ts';
import { planVariant } from '../composition/plan-variant.ts';
import { checkExposure } from '../law/exposure.ts';
import { checkLaw, lawCautions } from '../law/limits.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { ChosenActive, Plan, Variant } from '../rulebook/variant.ts';
import type { PhX100 } from '../units/chemistry.ts';
import { exceedsPpm, partToPpm } from '../units/share.ts';
import { triggeredCautions } from './cautions.ts';
import { checkApproval } from './check-approval.ts';
import { checkClasses } from './check-classes.ts';
import type { PairCheck } from './check-pairs.ts';
import { checkPairs } from './check-pairs.ts';
import { checkPerson, crossContactCautions } from './check-person.ts';
import { checkStructure } from './check-structure.ts';
import type { CautionOwed, JudgeContext, Verdict } from './verdict.ts';
import { areaFactorOf } from './verdict.ts';

/**
 * The verdict on one plan: permitted, or refused with ALL findings, or undecided (acts as refused).
 * Findings come in the order of the checks, whatever the order of the rulebook.
 */
export function judge(book: Book, plan: Plan, context: JudgeContext): Verdict {
  const broken = checkStructure(book, plan.variant, plan.adjuster);
  if (broken.length > 0) return refusedFor(broken);
  const jar = composePlan(book, plan);
  const jarPh = predictedJarPh(book, jar);
  const meetings = checkMeetings(book, jar, jarPh);
  const findings = [
    ...checkApproval(book, plan),
    ...meetings.findings,
    ...checkAllowance(book, jar),
    ...checkLevels(book, plan),
    ...checkPh(book, jar, jarPh),
    ...checkWetting(book, jar),
    ...checkContent(book, jar, jarPh, context),
    ...(context.person ? checkPerson(book, jar, context.person) : []),
    ...(context.bench ? context.bench(plan) : []),
    ...(context.shop ? context.shop(plan) : []),
  ];
  if (findings.length > 0) return refusedFor(findings);
  const cautions = [
    ...triggeredCautions(book, jar),
    ...meetings.cautions,
    ...lawCautions(book, jar, context.day),
    ...(context.person ? crossContactCautions(book, jar, context.person) : []),
  ];
  const facts = { additionsPpm: partToPpm(jar.additions, jar.whole), predictedPhX100: shownPhX100(jarPh) };
  return { kind: 'permitted', cautions: distinctCautions(cautions), facts };
}

/** Checks 3 and 4: materials and classes that meet. */
function checkMeetings(book: Book, jar: Composition, jarPh: JarPh): PairCheck {
  const pairs = checkPairs(book, jar, jarPh);
  const classes = checkClasses(book, jar, jarPh);
  return { findings: [...pairs.findings, ...classes.findings], cautions: [...pairs.cautions, ...classes.cautions] };
}

/** What is asked of any composition, planned or weighed: solubility (6), caps (7), preservation (9), law (11), exposure (12). */
function checkContent(book: Book, jar: Composition, jarPh: JarPh, context: JudgeContext): readonly Finding[] {
  return [
    ...checkSolubility(book, jar, jarPh),
    ...checkCaps(book, jar, jarPh),
    ...checkPreservation(book, jar, jarPh),
    ...checkLaw(book, jar, context.day),
    ...checkExposure(book, jar, areaFactorOf(context)),
  ];
}

/** A jar as weighed, and its reading where one was due. */
export interface WeighedJar {
  readonly jar: Composition;
  /** Null: none was due; the prediction for the weighed composition stands. */
  readonly measuredPhX100: PhX100 | null;
  /** How far the base lot's own pH lies from the approved one, in hundredths; left out: not at all. */
  readonly baseShiftX100?: number;
}

/**
 * At release the composition actually weighed is asked again: checks 7, 9, 11, 12, the limits inside 3, 4 and 6,
 * the ceiling instead of the allowance, and the measured pH. Approval, structure and wetting were settled before.
 * Only numbers can have changed since the plan, so only findings that carry them can appear.
 */
export function judgeWeighed(book: Book, weighed: WeighedJar, context: JudgeContext): readonly Finding[] {
  const { jar, measuredPhX100, baseShiftX100 = 0 } = weighed;
  const isAsPlanned = measuredPhX100 === null && baseShiftX100 === 0;
  const jarPh = measuredPhX100 === null ? predictedJarPh(book, jar, baseShiftX100) : measuredJarPh(measuredPhX100, 0);
  const { ceilingPpm, id } = book.rulebook.base;
  const over = exceedsPpm(jar.additions, jar.whole, ceilingPpm);
  return inOrder([
    ...checkMeetings(book, jar, jarPh).findings,
    ...(over ? [finding('allowance-exceeded', id, { foundPpm: partToPpm(jar.additions, jar.whole), maxPpm: ceilingPpm })] : []),
    ...(isAsPlanned ? [] : checkPh(book, jar, jarPh)),
    ...checkContent(book, jar, jarPh, context),
  ]);
}

/** One way to make a variant, with the verdict on it. */
export interface Attempt {
  /** Null when no plan exists at all. */
  readonly plan: Plan | null;
  readonly verdict: Verdict;
}

/**
 * The first plan that is permitted: no adjuster, then each adjuster's levels upward, each with its plans in order.
 * When none is, the attempt with the fewest findings (the earliest of equals) says why not.
 */
export function judgeVariant(book: Book, variant: Variant, context: JudgeContext): Attempt {
  const broken = checkStructure(book, variant, null);
  if (broken.length > 0) return { plan: null, verdict: refusedFor(broken) };
  let nearest: Attempt | null = null;
  for (const attempt of attempts(book, variant, context)) {
    if (attempt.verdict.kind === 'permitted') return attempt;
    if (nearest === null || findingsOf(attempt.verdict).length < findingsOf(nearest.verdict).length) nearest = attempt;
  }
  return nearest ?? { plan: null, verdict: refusedFor([finding('no-stock', 'structure', { materialId: '' })]) };
}

function* attempts(book: Book, variant: Variant, context: JudgeContext): Generator<Attempt> {
  for (const adjuster of adjusterChoices(book, variant)) {
    const { plans, findings } = planVariant(book, variant, adjuster);
    if (plans.length === 0) yield { plan: null, verdict: refusedFor(findings) };
    for (const plan of plans) yield { plan, verdict: judge(book, plan, context) };
  }
}

/** None first, then each adjuster in code order with its levels upward. An adjuster that repeats a part is no choice. */
export function adjusterChoices(book: Book, variant: Variant): readonly (ChosenActive | null)[] {
  const adjusters = book.rulebook.actives.filter((active) => active.role === 'adjuster').sort((a, b) => (a.code < b.code ? -1 : 1));
  const chosen = adjusters.flatMap((active) =>
    [...active.levels].sort((a, b) => a.levelPpm - b.levelPpm).map((level) => ({ activeId: active.id, levelPpm: level.levelPpm })),
  );
  return [null, ...chosen.filter((one) => checkStructure(book, variant, one).length === 0)];
}

export const findingsOf = (verdict: Verdict): readonly Finding[] => (verdict.kind === 'permitted' ? [] : verdict.findings);

function refusedFor(findings: readonly Finding[]): Verdict {
  const refused = findings.some((found) => FINDING_CODES[found.code].weight === 'refused');
  return { kind: refused ? 'refused' : 'undecided', findings: inOrder(findings) };
}

/** Each once; by check, then code, rule and facts: the order of rules in the document cannot show. */
function inOrder(findings: readonly Finding[]): readonly Finding[] {
  const key = (found: Finding): string =>
    `${String(FINDING_CODES[found.code].check).padStart(2, '0')}|${found.code}|${found.ruleId}|${JSON.stringify(found.facts)}`;
  return [...new Map(findings.map((found) => [key(found), found]))].sort(([a], [b]) => compareText(a, b)).map(([, found]) => found);
}

function distinctCautions(cautions: readonly CautionOwed[]): readonly CautionOwed[] {
  const byKey = new Map(cautions.map((owed) => [`${owed.cautionId}|${owed.ruleId}`, owed]));
  return [...byKey].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, owed]) => owed);
}

/** Check 5: additions as supplied against the allowance; 50 000 passes, 50 001 does not. */
function checkAllowance(book: Book, jar: Composition): readonly Finding[] {
  const { allowancePpm, id } = book.rulebook.base;
  if (!exceedsPpm(jar.additions, jar.whole, allowancePpm)) return [];
  return [finding('allowance-exceeded', id, { foundPpm: partToPpm(jar.additions, jar.whole), maxPpm: allowancePpm })];
}

/** Check 6, first half: levels kept for their evidence are not on sale. */
function checkLevels(book: Book, plan: Plan): readonly Finding[] {
  return [...plan.variant.actives, ...(plan.adjuster ? [plan.adjuster] : [])].flatMap(({ activeId, levelPpm }): Finding[] => {
    const level = need(book.actives, activeId).levels.find((one) => one.levelPpm === levelPpm);
    return level?.permitted ? [] : [finding('level-not-permitted', activeId, { activeId, levelPpm })];
  });
}
