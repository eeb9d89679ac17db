// Instants are milliseconds handed in from the edge; days are local calendar days of the shop. Nothing here reads a clock.
import { invariant } from '../base/invariant.ts';
import type { Unit } from './unit.ts';
import { wholeUnit } from './unit.ts';

/** Milliseconds since 1970-01-01T00:00:00Z. */
export type InstantMs = Unit<'InstantMs'>;
export const instantMs: (value: number) => InstantMs = wholeUnit('InstantMs');

declare const day: unique symbol;
/** A calendar day YYYY-MM-DD (ISO 8601); sorts as text. */
export type LocalDay = string & { readonly [day]: true };

const MS_PER_DAY = 86_400_000;

/** Throws a Fault unless the text is a real calendar day (2027-02-29 is not). */
export function localDay(text: string): LocalDay {
  invariant(isLocalDay(text), `not a calendar day: ${text}`);
  return text as LocalDay;
}

export function isLocalDay(text: string): boolean {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return false;
  const at = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(at.getTime()) && at.toISOString().slice(0, 10) === text;
}

const dayAtMs = (text: LocalDay): number => Date.parse(`${text}T00:00:00Z`);
const dayFromMs = (atMs: number): LocalDay => localDay(new Date(atMs).toISOString().slice(0, 10));

export const addDays = (from: LocalDay, daysCount: number): LocalDay => dayFromMs(dayAtMs(from) + daysCount * MS_PER_DAY);

/** The first of some days in the calendar. */
export const earliestDay = (first: LocalDay, ...others: readonly LocalDay[]): LocalDay => [first, ...others].sort()[0] ?? first;

export const daysBetween = (from: LocalDay, to: LocalDay): number => (dayAtMs(to) - dayAtMs(from)) / MS_PER_DAY;

/** Month arithmetic clamped to the end of the month (ISO 8601 calendar): 2026-08-31 + 6 months = 2027-02-28. */
export function addMonths(from: LocalDay, monthsCount: number): LocalDay {
  const year = Number(from.slice(0, 4));
  const month = Number(from.slice(5, 7)) - 1 + monthsCount;
  const lastDay = new Date(Date.UTC(year, month + 1, 0)).getUTCDate();
  const dayOfMonth = Math.min(Number(from.slice(8, 10)), lastDay);
  return dayFromMs(Date.UTC(year, month, dayOfMonth));
}

/** The local day of an instant in an IANA zone. */
export const localDayIn = (zone: string, at: InstantMs): LocalDay => localDaysIn(zone)(at);

/** The same for many instants: what reads a zone's rules costs a hundred times what using it does. */
export function localDaysIn(zone: string): (at: InstantMs) => LocalDay {
  const format = new Intl.DateTimeFormat('en-CA', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' });
  return (at) => localDay(format.format(new Date(at)));
}

const MS_PER_MINUTE = 60_000;

/**
 * The instant at which clocks in a zone show "YYYY-MM-DDTHH:mm", the first of two when they are put back; null for a text of another form and
 * for a time that is passed over when they are put forward.
 */
export function instantIn(zone: string, localMinute: string): InstantMs | null {
  const [, day = '', time = ''] = /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})$/.exec(localMinute) ?? [];
  const asUtc = Date.parse(`${localMinute}:00Z`);
  if (!isLocalDay(day) || Number.isNaN(asUtc)) return null;
  const format = new Intl.DateTimeFormat('en-CA', {
    timeZone: zone,
    dateStyle: 'short',
    timeStyle: 'short',
    hourCycle: 'h23',
  });
  const shows = (at: number): boolean => format.format(new Date(at)) === `${day}, ${time}`;
  // Zones lie at whole quarters of an hour, from 14 hours before UTC's midnight to 12 after it.
  for (let ahead = 14 * 60; ahead >= -12 * 60; ahead -= 15) {
    const at = asUtc - ahead * MS_PER_MINUTE;
    if (at >= 0 && shows(at)) return instantMs(at);
  }
  return null;
}

/** ISO 8601 week as YYYYWW, e.g. 202648: whole numbers sort and store well. */
export type IsoWeek = Unit<'IsoWeek'>;

/** A week as it was stored or sent. Throws a Fault unless its last two digits are a week of a year. */
export function isoWeekOf(yearAndWeek: number): IsoWeek {
  const weekNo = yearAndWeek % 100;
  invariant(weekNo >= 1 && weekNo <= 53, `not an ISO week (YYYYWW): ${yearAndWeek}`);
  return wholeUnit('IsoWeek')(yearAndWeek);
}

export function isoWeek(of: LocalDay): IsoWeek {
  const thursday = new Date(dayAtMs(of));
  thursday.setUTCDate(thursday.getUTCDate() + 4 - (thursday.getUTCDay() || 7));
  const yearStart = Date.UTC(thursday.getUTCFullYear(), 0, 1);
  const week = Math.ceil(((thursday.getTime() - yearStart) / MS_PER_DAY + 1) / 7);
  return wholeUnit('IsoWeek')(thursday.getUTCFullYear() * 100 + week);
}
