// Substances that a text of law restricts in a market and for which a rulebook has no row there. The reference rows decide no limit; what
// they do say is that somebody must have thought of one. A substance is known by its label name in that market.
import { compareBy } from '../base/compare.ts';
import type { MarketId } from '../rulebook/language.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { LocalDay } from '../units/time.ts';
import { isInForce } from './limits.ts';
import type { ReferenceLimit } from './reference-limits.data.ts';
import { REFERENCE_LIMITS } from './reference-limits.data.ts';

export interface MissingRow {
  readonly marketId: MarketId;
  readonly substanceId: string;
  /** The label name by which it is known there. */
  readonly name: string;
  /** The reference row that restricts it, and the text it comes from. */
  readonly referenceId: string;
  readonly source: string;
}

/** By market, substance and reference row; a row of the rulebook counts on the day it is in force, or later. */
export function missingRows(rulebook: Rulebook, day: LocalDay): readonly MissingRow[] {
  const inUse = new Set(rulebook.materials.flatMap((material) => material.substances.map((one) => one.substanceId)));
  const used = rulebook.substances.filter((substance) => inUse.has(substance.id));
  return rulebook.markets
    .flatMap((market) => {
      const hasRow = new Set(
        rulebook.limits.flatMap((row) =>
          row.kind === 'substance' && row.marketId === market.id && row.productKinds.includes(market.productKind) && !isOver(row, day)
            ? row.substances.map((one) => one.substanceId)
            : [],
        ),
      );
      return REFERENCE_LIMITS.filter(
        (row) => row.marketId === market.id && row.productKinds.includes(market.productKind) && isInForce(row, day),
      ).flatMap((row) =>
        used
          .filter(({ id, labelNames }) => !hasRow.has(id) && names(row).has(labelNames[market.id].toUpperCase()))
          .map(
            ({ id, labelNames }): MissingRow => ({
              marketId: market.id,
              substanceId: id,
              name: labelNames[market.id],
              referenceId: row.id,
              source: row.source,
            }),
          ),
      );
    })
    .sort(
      compareBy<MissingRow>(
        ({ marketId }) => marketId,
        ({ substanceId }) => substanceId,
        ({ referenceId }) => referenceId,
      ),
    );
}

const names = (row: ReferenceLimit): ReadonlySet<string> => new Set(row.substances.map((one) => one.name));
const isOver = ({ untilDay }: { readonly untilDay?: LocalDay }, day: LocalDay): boolean => untilDay !== undefined && untilDay <= day;
