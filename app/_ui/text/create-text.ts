// Texts and formats of one language, bound together. A missing value throws: half a sentence is worse than a fault page.
import { IntlMessageFormat } from 'intl-messageformat';
import { invariant } from '#lib/base/invariant.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import type { MassUg } from '#lib/units/mass.ts';
import type { MoneyMinor } from '#lib/units/money.ts';
import type { InstantMs, LocalDay } from '#lib/units/time.ts';
import { formatRangeGrams, formatReadingGrams, formatTargetGrams } from './format-grams.ts';
import { decimalSign, formatDay, formatLongDay, formatMoney, formatNumber, formatPercent, formatTime } from './format-number.ts';
import type { Catalogue, Catalogues, MessageValues } from './messages.ts';
import { languageFacts } from './messages.ts';

export interface Text<Key extends string> {
  readonly lang: Lang;
  readonly direction: 'ltr' | 'rtl';
  readonly decimalSign: '.' | ',';
  /** The sentence of a key. Throws where a value that it names is missing. */
  readonly t: (key: Key, values?: MessageValues) => string;
  readonly number: (value: number, decimals?: number) => string;
  readonly percent: (ppm: number, decimals?: number) => string;
  readonly money: (amount: MoneyMinor, currency: string) => string;
  readonly day: (day: LocalDay) => string;
  readonly longDay: (day: LocalDay) => string;
  readonly time: (at: InstantMs, zone: string) => string;
  readonly target: (mass: MassUg) => string;
  readonly reading: (mass: MassUg, stepUg: MassUg) => string;
  readonly range: (lo: MassUg, hi: MassUg, stepUg: MassUg) => string;
}

/** Texts of a face in one of the languages it is offered in. */
export function createText<Key extends string, Offered extends Lang>(lang: Offered, catalogues: Catalogues<Key, Offered>): Text<Key> {
  const { direction } = languageFacts[lang];
  const say = speaker(lang, catalogues[lang]);
  return {
    lang,
    direction,
    decimalSign: decimalSign(lang),
    t: (key, values = {}) => say(key, direction === 'rtl' ? isolated(values) : values),
    number: (value, decimals) => formatNumber(value, lang, decimals),
    percent: (ppm, decimals) => formatPercent(ppm, lang, decimals),
    money: (amount, currency) => formatMoney(amount, currency, lang),
    day: (day) => formatDay(day, lang),
    longDay: (day) => formatLongDay(day, lang),
    time: (at, zone) => formatTime(at, zone, lang),
    target: (mass) => formatTargetGrams(mass, lang),
    reading: (mass, stepUg) => formatReadingGrams(mass, stepUg, lang),
    range: (lo, hi, stepUg) => formatRangeGrams(lo, hi, stepUg, lang),
  };
}

// A pattern is read once per catalogue and kept: a page says the same sentence on every turn.
const speakers = new WeakMap<object, (key: string, values: MessageValues) => string>();

function speaker(lang: Lang, catalogue: Catalogue<string>): (key: string, values: MessageValues) => string {
  const known = speakers.get(catalogue);
  if (known) return known;
  const patterns = new Map<string, IntlMessageFormat>();
  const say = (key: string, values: MessageValues): string => {
    const pattern = patterns.get(key) ?? read(lang, catalogue, key);
    patterns.set(key, pattern);
    const sentence = pattern.format<string>(values);
    invariant(typeof sentence === 'string', `text ${key} is not plain`);
    return sentence;
  };
  speakers.set(catalogue, say);
  return say;
}

function read(lang: Lang, catalogue: Catalogue<string>, key: string): IntlMessageFormat {
  const source = catalogue[key];
  invariant(source !== undefined, `no text ${key} in ${lang}`);
  return new IntlMessageFormat(source, languageFacts[lang].locale, undefined, { ignoreTag: true });
}

// Codes, INCI names and weights keep their own direction inside Arabic (Unicode isolates, UAX 9).
const isolated = (values: MessageValues): MessageValues =>
  Object.fromEntries(Object.entries(values).map(([name, value]) => [name, typeof value === 'string' ? `\u2068${value}\u2069` : value]));
