// The one thing to do now at the bench, with what its screen needs: plain facts, no words.
import type { Finding } from '#lib/base/finding.ts';
import type { PhX100 } from '#lib/units/chemistry.ts';
import type { MassUg } from '#lib/units/mass.ts';
import type { MoneyMinor } from '#lib/units/money.ts';
import type { LocalDay } from '#lib/units/time.ts';
import type { GrowRefusal } from '#lib/weighing/grow-batch.ts';
import type { LineName } from './card-names.ts';

export interface ScaleView {
  readonly stepUg: MassUg;
  readonly capacityUg: MassUg;
}

export interface FitnessScale extends ScaleView {
  readonly id: string;
  readonly code: string;
  readonly weightsUg: readonly MassUg[];
  readonly isFit: boolean;
}

export interface TopUpView {
  readonly line: LineName;
  readonly nowUg: MassUg;
  readonly totalUg: MassUg;
  readonly addUg: MassUg;
}

export type Doing =
  | { readonly kind: 'claim' | 'ended' }
  /** Why it was held, and what keeps it on hold today; no findings: it could be made. */
  | { readonly kind: 'held'; readonly reason: string; readonly findings: readonly Finding['code'][] }
  | {
      readonly kind: 'fitness';
      readonly scales: readonly FitnessScale[];
      readonly meter: { readonly buffersPhX100: readonly PhX100[]; readonly isFit: boolean } | null;
    }
  | { readonly kind: 'clearance'; readonly items: readonly string[] }
  | { readonly kind: 'protection'; readonly items: readonly string[]; readonly cautions: readonly string[] }
  | { readonly kind: 'bind-jar'; readonly vesselCode: string; readonly scale: ScaleView }
  | {
      readonly kind: 'weigh';
      readonly lineNo: number;
      readonly line: LineName;
      readonly container: 'boat' | 'vessel';
      /** Null: any lot that is fit, for a top-up. */
      readonly lotCode: string | null;
      readonly wantedUg: MassUg;
      readonly loUg: MassUg;
      readonly hiUg: MassUg;
      readonly scale: ScaleView;
      readonly needsSecondPerson: boolean;
      readonly isTopUp: boolean;
      /** A top-up of powder or oil after the cream: wetted in a clean vessel first. */
      readonly isSecondPaste: boolean;
      /** Some was taken out of the boat: what is left in it is weighed again. */
      readonly isLeftOver: boolean;
      readonly weighingNo: number;
      readonly weighingsCount: number;
      readonly portionsUg: readonly MassUg[];
      readonly cautions: readonly string[];
    }
  | {
      readonly kind: 'mend';
      readonly line: LineName;
      readonly container: 'boat' | 'vessel';
      readonly scale: ScaleView;
      readonly weighedUg: MassUg;
      readonly hiUg: MassUg;
      readonly outUg: MassUg | null;
      readonly grow: GrowView | null;
      readonly growRefusals: readonly GrowRefusal['kind'][];
    }
  | { readonly kind: 'paste'; readonly isSecond: boolean }
  | { readonly kind: 'temperature'; readonly atMostC: number }
  | { readonly kind: 'dissolve'; readonly lines: readonly LineName[] }
  | { readonly kind: 'draw-down'; readonly hasFailed: boolean }
  | {
      readonly kind: 'ph';
      readonly minPhX100: PhX100;
      readonly maxPhX100: PhX100;
      readonly method: string;
      readonly lastPhX100: PhX100 | null;
      readonly correction: { readonly line: LineName; readonly leastUg: MassUg; readonly mostUg: MassUg; readonly scale: ScaleView } | null;
    }
  | { readonly kind: 'inspect'; readonly wetHex: string; readonly dryHex: string; readonly colour: string; readonly hasFailed: boolean }
  | { readonly kind: 'fill'; readonly netUg: MassUg; readonly tareUg: MassUg; readonly scale: ScaleView; readonly lastNetUg: MassUg | null }
  | { readonly kind: 'release'; readonly netUg: MassUg; readonly phX100: PhX100 | null }
  | { readonly kind: 'ready'; readonly useByDay: LocalDay; readonly labelPrintsCount: number }
  | { readonly kind: 'jar-held'; readonly findings: readonly Finding['code'][] };

export interface GrowView {
  readonly fromUg: MassUg;
  readonly toUg: MassUg;
  readonly needsSecondPaste: boolean;
  readonly wasteMinor: MoneyMinor;
  readonly topUps: readonly TopUpView[];
}

export interface DiscardView {
  readonly massUg: MassUg;
  /** The finest step among the scales of the card: what was weighed is told with its decimals. */
  readonly stepUg: MassUg;
  readonly wasteMinor: MoneyMinor;
}
