// Every "no" of the bench, with the facts that its sentence needs.
import type { FindingCode } from '#lib/base/finding.ts';
import type { MassUg } from '#lib/units/mass.ts';
import type { LocalDay } from '#lib/units/time.ts';
import type { GrowRefusal } from '#lib/weighing/grow-batch.ts';
import type { LotFault } from '#lib/weighing/lot-check.ts';

export type BenchRefusal =
  | { readonly kind: 'no-such-order' }
  /** The request key was used for something else. */
  | { readonly kind: 'other-content' }
  | { readonly kind: 'already-claimed' }
  /** Somebody's jar stands on this bench: one at a time, or two jars get mixed up. */
  | { readonly kind: 'bench-busy'; readonly shortCode: string }
  /** This bench cannot make the jar now, or the order cannot leave its hold. */
  | { readonly kind: 'cannot-make'; readonly findings: readonly FindingCode[] }
  | { readonly kind: 'no-bench' }
  | { readonly kind: 'not-yours' }
  /** The jar stands elsewhere than the screen thought. */
  | { readonly kind: 'not-this-step' }
  | { readonly kind: 'stopped'; readonly reasons: readonly string[] }
  | { readonly kind: 'not-confirmed'; readonly items: readonly string[] }
  | { readonly kind: 'unfit'; readonly what: string }
  | { readonly kind: 'entries-differ' }
  | { readonly kind: 'between-steps'; readonly stepUg: MassUg }
  | { readonly kind: 'over-capacity'; readonly capacityUg: MassUg }
  | { readonly kind: 'lot'; readonly fault: LotFault | 'unknown'; readonly expectedCode: string | null; readonly shownCode: string }
  | { readonly kind: 'too-little'; readonly addUg: MassUg }
  /** In the boat it can be taken out again; in the vessel it is said once more before it becomes a fact. */
  | { readonly kind: 'too-much'; readonly overUg: MassUg }
  | { readonly kind: 'second-needed' }
  | { readonly kind: 'second-wrong' }
  | { readonly kind: 'second-locked' }
  | { readonly kind: 'second-same-person' }
  | { readonly kind: 'second-role' }
  | { readonly kind: 'second-differs' }
  | { readonly kind: 'nothing-to-take-back' }
  | { readonly kind: 'cannot-mend'; readonly why: readonly GrowRefusal['kind'][] }
  | { readonly kind: 'correction-too-large'; readonly mostUg: MassUg }
  | { readonly kind: 'correction-too-small'; readonly leastUg: MassUg }
  | { readonly kind: 'under-tare' }
  /** More lies in the jar than was weighed in. */
  | { readonly kind: 'more-than-mixed'; readonly mostUg: MassUg }
  | { readonly kind: 'other-jar' }
  | { readonly kind: 'life-over' }
  /** The jar's last day of use is over; it is not handed over any more. */
  | { readonly kind: 'past-use-by'; readonly useByDay: LocalDay }
  /** Neither of the two people may decide about a held jar. */
  | { readonly kind: 'decider-needed' }
  | { readonly kind: 'label-lacks-text'; readonly textIds: readonly string[] }
  | { readonly kind: 'label-not-printed' }
  /** Nobody takes it on before the customer was asked. */
  | { readonly kind: 'order-held'; readonly reason: string }
  | { readonly kind: 'not-ready' };
