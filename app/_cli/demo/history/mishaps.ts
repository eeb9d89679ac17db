// What goes wrong at a bench, and how it is put right: each kind once in a while, by the ways that the program has for it.

import type { BenchOrder } from '#app/_flows/bench-order.ts';
import { closeOrder } from '#app/_flows/close-order.ts';
import { correctPh, openCorrection } from '#app/_flows/correct-ph.ts';
import { decideHeldJar } from '#app/_flows/decide-held-jar.ts';
import { giveBackOrder } from '#app/_flows/give-back-order.ts';
import { mendJar, openMends } from '#app/_flows/mend-jar.ts';
import { recordCheck } from '#app/_flows/record-check.ts';
import { recordReading } from '#app/_flows/record-reading.ts';
import { releaseJar } from '#app/_flows/release-jar.ts';
import { takeOverOrder } from '#app/_flows/take-over-order.ts';
import { voidReading } from '#app/_flows/void-reading.ts';
import { listStandingLots } from '#db/lots.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { massUg } from '#lib/units/mass.ts';
import type { CardLine } from '#lib/weighing/card.ts';
import { nextWeighing } from '#lib/weighing/next-weighing.ts';
import { ask, benchOrder, claim, mixUntil, reading } from './mixer.ts';
import type { Stage } from './stage.ts';
import { as, went } from './stage.ts';

/** Takes an order that is in hand through to its end, in its own way. */
export type Way = (stage: Stage, orderId: string) => void;

const lineDue = ({ card, step }: BenchOrder): CardLine | undefined =>
  step.kind === 'weigh' || step.kind === 'cream' ? card.lines.find((line) => line.lineNo === step.lineNo) : undefined;

/** Nothing goes wrong; what comes out on hold is decided. */
export const plain: Way = (stage, orderId) => {
  const { stage: end } = mixUntil(stage, orderId, () => false);
  if (end === 'jar-held') decideHeld(stage, orderId);
};

/** A line is over its band by a part of what was wanted; it lies there, and must be mended. */
function pourOver(stage: Stage, orderId: string, isIt: (line: CardLine) => boolean, by: number): boolean {
  const bench = mixUntil(stage, orderId, (at) => {
    const line = lineDue(at);
    return line !== undefined && isIt(line);
  });
  const line = lineDue(bench);
  if (!line || (bench.step.kind !== 'weigh' && bench.step.kind !== 'cream')) return false;
  const { hiUg, wantedUg } = nextWeighing(bench.card, bench.progress.state, bench.step.lineNo);
  const { stepUg, capacityUg } = line.scale;
  const over = massUg(Math.max(hiUg + stepUg, Math.ceil((wantedUg * by) / stepUg) * stepUg));
  if (over > capacityUg) return false;
  stage.clock.pass(1.5);
  went(recordReading(as(stage, stage.hands), reading(stage, bench, { massUg: over, againUg: over, isPoured: true })), 'too much is poured');
  return true;
}

/** The best mend that is open: out of the boat, a larger batch with a second person, or thrown away and begun anew. */
function mendIt(stage: Stage, orderId: string): string {
  const [best] = openMends(benchOrder(stage, orderId));
  stage.clock.pass(2);
  const flow = as(stage, stage.hands);
  const asked = ask(stage, orderId);
  if (best?.kind === 'take-out') {
    went(mendJar(flow, { ...asked, mend: { kind: 'take-out', outUg: best.outUg } }), 'the surplus is taken out');
    return orderId;
  }
  if (best?.kind === 'grow') {
    const secondAccountId = stage.accountId(stage.hands === 'checker' ? 'mixer' : 'checker');
    went(mendJar(flow, { ...asked, mend: { kind: 'grow', secondAccountId } }), 'the batch grows');
    return orderId;
  }
  return throwAway(stage, orderId, 'Too much in the vessel, and the batch could not grow');
}

function throwAway(stage: Stage, orderId: string, reason: string): string {
  const remakeOrderId = stage.services.newId();
  went(
    mendJar(as(stage, stage.hands), { ...ask(stage, orderId), mend: { kind: 'discard', reason, remakeOrderId } }),
    'a jar is thrown away',
  );
  return remakeOrderId;
}

/** A remade order may be on hold where nothing is left to make it of. */
function goOn(stage: Stage, orderId: string): void {
  const { stage: at } = benchOrder(stage, orderId);
  if (at === 'placed' && !claim(stage, orderId)) return;
  if (at !== 'held') plain(stage, orderId);
}

const over =
  (isIt: (line: CardLine) => boolean, by: number): Way =>
  (stage, orderId) => {
    if (pourOver(stage, orderId, isIt, by)) return goOn(stage, mendIt(stage, orderId));
    plain(stage, orderId);
  };

const isLast = ({ place }: CardLine): boolean => place === 'last';

const spilled: Way = (stage, orderId) => {
  mixUntil(stage, orderId, ({ step }) => step.kind === 'paste');
  if (benchOrder(stage, orderId).step.kind !== 'paste') return plain(stage, orderId);
  goOn(stage, throwAway(stage, orderId, 'The vessel was knocked over'));
};

const readAgain: Way = (stage, orderId) => {
  mixUntil(stage, orderId, ({ progress }) => progress.state.lines.some((line) => line.weighingsCount > 0));
  stage.clock.pass(0.5);
  const taken = voidReading(as(stage, stage.hands), { ...ask(stage, orderId), reason: 'The pan touched the hood' });
  if (!taken.ok && taken.refusal.kind !== 'nothing-to-take-back') went(taken, 'a reading is taken back');
  plain(stage, orderId);
};

function measure(stage: Stage, orderId: string, hundredths: number): void {
  stage.clock.pass(6);
  const check = { kind: 'ph', phX100: phX100(hundredths) } as const;
  went(recordCheck(as(stage, stage.hands), { ...ask(stage, orderId), check }), 'the pH is measured');
}

/** A little too alkaline: the one correction that the house permits, by two people, and measured again. */
const corrected: Way = (stage, orderId) => {
  const { step } = mixUntil(stage, orderId, (at) => at.step.kind === 'ph');
  if (step.kind !== 'ph') return plain(stage, orderId);
  measure(stage, orderId, step.maxPhX100 + 8);
  const correction = openCorrection(benchOrder(stage, orderId));
  if (!correction) return heldAndDecided(stage, orderId);
  const { stepUg } = correction.scale;
  const mass = massUg(Math.floor(correction.mostUg / stepUg) * stepUg);
  const lotCode = lotOf(stage, correction.stockId);
  if (lotCode === null || mass < correction.leastUg) return heldAndDecided(stage, orderId);
  stage.clock.pass(2);
  const seen = { lotCode, massUg: mass };
  const second = { ...seen, accountId: stage.accountId(stage.hands === 'checker' ? 'mixer' : 'checker') };
  went(correctPh(as(stage, stage.hands), { ...ask(stage, orderId), ...seen, againUg: mass, second }), 'the pH is corrected');
  plain(stage, orderId);
};

/** An opened lot first. */
function lotOf({ services }: Stage, stockId: string): string | null {
  const lots = services.db.read(listStandingLots).filter(({ lot, status }) => lot.refId === stockId && status === 'released');
  return (lots.find(({ openedAtMs }) => openedAtMs !== null) ?? lots[0])?.lot.code ?? null;
}

function holdIt(stage: Stage, orderId: string): void {
  const jarCode = benchOrder(stage, orderId).view.jar?.batchCode ?? '';
  went(releaseJar(as(stage, stage.hands), { ...ask(stage, orderId), jarCode }), 'a jar goes on hold');
}

/** Far too acid, and nobody has looked at it yet. */
export const leaveOnHold: Way = (stage, orderId) => {
  const { step } = mixUntil(stage, orderId, (at) => at.step.kind === 'ph');
  if (step.kind !== 'ph') return;
  measure(stage, orderId, Math.max(250, step.minPhX100 - 45));
  holdIt(stage, orderId);
};

function heldAndDecided(stage: Stage, orderId: string): void {
  holdIt(stage, orderId);
  decideHeld(stage, orderId);
}

/** Nothing may be corrected so far, so the jar is held. */
const tooAcid: Way = (stage, orderId) => {
  leaveOnHold(stage, orderId);
  const { stage: at } = benchOrder(stage, orderId);
  if (at === 'jar-held') return decideHeld(stage, orderId);
  plain(stage, orderId);
};

/** The formulator looks at what is on hold; it is never sold, and mostly made again. */
export function decideHeld(stage: Stage, orderId: string): void {
  stage.clock.pass(45);
  const { dice, services, accountId } = stage;
  const remakeOrderId = dice.chance(0.7) ? services.newId() : null;
  const reason = remakeOrderId === null ? 'Off its window; the customer chose another mask' : 'Off its window; to be made again';
  const decided = { ...ask(stage, orderId), reason, secondAccountId: accountId('mixer'), remakeOrderId };
  went(decideHeldJar(as(stage, 'formulator'), decided), 'the formulator decides');
  if (remakeOrderId !== null) goOn(stage, remakeOrderId);
}

const looksWrong: Way = (stage, orderId) => {
  const { step } = mixUntil(stage, orderId, (at) => at.step.kind === 'draw-down');
  if (step.kind === 'draw-down') {
    const check = { kind: 'draw-down', hasPassed: false, note: 'A few specks: worked for two more minutes' } as const;
    went(recordCheck(as(stage, stage.hands), { ...ask(stage, orderId), check }), 'the draw-down fails');
  }
  plain(stage, orderId);
};

const filledShort: Way = (stage, orderId) => {
  const { step, view, card } = mixUntil(stage, orderId, (at) => at.step.kind === 'fill');
  if (step.kind === 'fill' && view.jar) {
    const grossUg = massUg(view.jar.tareUg + card.netUg - 600_000);
    went(
      recordCheck(as(stage, stage.hands), { ...ask(stage, orderId), check: { kind: 'gross', grossUg, againUg: grossUg } }),
      'a jar is filled',
    );
  }
  plain(stage, orderId);
};

const calledAway: Way = (stage, orderId) => {
  went(giveBackOrder(as(stage, stage.hands), { ...ask(stage, orderId), reason: 'Called to the counter' }), 'an order is given back');
  stage.clock.pass(20);
  if (claim(stage, orderId)) plain(stage, orderId);
};

const shiftEnds: Way = (stage, orderId) => {
  mixUntil(stage, orderId, ({ step }) => step.kind === 'paste');
  const other = { ...stage, hands: 'checker' } as const;
  const { stage: at } = benchOrder(stage, orderId);
  if (at !== 'claimed' && at !== 'mixing') return;
  went(takeOverOrder(as(other, 'checker'), { ...ask(other, orderId), reason: 'End of the shift' }), 'a jar is taken over');
  plain(other, orderId);
};

export const callOff: Way = (stage, orderId) =>
  void went(
    closeOrder(as(stage, stage.hands), { ...ask(stage, orderId), reason: 'The customer changed their mind' }),
    'an order is closed',
  );

/** How often each happens, of a thousand jars. */
export const WAYS: readonly (readonly [Way, number])[] = [
  [plain, 770],
  [over(({ container, place }) => container === 'boat' && place === 'paste-powder', 1.2), 30],
  [over(({ container }) => container === 'boat', 1.3), 30],
  [over(({ place }) => place === 'wetting-oil', 1.14), 25],
  [over(({ place }) => place === 'cream', 1.03), 15],
  [over((line) => isLast(line) && line.container === 'vessel', 1.2), 10],
  [spilled, 18],
  [readAgain, 25],
  [looksWrong, 20],
  [filledShort, 18],
  [calledAway, 15],
  [shiftEnds, 10],
  [callOff, 12],
];

/** The same where the pH is measured for certain. */
export const WAYS_OF_PH: readonly (readonly [Way, number])[] = [
  [corrected, 90],
  [tooAcid, 60],
];
