// The one approved correction of a measured pH: once in a jar, within the house's share, weighed by two people, and measured again.
import type { Writing } from '#db/connection.ts';
import { recordMend } from '#db/jars.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { MassUg } from '#lib/units/mass.ts';
import type { Card } from '#lib/weighing/card.ts';
import { mostCorrectionUg } from '#lib/weighing/ph-due.ts';
import type { BenchScale } from '#lib/weighing/scale.ts';
import { leastUg } from '#lib/weighing/scale.ts';
import type { BenchAsked, BenchDecision } from './bench-act.ts';
import { actAtBench, stoppedBy } from './bench-act.ts';
import type { BenchOrder } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';
import { lotInHand } from './lot-in-hand.ts';
import type { Seen } from './record-reading.ts';
import { isSameCode } from './record-reading.ts';
import { scaleFault } from './scale-fault.ts';
import { stopsOnPlan } from './shop-context.ts';

export interface CorrectionAsked extends BenchAsked, Seen {
  readonly againUg: MassUg;
  readonly second: Seen & { readonly accountId: string };
}

export const correctPh = (flow: Flow, { requestKey, orderId, ...asked }: CorrectionAsked): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    requestKey,
    orderId,
    content: { ...asked, second: { ...asked.second } },
    decide: (tx, bench) => corrected(tx, flow, bench, { requestKey, orderId, ...asked }),
  });

export interface Correction {
  readonly stockId: string;
  readonly leastUg: MassUg;
  readonly mostUg: MassUg;
  readonly scale: BenchScale;
}

/** Of the card's scales, which were checked today, the one that weighs the least. */
function finestScale({ lines }: Card): BenchScale {
  const [scale] = lines.map((line) => line.scale).sort((a, b) => a.stepUg - b.stepUg || a.repeatabilityUg - b.repeatabilityUg);
  invariant(scale, 'a card has lines');
  return scale;
}

/** What the house allows here and now; null where nothing may be corrected, or no scale of the bench weighs so little well enough. */
export function openCorrection({ step, card, progress, edition: { book }, checks }: BenchOrder): Correction | null {
  const approved = book.rulebook.house.phCorrection;
  const mostUg = mostCorrectionUg(book, progress.state.weighedUg);
  const scale = finestScale(card);
  const smallestUg = leastUg(scale, book.rulebook.house.bands.usualPpm);
  const isDue = step.kind === 'ph' && checks.some((check) => check.kind === 'ph') && progress.state.corrections.length === 0;
  if (!isDue || !approved || mostUg === null || smallestUg > mostUg) return null;
  return { stockId: approved.stockId, leastUg: smallestUg, mostUg, scale };
}

function corrected(tx: Writing, flow: Flow, bench: BenchOrder, asked: CorrectionAsked): BenchDecision {
  const { second, massUg: mass, lotCode } = asked;
  const correction = openCorrection(bench);
  const jarCode = bench.view.jar?.batchCode;
  if (!correction || jarCode === undefined) return refuse({ kind: 'cannot-mend', why: [] });
  const fault = stoppedBy(bench) ?? stopOn(bench, correction) ?? entryFault(correction, asked);
  if (fault) return refuse(fault);
  const { stockId } = correction;
  const lot = lotInHand(tx, bench, {
    line: { source: { kind: 'stock', stockId } },
    weighing: { lot: null },
    shownCode: lotCode,
    massUg: mass,
    isPoured: false,
  });
  if (!lot.ok) return lot;
  const row = {
    id: flow.newId(),
    jarCode,
    kind: 'correct',
    newBatchMassUg: null,
    lines: null,
    stockId,
    lotId: lot.value.lotId,
    massUg: mass,
    wasteCostMinor: null,
  } as const;
  const by = { byAccountId: staffOf(flow).accountId, secondAccountId: second.accountId, atMs: flow.now };
  return accept({
    kind: 'ph-corrected',
    body: { jarCode, lotId: lot.value.lotId, massUg: mass, secondAccountId: second.accountId },
    save: (writing) => void recordMend(writing, { ...row, reason: 'the pH was outside its window', ...by }, flow.newId),
  });
}

/** The stock is no part of the plan, so a stop on it or on what is in it is looked for here. */
function stopOn({ edition: { book }, stand, card }: BenchOrder, { stockId }: Correction): BenchRefusal | null {
  const stops = stopsOnPlan(book, stand.stops, card.plan, [stockId]);
  return stops.length > 0 ? { kind: 'stopped', reasons: stops.map((stop) => stop.reason) } : null;
}

function entryFault(
  { leastUg: smallestUg, mostUg, scale }: Correction,
  { massUg: mass, againUg, lotCode, second }: CorrectionAsked,
): BenchRefusal | null {
  if (mass !== againUg) return { kind: 'entries-differ' };
  if (mass > mostUg) return { kind: 'correction-too-large', mostUg };
  if (mass < smallestUg) return { kind: 'correction-too-small', leastUg: smallestUg };
  const isSame = second.massUg === mass && isSameCode(second.lotCode, lotCode);
  return scaleFault(scale, mass) ?? (isSame ? null : { kind: 'second-differs' });
}
