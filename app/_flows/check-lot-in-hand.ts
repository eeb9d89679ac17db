// Asked before anything is poured: is the lot in the mixer's hand right for the line that is due? Reads only; the reading itself asks again.
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { nextWeighing } from '#lib/weighing/next-weighing.ts';
import { stoppedBy } from './bench-act.ts';
import { readBenchOrder } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { lotInHand } from './lot-in-hand.ts';

export const checkLotInHand = (flow: Flow, orderId: string, shownCode: string): Result<null, BenchRefusal> =>
  flow.db.read((tx): Result<null, BenchRefusal> => {
    const bench = readBenchOrder(tx, flow, orderId);
    if (!bench) return refuse({ kind: 'no-such-order' });
    const { step, card, progress } = bench;
    const stopped = stoppedBy(bench);
    if (stopped) return refuse(stopped);
    const line = step.kind === 'weigh' || step.kind === 'cream' ? card.lines.find((one) => one.lineNo === step.lineNo) : undefined;
    const now = progress.state.lines.find((one) => one.lineNo === line?.lineNo);
    if (!line || !now || now.stage === 'heavy') return refuse({ kind: 'not-this-step' });
    const weighing = nextWeighing(card, progress.state, line.lineNo);
    const lot = lotInHand(tx, bench, { line, weighing, shownCode, massUg: weighing.wantedUg, isPoured: false });
    return lot.ok ? accept(null) : lot;
  });
