// Is the lot in the mixer's hand the right one? Each "no" is a reason of its own, so that the screen can say what is wrong with it.
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { Book } from '../rulebook/book.ts';
import type { MassUg } from '../units/mass.ts';
import type { LocalDay } from '../units/time.ts';
import type { BenchLot } from './allocate-lots.ts';
import { lastDayOf } from './allocate-lots.ts';
import type { LineSource } from './bench-line.ts';
import { lineIdOf } from './bench-line.ts';

/** A lot as it stands on the shelf: promised to somebody or not, it is there. */
export interface ShelfLot {
  readonly lot: BenchLot;
  readonly thereUg: MassUg;
  readonly isStopped: boolean;
}

export type LotFault = 'other-stock' | 'not-released' | 'stopped' | 'expired' | 'too-little' | 'not-on-card';

export interface LotWish {
  readonly source: LineSource;
  readonly massUg: MassUg;
  /** The card's lot; null: any that is fit. */
  readonly onCard: ShelfLot | null;
  readonly day: LocalDay;
}

/**
 * The card's own lot, as long as it is fit; another of the same stock only where the card's no longer is. The use-by date counts every lot
 * that was really used.
 */
export function checkLot(book: Book, shown: ShelfLot, wish: LotWish): Result<null, LotFault> {
  const fault = faultOf(book, shown, wish);
  if (fault !== null) return refuse(fault);
  const isOther = wish.onCard !== null && wish.onCard.lot.id !== shown.lot.id;
  return isOther && faultOf(book, wish.onCard, wish) === null ? refuse('not-on-card') : accept(null);
}

function faultOf(book: Book, { lot, thereUg, isStopped }: ShelfLot, { source, massUg, day }: LotWish): LotFault | null {
  if (lineIdOf(lot.source) !== lineIdOf(source)) return 'other-stock';
  if (isStopped) return 'stopped';
  if (lot.status !== 'released') return 'not-released';
  if (lastDayOf(book, lot, day) < day) return 'expired';
  return thereUg < massUg ? 'too-little' : null;
}
