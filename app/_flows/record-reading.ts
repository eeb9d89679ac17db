// One weighing becomes a fact: the right lot, what the scale showed (typed twice), and for flagged lines what a second person read by themself.
// Judged here again, whatever the screen said.
import type { Writing } from '#db/connection.ts';
import { recordReading as storeReading } from '#db/jars.ts';
import { insertLotEvent } from '#db/lots.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { massUg } from '#lib/units/mass.ts';
import { bandStateOf } from '#lib/weighing/band.ts';
import type { CardLine } from '#lib/weighing/card.ts';
import type { NextWeighing } from '#lib/weighing/next-weighing.ts';
import { nextWeighing } from '#lib/weighing/next-weighing.ts';
import type { BenchAsked, BenchDecision } from './bench-act.ts';
import { actAtBench, stoppedBy } from './bench-act.ts';
import type { BenchOrder } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { record, staffOf } from './flow.ts';
import type { FoundLot } from './lot-in-hand.ts';
import { lotInHand } from './lot-in-hand.ts';
import { scaleFault } from './scale-fault.ts';

/** What one person scanned and read. */
export interface Seen {
  readonly lotCode: string;
  readonly massUg: MassUg;
}

export interface ReadingAsked extends BenchAsked, Seen {
  readonly lineNo: number;
  /** The same weight, typed again without a look at the first. */
  readonly againUg: MassUg;
  /** It lies in the vessel or boat as it is, too much or not: then it is a fact, and the jar is mended. */
  readonly isPoured: boolean;
  /** The second person, admitted by their own password. */
  readonly second: (Seen & { readonly accountId: string }) | null;
}

export const recordReading = (flow: Flow, { requestKey, orderId, ...asked }: ReadingAsked): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    requestKey,
    orderId,
    content: { ...asked, second: asked.second && { ...asked.second } },
    decide: (tx, bench) => judged(tx, flow, bench, { requestKey, orderId, ...asked }),
  });

function judged(tx: Writing, flow: Flow, bench: BenchOrder, asked: ReadingAsked): BenchDecision {
  const { step, card, progress } = bench;
  const isTurn = (step.kind === 'weigh' || step.kind === 'cream') && step.lineNo === asked.lineNo;
  const line = card.lines.find((one) => one.lineNo === asked.lineNo);
  const now = progress.state.lines.find((one) => one.lineNo === asked.lineNo);
  if (!isTurn || !line || !now || now.stage === 'heavy') return refuse({ kind: 'not-this-step' });
  const weighing = nextWeighing(card, progress.state, asked.lineNo);
  const lot = lotInHand(tx, bench, {
    line,
    weighing,
    shownCode: asked.lotCode,
    massUg: asked.massUg,
    isPoured: asked.isPoured || wasTakenOut(bench, asked),
  });
  const fault =
    stoppedBy(bench) ?? entryFault(line, asked) ?? (lot.ok ? null : lot.refusal) ?? bandFault(weighing, asked) ?? secondFault(line, asked);
  if (fault || !lot.ok) return refuse(fault ?? { kind: 'not-this-step' });
  return accept(factsOf(flow, bench, { asked, line, weighing, lot: lot.value }));
}

/** What is left in the boat is weighed again, so it lies there already. */
const wasTakenOut = ({ facts }: BenchOrder, { lineNo }: ReadingAsked): boolean =>
  facts.some((fact) => fact.kind === 'waste' && fact.lineNo === lineNo);

function entryFault(line: CardLine, { massUg: mass, againUg }: ReadingAsked): BenchRefusal | null {
  return mass === againUg ? scaleFault(line.scale, mass) : { kind: 'entries-differ' };
}

/** Two people who read the same scale and the same lot say the same. */
function secondFault(line: CardLine, { second, massUg: mass, lotCode }: ReadingAsked): BenchRefusal | null {
  if (!line.needsSecondPerson) return null;
  if (second === null) return { kind: 'second-needed' };
  return second.massUg === mass && isSameCode(second.lotCode, lotCode) ? null : { kind: 'second-differs' };
}

export const isSameCode = (a: string, b: string): boolean => a.trim().toUpperCase() === b.trim().toUpperCase();

/** Too little is added to; too much becomes a fact only when it is said to lie there. */
function bandFault({ loUg, hiUg, wantedUg }: NextWeighing, { massUg: mass, isPoured }: ReadingAsked): BenchRefusal | null {
  switch (bandStateOf({ loUg, hiUg }, mass)) {
    case 'light':
      return { kind: 'too-little', addUg: massUg(wantedUg - mass) };
    case 'heavy':
      return isPoured ? null : { kind: 'too-much', overUg: massUg(mass - hiUg) };
    case 'in-band':
      return null;
  }
}

interface Judged {
  readonly asked: ReadingAsked;
  readonly line: CardLine;
  readonly weighing: NextWeighing;
  readonly lot: FoundLot;
}

function factsOf(flow: Flow, { view }: BenchOrder, { asked, line, weighing, lot }: Judged) {
  const jarCode = view.jar?.batchCode;
  invariant(jarCode !== undefined, 'a jar is bound before anything is weighed');
  const { lineNo, weighingNo, kind } = weighing;
  const by = { byAccountId: staffOf(flow).accountId, atMs: flow.now };
  const row = {
    id: flow.newId(),
    requestKey: asked.requestKey,
    jarCode,
    lineNo,
    weighingNo,
    kind,
    source: 'typed',
    massUg: asked.massUg,
  } as const;
  const secondAccountId = asked.second?.accountId ?? null;
  return {
    kind: 'weighed',
    body: { jarCode, lineNo, weighingNo, lotId: lot.lotId, massUg: asked.massUg, source: 'typed', secondAccountId },
    save: (tx: Writing): void => {
      storeReading(tx, { ...row, scaleId: line.scale.id, lotId: lot.lotId, lotEntry: 'typed', secondAccountId, ...by }, flow.newId);
      if (lot.missingUg > 0) record(tx, flow, { kind: 'lot-short', body: { jarCode, lotId: lot.lotId, missingUg: lot.missingUg } });
      if (!lot.isOpened) insertLotEvent(tx, { lotId: lot.lotId, kind: 'opened', reason: `for ${jarCode}`, ...by });
    },
  };
}
