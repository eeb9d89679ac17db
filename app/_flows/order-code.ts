// The code that a customer shows or says at the counter. It names the day's order and nothing else.
import type { LocalDay } from '#lib/units/time.ts';
import { daysBetween, localDay } from '#lib/units/time.ts';

/** Letters that are not taken for a digit or for each other, heard or read. */
const LETTERS = 'ACDEFHJKLMNPRTUVWXYZ';
const DIGITS = '2345679';
const EPOCH = localDay('2020-01-01');

/** "K7-204": two signs for the day, which come again after 140 days, and the day's number. */
export function orderCode(day: LocalDay, dayNo: number): string {
  const days = daysBetween(EPOCH, day);
  return `${LETTERS.charAt(days % LETTERS.length)}${DIGITS.charAt(days % DIGITS.length)}-${String(dayNo).padStart(3, '0')}`;
}
