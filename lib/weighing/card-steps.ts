// The order of work of one jar. Powders are wetted in oil before they meet water, the cream is folded in little by little,
// and what heat or grains would spoil comes last (common practice, no source).
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { AvoidTag, Material } from '../rulebook/material.ts';
import type { JarSize } from '../rulebook/offer.ts';
import { sumMass } from '../units/mass.ts';
import type { TemperatureC } from '../units/material-property.ts';
import { temperatureC } from '../units/material-property.ts';
import type { BenchLine } from './bench-line.ts';
import { isInPaste } from './bench-line.ts';
import type { CardLine, PhCheck, Step } from './card.ts';
import { creamPortions } from './cream-portions.ts';
import { leastUg } from './scale.ts';

/** Below this nothing at the bench needs its temperature taken. */
const COOL_BELOW_C = 25;

export interface StepAsk {
  readonly book: Book;
  readonly jarSize: JarSize;
  readonly shadeId: string;
  readonly ph: PhCheck | null;
  /** Allergen tags of the jar mixed here before; empty after an ordinary one. */
  readonly fullCleanAfterTags: readonly AvoidTag[];
  /** The warmer of room and stocks; null: not known, so the temperature is taken. */
  readonly warmestC: TemperatureC | null;
}

/** Steps in the order in which they are done; a step that this jar does not need is left out. */
export function cardSteps(ask: StepAsk, lines: readonly CardLine[]): readonly Step[] {
  const { book, jarSize, ph } = ask;
  const vessel = need(book.vessels, jarSize.vesselId);
  const paste = lines.filter((line) => isInPaste(line.place));
  const additions = lines.filter((line) => !isInPaste(line.place) && line.place !== 'cream');
  const weigh = (some: readonly CardLine[]): readonly Step[] => some.map(({ lineNo }) => ({ kind: 'weigh', lineNo }));
  return [
    { kind: 'fitness', scaleIds: [...new Set(lines.map((line) => line.scale.id))].sort(), needsMeter: ph !== null },
    { kind: 'clearance', fullCleanAfterTags: ask.fullCleanAfterTags },
    { kind: 'protection', hasDust: paste.some((line) => line.place === 'paste-powder'), cautionIds: cautionIdsOf(lines) },
    { kind: 'bind-jar', vesselId: vessel.id, vesselCode: vessel.code },
    ...weigh(paste),
    ...(paste.some((line) => line.source.kind === 'stock') ? [{ kind: 'paste' } as const] : []),
    ...creamSteps(lines),
    ...temperatureSteps(ask, additions),
    ...weigh(additions),
    ...dissolveSteps(book, additions),
    { kind: 'draw-down' },
    ...(ph ? [{ kind: 'ph', ...ph } as const] : []),
    { kind: 'inspect', shadeId: ask.shadeId },
    { kind: 'fill', netUg: jarSize.netUg },
    { kind: 'release' },
  ];
}

const cautionIdsOf = (lines: readonly CardLine[]): readonly string[] => [...new Set(lines.flatMap((line) => line.cautionIds))].sort();

function creamSteps(lines: readonly CardLine[]): readonly Step[] {
  const inVesselUg = sumMass(lines.filter((line) => isInPaste(line.place)).map((line) => line.targetUg));
  return lines
    .filter((line) => line.place === 'cream')
    .map(({ lineNo, targetUg, scale, tauPpm }): Step => {
      const folding = { inVesselUg, creamUg: targetUg, stepUg: scale.stepUg, leastUg: leastUg(scale, tauPpm) };
      return { kind: 'cream', lineNo, portionsUg: creamPortions(folding) };
    });
}

/** The lowest maximum temperature of what is still to come. */
function temperatureSteps({ book, warmestC }: StepAsk, additions: readonly CardLine[]): readonly Step[] {
  const highest = additions.flatMap((line) =>
    materialsOf(book, line).flatMap(({ maxTemperatureC }) => (maxTemperatureC === undefined ? [] : [maxTemperatureC])),
  );
  if (highest.length === 0) return [];
  const atMostC = temperatureC(Math.min(...highest));
  const isCool = warmestC !== null && warmestC < COOL_BELOW_C && warmestC <= atMostC;
  return [{ kind: 'temperature', atMostC, isTapNeeded: !isCool }];
}

function dissolveSteps(book: Book, additions: readonly CardLine[]): readonly Step[] {
  const lineNos = additions
    .filter((line) => materialsOf(book, line).some(({ kind }) => kind === 'soluble-powder'))
    .map((line) => line.lineNo);
  return lineNos.length > 0 ? [{ kind: 'dissolve', lineNos }] : [];
}

const materialsOf = (book: Book, { source }: Pick<BenchLine, 'source'>): readonly Material[] =>
  source.kind === 'stock' ? need(book.stocks, source.stockId).parts.map((one) => need(book.materials, one.materialId)) : [];
