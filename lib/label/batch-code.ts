// The code on a jar: shop, day and running number, closed by a check character, so that a mistyped code is caught before it names another jar.
import { invariant } from '../base/invariant.ts';
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { LocalDay } from '../units/time.ts';
import { addDays, daysBetween, localDay } from '../units/time.ts';

const ALPHABET = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const BODY = /^([A-Z]{2})(\d{2})(\d{3})(\d{4})([0-9A-Z])$/;

/** Most jars that one shop can number in a day. */
export const MOST_JARS_A_DAY = 9999;

export interface BatchCodeParts {
  /** Two capital letters. */
  readonly shop: string;
  /** Day of mixing, local to the shop. */
  readonly day: LocalDay;
  /** From 1 each day. */
  readonly runningNo: number;
}

/** Shop + YYDDD (ordinal date, ISO 8601) + running number of four digits + check character. Throws a Fault for parts that make no code. */
export function batchCode({ shop, day, runningNo }: BatchCodeParts): string {
  invariant(/^[A-Z]{2}$/.test(shop), `a shop is two capital letters, not ${shop}`);
  invariant(day.startsWith('20'), `a batch code tells days of this century only, not ${day}`);
  invariant(Number.isSafeInteger(runningNo) && runningNo >= 1 && runningNo <= MOST_JARS_A_DAY, `no running number: ${runningNo}`);
  const ordinal = daysBetween(localDay(`${day.slice(0, 4)}-01-01`), day) + 1;
  const body = `${shop}${day.slice(2, 4)}${String(ordinal).padStart(3, '0')}${String(runningNo).padStart(4, '0')}`;
  return `${body}${checkCharacter(body)}`;
}

export type BatchCodeRefusal = 'not-a-batch-code' | 'mistyped' | 'no-such-day';

/** Reads a code as typed or scanned; spaces, hyphens and small letters are forgiven, a wrong character is not. */
export function parseBatchCode(text: string): Result<BatchCodeParts, BatchCodeRefusal> {
  const code = text.replace(/[\s-]/g, '').toUpperCase();
  const found = BODY.exec(code);
  if (!found) return refuse('not-a-batch-code');
  if (checkCharacter(code.slice(0, -1)) !== code.slice(-1)) return refuse('mistyped');
  const [, shop = '', year = '', ordinal = '', running = ''] = found;
  const firstDay = localDay(`20${year}-01-01`);
  const day = addDays(firstDay, Number(ordinal) - 1);
  if (Number(ordinal) < 1 || day.slice(0, 4) !== firstDay.slice(0, 4) || Number(running) < 1) return refuse('no-such-day');
  return accept({ shop, day, runningNo: Number(running) });
}

/**
 * Check character of ISO/IEC 7064, MOD 37,36 (hybrid system): catches every single wrong character and nearly all swaps.
 * Throws a Fault for characters other than digits and capital letters.
 */
export function checkCharacter(body: string): string {
  const product = [...body].reduce((before, character) => {
    const value = ALPHABET.indexOf(character);
    invariant(value >= 0, `not a character of ISO/IEC 7064 MOD 37,36: ${character}`);
    const sum = (before + value) % 36;
    return ((sum === 0 ? 36 : sum) * 2) % 37;
  }, 36);
  return ALPHABET.charAt((37 - product) % 36);
}

/** Whether a text is a batch code. */
export const isBatchCode = (text: string): boolean => parseBatchCode(text).ok;
