// What the bench's screen shows of one order: the steps by name, and everything that the one step to do now needs. No weight of another step.
import type { Reading } from '#db/connection.ts';
import type { OrderStage } from '#db/orders.ts';
import { findOrderRemakeOf } from '#db/orders.ts';
import { listAccounts } from '#db/people.ts';
import { countLabelPrints, findRelease } from '#db/releases.ts';
import { readShop } from '#db/shop.ts';
import { findStation } from '#db/stations.ts';
import type { MassUg } from '#lib/units/mass.ts';
import type { Step } from '#lib/weighing/card.ts';
import { stepsDoneCount } from '#lib/weighing/next-step.ts';
import type { BenchOrder } from './bench-order.ts';
import { readBenchOrder } from './bench-order.ts';
import type { DiscardView, Doing } from './card-doing.ts';
import { discardView } from './card-doing-mend.ts';
import { doingOf } from './card-doing-of.ts';
import type { LineName } from './card-names.ts';
import { lineLook, lineName } from './card-names.ts';
import type { Flow } from './flow.ts';
import type { LayerLook } from './jar-picture.ts';
import { jarName } from './jar-picture.ts';
import { lastReading } from './void-reading.ts';

export interface StepView {
  readonly kind: Step['kind'];
  /** What is weighed; null for the other steps. */
  readonly line: LineName | null;
  readonly layer: { readonly look: LayerLook; readonly fillHex: string | null } | null;
  readonly state: 'done' | 'current' | 'to-come';
}

export interface CardView {
  readonly orderId: string;
  readonly shortCode: string;
  readonly name: string;
  readonly shopName: string;
  readonly benchName: string | null;
  readonly editionNo: number;
  readonly netUg: MassUg;
  readonly batchUg: MassUg;
  readonly stage: OrderStage;
  readonly by: string | null;
  readonly isMine: boolean;
  readonly jarCode: string | null;
  readonly steps: readonly StepView[];
  readonly stops: readonly string[];
  readonly currency: string;
  /** What would be thrown away now. */
  readonly discard: DiscardView;
  readonly doing: Doing;
  /** The reading that may still be taken back. */
  readonly lastReading: { readonly line: LineName; readonly massUg: MassUg; readonly stepUg: MassUg } | null;
  /** The order that took this one's place after its jar was thrown away. */
  readonly remadeAsOrderId: string | null;
}

/** Null for an order that is not there. */
export function showCard(flow: Flow, orderId: string): CardView | null {
  return flow.db.read((tx) => {
    const bench = readBenchOrder(tx, flow, orderId);
    return bench && cardView(tx, flow, bench);
  });
}

function cardView(tx: Reading, flow: Flow, bench: BenchOrder): CardView {
  const { view, edition, card, progress, stage } = bench;
  const claimer = view.claim ? listAccounts(tx).find((account) => account.id === view.claim?.byAccountId) : undefined;
  const stationId = bench.stand.bench?.stationId;
  return {
    orderId: view.order.id,
    shortCode: view.order.shortCode,
    name: jarName(edition.book, card.plan.variant, 'en'),
    shopName: readShop(tx).name,
    benchName: stationId === undefined ? null : (findStation(tx, stationId)?.name ?? null),
    editionNo: edition.head.editionNo,
    netUg: card.netUg,
    batchUg: progress.state.batchUg,
    stage,
    by: claimer?.name ?? null,
    isMine: flow.actor.kind === 'staff' && view.claim?.byAccountId === flow.actor.accountId,
    jarCode: view.jar?.batchCode ?? null,
    steps: stepViews(bench),
    stops: bench.stops.map((stop) => stop.reason),
    currency: edition.book.rulebook.currency,
    discard: discardView(bench),
    doing: doingOf(tx, flow, bench, {
      release: (view.jar && findRelease(tx, view.jar.batchCode)) ?? null,
      labelPrintsCount: view.jar ? countLabelPrints(tx, view.jar.batchCode) : 0,
    }),
    lastReading: lastReadingView(tx, bench),
    remadeAsOrderId: view.jar ? (findOrderRemakeOf(tx, view.jar.batchCode) ?? null) : null,
  };
}

function stepViews({ card, progress, edition, stage }: BenchOrder): readonly StepView[] {
  const isOver = stage !== 'placed' && stage !== 'claimed' && stage !== 'mixing' && stage !== 'held';
  const doneCount = isOver ? card.steps.length : stepsDoneCount(card, progress);
  return card.steps.map((step, index): StepView => {
    const line = step.kind === 'weigh' || step.kind === 'cream' ? card.lines.find((one) => one.lineNo === step.lineNo) : undefined;
    return {
      kind: step.kind,
      line: line ? lineName(line) : null,
      layer: line ? lineLook(edition.book, card, line) : null,
      state: index < doneCount ? 'done' : index === doneCount ? 'current' : 'to-come',
    };
  });
}

function lastReadingView(tx: Reading, bench: BenchOrder): CardView['lastReading'] {
  const last = lastReading(tx, bench);
  const line = bench.card.lines.find((one) => one.lineNo === last?.lineNo);
  return last && line ? { line: lineName(line), massUg: last.massUg, stepUg: line.scale.stepUg } : null;
}
