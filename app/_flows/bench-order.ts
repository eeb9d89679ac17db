// One order at the bench with every fact that says where it stands. Read whole each time: what the screen shows and what the server
// decides come from the same fold.
import { findLastClearance, listFitness } from '#db/bench-day.ts';
import { findCard } from '#db/cards.ts';
import type { Reading } from '#db/connection.ts';
import { listBenchFacts } from '#db/jar-facts.ts';
import type { BenchCheck } from '#db/jars.ts';
import { listBenchChecks, listClearances, listStepsDone } from '#db/jars.ts';
import type { OrderStage, OrderView } from '#db/orders.ts';
import { findOrder, orderStage } from '#db/orders.ts';
import type { Stop } from '#db/stops.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { MoneyMinor } from '#lib/units/money.ts';
import type { BenchLot } from '#lib/weighing/allocate-lots.ts';
import type { Card, CardLine, Step } from '#lib/weighing/card.ts';
import { allergenTagsOf } from '#lib/weighing/full-clean.ts';
import type { GrowAsk } from '#lib/weighing/grow-batch.ts';
import { massLimits } from '#lib/weighing/mass-limits.ts';
import { jarCostMinor } from '#lib/weighing/mis-weigh.ts';
import type { JarCheck, Progress } from '#lib/weighing/next-step.ts';
import { CLEARANCE_ITEMS, nextStep } from '#lib/weighing/next-step.ts';
import type { BenchFact } from '#lib/weighing/readings.ts';
import { foldReadings } from '#lib/weighing/readings.ts';
import type { OpenEdition } from './edition-in-force.ts';
import { editionByHash } from './edition-in-force.ts';
import type { Flow } from './flow.ts';
import type { DayStand } from './shop-context.ts';
import { readDayStand, readShelf, stopsOnPlan, withoutStopped } from './shop-context.ts';
import { storedCard } from './stored-card.ts';

export interface BenchOrder {
  readonly view: OrderView;
  readonly stage: OrderStage;
  /** The edition of the card; a jar that was begun finishes under it. */
  readonly edition: OpenEdition;
  readonly card: Card;
  readonly issueNo: number;
  readonly stand: DayStand;
  /** Read only where a line is too heavy: what a larger batch could be made of. */
  readonly shelf: readonly BenchLot[];
  readonly facts: readonly BenchFact[];
  readonly checks: readonly BenchCheck[];
  readonly progress: Progress;
  readonly step: Step;
  /** In force now, on the recipe or on a lot that the card names or the jar holds. */
  readonly stops: readonly Stop[];
}

/** Null for an order that is not there. */
export function readBenchOrder(tx: Reading, flow: Flow, orderId: string): BenchOrder | null {
  const view = findOrder(tx, orderId);
  const issued = view && findCard(tx, orderId);
  if (!view || !issued) return null;
  const edition = editionByHash(tx, flow, issued.editionHash);
  invariant(edition, `the edition of order ${orderId} is gone`);
  const card = storedCard(flow, issued);
  const jarCode = view.jar?.batchCode;
  const stand = readDayStand(tx, flow, edition.book, view.claim?.stationId ?? benchOf(flow));
  const facts = jarCode === undefined ? [] : listBenchFacts(tx, jarCode);
  const checks = jarCode === undefined ? [] : listBenchChecks(tx, jarCode);
  const progress = progressOf(tx, flow, { view, card, stand, facts, checks });
  const lotIds = new Set([
    ...card.lines.flatMap((line) => line.lots.map((lot) => lot.lotId)),
    ...facts.flatMap((fact) => ('lotId' in fact ? [fact.lotId] : [])),
  ]);
  return {
    view,
    stage: orderStage(view),
    edition,
    card,
    issueNo: issued.issueNo,
    stand,
    shelf: progress.state.lines.some((line) => line.stage === 'heavy') ? readShelf(tx) : [],
    facts,
    checks,
    progress,
    step: nextStep(card, progress),
    stops: [
      ...stopsOnPlan(
        edition.book,
        stand.stops,
        card.plan,
        progress.state.corrections.map((one) => one.stockId),
      ),
      ...stand.stops.filter((stop) => stop.subjectKind === 'lot' && lotIds.has(stop.subjectId)),
    ],
  };
}

/** The bench that somebody signed in at; null: the shop's first. */
export const benchOf = ({ actor }: Flow): string | null => (actor.kind === 'staff' ? actor.stationId : null);

type Gathered = Pick<BenchOrder, 'view' | 'card' | 'stand' | 'facts' | 'checks'>;

/** Until a jar is bound, only a clearance by the hands that hold the order counts: others may have used the bench in between. */
function progressOf(tx: Reading, flow: Flow, { view, card, stand, facts, checks }: Gathered): Progress {
  const jarCode = view.jar?.batchCode;
  const fitness = stand.bench ? listFitness(tx, stand.bench.stationId, stand.day) : [];
  const lastFit = new Map(fitness.map((check) => [check.scaleId ?? check.kind, check.hasPassed]));
  const lastCheck = new Map(checks.map((check) => [check.kind, check.hasPassed]));
  const cleared = listClearances(tx, view.order.id)
    .filter(({ atMs }) => jarCode !== undefined || atMs >= (view.claim?.atMs ?? 0))
    .flatMap((clearance) => clearance.items);
  return {
    fitScaleIds: [...lastFit].filter(([, hasPassed]) => hasPassed).map(([id]) => id),
    isMeterFit: lastFit.get('ph-meter') === true,
    cleared,
    needsFullClean: !CLEARANCE_ITEMS.every((item) => cleared.includes(item)) && broughtAllergen(tx, flow, stand.bench?.stationId ?? null),
    isBound: jarCode !== undefined,
    state: foldReadings(card, facts),
    confirmed: jarCode === undefined ? [] : listStepsDone(tx, jarCode).map((done) => done.stepId),
    passed: [...lastCheck].filter(([, hasPassed]) => hasPassed).map(([kind]) => kind as JarCheck),
  };
}

/** Whether the jar mixed before at this bench brought an allergen. */
function broughtAllergen(tx: Reading, flow: Flow, stationId: string | null): boolean {
  const before = stationId === null ? undefined : findLastClearance(tx, stationId);
  const order = before && findOrder(tx, before.orderId)?.order;
  const edition = order && editionByHash(tx, flow, order.editionHash);
  return order !== undefined && edition !== null && edition !== undefined && allergenTagsOf(edition.book, order.plan).length > 0;
}

/** Throws a Fault for a line that is not on the card. */
export function cardLine({ card }: Pick<BenchOrder, 'card'>, lineNo: number): CardLine {
  const line = card.lines.find((one) => one.lineNo === lineNo);
  invariant(line, `no line ${lineNo} on the card`);
  return line;
}

/** Material cost of all that is in the vessel. */
export const jarCostOf = ({ edition: { book }, card, progress: { state } }: BenchOrder): MoneyMinor => jarCostMinor({ book, card, state });

/** What a mend is asked of. */
export const growAskOf = ({ edition: { book }, card, stand, shelf, progress }: BenchOrder): GrowAsk => ({
  book,
  card,
  state: progress.state,
  limits: massLimits({ book, plan: card.plan, markets: book.rulebook.markets, day: stand.day }),
  lots: withoutStopped({ lots: shelf, stops: stand.stops }),
  day: stand.day,
});
