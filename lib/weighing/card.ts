// The mixing card: one jar's instruction as plain JSON. Whatever is printed or shown at the bench is on it, so that a card can be kept,
// hashed and printed again without the rulebook. Exact figures cross as decimal text, since a double cannot hold them.
import type { Lang } from '../rulebook/language.ts';
import type { AvoidTag } from '../rulebook/material.ts';
import type { Plan } from '../rulebook/variant.ts';
import type { PhX100 } from '../units/chemistry.ts';
import type { MassUg } from '../units/mass.ts';
import type { TemperatureC } from '../units/material-property.ts';
import type { FactorPpm } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';
import type { LotShare } from './allocate-lots.ts';
import type { LineSource, Place } from './bench-line.ts';
import type { BenchScale } from './scale.ts';

export interface CardLine {
  readonly lineNo: number;
  readonly lineId: string;
  readonly source: LineSource;
  readonly place: Place;
  readonly code: string;
  /** Empty for the two parts of the base, which are named by what they are. */
  readonly name: Readonly<Partial<Record<Lang, string>>>;
  /** Printed instead of the name where two stocks are easily taken for each other. */
  readonly lookAlikeName: string | null;
  /** Share of the jar, as an exact whole number of 10^-12. */
  readonly shareE12Text: string;
  /** Batch × share in µg, exactly. */
  readonly exactUgText: string;
  readonly targetUg: MassUg;
  readonly loUg: MassUg;
  readonly hiUg: MassUg;
  readonly tauPpm: FactorPpm;
  readonly scale: BenchScale;
  readonly container: 'boat' | 'vessel';
  /** Empty when the card was made without lots. */
  readonly lots: readonly LotShare[];
  readonly needsSecondPerson: boolean;
  readonly cautionIds: readonly string[];
}

/** Where the measured pH must lie, and how it is measured. */
export interface PhCheck {
  readonly minPhX100: PhX100;
  readonly maxPhX100: PhX100;
  readonly method: string;
}

/** The order of work. A card holds each kind at most once; `weigh` stands once for every line but the cream, which is weighed in portions. */
export type Step =
  /** Scale zero and two check weights on every scale of the card; two buffers where the meter is needed. */
  | { readonly kind: 'fitness'; readonly scaleIds: readonly string[]; readonly needsMeter: boolean }
  /** Bench empty, tools clean or single-use; a full clean first when the jar before brought one of these. */
  | { readonly kind: 'clearance'; readonly fullCleanAfterTags: readonly AvoidTag[] }
  | { readonly kind: 'protection'; readonly hasDust: boolean; readonly cautionIds: readonly string[] }
  | { readonly kind: 'bind-jar'; readonly vesselId: string; readonly vesselCode: string }
  | { readonly kind: 'weigh'; readonly lineNo: number }
  /** Smooth, no dry specks. */
  | { readonly kind: 'paste' }
  /** Each portion as much as is in the vessel, worked in before the next; the reading is that of all portions. */
  | { readonly kind: 'cream'; readonly lineNo: number; readonly portionsUg: readonly MassUg[] }
  /** At or below this temperature before the next lines; no tap: room and stocks are cool enough. */
  | { readonly kind: 'temperature'; readonly atMostC: TemperatureC; readonly isTapNeeded: boolean }
  /** Soluble powders: no grains left. */
  | { readonly kind: 'dissolve'; readonly lineNos: readonly number[] }
  /** Thin draw-down: no specks, no streaks. */
  | { readonly kind: 'draw-down' }
  | ({ readonly kind: 'ph' } & PhCheck)
  /** Look, smell and colour against the swatch. */
  | { readonly kind: 'inspect'; readonly shadeId: string }
  | { readonly kind: 'fill'; readonly netUg: MassUg }
  | { readonly kind: 'release' };

export type StepKind = Step['kind'];

export interface Card {
  readonly schemaVersion: 1;
  readonly plan: Plan;
  readonly day: LocalDay;
  readonly jarSizeId: string;
  readonly vesselId: string;
  readonly netUg: MassUg;
  /** What the exact masses are shares of. */
  readonly batchUg: MassUg;
  /** The batch is a whole number of these: the step of the station's coarsest scale. */
  readonly batchStepUg: MassUg;
  /** Exact sum of the targets. */
  readonly totalUg: MassUg;
  readonly lines: readonly CardLine[];
  readonly steps: readonly Step[];
}
