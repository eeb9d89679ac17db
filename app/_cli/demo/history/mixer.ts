// A mixer who does what the card says, with a hand that is only human: readings lie anywhere in their bands, and now and then one does not.
import type { BenchOrder } from '#app/_flows/bench-order.ts';
import { readBenchOrder } from '#app/_flows/bench-order.ts';
import { claimOrder } from '#app/_flows/claim-order.ts';
import { confirmStep } from '#app/_flows/confirm-step.ts';
import { recordCheck } from '#app/_flows/record-check.ts';
import { recordFitness } from '#app/_flows/record-fitness.ts';
import type { ReadingAsked } from '#app/_flows/record-reading.ts';
import { recordReading } from '#app/_flows/record-reading.ts';
import { releaseJar } from '#app/_flows/release-jar.ts';
import { showFitness } from '#app/_flows/show-fitness.ts';
import { assertNever, invariant } from '#lib/base/invariant.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { gramsToUg, massDifferenceUg, massUg } from '#lib/units/mass.ts';
import { temperatureC } from '#lib/units/material-property.ts';
import { factorPpm } from '#lib/units/share.ts';
import type { Step } from '#lib/weighing/card.ts';
import type { Progress } from '#lib/weighing/next-step.ts';
import { CLEARANCE_ITEMS, FULL_CLEAN_ITEM, nextStep, PROTECTION_ITEMS, pasteStepId } from '#lib/weighing/next-step.ts';
import { nextWeighing } from '#lib/weighing/next-weighing.ts';
import type { Stage } from './stage.ts';
import { as, went } from './stage.ts';

/** More than any card has steps, top-ups and second readings. */
const MOST_TURNS = 90;
const JAR_TARE_G = 42;

export function benchOrder(stage: Stage, orderId: string): BenchOrder {
  const flow = as(stage, stage.hands);
  const found = flow.db.read((tx) => readBenchOrder(tx, flow, orderId));
  invariant(found, `order ${orderId} is not at the bench`);
  return found;
}

export const ask = (stage: Stage, orderId: string): { readonly requestKey: string; readonly orderId: string } => ({
  requestKey: stage.services.newId(),
  orderId,
});

/** Takes the order in hand. @returns false where this bench cannot make it now */
export function claim(stage: Stage, orderId: string): boolean {
  stage.clock.pass(2);
  return claimOrder(as(stage, stage.hands), ask(stage, orderId)).ok;
}

/** Goes on with the card until a step is due for which `isDue` says so, or the jar is decided. */
export function mixUntil(stage: Stage, orderId: string, isDue: (bench: BenchOrder) => boolean): BenchOrder {
  let bench = benchOrder(stage, orderId);
  for (let turn = 0; turn < MOST_TURNS; turn += 1) {
    if ((bench.stage !== 'claimed' && bench.stage !== 'mixing') || isDue(bench)) return bench;
    doStep(stage, bench);
    bench = stepDone(bench) ?? benchOrder(stage, orderId);
  }
  throw new Error(`order ${orderId} never came to its end`);
}

/** The order once the step that was due is proved; null where it has to be read anew. Reading it is most of the work of half a year. */
function stepDone(bench: BenchOrder): BenchOrder | null {
  const { card, progress, step } = bench;
  const proof = proofOf(step, progress);
  if (proof === null) return null;
  const proved = { ...progress, ...proof };
  return { ...bench, progress: proved, step: nextStep(card, proved) };
}

function proofOf({ kind }: Step, { cleared, confirmed, passed, state }: Progress): Partial<Progress> | null {
  switch (kind) {
    case 'clearance':
      return { cleared: [...cleared, ...CLEARANCE_ITEMS, FULL_CLEAN_ITEM] };
    case 'protection':
      return { cleared: [...cleared, ...PROTECTION_ITEMS] };
    case 'paste':
      return { confirmed: [...confirmed, pasteStepId(state)] };
    case 'dissolve':
      return { confirmed: [...confirmed, kind] };
    case 'temperature':
    case 'draw-down':
    case 'ph':
      return { passed: [...passed, kind] };
    case 'inspect':
      return { passed: [...passed, 'look'] };
    case 'fill':
      return { passed: [...passed, 'net'] };
    case 'fitness':
    case 'bind-jar':
    case 'weigh':
    case 'cream':
    case 'release':
      return null;
    default:
      return assertNever(kind);
  }
}

/** Scale and meter pass their checks of the day. */
export function makeFit(stage: Stage): void {
  const { services, clock } = stage;
  for (const { id, weightsUg } of showFitness(as(stage, stage.hands)).scales) {
    const check = { kind: 'scale', scaleId: id, zeroUg: massDifferenceUg(0), shownUg: weightsUg } as const;
    went(recordFitness(as(stage, stage.hands), { requestKey: services.newId(), check }), 'the scale is checked');
    clock.pass(2);
  }
  const meter = { kind: 'ph-meter', shownPhX100: [phX100(401), phX100(699)], slopePpm: factorPpm(985_000) } as const;
  went(recordFitness(as(stage, stage.hands), { requestKey: services.newId(), check: meter }), 'the pH meter is checked');
  clock.pass(3);
}

/** What the mixer would send for the line that is due. */
export function reading(stage: Stage, bench: BenchOrder, bend: Partial<ReadingAsked> = {}): ReadingAsked {
  const { card, progress, step, view } = bench;
  invariant(step.kind === 'weigh' || step.kind === 'cream', `nothing is weighed at ${step.kind}`);
  const { wantedUg, loUg, hiUg, lot, lineNo } = nextWeighing(card, progress.state, step.lineNo);
  const line = card.lines.find((one) => one.lineNo === lineNo);
  invariant(line, 'a card has the lines of its steps');
  const room = Math.floor(Math.min(wantedUg - loUg, hiUg - wantedUg) / line.scale.stepUg / 2);
  const massRead = bend.massUg ?? massUg(wantedUg + stage.dice.between(-room, room) * line.scale.stepUg);
  const seen = { lotCode: lot?.lotCode ?? line.lots[0]?.lotCode ?? '', massUg: massRead };
  const second = line.needsSecondPerson ? { ...seen, accountId: stage.accountId(stage.hands === 'checker' ? 'mixer' : 'checker') } : null;
  return { ...ask(stage, view.order.id), lineNo, ...seen, againUg: massRead, isPoured: false, second, ...bend };
}

/** Does the step that is due, well. */
function doStep(stage: Stage, bench: BenchOrder): unknown {
  const { clock, dice } = stage;
  const { step, view, card } = bench;
  const asked = ask(stage, view.order.id);
  clock.pass(step.kind === 'weigh' || step.kind === 'cream' ? 1.5 : 1);
  const flow = as(stage, stage.hands);
  switch (step.kind) {
    case 'fitness':
      return makeFit(stage);
    case 'clearance':
      return confirm({ kind: 'clearance', items: [...CLEARANCE_ITEMS, FULL_CLEAN_ITEM] });
    case 'protection':
      return confirm({ kind: 'protection', items: [...PROTECTION_ITEMS] });
    case 'bind-jar': {
      const tareUg = gramsToUg(JAR_TARE_G + dice.between(0, 40) / 100);
      return confirm({ kind: 'bind-jar', tareUg, againUg: tareUg });
    }
    case 'weigh':
    case 'cream':
      return went(recordReading(flow, reading(stage, bench)), 'a line is weighed');
    case 'paste':
    case 'dissolve':
      return confirm({ kind: step.kind });
    case 'temperature':
      return check({ kind: 'temperature', temperatureC: temperatureC(Math.min(step.atMostC, dice.between(21, 24))) });
    case 'draw-down':
      return check({ kind: 'draw-down', hasPassed: true, note: '' });
    case 'inspect':
      return check({ kind: 'look', hasPassed: true, note: '' });
    case 'ph':
      return check({ kind: 'ph', phX100: phX100(dice.between(step.minPhX100 + 5, step.maxPhX100 - 5)) });
    case 'fill': {
      const grossUg = massUg((view.jar?.tareUg ?? 0) + card.netUg + dice.between(5, 45) * 10_000);
      return check({ kind: 'gross', grossUg, againUg: grossUg });
    }
    case 'release':
      return went(releaseJar(flow, { ...asked, jarCode: view.jar?.batchCode ?? '' }), 'a jar is decided');
    default:
      return assertNever(step);
  }
  function confirm(done: Parameters<typeof confirmStep>[1]['step']): unknown {
    return went(confirmStep(flow, { ...asked, step: done }), `${done.kind} is confirmed`);
  }
  function check(checked: Parameters<typeof recordCheck>[1]['check']): unknown {
    return went(recordCheck(flow, { ...asked, check: checked }), `${checked.kind} is checked`);
  }
}
