// Three answers, of which only one sells.

import type { Person } from '../answers/person.ts';
import type { Finding } from '../base/finding.ts';
import type { Plan } from '../rulebook/variant.ts';
import type { FactorPpm } from '../units/share.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';

/** A caution that this jar owes, and the rule that asks for it. */
export interface CautionOwed {
  readonly cautionId: string;
  readonly ruleId: string;
}

/** Figures of a permitted jar for people who may see them. */
export interface JarFacts {
  readonly additionsPpm: number;
  readonly predictedPhX100: number | null;
}

export type Verdict =
  | { readonly kind: 'permitted'; readonly cautions: readonly CautionOwed[]; readonly facts: JarFacts }
  | { readonly kind: 'refused'; readonly findings: readonly Finding[] }
  | { readonly kind: 'undecided'; readonly findings: readonly Finding[] };

/** Whom, where and when the question is asked for. Checks 13, 14 and 15 are asked only when their part is given. */
export interface JudgeContext {
  readonly day: LocalDay;
  readonly person?: Person;
  /** Check 14: can this plan be weighed and labelled here? Handed in, since weighing ranks above the verdict. */
  readonly bench?: (plan: Plan) => readonly Finding[];
  /** Check 15: lots, remaining life and stops of this shop. */
  readonly shop?: (plan: Plan) => readonly Finding[];
}

/**
 * Exposure is judged for the area asked for, and never for less than the scenario's own: nobody can be sold by an answer what the edition
 * refuses.
 */
export function areaFactorOf(context: JudgeContext): FactorPpm | null {
  const asked = context.person?.areaFactorPpm ?? null;
  return asked === null || asked < WHOLE_PPM ? null : asked;
}
