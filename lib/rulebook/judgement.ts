// Verdicts of the formulator on things that meet, and on whole families of variants. What nobody judged is refused.

import type { PhX100 } from '../units/chemistry.ts';
import type { SharePpm } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';
import type { MaterialClass } from './material.ts';

export type JudgementVerdict = 'never' | 'limit' | 'caution' | 'fine';

/** Every part of a judgement that answers "says who, and why". */
export interface Grounds {
  readonly reason: string;
  readonly source: string;
  readonly by: string;
  readonly on: LocalDay;
}

export interface PairLimit {
  readonly maxSumPpm?: SharePpm;
  readonly maxFirstPpm?: SharePpm;
  readonly maxSecondPpm?: SharePpm;
  readonly minPhX100?: PhX100;
  readonly maxPhX100?: PhX100;
}

export interface PairJudgement extends Grounds {
  readonly id: string;
  readonly firstMaterialId: string;
  readonly secondMaterialId: string;
  readonly verdict: JudgementVerdict;
  readonly limit?: PairLimit;
  readonly cautionId?: string;
  /** A judgement looser than a class judgement names it, with evidence. */
  readonly overridesClassJudgementId?: string;
  readonly evidenceId?: string;
}

export interface ClassJudgement extends Grounds {
  readonly id: string;
  readonly firstClass: MaterialClass;
  readonly secondClass: MaterialClass;
  readonly verdict: JudgementVerdict;
  readonly limit?: PairLimit;
  readonly cautionId?: string;
}

/** One side of a class rule: the class, and the share of the jar that it must exceed to count (0 = any). */
export interface ClassSide {
  readonly materialClass: MaterialClass;
  readonly abovePpm: SharePpm;
}

export interface ClassRule extends Grounds {
  readonly id: string;
  readonly first: ClassSide;
  readonly second?: ClassSide;
  /** Speaks only when the pH may lie outside this window (prediction ± error); absent = at any pH. */
  readonly unlessPhWithin?: { readonly minPhX100: PhX100; readonly maxPhX100: PhX100 };
  readonly then: { readonly kind: 'refuse' } | { readonly kind: 'caution'; readonly cautionId: string };
}

export interface Evidence {
  readonly id: string;
  readonly kind: 'stability' | 'challenge' | 'patch' | 'drawdown' | 'assessment' | 'other';
  readonly on: LocalDay;
  readonly result: string;
}

/** Approves or refuses a family of variants. Refuse beats approve. */
export interface Scope {
  readonly id: string;
  readonly kind: 'approve' | 'refuse';
  /** Approve: any of these. Refuse: one of these, or any shade when empty. */
  readonly shadeIds: readonly string[];
  /** Approve: at or under these levels. Refuse: all of them, at or above these levels. Adjusters stand here too. */
  readonly actives: readonly { readonly activeId: string; readonly levelPpm: SharePpm }[];
  /** Approve only: most actives (adjusters not counted). */
  readonly mostActivesCount: number;
  readonly evidenceIds: readonly string[];
  readonly reason: string;
  readonly by: string;
  readonly on: LocalDay;
}
