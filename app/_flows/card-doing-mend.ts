// What the screen of a jar that is off its card needs: how much is too much, the ways out, and what throwing it away would cost.
import type { MassUg } from '#lib/units/mass.ts';
import { massUg } from '#lib/units/mass.ts';
import type { MendOption } from '#lib/weighing/mis-weigh.ts';
import type { BenchOrder } from './bench-order.ts';
import { cardLine, jarCostOf } from './bench-order.ts';
import type { DiscardView, Doing, GrowView, TopUpView } from './card-doing.ts';
import { lineName } from './card-names.ts';
import { openMends } from './mend-jar.ts';

/** All that would be thrown away now. */
export const discardView = (bench: BenchOrder): DiscardView => ({
  massUg: bench.progress.state.weighedUg,
  stepUg: finestStep(bench),
  wasteMinor: jarCostOf(bench),
});

function finestStep({ card, progress }: BenchOrder): MassUg {
  const used = new Set(progress.state.lines.filter((line) => line.weighedUg > 0).map((line) => line.lineNo));
  const lines = card.lines.filter((line) => used.size === 0 || used.has(line.lineNo));
  return massUg(Math.min(...lines.map((line) => line.scale.stepUg)));
}

/** Null where no line is too heavy. */
export function mendingOf(bench: BenchOrder): Doing | null {
  const heavy = bench.progress.state.lines.find((line) => line.stage === 'heavy');
  if (!heavy) return null;
  const line = cardLine(bench, heavy.lineNo);
  const options = openMends(bench);
  return {
    kind: 'mend',
    line: lineName(line),
    container: line.container,
    scale: line.scale,
    weighedUg: heavy.weighedUg,
    hiUg: heavy.hiUg,
    outUg: outOf(options),
    grow: growOf(bench, options),
    growRefusals: [...new Set(options.flatMap((option) => (option.kind === 'discard' ? option.growRefusals : [])).map(({ kind }) => kind))],
  };
}

function outOf(options: readonly MendOption[]): MassUg | null {
  const out = options.find((option) => option.kind === 'take-out');
  return out?.kind === 'take-out' ? out.outUg : null;
}

function growOf(bench: BenchOrder, options: readonly MendOption[]): GrowView | null {
  const option = options.find((one) => one.kind === 'grow');
  if (option?.kind !== 'grow') return null;
  const { grown, wasteMinor } = option;
  const { state } = bench.progress;
  const topUps = grown.lines.map((line): TopUpView => {
    const nowUg = state.lines.find((one) => one.lineNo === line.lineNo)?.weighedUg ?? massUg(0);
    return { line: lineName(cardLine(bench, line.lineNo)), nowUg, totalUg: line.targetUg, addUg: line.topUpUg };
  });
  return {
    fromUg: state.batchUg,
    toUg: grown.batchUg,
    needsSecondPaste: grown.needsSecondPaste,
    wasteMinor,
    topUps: topUps.filter((one) => one.addUg > 0),
  };
}
