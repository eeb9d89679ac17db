// A variant is what is permitted, priced and counted; a plan is one way to weigh it.
import { compareBy } from '../base/compare.ts';
import type { SharePpm } from '../units/share.ts';

export interface ChosenActive {
  readonly activeId: string;
  readonly levelPpm: SharePpm;
}

/** Base + one shade + zero or more actives at levels. The adjuster belongs to the plan. */
export interface Variant {
  readonly shadeId: string;
  readonly actives: readonly ChosenActive[];
}

/** One weighed addition of a plan. */
export interface PlanLine {
  readonly stockId: string;
  /** Share of the jar as supplied, after netting. */
  readonly sharePpm: SharePpm;
  readonly purpose: 'shade' | 'active' | 'adjuster';
  /** The material wanted by this line; null for a blend that serves the whole shade. */
  readonly materialId: string | null;
}

export interface Plan {
  readonly variant: Variant;
  readonly adjuster: ChosenActive | null;
  readonly lines: readonly PlanLine[];
}

/** The same variant with its actives in a fixed order, so that equal variants are equal texts. */
export function orderVariant(variant: Variant): Variant {
  return {
    shadeId: variant.shadeId,
    actives: [...variant.actives].sort(
      compareBy(
        (chosen) => chosen.activeId,
        (chosen) => chosen.levelPpm,
      ),
    ),
  };
}

/** A stable text for a variant: "shade|active@level+active@level". Equal variants have equal keys. */
export function variantKey(variant: Variant): string {
  const actives = orderVariant(variant).actives.map((chosen) => `${chosen.activeId}@${chosen.levelPpm}`);
  return `${variant.shadeId}|${actives.join('+')}`;
}
