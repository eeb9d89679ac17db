// What the code on a jar holds, in the words of an open standard: GS1 element strings, so that any scanner can tell the batch from the date.
import { invariant } from '../base/invariant.ts';
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { LocalDay } from '../units/time.ts';
import { isLocalDay, localDay } from '../units/time.ts';

/** FNC1 between elements, as scanners hand it on. */
export const SEPARATOR = '\u001d';

interface Identifier {
  readonly form: RegExp;
  /** A predefined length needs no separator after it (GS1 General Specifications, 7.8.4, from memory). */
  readonly isFixed: boolean;
}

/** Application identifiers in use here: GTIN, batch, production date, best before, expiry, serial. */
const IDENTIFIERS = {
  '01': { form: /^\d{14}$/, isFixed: true },
  '10': { form: /^[!-"%-/0-9:-?A-Z_a-z]{1,20}$/, isFixed: false },
  '11': { form: /^\d{6}$/, isFixed: true },
  '15': { form: /^\d{6}$/, isFixed: true },
  '17': { form: /^\d{6}$/, isFixed: true },
  '21': { form: /^[!-"%-/0-9:-?A-Z_a-z]{1,20}$/, isFixed: false },
} satisfies Record<string, Identifier>;

export type IdentifierCode = keyof typeof IDENTIFIERS;

export interface Element {
  readonly code: IdentifierCode;
  readonly text: string;
}

export interface ElementString {
  /** For people and encoders: "(17)270130(10)ML263290017Y". */
  readonly bracketed: string;
  /** As a scanner reads it. */
  readonly raw: string;
}

/** Predefined lengths first, so that only a variable element before another needs a separator. Refuses the code of an element in the wrong form. */
export function elementString(elements: readonly Element[]): Result<ElementString, IdentifierCode> {
  const wrong = elements.find(({ code, text }) => !IDENTIFIERS[code].form.test(text) || (code === '01' && !hasCheckDigit(text)));
  if (wrong) return refuse(wrong.code);
  const ordered = [
    ...elements.filter(({ code }) => IDENTIFIERS[code].isFixed),
    ...elements.filter(({ code }) => !IDENTIFIERS[code].isFixed),
  ];
  const closed = ordered.map(
    ({ code, text }, index) => `${code}${text}${IDENTIFIERS[code].isFixed || index === ordered.length - 1 ? '' : SEPARATOR}`,
  );
  return accept({ bracketed: ordered.map(({ code, text }) => `(${code})${text}`).join(''), raw: closed.join('') });
}

/** YYMMDD of a day. */
export const gs1Date = (day: LocalDay): string => day.slice(2).replaceAll('-', '');

/**
 * A day from YYMMDD; DD = 00 is the last day of the month. The century is the one that brings the year within 50 years
 * of the given one (GS1 General Specifications, 7.12, from memory). Null for a day that does not exist.
 */
export function dayOfGs1(text: string, currentYear: number): LocalDay | null {
  const found = /^(\d{2})(\d{2})(\d{2})$/.exec(text);
  if (!found) return null;
  const [, yy = '', month = '', dd = ''] = found;
  const century = Math.floor(currentYear / 100) * 100;
  const ahead = century + Number(yy) - currentYear;
  const year = century + Number(yy) + (ahead >= 51 ? -100 : 0) + (ahead <= -50 ? 100 : 0);
  const lastDay = new Date(Date.UTC(year, Number(month), 0)).getUTCDate();
  const day = `${year}-${month}-${dd === '00' ? String(lastDay).padStart(2, '0') : dd}`;
  return isLocalDay(day) ? localDay(day) : null;
}

/** GS1 mod-10 check digit of the digits before it: weights 3 and 1 in turn from the right. Throws a Fault for anything but digits. */
export function gs1CheckDigit(digits: string): number {
  invariant(/^\d+$/.test(digits), `not digits: ${digits}`);
  const sum = [...digits].reverse().reduce((total, digit, index) => total + Number(digit) * (index % 2 === 0 ? 3 : 1), 0);
  return (10 - (sum % 10)) % 10;
}

const hasCheckDigit = (digits: string): boolean => gs1CheckDigit(digits.slice(0, -1)) === Number(digits.slice(-1));
