// What is seen and measured on a jar: draw-down, look, temperature, pH, net weight. A "no" is kept as well; the step then stays open.
import type { Writing } from '#db/connection.ts';
import type { BenchCheck } from '#db/jars.ts';
import { insertBenchCheck } from '#db/jars.ts';
import { assertNever } from '#lib/base/invariant.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { tolerableError } from '#lib/law/tolerable-error.ts';
import type { PhX100 } from '#lib/units/chemistry.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { massUg, subtractMass } from '#lib/units/mass.ts';
import type { TemperatureC } from '#lib/units/material-property.ts';
import { netContentOf } from '#lib/weighing/release-jar.ts';
import type { BenchAsked, BenchDecision } from './bench-act.ts';
import { actAtBench, stoppedBy } from './bench-act.ts';
import type { BenchOrder } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';
import { jarScale } from './jar-scale.ts';
import { scaleFault } from './scale-fault.ts';

export type Checked =
  | { readonly kind: 'draw-down' | 'look'; readonly hasPassed: boolean; readonly note: string }
  | { readonly kind: 'temperature'; readonly temperatureC: TemperatureC }
  | { readonly kind: 'ph'; readonly phX100: PhX100 }
  /** The filled jar with its lid on the scale; typed twice. */
  | { readonly kind: 'gross'; readonly grossUg: MassUg; readonly againUg: MassUg };

export const recordCheck = (flow: Flow, asked: BenchAsked & { readonly check: Checked }): Result<null, BenchRefusal> =>
  actAtBench(flow, {
    ...asked,
    content: { ...asked.check },
    decide: (_tx, bench) => {
      const stopped = stoppedBy(bench);
      return stopped ? refuse(stopped) : checked(flow, bench, asked.check);
    },
  });

function checked(flow: Flow, bench: BenchOrder, check: Checked): BenchDecision {
  const { step, progress } = bench;
  switch (check.kind) {
    case 'draw-down':
    case 'look':
      if (step.kind !== (check.kind === 'look' ? 'inspect' : 'draw-down')) return refuse({ kind: 'not-this-step' });
      return kept(flow, bench, [{ kind: check.kind, hasPassed: check.hasPassed, note: check.note }]);
    case 'temperature':
      if (step.kind !== 'temperature') return refuse({ kind: 'not-this-step' });
      return kept(flow, bench, [{ kind: 'temperature', temperatureC: check.temperatureC, hasPassed: check.temperatureC <= step.atMostC }]);
    case 'ph':
      if (step.kind !== 'ph') return refuse({ kind: 'not-this-step' });
      if (!progress.isMeterFit) return refuse({ kind: 'unfit', what: 'pH meter' });
      return kept(flow, bench, [
        { kind: 'ph', phX100: check.phX100, hasPassed: check.phX100 >= step.minPhX100 && check.phX100 <= step.maxPhX100 },
      ]);
    case 'gross':
      return filled(flow, bench, check);
    default:
      return assertNever(check);
  }
}

/** The net weight is what the filled jar weighs beyond its own tare; at least the nominal passes, and never more than was mixed. */
function filled(flow: Flow, bench: BenchOrder, { grossUg, againUg }: Extract<Checked, { kind: 'gross' }>): BenchDecision {
  const { step, view, card, edition } = bench;
  if (step.kind !== 'fill' || !view.jar) return refuse({ kind: 'not-this-step' });
  if (grossUg !== againUg) return refuse({ kind: 'entries-differ' });
  const fault = scaleFault(jarScale(card), grossUg);
  if (fault) return refuse(fault);
  if (grossUg < view.jar.tareUg) return refuse({ kind: 'under-tare' });
  const netUg = subtractMass(grossUg, view.jar.tareUg);
  const mostUg = mostNetUg(bench);
  if (netUg > mostUg) return refuse({ kind: 'more-than-mixed', mostUg });
  const market = edition.book.rulebook.markets[0]?.id;
  const net = netContentOf(netUg, step.netUg, market === undefined ? null : (tolerableError(market, step.netUg)?.errorUg ?? null));
  return kept(flow, bench, [
    { kind: 'gross', massUg: grossUg, hasPassed: true },
    { kind: 'net', massUg: netUg, hasPassed: net === 'full', note: net },
  ]);
}

/** What was weighed in, and one step of its scale for each weighing and for tare and gross: a jar cannot hold more than that. */
function mostNetUg({ card, progress: { state } }: BenchOrder): MassUg {
  const weighings = state.lines.map((line, index) => ({ count: line.weighingsCount, stepUg: card.lines[index]?.scale.stepUg ?? 0 }));
  const stepsUg = weighings.reduce((sum, one) => sum + one.count * one.stepUg, 2 * jarScale(card).stepUg);
  return massUg(state.weighedUg + stepsUg);
}

type Kept = Pick<BenchCheck, 'kind' | 'hasPassed'> & Partial<Pick<BenchCheck, 'phX100' | 'massUg' | 'temperatureC' | 'note'>>;

function kept(flow: Flow, { view }: BenchOrder, checks: readonly Kept[]): BenchDecision {
  const jarCode = view.jar?.batchCode;
  if (jarCode === undefined) return refuse({ kind: 'not-this-step' });
  return accept({
    kind: 'jar-checked',
    body: { jarCode, checks: checks.map((check) => ({ ...check })) },
    save: (tx: Writing) => {
      const none = { phX100: null, massUg: null, temperatureC: null, note: '' };
      for (const check of checks)
        insertBenchCheck(tx, { ...none, ...check, id: flow.newId(), jarCode, byAccountId: staffOf(flow).accountId, atMs: flow.now });
    },
  });
}
