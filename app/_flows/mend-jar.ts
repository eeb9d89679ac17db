// A jar that went off its card is mended or thrown away; there is no way to go on all the same.
// Every mend names its reason, says what it wastes in money, and is a fact of its own.
import type { Writing } from '#db/connection.ts';
import { recordJarWaste, recordMend, recordReadingVoid } from '#db/jars.ts';
import { insertReservation } from '#db/reservations.ts';
import { assertNever } from '#lib/base/invariant.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { MassUg } from '#lib/units/mass.ts';
import type { MendOption } from '#lib/weighing/mis-weigh.ts';
import { mendOptions } from '#lib/weighing/mis-weigh.ts';
import type { BenchAsked, BenchDecision } from './bench-act.ts';
import { actAtBench, stoppedBy } from './bench-act.ts';
import type { BenchOrder } from './bench-order.ts';
import { growAskOf, jarCostOf } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';
import { remakeOrder } from './remake-order.ts';
import { scaleFault } from './scale-fault.ts';
import { lastReading } from './void-reading.ts';

export type Mending =
  /** Out of the boat, to waste; what stays in the boat is then weighed again. */
  | { readonly kind: 'take-out'; readonly outUg: MassUg }
  | { readonly kind: 'grow'; readonly secondAccountId: string }
  | { readonly kind: 'discard'; readonly reason: string; readonly remakeOrderId: string };

export const mendJar = (flow: Flow, { requestKey, orderId, mend }: BenchAsked & { readonly mend: Mending }): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    requestKey,
    orderId,
    content: contentOf(mend),
    decide: (tx, bench) => decided(tx, flow, bench, { mend, requestKey }),
  });

/** The id of the order that follows a thrown-away jar is made anew on every try, so it is no part of what was asked for. */
function contentOf(mend: Mending) {
  return mend.kind === 'discard' ? { kind: mend.kind, reason: mend.reason } : { ...mend };
}

interface Asked {
  readonly mend: Mending;
  readonly requestKey: string;
}

function decided(tx: Writing, flow: Flow, bench: BenchOrder, { mend, requestKey }: Asked): BenchDecision {
  const stopped = mend.kind === 'discard' ? null : stoppedBy(bench);
  if (stopped) return refuse(stopped);
  switch (mend.kind) {
    case 'take-out':
      return takenOut(tx, flow, bench, mend.outUg);
    case 'grow':
      return grown(flow, bench, mend.secondAccountId);
    case 'discard':
      return discarded(flow, bench, { ...mend, requestKey });
    default:
      return assertNever(mend);
  }
}

/** What can be done about the line that is too heavy, best first; nothing where none is. */
export function openMends(bench: BenchOrder): readonly MendOption[] {
  const heavy = bench.progress.state.lines.find((line) => line.stage === 'heavy');
  return heavy ? mendOptions(growAskOf(bench), heavy.lineNo) : [];
}

/** The reading goes, the waste is counted against its lot, and the line waits for what is left in the boat. */
function takenOut(tx: Writing, flow: Flow, bench: BenchOrder, outUg: MassUg): BenchDecision {
  const heavy = lastReading(tx, bench);
  const line = bench.card.lines.find((one) => one.lineNo === heavy?.lineNo);
  if (!heavy || !line || !openMends(bench).some((option) => option.kind === 'take-out')) return refuse({ kind: 'cannot-mend', why: [] });
  const fault =
    scaleFault(line.scale, outUg) ?? (outUg < heavy.massUg ? null : ({ kind: 'over-capacity', capacityUg: heavy.massUg } as const));
  if (fault) return refuse(fault);
  const { jarCode, lineNo, lotId } = heavy;
  const by = { byAccountId: staffOf(flow).accountId, atMs: flow.now };
  return accept({
    kind: 'taken-out',
    body: { jarCode, lineNo, lotId, massUg: outUg },
    save: (writing) => {
      recordReadingVoid(writing, { readingId: heavy.id, jarCode, hadLeftLot: false, reason: 'taken out of the boat', ...by }, flow.newId);
      recordJarWaste(
        writing,
        { id: flow.newId(), jarCode, lineNo, lotId, massUg: outUg, reason: 'too much in the boat', ...by },
        flow.newId,
      );
    },
  });
}

const NO_CORRECTION = { stockId: null, lotId: null, massUg: null } as const;

/** A larger batch in which the heavy line is right again; a second person has looked at it. */
function grown(flow: Flow, bench: BenchOrder, secondAccountId: string): BenchDecision {
  const jarCode = bench.view.jar?.batchCode;
  const options = openMends(bench);
  const option = options.find((one) => one.kind === 'grow');
  if (jarCode === undefined || option?.kind !== 'grow')
    return refuse({
      kind: 'cannot-mend',
      why: options.flatMap((one) => (one.kind === 'discard' ? one.growRefusals.map((each) => each.kind) : [])),
    });
  const { batchUg, lines, lots } = option.grown;
  const row = {
    id: flow.newId(),
    jarCode,
    kind: 'grow',
    newBatchMassUg: batchUg,
    lines,
    wasteCostMinor: option.wasteMinor,
    reason: 'a line was too heavy',
    ...NO_CORRECTION,
  } as const;
  return accept({
    kind: 'jar-grown',
    body: { jarCode, batchUg, wasteMinor: option.wasteMinor, secondAccountId },
    save: (tx) => {
      recordMend(tx, { ...row, byAccountId: staffOf(flow).accountId, secondAccountId, atMs: flow.now }, flow.newId);
      for (const share of lots.flatMap((one) => one.lots))
        insertReservation(tx, { id: flow.newId(), orderId: bench.view.order.id, lotId: share.lotId, massUg: share.massUg, atMs: flow.now });
    },
  });
}

/** With a reason, what it cost, and a new order in its place. */
function discarded(
  flow: Flow,
  bench: BenchOrder,
  { reason, remakeOrderId, requestKey }: { readonly reason: string; readonly remakeOrderId: string; readonly requestKey: string },
): BenchDecision {
  const jarCode = bench.view.jar?.batchCode;
  if (jarCode === undefined) return refuse({ kind: 'not-this-step' });
  const wasteCostMinor = jarCostOf(bench);
  const row = {
    id: flow.newId(),
    jarCode,
    kind: 'discard',
    newBatchMassUg: null,
    lines: null,
    wasteCostMinor,
    reason,
    ...NO_CORRECTION,
  } as const;
  return accept({
    kind: 'jar-discarded',
    body: { jarCode, reason, wasteMinor: wasteCostMinor },
    save: (tx) => {
      recordMend(tx, { ...row, byAccountId: staffOf(flow).accountId, secondAccountId: null, atMs: flow.now }, flow.newId);
      remakeOrder(tx, flow, bench, { requestKey, orderId: remakeOrderId, reason, isInHand: true });
    },
  });
}
