// A base lot that came in with another pH than the approved one: its whole need table lies further along the pH axis by the difference.
import type { Book } from '../rulebook/book.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { NeedPoints } from './acidity-table.ts';
import { needX50, TABLE_END_X100, TABLE_POINTS, TABLE_START_X100, TABLE_STEP_X100 } from './acidity-table.ts';

/** µmol/kg × 10^6, the grain of `jarNeeds`. Divides by the 50 hundredths of a step without a rest. */
const GRAIN = BigInt(WHOLE_PPM);

/**
 * Needs of the base, moved by some hundredths of pH. Beyond the ends of its table the end value stands: needs never decrease, so that keeps
 * a jar from being called safer than it is known to be.
 */
export function basePoints(book: Book, shiftX100: number): NeedPoints {
  const points = book.rulebook.base.acidity.umolPerKg.map(BigInt);
  return Array.from({ length: TABLE_POINTS }, (_, index) => {
    const atX100 = TABLE_START_X100 + TABLE_STEP_X100 * index - shiftX100;
    const asked = Math.min(TABLE_END_X100, Math.max(TABLE_START_X100, atX100));
    return needX50(points, asked) * (GRAIN / BigInt(TABLE_STEP_X100));
  });
}
