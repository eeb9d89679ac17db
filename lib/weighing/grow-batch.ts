// Mends a line that is too heavy in the vessel by making the whole batch larger, so that the heavy line is right again.
// Everything already weighed gets a top-up. A dry powder never goes onto cream: after the cream, powders come as a second paste in the
// oil of their own top-up, made in a clean vessel. Anything that would make the mend worse than the mistake refuses it.

import type { Finding } from '../base/finding.ts';
import { invariant } from '../base/invariant.ts';
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import { wettingOf } from '../chemistry/wetting.ts';
import { compose } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { ExactMass } from '../units/exact-mass.ts';
import { exactShareOf, exactText, GRAINS_PER_UG } from '../units/exact-mass.ts';
import type { MassUg } from '../units/mass.ts';
import { addMass, massUg, sumMass } from '../units/mass.ts';
import { part } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';
import type { BenchLot, LotShare } from './allocate-lots.ts';
import { allocateLots } from './allocate-lots.ts';
import type { Band } from './band.ts';
import { bandOf, bandStateOf, nearestStep } from './band.ts';
import { creamTarget, roundUp, vesselFinding } from './batch.ts';
import { isInPaste } from './bench-line.ts';
import type { Card, CardLine } from './card.ts';
import type { MassLimit } from './mass-limit.ts';
import type { JarState, LineState, RegrownLine } from './readings.ts';
import { canWeigh } from './scale.ts';
import { narrowBands } from './worst-corner.ts';

/** Why a batch cannot grow. */
export type GrowRefusal =
  | { readonly kind: 'not-permitted' }
  | { readonly kind: 'bench'; readonly finding: Finding }
  | { readonly kind: 'scale-full'; readonly lineNo: number; readonly massUg: number; readonly capacityUg: number }
  | { readonly kind: 'limit'; readonly limitId: string }
  | { readonly kind: 'line-outside-band'; readonly lineNo: number }
  | { readonly kind: 'top-up-too-small'; readonly lineNo: number }
  | { readonly kind: 'oil-short' };

export interface Grown {
  readonly batchUg: MassUg;
  readonly totalUg: MassUg;
  readonly lines: readonly RegrownLine[];
  /** What is needed beyond the reservation of the card, per line number. */
  readonly lots: readonly { readonly lineNo: number; readonly lots: readonly LotShare[] }[];
  readonly needsSecondPaste: boolean;
}

export interface GrowAsk {
  readonly book: Book;
  readonly card: Card;
  /** With the heavy reading in it. */
  readonly state: JarState;
  readonly limits: readonly MassLimit[];
  /** Left beyond what this jar has reserved. */
  readonly lots: readonly BenchLot[];
  readonly day: LocalDay;
}

/** The larger batch, or every reason against it. */
export function growBatch(ask: GrowAsk): Result<Grown, readonly GrowRefusal[]> {
  if (!ask.book.rulebook.house.mayGrow) return refuse([{ kind: 'not-permitted' }]);
  const batchUg = grownBatch(ask);
  const { drafts, stage } = draftsOf(ask, batchUg);
  const narrowed = narrowBands(
    drafts.map((one) => ({ lineId: one.line.lineId, stepUg: one.line.scale.stepUg, targetUg: one.targetUg, band: one.band })),
    ask.limits,
  );
  if (!narrowed.ok) return refuse([{ kind: 'limit', limitId: narrowed.refusal.limit.id }]);
  const regrown = drafts.map((one, index) => withTopUp({ ...one, band: narrowed.value[index]?.band ?? one.band }, stage));
  const lots = regrown.map((one) => extraLots(ask, one));
  const refusals = [
    ...vesselRefusals(ask, batchUg),
    ...regrown.flatMap((one) => lineRefusals(one)),
    ...capacityRefusals(regrown),
    ...oilRefusals(ask.book, regrown),
    ...lots.flatMap((one): GrowRefusal[] => (one.ok ? [] : [{ kind: 'bench', finding: one.refusal }])),
  ];
  if (refusals.length > 0) return refuse(refusals);
  return accept({
    batchUg,
    totalUg: sumMass(regrown.map(finalOf)),
    lines: regrown.map(regrownLine),
    lots: regrown.flatMap(({ line }, index) => {
      const drawn = lots[index];
      return drawn?.ok && drawn.value.length > 0 ? [{ lineNo: line.lineNo, lots: drawn.value }] : [];
    }),
    needsSecondPaste: regrown.some((one) => one.into === 'second-paste'),
  });
}

/** The largest actual/share over all lines, up to the step of the batch; never smaller than it was. */
function grownBatch({ card, state }: GrowAsk): MassUg {
  const needed = card.lines.map((line, index) => {
    const share = BigInt(line.shareE12Text);
    return Number((BigInt(state.lines[index]?.weighedUg ?? 0) * GRAINS_PER_UG + share - 1n) / share);
  });
  return roundUp(Math.max(state.batchUg, ...needed), card.batchStepUg);
}

interface Draft {
  readonly line: CardLine;
  readonly now: LineState;
  readonly exact: ExactMass;
  readonly band: Band;
  readonly targetUg: MassUg;
}

interface Regrown extends Draft {
  readonly topUpUg: MassUg;
  readonly into: RegrownLine['into'];
}

/** Whether the cream is in the vessel already, and whether powders or oil-borne stocks must then come as a second paste. */
interface Stage {
  readonly hasCream: boolean;
  readonly needsPaste: boolean;
}

/** New exact masses, bands and targets, the cream last: it takes the remainder again. */
function draftsOf({ card, state }: GrowAsk, batchUg: MassUg): { readonly drafts: readonly Draft[]; readonly stage: Stage } {
  const drafts = card.lines.map((line, index): Draft => {
    const now = state.lines[index];
    invariant(now?.lineNo === line.lineNo, 'a jar state belongs to its card');
    const exact = exactShareOf(batchUg, part(BigInt(line.shareE12Text)));
    const draft = { line, now, exact, band: bandOf(exact, line.tauPpm, line.scale.stepUg) };
    return { ...draft, targetUg: standing(draft) ?? nearestStep(exact, line.scale.stepUg) };
  });
  const hasCream = drafts.some(({ line, now }) => line.place === 'cream' && now.weighedUg > 0);
  const needsPaste = hasCream && drafts.some((one) => isInPaste(one.line.place) && one.line.source.kind === 'stock' && isShort(one));
  const oiled = drafts.map((one) => (needsPaste && one.line.place === 'wetting-oil' ? withFreshOil(one) : one));
  const others = oiled.filter(({ line }) => line.source.kind !== 'cream').map((one) => one.targetUg);
  const creamed = oiled.map((one) => (one.line.source.kind === 'cream' ? { ...one, targetUg: creamOf(one, batchUg, others) } : one));
  return { drafts: creamed, stage: { hasCream, needsPaste } };
}

const isShort = ({ now, targetUg }: Draft): boolean => now.weighedUg < targetUg;

/** A line that stands well in its new band keeps its weight. */
const standing = ({ now, band }: Pick<Draft, 'now' | 'band'>): MassUg | null =>
  now.weighedUg > 0 && bandStateOf(band, now.weighedUg) === 'in-band' ? now.weighedUg : null;

/** A second paste takes the oil's own top-up, even where the oil would stand well without. */
const withFreshOil = (oil: Draft): Draft => ({
  ...oil,
  targetUg: massUg(Math.max(oil.targetUg, nearestStep(oil.exact, oil.line.scale.stepUg))),
});

const creamOf = (cream: Draft, batchUg: MassUg, others: readonly MassUg[]): MassUg =>
  standing(cream) ?? creamTarget(batchUg, others, cream.line.scale.stepUg) ?? massUg(0);

/** What a line still gets, and where it goes. */
function withTopUp(draft: Draft, stage: Stage): Regrown {
  const topUpUg = massUg(Math.max(0, draft.targetUg - draft.now.weighedUg));
  return { ...draft, topUpUg, into: topUpUg === 0 ? null : placeOf(draft.line, stage) };
}

/** Oil that is short on its own goes straight in: it wets nothing. */
function placeOf(line: CardLine, { hasCream, needsPaste }: Stage): RegrownLine['into'] {
  if (!isInPaste(line.place)) return 'vessel';
  if (!hasCream) return 'paste';
  return needsPaste ? 'second-paste' : 'vessel';
}

const finalOf = ({ now, topUpUg }: Regrown): MassUg => massUg(now.weighedUg + topUpUg);

/** Weighings of a line in all: those done, and one for a top-up; a line not begun keeps the lots of its card. */
const weighingsOf = ({ line, now, topUpUg }: Regrown): number =>
  now.weighingsCount === 0 ? Math.max(1, line.lots.length) : now.weighingsCount + (topUpUg > 0 ? 1 : 0);

const regrownLine = (one: Regrown): RegrownLine => ({
  lineNo: one.line.lineNo,
  exactUgText: exactText(one.exact),
  targetUg: one.targetUg,
  loUg: one.band.loUg,
  hiUg: one.band.hiUg,
  topUpUg: one.topUpUg,
  plannedWeighingsCount: weighingsOf(one),
  into: one.into,
});

function vesselRefusals({ book, card }: GrowAsk, batchUg: MassUg): readonly GrowRefusal[] {
  const found = vesselFinding(book.rulebook.base, need(book.vessels, card.vesselId), batchUg);
  return found ? [{ kind: 'bench', finding: found }] : [];
}

/** The line's total must end in its band, and its scale must bear the errors of all its weighings. */
function lineRefusals(one: Regrown): readonly GrowRefusal[] {
  const { lineNo, scale, tauPpm } = one.line;
  if (bandStateOf(one.band, finalOf(one)) !== 'in-band') return [{ kind: 'line-outside-band', lineNo }];
  return canWeigh(scale, one.exact, tauPpm, weighingsOf(one)) ? [] : [{ kind: 'top-up-too-small', lineNo }];
}

/** What is weighed into the vessel is weighed on top of all that lies there by then; a second paste has a vessel of its own. */
function capacityRefusals(lines: readonly Regrown[]): readonly GrowRefusal[] {
  const before = sumMass(lines.map((one) => one.now.weighedUg));
  return lines.flatMap(({ line, topUpUg, into }, index): GrowRefusal[] => {
    const inVessel = addMass(before, sumMass(lines.slice(0, index + 1).map((one) => one.topUpUg)));
    const load = line.container === 'boat' || into === 'second-paste' ? topUpUg : inVessel;
    const { capacityUg } = line.scale;
    return topUpUg > 0 && load > capacityUg ? [{ kind: 'scale-full', lineNo: line.lineNo, massUg: load, capacityUg }] : [];
  });
}

/** A second paste must be wet by its own top-ups, by the same rule as the first. */
function oilRefusals(book: Book, lines: readonly Regrown[]): readonly GrowRefusal[] {
  const pasted = lines.filter((one) => one.into === 'second-paste');
  if (pasted.length === 0) return [];
  const stocks = new Map(
    pasted.flatMap(({ line, topUpUg }) => (line.source.kind === 'stock' ? [[line.source.stockId, BigInt(topUpUg)] as const] : [])),
  );
  const oil = pasted.find(({ line }) => line.source.kind === 'wetting-oil')?.topUpUg ?? 0;
  const { needed, available } = wettingOf(book, compose(book, { stocks, oil: BigInt(oil), cream: 0n }));
  return needed > available ? [{ kind: 'oil-short' }] : [];
}

/** Lots for what a line needs beyond what is weighed or reserved for it already. */
function extraLots({ book, lots, day }: GrowAsk, { line, now, targetUg }: Regrown): Result<readonly LotShare[], Finding> {
  const extra = massUg(Math.max(0, targetUg - Math.max(now.targetUg, now.weighedUg)));
  if (extra === 0) return accept([]);
  return allocateLots(book, lots, day, { source: line.source, targetUg: extra, mostUg: extra, stepUg: line.scale.stepUg });
}
