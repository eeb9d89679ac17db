// Numbers, money, days and times in a person's language. Space before the unit, never a narrow one: the fonts have no U+202F.
import { invariant } from '#lib/base/invariant.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import type { MoneyMinor } from '#lib/units/money.ts';
import type { InstantMs, LocalDay } from '#lib/units/time.ts';
import { languageFacts } from './messages.ts';

export const NO_BREAK_SPACE = '\u00a0';

const tidy = (text: string): string => text.replaceAll('\u202f', NO_BREAK_SPACE).replaceAll('\u2009', NO_BREAK_SPACE);

/** The sign between whole part and fraction, as this language types it. */
export function decimalSign(lang: Lang): '.' | ',' {
  const part = new Intl.NumberFormat(languageFacts[lang].locale).formatToParts(1.5).find(({ type }) => type === 'decimal');
  invariant(part?.value === '.' || part?.value === ',', `unknown decimal sign of ${lang}`);
  return part.value;
}

/** A plain number, grouped from 1,000 on, at most `decimals` after the sign (default 2). */
export const formatNumber = (value: number, lang: Lang, decimals = 2): string =>
  tidy(new Intl.NumberFormat(languageFacts[lang].locale, { maximumFractionDigits: decimals, useGrouping: 'always' }).format(value));

/** "2.5 %" from 25 000 ppm; no trailing zeros. */
export const formatPercent = (ppm: number, lang: Lang, decimals = 4): string =>
  `${formatNumber(ppm / 10_000, lang, decimals)}${NO_BREAK_SPACE}%`;

/** "£16", "£16.50": whole amounts without decimals. */
export function formatMoney(amount: MoneyMinor, currency: string, lang: Lang): string {
  const format = new Intl.NumberFormat(languageFacts[lang].locale, {
    style: 'currency',
    currency,
    currencyDisplay: 'narrowSymbol',
    trailingZeroDisplay: 'stripIfInteger',
  });
  const digits = format.resolvedOptions().maximumFractionDigits ?? 2;
  return tidy(format.format(amount / 10 ** digits));
}

// English months are cut to three letters by hand: "Sept" would break columns of dates.
const englishMonths = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

const asDate = (day: LocalDay): Date => new Date(`${day}T00:00:00Z`);

/** "25 Nov 2026". */
export function formatDay(day: LocalDay, lang: Lang): string {
  const date = asDate(day);
  if (lang === 'en') return `${date.getUTCDate()} ${englishMonths[date.getUTCMonth()]} ${date.getUTCFullYear()}`;
  return tidy(
    new Intl.DateTimeFormat(languageFacts[lang].locale, { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' }).format(date),
  );
}

/** "Wednesday 25 November". */
export const formatLongDay = (day: LocalDay, lang: Lang): string =>
  tidy(
    new Intl.DateTimeFormat(languageFacts[lang].locale, { weekday: 'long', day: 'numeric', month: 'long', timeZone: 'UTC' }).format(
      asDate(day),
    ),
  );

/** "10:42" in the shop's zone, 24 hours. */
export const formatTime = (at: InstantMs, zone: string, lang: Lang): string =>
  tidy(
    new Intl.DateTimeFormat(languageFacts[lang].locale, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23', timeZone: zone }).format(
      at,
    ),
  );
