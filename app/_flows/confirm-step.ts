// Steps that a person confirms: the bench is clear, protection is on, the jar is bound, the paste is smooth, nothing is left undissolved.
import { insertClearance, insertJar, insertStepDone, nextBatchNo } from '#db/jars.ts';
import { readShop } from '#db/shop.ts';
import { assertNever } from '#lib/base/invariant.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { batchCode } from '#lib/label/batch-code.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { clearanceItems, FULL_CLEAN_ITEM, PROTECTION_ITEMS, pasteStepId } from '#lib/weighing/next-step.ts';
import type { BenchScale } from '#lib/weighing/scale.ts';
import type { BenchAsked, BenchDecision } from './bench-act.ts';
import { actAtBench, stoppedBy } from './bench-act.ts';
import type { BenchOrder } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';
import { jarScale } from './jar-scale.ts';
import { scaleFault } from './scale-fault.ts';

export type Confirmation =
  | { readonly kind: 'clearance' | 'protection'; readonly items: readonly string[] }
  /** The empty jar with its lid; typed twice. */
  | { readonly kind: 'bind-jar'; readonly tareUg: MassUg; readonly againUg: MassUg }
  | { readonly kind: 'paste' | 'dissolve' };

export const confirmStep = (flow: Flow, asked: BenchAsked & { readonly step: Confirmation }): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    ...asked,
    content: { ...asked.step },
    decide: (_tx, bench) => {
      const stopped = stoppedBy(bench);
      if (stopped) return refuse(stopped);
      return bench.step.kind === asked.step.kind ? confirmed(flow, bench, asked.step) : refuse({ kind: 'not-this-step' });
    },
  });

function confirmed(flow: Flow, bench: BenchOrder, step: Confirmation): BenchDecision {
  switch (step.kind) {
    case 'clearance':
      return cleared(flow, bench, { items: step.items, needed: clearanceItems(bench.progress), kind: 'bench-cleared' });
    case 'protection':
      return cleared(flow, bench, { items: step.items, needed: PROTECTION_ITEMS, kind: 'protection-confirmed' });
    case 'bind-jar':
      return bound(flow, bench, step);
    case 'paste':
    case 'dissolve':
      return done(flow, bench, step.kind === 'paste' ? pasteStepId(bench.progress.state) : step.kind);
    default:
      return assertNever(step);
  }
}

interface Clearing {
  readonly items: readonly string[];
  readonly needed: readonly string[];
  readonly kind: string;
}

function cleared(flow: Flow, { view, stand }: BenchOrder, { items, needed, kind }: Clearing): BenchDecision {
  const open = needed.filter((item) => !items.includes(item));
  if (open.length > 0) return refuse({ kind: 'not-confirmed', items: open });
  const stationId = stand.bench?.stationId;
  if (stationId === undefined) return refuse({ kind: 'no-bench' });
  const row = { id: flow.newId(), orderId: view.order.id, stationId, items: [...needed], wasFullClean: needed.includes(FULL_CLEAN_ITEM) };
  return accept({
    kind,
    body: { items: [...needed] },
    save: (tx) => insertClearance(tx, { ...row, byAccountId: staffOf(flow).accountId, atMs: flow.now }),
  });
}

const overBy = ({ capacityUg }: BenchScale): BenchRefusal => ({ kind: 'over-capacity', capacityUg });

/** The scale must bear the jar when it is full. The jar gets its code now, so that every later fact can name it. */
function bound(
  flow: Flow,
  { view, stand, card }: BenchOrder,
  { tareUg, againUg }: { readonly tareUg: MassUg; readonly againUg: MassUg },
): BenchDecision {
  const stationId = stand.bench?.stationId;
  if (stationId === undefined) return refuse({ kind: 'no-bench' });
  if (tareUg !== againUg) return refuse({ kind: 'entries-differ' });
  const scale = jarScale(card);
  const fault = scaleFault(scale, tareUg) ?? (tareUg + card.batchUg > scale.capacityUg ? overBy(scale) : null);
  if (fault) return refuse(fault);
  return accept({
    kind: 'jar-bound',
    body: { tareUg },
    save: (tx) => {
      const batchNo = nextBatchNo(tx, stand.day);
      const code = batchCode({ shop: readShop(tx).shopCode, day: stand.day, runningNo: batchNo });
      const row = { batchCode: code, orderId: view.order.id, localDay: stand.day, batchNo, tareUg, jarLotId: null, stationId };
      insertJar(tx, { ...row, byAccountId: staffOf(flow).accountId, boundAtMs: flow.now });
    },
  });
}

function done(flow: Flow, { view }: BenchOrder, stepId: string): BenchDecision {
  const jarCode = view.jar?.batchCode;
  if (jarCode === undefined) return refuse({ kind: 'not-this-step' });
  return accept({
    kind: 'step-done',
    body: { jarCode, stepId },
    save: (tx) => insertStepDone(tx, { jarCode, stepId, byAccountId: staffOf(flow).accountId, atMs: flow.now }),
  });
}
