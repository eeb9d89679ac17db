// What may be done after a reading. Inside the band it is recorded; outside it there is no way to record it all the same:
// take out, add, make the batch larger, or throw the jar away with a reason.
import { invariant } from '../base/invariant.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';
import type { MoneyMinor } from '../units/money.ts';
import { moneyMinor } from '../units/money.ts';
import { bandStateOf } from './band.ts';
import type { LineSource } from './bench-line.ts';
import type { CardLine } from './card.ts';
import type { GrowAsk, Grown, GrowRefusal } from './grow-batch.ts';
import { growBatch } from './grow-batch.ts';
import type { LineState } from './readings.ts';

export type MendOption =
  | { readonly kind: 'record' }
  /** To reach the target. */
  | { readonly kind: 'add'; readonly addUg: MassUg }
  /** Out of the boat to waste, never back to the lot, down to the target. */
  | { readonly kind: 'take-out'; readonly outUg: MassUg; readonly wasteMinor: MoneyMinor }
  | { readonly kind: 'grow'; readonly grown: Grown; readonly wasteMinor: MoneyMinor; readonly needsSecondPerson: true }
  /** With a reason; says why the batch could not grow where that was asked. */
  | { readonly kind: 'discard'; readonly wasteMinor: MoneyMinor; readonly growRefusals: readonly GrowRefusal[] };

/** Options after the line's weighed total in `ask.state`, best first. Throws a Fault for a line that is not on the card. */
export function mendOptions(ask: GrowAsk, lineNo: number): readonly MendOption[] {
  const line = ask.card.lines.find((one) => one.lineNo === lineNo);
  const now = ask.state.lines.find((one) => one.lineNo === lineNo);
  invariant(line && now, `no such line on the card: ${lineNo}`);
  switch (bandStateOf(now, now.weighedUg)) {
    case 'in-band':
      return [{ kind: 'record' }];
    case 'light':
      return [{ kind: 'add', addUg: massUg(now.targetUg - now.weighedUg) }, discard(ask, [])];
    case 'heavy':
      return line.container === 'boat' ? [takeOut(ask, line, now), discard(ask, [])] : growOrDiscard(ask);
  }
}

function takeOut({ book }: GrowAsk, { source }: CardLine, now: LineState): MendOption {
  const outUg = massUg(now.weighedUg - now.targetUg);
  return { kind: 'take-out', outUg, wasteMinor: costOf(book, [{ source, massUg: outUg }]) };
}

function growOrDiscard(ask: GrowAsk): readonly MendOption[] {
  const grown = growBatch(ask);
  if (!grown.ok) return [discard(ask, grown.refusal)];
  return [{ kind: 'grow', grown: grown.value, wasteMinor: surplusOf(ask, grown.value), needsSecondPerson: true }, discard(ask, [])];
}

/** The label's net content stays, so whatever the larger batch holds beyond the card's is made to be thrown away. */
function surplusOf({ book, card }: GrowAsk, grown: Grown): MoneyMinor {
  const more = card.lines.map((line, index) => ({
    source: line.source,
    massUg: Math.max(0, (grown.lines[index]?.targetUg ?? 0) - line.targetUg),
  }));
  return costOf(book, more);
}

const discard = (ask: GrowAsk, growRefusals: readonly GrowRefusal[]): MendOption => ({
  kind: 'discard',
  wasteMinor: jarCostMinor(ask),
  growRefusals,
});

/** Material cost of all that is in the vessel, a correction of the pH included. */
export function jarCostMinor({ book, card, state }: Pick<GrowAsk, 'book' | 'card' | 'state'>): MoneyMinor {
  const weighed = card.lines.map((line, index) => ({ source: line.source, massUg: state.lines[index]?.weighedUg ?? 0 }));
  const corrections = state.corrections.map(({ stockId, massUg: mass }) => ({ source: { kind: 'stock', stockId } as const, massUg: mass }));
  return costOf(book, [...weighed, ...corrections]);
}

const UG_PER_KG = 10n ** 9n;

/** Material cost, rounded up to whole minor units. */
export function costOf(book: Book, weighed: readonly { readonly source: LineSource; readonly massUg: number }[]): MoneyMinor {
  const costed = weighed.reduce((sum, one) => sum + BigInt(one.massUg) * BigInt(costMinorPerKg(book, one.source)), 0n);
  return moneyMinor(Number((costed + UG_PER_KG - 1n) / UG_PER_KG));
}

/** Cream and wetting oil are both the base, which has one cost. */
const costMinorPerKg = (book: Book, source: LineSource): number =>
  source.kind === 'stock' ? need(book.stocks, source.stockId).costMinorPerKg : book.rulebook.base.costMinorPerKg;
