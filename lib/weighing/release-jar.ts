// What the bench hands to the last verdict: the amounts actually weighed, and whether the filled jar holds what its label says.
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { Amounts } from '../composition/compose.ts';
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';
import type { Card } from './card.ts';
import type { JarState } from './readings.ts';

/** Lines that are not inside their bands; a jar with any of them is not released. */
export interface Unweighed {
  readonly lineNos: readonly number[];
}

/** Amounts in µg for compose(), a correction of the pH included; refused while any line is outside its band. */
export function weighedAmounts(card: Card, state: JarState): Result<Amounts, Unweighed> {
  const open = state.lines.filter((line) => line.stage !== 'in-band').map((line) => line.lineNo);
  if (open.length > 0) return refuse({ lineNos: open });
  const stocks = new Map<string, bigint>();
  const base = { cream: 0n, 'wetting-oil': 0n };
  const add = (stockId: string, mass: MassUg): unknown => stocks.set(stockId, (stocks.get(stockId) ?? 0n) + BigInt(mass));
  card.lines.forEach(({ source }, index) => {
    const mass = state.lines[index]?.weighedUg ?? massUg(0);
    if (source.kind === 'stock') add(source.stockId, mass);
    else base[source.kind] += BigInt(mass);
  });
  for (const { stockId, massUg: mass } of state.corrections) add(stockId, mass);
  return accept({ stocks, cream: base.cream, oil: base['wetting-oil'] });
}

/** `full`: at least the nominal, the only one that may be released. `short`: under it; `far-short`: by more than a pre-packer may err. */
export type NetContent = 'full' | 'short' | 'far-short';

/**
 * A jar mixed to order holds at least its nominal content. The tolerable negative error (Directive 76/211/EEC, Annex I) only marks
 * how short a short one is; null where the law has no figure for this content.
 */
export function netContentOf(filled: MassUg, nominal: MassUg, tolerableErrorUg: MassUg | null): NetContent {
  if (filled >= nominal) return 'full';
  return tolerableErrorUg !== null && nominal - filled > tolerableErrorUg ? 'far-short' : 'short';
}
