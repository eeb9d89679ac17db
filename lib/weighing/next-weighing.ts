// What goes onto the scale next for one line: a further lot, the whole line, or the top-up of a batch that was made larger.
// The mixer tares before each weighing, so its band is what the line's own band leaves after what is weighed already.
import { invariant } from '../base/invariant.ts';
import type { MassUg } from '../units/mass.ts';
import { massUg, subtractMass } from '../units/mass.ts';
import type { LotShare } from './allocate-lots.ts';
import type { Band } from './band.ts';
import type { Card, CardLine } from './card.ts';
import type { JarState, LineState } from './readings.ts';

/** The weighing that a line asks for; its band is that of this weighing alone. */
export interface NextWeighing extends Band {
  readonly lineNo: number;
  /** Within the line, from 1. */
  readonly weighingNo: number;
  readonly kind: 'line' | 'top-up';
  readonly wantedUg: MassUg;
  /** The card's lot; null for a top-up, which may come from any lot that is fit. */
  readonly lot: LotShare | null;
}

/** Throws a Fault for a line that is not on the card, or that is over its band: nothing more may be weighed onto that. */
export function nextWeighing(card: Card, state: JarState, lineNo: number): NextWeighing {
  const line = card.lines.find((one) => one.lineNo === lineNo);
  const now = state.lines.find((one) => one.lineNo === lineNo);
  invariant(line && now && now.stage !== 'heavy', `nothing can be weighed onto line ${lineNo}`);
  const next = { lineNo, weighingNo: now.weighingsCount + 1 };
  if (now.weighingsCount > 0 && now.topUpInto !== null) return { ...next, kind: 'top-up', lot: null, ...restOf(now) };
  const lot = line.lots[Math.min(now.weighingsCount, line.lots.length - 1)] ?? null;
  const isLast = now.weighingsCount >= line.lots.length - 1;
  return { ...next, kind: 'line', lot, ...(isLast || lot === null ? restOf(now) : partOf(line, now, lot)) };
}

/** All that is missing. */
const restOf = ({ targetUg, loUg, hiUg, weighedUg }: LineState): Band & Pick<NextWeighing, 'wantedUg'> => ({
  wantedUg: subtractMass(targetUg, weighedUg),
  loUg: massUg(Math.max(0, loUg - weighedUg)),
  hiUg: subtractMass(hiUg, weighedUg),
});

/** One of several lots: as far from its share as the whole line may be from its target, and never over the line. */
function partOf({ scale }: CardLine, { targetUg, loUg, hiUg, weighedUg }: LineState, lot: LotShare): Band & Pick<NextWeighing, 'wantedUg'> {
  return {
    wantedUg: lot.massUg,
    loUg: massUg(Math.max(scale.stepUg, lot.massUg - (targetUg - loUg))),
    hiUg: massUg(Math.min(lot.massUg + (hiUg - targetUg), hiUg - weighedUg)),
  };
}
