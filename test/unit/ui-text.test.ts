// Texts, numbers, money and dates of the languages on sale. Number and date forms: Unicode CLDR through Intl, checked against the forms
// written in the shop's own style (25 Nov 2026, 10:42, £16).
import { describe, expect, test } from 'vitest';
import { createText } from '#app/_ui/text/create-text.ts';
import { decimalSign, formatDay, formatMoney, formatNumber, formatPercent, formatTime } from '#app/_ui/text/format-number.ts';
import { weightsCatalogues } from '#app/_ui/text/grams-refusal-text.ts';
import { languageFacts } from '#app/_ui/text/messages.ts';
import { LANGS } from '#lib/rulebook/language.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { instantMs, localDay } from '#lib/units/time.ts';

const masks = {
  en: { found: '{count, plural, one {# mask fits your answers} other {# masks fit your answers}}', code: 'Your code is {code}.' },
  ar: { found: '{count, plural, one {قناع واحد} two {قناعان} few {# أقنعة} other {# قناعًا}}', code: 'رمزك هو {code}.' },
} as const;

describe('a sentence', () => {
  test('follows the plural of its language', () => {
    const { t } = createText('en', masks);
    expect([t('found', { count: 1 }), t('found', { count: 3 })]).toEqual(['1 mask fits your answers', '3 masks fit your answers']);
    const arabic = createText('ar', masks);
    expect([1, 2, 3, 11].map((count) => arabic.t('found', { count }))).toEqual(['قناع واحد', 'قناعان', '3 أقنعة', '11 قناعًا']);
  });

  test('keeps a code left to right inside Arabic, by isolates', () => {
    expect(createText('ar', masks).t('code', { code: 'K7-204' })).toBe('رمزك هو \u2068K7-204\u2069.');
    expect(createText('en', masks).t('code', { code: 'K7-204' })).toBe('Your code is K7-204.');
  });

  test('throws when a value is missing, rather than leave a hole', () => {
    expect(() => createText('en', masks).t('code')).toThrow('code');
  });

  test('a key that a catalogue does not have is a fault', () => {
    expect(() => createText('en', masks).t('lost' as 'code')).toThrow('no text lost');
  });
});

test('numbers are grouped from 1,000 on and hold no narrow space', () => {
  expect(LANGS.map((lang) => formatNumber(38214.5, lang))).toEqual(['38,214.5', '38\u00a0214,5', '38.214,5', '38.214,5', '38,214.5']);
  expect(formatNumber(1000, 'es')).toBe('1.000');
});

test('each language has the decimal sign it types', () => {
  expect(LANGS.map((lang) => decimalSign(lang))).toEqual(['.', ',', ',', ',', '.']);
});

test('a share has a space before the sign and no trailing zeros', () => {
  expect(formatPercent(20_000, 'en')).toBe('2\u00a0%');
  expect(formatPercent(25_001, 'en')).toBe('2.5001\u00a0%');
  expect(formatPercent(912_960, 'fr', 1)).toBe('91,3\u00a0%');
});

test('money drops empty minor units and knows currencies without any', () => {
  expect(formatMoney(moneyMinor(1600), 'GBP', 'en')).toBe('£16');
  expect(formatMoney(moneyMinor(1650), 'GBP', 'en')).toBe('£16.50');
  expect(formatMoney(moneyMinor(1650), 'EUR', 'de')).toBe('16,50\u00a0€');
  expect(formatMoney(moneyMinor(1600), 'JPY', 'en')).toBe('¥1,600');
});

test('days and times are written one way', () => {
  expect(formatDay(localDay('2026-11-25'), 'en')).toBe('25 Nov 2026');
  expect(formatDay(localDay('2026-09-05'), 'en')).toBe('5 Sep 2026');
  expect(formatDay(localDay('2026-11-25'), 'fr')).toBe('25 nov. 2026');
  expect(formatTime(instantMs(Date.UTC(2026, 10, 25, 10, 42)), 'Europe/London', 'en')).toBe('10:42');
  expect(formatTime(instantMs(Date.UTC(2026, 10, 25, 0, 5)), 'Europe/London', 'en')).toBe('00:05');
});

test('Arabic reads from the right and counts in the digits of the scale', () => {
  expect(languageFacts.ar.direction).toBe('rtl');
  expect(formatNumber(1042, 'ar')).toBe('1,042');
});

test('every language of the weights asks for the same values', () => {
  const asked = (source: string): string[] => [...new Set([...source.matchAll(/\{(\w+)(?:,|\})/g)].map((match) => match[1] ?? ''))].sort();
  for (const lang of LANGS) {
    for (const key of Object.keys(weightsCatalogues.en) as (keyof typeof weightsCatalogues.en)[]) {
      expect([lang, key, asked(weightsCatalogues[lang][key])]).toEqual([lang, key, asked(weightsCatalogues.en[key])]);
    }
  }
});
