// The weighing half of a card: batch, exact masses, scales, bands and targets, or every reason why this bench cannot weigh the plan.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import { invariant } from '../base/invariant.ts';
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { JarSize } from '../rulebook/offer.ts';
import type { Plan } from '../rulebook/variant.ts';
import type { ExactMass } from '../units/exact-mass.ts';
import { exactShareOf, GRAINS_PER_UG } from '../units/exact-mass.ts';
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';
import type { FactorPpm } from '../units/share.ts';
import type { Band } from './band.ts';
import { bandOf, bandStateOf, nearestStep } from './band.ts';
import { batchOf, coarsestStep, creamTarget, vesselFinding } from './batch.ts';
import type { BenchLine } from './bench-line.ts';
import { benchLines, stockIdOf } from './bench-line.ts';
import type { MassLimit } from './mass-limit.ts';
import type { BenchScale, ScaleChoice } from './scale.ts';
import { chooseScale, leastUg } from './scale.ts';
import { tauOf } from './tolerance.ts';
import { narrowBands } from './worst-corner.ts';

/** A plan at a bench. */
export interface BenchAsk {
  readonly book: Book;
  readonly plan: Plan;
  readonly jarSize: JarSize;
  readonly scales: readonly BenchScale[];
  /** Linear limits of the plan's jar (see massLimits). */
  readonly limits: readonly MassLimit[];
}

export interface WeighableLine extends BenchLine {
  readonly exact: ExactMass;
  readonly tauPpm: FactorPpm;
  readonly container: 'boat' | 'vessel';
  readonly scale: BenchScale;
  readonly band: Band;
  readonly targetUg: MassUg;
}

export interface Weighable {
  readonly batchUg: MassUg;
  readonly batchStepUg: MassUg;
  readonly lines: readonly WeighableLine[];
}

/** Lines with scales, bands and targets that hold every limit in every corner; else all findings. */
export function weighableLines(ask: BenchAsk): Result<Weighable, readonly Finding[]> {
  if (ask.scales.length === 0) return refuse([finding('no-scale', 'bench', {})]);
  const batchStepUg = coarsestStep(ask.scales.map((scale) => scale.stepUg));
  const batchUg = batchOf(ask.jarSize, batchStepUg);
  const vessel = vesselFinding(ask.book.rulebook.base, need(ask.book.vessels, ask.jarSize.vesselId), batchUg);
  const drafts = draftLines(ask, batchUg);
  const findings = [...(vessel ? [vessel] : []), ...drafts.flatMap(({ choice }) => (choice.ok ? [] : [choice.finding]))];
  if (findings.length > 0) return refuse(findings);
  const lines = targetedLines(drafts, batchUg);
  const offTarget = lines.filter((line) => bandStateOf(line.band, line.targetUg) !== 'in-band').map(creamTooSmall);
  if (offTarget.length > 0) return refuse(offTarget);
  const narrowed = narrowedLines(lines, ask.limits);
  return narrowed.ok ? accept({ batchUg, batchStepUg, lines: narrowed.value }) : refuse([narrowed.refusal]);
}

interface Draft extends BenchLine {
  readonly exact: ExactMass;
  readonly tauPpm: FactorPpm;
  readonly container: 'boat' | 'vessel';
  readonly choice: ScaleChoice;
}

/** In the vessel a scale bears everything that is in it already; in a boat, the line alone. */
function draftLines({ book, plan, scales, limits }: BenchAsk, batchUg: MassUg): readonly Draft[] {
  const lines = benchLines(book, plan).map((line) => ({ ...line, exact: exactShareOf(batchUg, line.share) }));
  return lines.map((line, index): Draft => {
    const tauPpm = tauOf(book, plan, line, limits);
    const container = containerOf(book, line);
    const below = container === 'boat' ? [] : lines.slice(0, index);
    const load = below.reduce((sum, one) => sum + one.exact, line.exact as bigint);
    const ask = {
      stockId: stockIdOf(line.source),
      exact: line.exact,
      tauPpm,
      loadUg: massUg(Number((load + GRAINS_PER_UG - 1n) / GRAINS_PER_UG)),
    };
    return { ...line, tauPpm, container, choice: chooseScale(scales, ask) };
  });
}

/** Cream and wetting oil go straight into the vessel: what clings to a boat would be missing from the paste. */
function containerOf(book: Book, line: BenchLine & { readonly exact: ExactMass }): 'boat' | 'vessel' {
  if (line.source.kind !== 'stock') return 'vessel';
  const isSmall = line.exact < BigInt(book.rulebook.house.boatBelowUg) * GRAINS_PER_UG;
  return need(book.stocks, line.source.stockId).weighedIn ?? (isSmall ? 'boat' : 'vessel');
}

/** Every line but the cream aims at its own exact mass; the cream takes what these leave of the batch. */
function targetedLines(drafts: readonly Draft[], batchUg: MassUg): readonly WeighableLine[] {
  const scaled = drafts.map(({ choice, ...line }) => {
    invariant(choice.ok, 'a line without a scale has no band');
    const { scale } = choice;
    return { ...line, scale, band: bandOf(line.exact, line.tauPpm, scale.stepUg), targetUg: nearestStep(line.exact, scale.stepUg) };
  });
  const others = scaled.filter((line) => line.source.kind !== 'cream').map((line) => line.targetUg);
  return scaled.map((line) =>
    line.source.kind === 'cream' ? { ...line, targetUg: creamTarget(batchUg, others, line.scale.stepUg) ?? massUg(0) } : line,
  );
}

/** Three readings hold the target of every other line; the cream alone may be too little to take up their roundings. */
const creamTooSmall = ({ source, exact, scale, tauPpm }: WeighableLine): Finding =>
  finding('not-weighable', 'bench', {
    stockId: stockIdOf(source),
    exactUg: Number(exact / GRAINS_PER_UG),
    leastUg: leastUg(scale, tauPpm),
  });

function narrowedLines(lines: readonly WeighableLine[], limits: readonly MassLimit[]): Result<readonly WeighableLine[], Finding> {
  const corners = lines.map(({ lineId, band, targetUg, scale }) => ({ lineId, band, targetUg, stepUg: scale.stepUg }));
  const narrowed = narrowBands(corners, limits);
  if (narrowed.ok) return accept(lines.map((line, index) => ({ ...line, band: narrowed.value[index]?.band ?? line.band })));
  const { lineId, limit } = narrowed.refusal;
  const squeezed = lines.find((line) => line.lineId === lineId);
  return refuse(finding('band-too-narrow', limit.id, { stockId: squeezed ? stockIdOf(squeezed.source) : '', limitId: limit.id }));
}
