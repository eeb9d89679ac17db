// What the answers of one visit ask for and rule out. It lives for one request and is never stored.
import type { AvoidTag } from '../rulebook/material.ts';
import type { Outcome } from '../rulebook/questionnaire.ts';
import type { FactorPpm } from '../units/share.ts';

/** Which answer caused an effect, so that "why" leads back to the question. */
export interface Because {
  readonly questionId: string;
  readonly optionId: string;
}

export interface Person {
  readonly wishes: ReadonlyMap<string, number>;
  readonly excluded: ReadonlyMap<AvoidTag, readonly Because[]>;
  readonly capIds: ReadonlyMap<string, readonly Because[]>;
  readonly mildest: readonly Because[];
  /** Largest area asked for, for exposure; null = the scenario's own. */
  readonly areaFactorPpm: FactorPpm | null;
  readonly cautions: readonly { readonly cautionId: string; readonly mustTick: boolean }[];
  /** Worst first; any of them ends the visit without masks. */
  readonly outcomes: readonly Outcome[];
}
