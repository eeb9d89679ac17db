// What has been weighed so far: a fold of the facts recorded at the bench. Facts are only ever added, so the screen, the server and
// the record of ten years hence all see the same jar. Plain data and no rule but the band: the browser may hold it.
import type { MassUg } from '../units/mass.ts';
import { massUg, sumMass } from '../units/mass.ts';
import type { Band, BandState } from './band.ts';
import { bandStateOf } from './band.ts';
import type { Card } from './card.ts';

/** A line after the batch was made larger. */
export interface RegrownLine {
  readonly lineNo: number;
  readonly exactUgText: string;
  readonly targetUg: MassUg;
  readonly loUg: MassUg;
  readonly hiUg: MassUg;
  /** Still to be added to what is weighed already; 0 where the line stands well as it is. */
  readonly topUpUg: MassUg;
  /** Weighings of this line in all, those already done included. */
  readonly plannedWeighingsCount: number;
  /** Where a top-up goes; null where there is none. */
  readonly into: 'paste' | 'second-paste' | 'vessel' | null;
}

/** One recorded fact, in order of `seq`. */
export type BenchFact =
  /** What a weighing of a line shows since its own tare. A later reading of the same weighing takes its place. */
  | {
      readonly kind: 'reading';
      readonly seq: number;
      readonly lineNo: number;
      readonly weighingNo: number;
      readonly lotId: string;
      readonly massUg: MassUg;
    }
  /** Takes back a reading that was recorded wrongly. What was poured stays poured. */
  | { readonly kind: 'void'; readonly seq: number; readonly voidedSeq: number }
  /** Taken out of a boat or thrown away; counts against the lot, not against the jar. */
  | { readonly kind: 'waste'; readonly seq: number; readonly lineNo: number; readonly lotId: string; readonly massUg: MassUg }
  /** The one approved correction of the pH, after everything else. */
  | { readonly kind: 'correction'; readonly seq: number; readonly stockId: string; readonly lotId: string; readonly massUg: MassUg }
  | { readonly kind: 'grown'; readonly seq: number; readonly batchUg: MassUg; readonly lines: readonly RegrownLine[] };

/** `waiting`: nothing weighed; `partial`: a further lot or top-up is still to come. */
export type LineStage = 'waiting' | 'partial' | BandState;

export interface LineState extends Band {
  readonly lineNo: number;
  readonly targetUg: MassUg;
  readonly weighedUg: MassUg;
  readonly weighingsCount: number;
  /** Weighings in all, as the card or the larger batch plans them. */
  readonly plannedWeighingsCount: number;
  /** Where the top-up of a larger batch goes; null where none is owed. */
  readonly topUpInto: RegrownLine['into'];
  readonly stage: LineStage;
}

export interface JarState {
  readonly batchUg: MassUg;
  readonly isGrown: boolean;
  readonly lines: readonly LineState[];
  readonly corrections: readonly { readonly stockId: string; readonly massUg: MassUg }[];
  /** All that is in the vessel. */
  readonly weighedUg: MassUg;
  readonly wasteUg: MassUg;
  /** The first line that is not in its band, in the order of the card; null when all are. */
  readonly nextLineNo: number | null;
  readonly isAllInBand: boolean;
}

/** The state of a jar after its facts. */
export function foldReadings(card: Card, facts: readonly BenchFact[]): JarState {
  const voided = new Set(facts.flatMap((fact) => (fact.kind === 'void' ? [fact.voidedSeq] : [])));
  const standing = facts.filter((fact) => !voided.has(fact.seq));
  const grown = standing.findLast((fact) => fact.kind === 'grown');
  const lines = card.lines.map((line): LineState => {
    const regrown = grown?.lines.find((one) => one.lineNo === line.lineNo);
    const { targetUg, loUg, hiUg } = regrown ?? line;
    const weighings = weighingsOf(standing, line.lineNo);
    const weighedUg = sumMass([...weighings.values()]);
    const planned = regrown?.plannedWeighingsCount ?? Math.max(1, line.lots.length);
    const isOwed = regrown !== undefined && regrown.topUpUg > 0;
    const stage = stageOf(bandStateOf({ loUg, hiUg }, weighedUg), { done: weighings.size, planned, isOwed });
    const counts = { weighingsCount: weighings.size, plannedWeighingsCount: planned };
    return { lineNo: line.lineNo, targetUg, loUg, hiUg, weighedUg, ...counts, topUpInto: regrown?.into ?? null, stage };
  });
  const corrections = standing.flatMap((fact) => (fact.kind === 'correction' ? [{ stockId: fact.stockId, massUg: fact.massUg }] : []));
  const next = lines.find((line) => line.stage !== 'in-band');
  return {
    batchUg: grown?.batchUg ?? card.batchUg,
    isGrown: grown !== undefined,
    lines,
    corrections,
    weighedUg: sumMass([...lines.map((line) => line.weighedUg), ...corrections.map((one) => one.massUg)]),
    wasteUg: sumMass(standing.flatMap((fact) => (fact.kind === 'waste' ? [fact.massUg] : []))),
    nextLineNo: next?.lineNo ?? null,
    isAllInBand: next === undefined,
  };
}

/** The last reading of every weighing of a line. */
function weighingsOf(facts: readonly BenchFact[], lineNo: number): ReadonlyMap<number, MassUg> {
  return new Map(
    facts.flatMap((fact) => (fact.kind === 'reading' && fact.lineNo === lineNo ? [[fact.weighingNo, massUg(fact.massUg)] as const] : [])),
  );
}

/** A line short of its band, or owed a top-up, is not done while weighings are planned; it is light only after the last of them. */
function stageOf(state: BandState, { done, planned, isOwed }: { done: number; planned: number; isOwed: boolean }): LineStage {
  if (done === 0) return 'waiting';
  return done < planned && (state === 'light' || (isOwed && state === 'in-band')) ? 'partial' : state;
}

/** The reading that may still be taken back: the last fact, if it is one. Once anything follows it, it stands. */
export function voidableSeq(facts: readonly BenchFact[]): number | null {
  const last = facts.at(-1);
  return last?.kind === 'reading' ? last.seq : null;
}
