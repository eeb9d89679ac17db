// From where a jar stands to the one thing to do now. A line that is too heavy comes before anything else.
import type { Reading } from '#db/connection.ts';
import type { JarRelease } from '#db/releases.ts';
import { listStationScales } from '#db/stations.ts';
import { assertNever, invariant } from '#lib/base/invariant.ts';
import { swatchOf } from '#lib/colour/lab.ts';
import { need } from '#lib/rulebook/book.ts';
import type { PhX100 } from '#lib/units/chemistry.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { massUg } from '#lib/units/mass.ts';
import { clearanceItems, PROTECTION_ITEMS } from '#lib/weighing/next-step.ts';
import { nextWeighing } from '#lib/weighing/next-weighing.ts';
import type { BenchOrder } from './bench-order.ts';
import { cardLine } from './bench-order.ts';
import type { Doing } from './card-doing.ts';
import { mendingOf } from './card-doing-mend.ts';
import { lineName } from './card-names.ts';
import { openCorrection } from './correct-ph.ts';
import type { Flow } from './flow.ts';
import { jarScale } from './jar-scale.ts';
import { BUFFERS_PH_X100 } from './record-fitness.ts';
import { judgedAnew } from './resume-order.ts';

export interface Ending {
  readonly release: JarRelease | null;
  readonly labelPrintsCount: number;
}

export function doingOf(tx: Reading, flow: Flow, bench: BenchOrder, { release, labelPrintsCount }: Ending): Doing {
  switch (bench.stage) {
    case 'placed':
      return { kind: 'claim' };
    case 'held':
      return heldDoing(tx, flow, bench);
    case 'claimed':
    case 'mixing':
      return mendingOf(bench) ?? stepDoing(tx, bench);
    case 'ready':
      invariant(release, 'a ready jar was decided');
      return { kind: 'ready', useByDay: release.useByDay, labelPrintsCount };
    case 'jar-held':
      return { kind: 'jar-held', findings: [...new Set(release?.findings.map((found) => found.code))] };
    case 'jar-discarded':
    case 'cancelled':
    case 'lapsed':
    case 'collected':
    case 'discarded':
      return { kind: 'ended' };
    default:
      return assertNever(bench.stage);
  }
}

function heldDoing(tx: Reading, flow: Flow, { view }: BenchOrder): Doing {
  const anew = judgedAnew(tx, flow, view);
  return { kind: 'held', reason: view.hold?.reason ?? '', findings: anew.ok ? [] : anew.refusal };
}

function stepDoing(tx: Reading, bench: BenchOrder): Doing {
  const { step, progress, card, edition, checks, view } = bench;
  const { book } = edition;
  const last = (kind: 'ph' | 'net' | 'look' | 'draw-down') => checks.findLast((check) => check.kind === kind) ?? null;
  switch (step.kind) {
    case 'fitness':
      return fitnessDoing(tx, bench, step);
    case 'clearance':
      return { kind: 'clearance', items: clearanceItems(progress) };
    case 'protection':
      return { kind: 'protection', items: PROTECTION_ITEMS, cautions: cautionTexts(bench, step.cautionIds) };
    case 'bind-jar':
      return { kind: 'bind-jar', vesselCode: step.vesselCode, scale: jarScale(card) };
    case 'weigh':
    case 'cream':
      return weighDoing(bench, step);
    case 'paste':
      return { kind: 'paste', isSecond: progress.state.lines.some((line) => line.topUpInto === 'second-paste') };
    case 'temperature':
      return { kind: 'temperature', atMostC: step.atMostC };
    case 'dissolve':
      return { kind: 'dissolve', lines: step.lineNos.map((lineNo) => lineName(cardLine(bench, lineNo))) };
    case 'draw-down':
      return { kind: 'draw-down', hasFailed: last('draw-down') !== null };
    case 'ph':
      return phDoing(bench, step, last('ph')?.phX100 ?? null);
    case 'inspect': {
      const { wet, dry, nameTextId } = need(book.shades, card.plan.variant.shadeId).colour;
      const hex = ({ lX100, aX100, bX100 }: typeof wet): string => swatchOf({ l: lX100 / 100, a: aX100 / 100, b: bX100 / 100 }).hex;
      return {
        kind: 'inspect',
        wetHex: hex(wet),
        dryHex: hex(dry),
        colour: book.rulebook.texts.en?.[nameTextId] ?? '',
        hasFailed: last('look') !== null,
      };
    }
    case 'fill':
      return {
        kind: 'fill',
        netUg: step.netUg,
        tareUg: view.jar?.tareUg ?? massUg(0),
        scale: jarScale(card),
        lastNetUg: last('net')?.massUg ?? null,
      };
    case 'release':
      return { kind: 'release', netUg: last('net')?.massUg ?? card.netUg, phX100: last('ph')?.phX100 ?? null };
    default:
      return assertNever(step);
  }
}

function fitnessDoing(
  tx: Reading,
  { stand, edition: { book }, progress }: BenchOrder,
  { scaleIds, needsMeter }: { readonly scaleIds: readonly string[]; readonly needsMeter: boolean },
): Doing {
  const profiles = new Map(stand.bench ? listStationScales(tx, stand.bench.stationId).map((scale) => [scale.id, scale.profileId]) : []);
  return {
    kind: 'fitness',
    scales: (stand.bench?.scales ?? [])
      .filter((scale) => scaleIds.includes(scale.id))
      .map(({ id, code, stepUg, capacityUg }) => ({
        id,
        code,
        stepUg,
        capacityUg,
        weightsUg: need(book.scaleProfiles, profiles.get(id) ?? '').checkWeights.map((weight) => weight.massUg),
        isFit: progress.fitScaleIds.includes(id),
      })),
    meter: needsMeter ? { buffersPhX100: BUFFERS_PH_X100, isFit: progress.isMeterFit } : null,
  };
}

function weighDoing(
  bench: BenchOrder,
  step:
    | { readonly kind: 'weigh'; readonly lineNo: number }
    | { readonly kind: 'cream'; readonly lineNo: number; readonly portionsUg: readonly MassUg[] },
): Doing {
  const line = cardLine(bench, step.lineNo);
  const weighing = nextWeighing(bench.card, bench.progress.state, step.lineNo);
  const now = bench.progress.state.lines.find((one) => one.lineNo === step.lineNo);
  return {
    kind: 'weigh',
    lineNo: line.lineNo,
    line: lineName(line),
    container: line.container,
    lotCode: weighing.lot?.lotCode ?? null,
    wantedUg: weighing.wantedUg,
    loUg: weighing.loUg,
    hiUg: weighing.hiUg,
    scale: line.scale,
    needsSecondPerson: line.needsSecondPerson,
    isTopUp: weighing.kind === 'top-up',
    isSecondPaste: now?.topUpInto === 'second-paste',
    isLeftOver: isLeftOver(bench, line.lineNo),
    weighingNo: weighing.weighingNo,
    weighingsCount: now?.plannedWeighingsCount ?? 1,
    portionsUg: step.kind === 'cream' && weighing.kind === 'line' && !bench.progress.state.isGrown ? step.portionsUg : [],
    cautions: cautionTexts(bench, line.cautionIds),
  };
}

/** The last that was told of a line is what went to waste. */
const isLeftOver = ({ facts }: BenchOrder, lineNo: number): boolean =>
  facts.findLast((fact) => (fact.kind === 'reading' || fact.kind === 'waste') && fact.lineNo === lineNo)?.kind === 'waste';

function phDoing(
  bench: BenchOrder,
  { minPhX100, maxPhX100, method }: { readonly minPhX100: PhX100; readonly maxPhX100: PhX100; readonly method: string },
  lastPhX100: PhX100 | null,
): Doing {
  const open = openCorrection(bench);
  const stock = open && need(bench.edition.book.stocks, open.stockId);
  const line =
    stock &&
    lineName({
      source: { kind: 'stock', stockId: stock.id },
      name: stock.name,
      code: stock.code,
      lookAlikeName: stock.lookAlikeName ?? null,
    });
  return {
    kind: 'ph',
    minPhX100,
    maxPhX100,
    method,
    lastPhX100,
    correction: open && line ? { line, leastUg: open.leastUg, mostUg: open.mostUg, scale: open.scale } : null,
  };
}

const cautionTexts = ({ edition: { book } }: BenchOrder, cautionIds: readonly string[]): readonly string[] =>
  cautionIds.flatMap((id) => book.rulebook.texts.en?.[need(book.cautions, id).textId] ?? []);
