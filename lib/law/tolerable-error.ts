// What a pre-packer may not fall short by. It binds packs filled without the buyer present; a jar mixed to order must hold its label anyway,
// so these figures mark a jar and never excuse one.
import type { MarketId } from '../rulebook/language.ts';
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';
import type { ErrorRow } from './net-content.data.ts';
import { EU_TOLERABLE_ERRORS, US_ALLOWABLE_VARIATIONS } from './net-content.data.ts';

const UG_PER_MG = 1000;
/** Shares are rounded up to the next 0.1 g (Directive 76/211/EEC, Annex I). */
const EU_STEP_UG = 100_000;

export interface TolerableError {
  readonly errorUg: MassUg;
  /** Below this only a few packs of a batch may lie. */
  readonly lowerUg: MassUg;
  /** Below this no pack may carry the mark. */
  readonly lowestUg: MassUg;
}

/** Tolerable negative error of a nominal content, or null where the market's table has no row for it. */
export function tolerableError(marketId: MarketId, nominalUg: MassUg): TolerableError | null {
  const rows = TABLES[marketId];
  const row = rows.find(
    (one, index) =>
      (nominalUg > one.aboveMg * UG_PER_MG || (index === 0 && nominalUg === one.aboveMg * UG_PER_MG)) &&
      nominalUg <= one.upToMg * UG_PER_MG,
  );
  if (!row || nominalUg === 0) return null;
  const errorUg = massUg(allowedUg(row, nominalUg, STEPS_UG[marketId]));
  return { errorUg, lowerUg: massUg(nominalUg - errorUg), lowestUg: massUg(nominalUg - 2 * errorUg) };
}

const TABLES = { EU: EU_TOLERABLE_ERRORS, US: US_ALLOWABLE_VARIATIONS } satisfies Record<MarketId, readonly ErrorRow[]>;
const STEPS_UG = { EU: EU_STEP_UG, US: 1 } satisfies Record<MarketId, number>;

function allowedUg(row: ErrorRow, nominalUg: MassUg, stepUg: number): number {
  if (row.allowed.kind === 'mass') return row.allowed.mg * UG_PER_MG;
  return Math.ceil((nominalUg * row.allowed.perMille) / 1000 / stepUg) * stepUg;
}
