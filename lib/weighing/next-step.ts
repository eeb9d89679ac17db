// Where a jar stands on its card: the first step whose proof is missing. Nothing else moves the work on, so a page that was closed,
// a second screen and the record of ten years hence all stand at the same step.
import { assertNever } from '../base/invariant.ts';
import type { Card, Step } from './card.ts';
import type { JarState } from './readings.ts';

/** Checks of a jar that can pass or fail. */
export type JarCheck = 'ph' | 'look' | 'draw-down' | 'net' | 'temperature';

/** What must be said yes to before the first powder; nothing of it can be passed over (common practice, no source). */
export const CLEARANCE_ITEMS = ['bench-empty', 'tools-clean'] as const;
/** Owed beside the others after a jar that brought an allergen. */
export const FULL_CLEAN_ITEM = 'fully-cleaned';
export const PROTECTION_ITEMS = ['mask-on', 'eyes-covered', 'extractor-on'] as const;

/** The facts that steps are proved by. */
export interface Progress {
  /** Scales with a valid check today, and whether the pH meter has one. */
  readonly fitScaleIds: readonly string[];
  readonly isMeterFit: boolean;
  /** Items of clearance and protection that were confirmed for this order. */
  readonly cleared: readonly string[];
  /** The jar before brought an allergen to this bench. */
  readonly needsFullClean: boolean;
  readonly isBound: boolean;
  readonly state: JarState;
  /** Ids of the steps that were confirmed by hand. */
  readonly confirmed: readonly string[];
  /** Checks whose last outcome was a pass. */
  readonly passed: readonly JarCheck[];
}

/** The step to do now. The last, `release`, stays until the jar is decided. */
export const nextStep = (card: Card, progress: Progress): Step => card.steps.find((step) => !isDone(step, progress)) ?? { kind: 'release' };

/** How many steps stand behind the mixer. */
export function stepsDoneCount(card: Card, progress: Progress): number {
  const at = card.steps.findIndex((step) => !isDone(step, progress));
  return at < 0 ? card.steps.length : at;
}

/** What has to be confirmed at the clearance. */
export const clearanceItems = ({ needsFullClean }: Pick<Progress, 'needsFullClean'>): readonly string[] =>
  needsFullClean ? [...CLEARANCE_ITEMS, FULL_CLEAN_ITEM] : CLEARANCE_ITEMS;

/** Every paste is proved smooth: the second one of a larger batch under an id of its own, which its batch mass makes. */
export const pasteStepId = (state: JarState): string =>
  state.lines.some((line) => line.topUpInto === 'second-paste') ? `second-paste-${state.batchUg}` : 'paste';

function isDone(step: Step, progress: Progress): boolean {
  const { state, confirmed, passed, cleared } = progress;
  switch (step.kind) {
    case 'fitness':
      return step.scaleIds.every((id) => progress.fitScaleIds.includes(id)) && (!step.needsMeter || progress.isMeterFit);
    case 'clearance':
      return clearanceItems(progress).every((item) => cleared.includes(item));
    case 'protection':
      return PROTECTION_ITEMS.every((item) => cleared.includes(item));
    case 'bind-jar':
      return progress.isBound;
    case 'weigh':
    case 'cream':
      return state.lines.some((line) => line.lineNo === step.lineNo && line.stage === 'in-band');
    case 'paste':
      return confirmed.includes(pasteStepId(state));
    case 'dissolve':
      return confirmed.includes('dissolve');
    case 'temperature':
      return !step.isTapNeeded || passed.includes('temperature');
    case 'draw-down':
    case 'ph':
      return passed.includes(step.kind);
    case 'inspect':
      return passed.includes('look');
    case 'fill':
      return passed.includes('net');
    case 'release':
      return false;
    default:
      return assertNever(step);
  }
}
