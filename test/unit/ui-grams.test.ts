// Masses read and typed. Display rules: NHS Common User Interface (medication line, MEDi-014 to -017), Joint Commission exception for
// reported values, NIST SP 811 (space before the unit). The refusals of typed text are the shop's own rule.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  decimalsOfStep,
  formatRangeGrams,
  formatReadingGrams,
  formatTargetGrams,
  gramsParts,
  readingDigits,
} from '#app/_ui/text/format-grams.ts';
import { decimalSign } from '#app/_ui/text/format-number.ts';
import { gramsRefusalText } from '#app/_ui/text/grams-refusal-text.ts';
import type { GramsRefusal } from '#app/_ui/text/parse-grams.ts';
import { parseGrams } from '#app/_ui/text/parse-grams.ts';
import { LANGS } from '#lib/rulebook/language.ts';
import { gramsToUg, massUg } from '#lib/units/mass.ts';

const hundredth = gramsToUg(0.01);
const capacityUg = gramsToUg(600);
const english = { decimalSign: '.', stepUg: hundredth, capacityUg } as const;
const french = { ...english, decimalSign: ',' } as const;

const refusalOf = (text: string, form: typeof english | typeof french = english): GramsRefusal['kind'] | 'read' => {
  const result = parseGrams(text, form);
  return result.ok ? 'read' : result.refusal.kind;
};

describe('a target', () => {
  test.each([
    [4, '4\u00a0g'],
    [0.9, '0.9\u00a0g'],
    [0.12, '0.12\u00a0g'],
    [24.6, '24.6\u00a0g'],
    [60, '60\u00a0g'],
    [1234.5, '1,234.5\u00a0g'],
    [0, '0\u00a0g'],
  ])('%f g is written %s', (grams, text) => {
    expect(formatTargetGrams(gramsToUg(grams), 'en')).toBe(text);
  });

  test('never shows a trailing zero, a bare point or a narrow space', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2_000_000_000 }), fc.constantFrom(...LANGS), (ug, lang) => {
        const text = formatTargetGrams(massUg(ug), lang);
        expect(text).toMatch(/^\d[\d.,\u00a0]*\u00a0g$/);
        const { fraction } = gramsParts(massUg(ug), lang);
        expect(fraction.endsWith('0')).toBe(false);
        expect(text).not.toMatch(/[\u202f\u2009]/);
      }),
    );
  });

  test('splits at the point for two cells', () => {
    expect(gramsParts(gramsToUg(24.6), 'en')).toEqual({ whole: '24', fraction: '6' });
    expect(gramsParts(gramsToUg(4), 'en')).toEqual({ whole: '4', fraction: '' });
    expect(gramsParts(gramsToUg(0.12), 'en')).toEqual({ whole: '0', fraction: '12' });
  });
});

describe('a reading', () => {
  test('shows exactly the digits of the scale', () => {
    expect(formatReadingGrams(gramsToUg(4), hundredth, 'en')).toBe('4.00\u00a0g');
    expect(formatReadingGrams(gramsToUg(4), gramsToUg(0.001), 'en')).toBe('4.000\u00a0g');
    expect(formatReadingGrams(gramsToUg(4), gramsToUg(1), 'en')).toBe('4\u00a0g');
    expect(readingDigits(gramsToUg(0.26), gramsToUg(0.02), 'fr')).toBe('0,26');
  });

  test('a mass finer than the scale is a fault, never cut', () => {
    expect(() => formatReadingGrams(gramsToUg(0.262), hundredth, 'en')).toThrow('does not show');
  });

  test.each([
    [1, 0],
    [0.5, 1],
    [0.1, 1],
    [0.01, 2],
    [0.005, 3],
    [0.001, 3],
  ])('a step of %f g shows %i decimals', (grams, decimals) => {
    expect(decimalsOfStep(gramsToUg(grams))).toBe(decimals);
  });
});

test('a range has the same decimals at both ends and a word between', () => {
  expect(formatRangeGrams(gramsToUg(24.35), gramsToUg(24.85), hundredth, 'en')).toBe('24.35\u00a0to\u00a024.85\u00a0g');
  expect(formatRangeGrams(gramsToUg(0.9), gramsToUg(1.1), hundredth, 'de')).toBe('0,90\u00a0bis\u00a01,10\u00a0g');
});

describe('a typed mass', () => {
  test.each([
    ['1.04', english],
    ['1,04', french],
    [' 1.04 ', english],
    ['\u00a01.04\u00a0g', english],
    ['1.04 g', english],
    ['01.04', english],
    ['١.٠٤', english],
  ] as const)('%j is 1.04 g', (text, form) => {
    expect(parseGrams(text, form)).toEqual({ ok: true, value: gramsToUg(1.04) });
  });

  test('whole grams and zero are read', () => {
    expect(parseGrams('52', english)).toEqual({ ok: true, value: gramsToUg(52) });
    expect(parseGrams('0', english)).toEqual({ ok: true, value: massUg(0) });
    expect(parseGrams('600', english)).toEqual({ ok: true, value: capacityUg });
  });

  test.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['g', 'empty'],
    ['abc', 'not-a-number'],
    ['1e3', 'not-a-number'],
    ['.5', 'not-a-number'],
    ['5.', 'not-a-number'],
    ['1 04', 'not-a-number'],
    ['1.0.4', 'not-a-number'],
    ['1,000.5', 'not-a-number'],
    ['+1', 'not-a-number'],
    ['0x10', 'not-a-number'],
    ['1.04 mg', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['-1', 'negative'],
    ['−0.5', 'negative'],
    ['1,04', 'other-sign'],
    ['1,040', 'other-sign'],
    ['1٫04', 'other-sign'],
    ['1.040', 'too-fine'],
    ['1.045', 'too-fine'],
    ['600.01', 'over-capacity'],
    ['99999999999999999999', 'over-capacity'],
  ])('%j is refused in English: %s', (text, kind) => {
    expect(refusalOf(text)).toBe(kind);
  });

  test('a point is refused in French', () => {
    expect(refusalOf('1.04', french)).toBe('other-sign');
  });

  test('a reading between two steps is refused', () => {
    expect(parseGrams('0.13', { ...english, stepUg: gramsToUg(0.05) })).toEqual({
      ok: false,
      refusal: { kind: 'between-steps', stepUg: gramsToUg(0.05) },
    });
  });

  test('what a scale shows can be typed back in every language', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 60_000 }), fc.constantFrom(...LANGS), (steps, lang) => {
        const mass = massUg(steps * hundredth);
        const form = { decimalSign: decimalSign(lang), stepUg: hundredth, capacityUg };
        expect(parseGrams(readingDigits(mass, hundredth, lang), form)).toEqual({ ok: true, value: mass });
      }),
    );
  });

  test('any text is either read or refused with words', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.constantFrom(...LANGS), (text, lang) => {
        const result = parseGrams(text, { decimalSign: decimalSign(lang), stepUg: hundredth, capacityUg });
        if (!result.ok) expect(gramsRefusalText(result.refusal, lang, { massUg: hundredth, stepUg: hundredth })).not.toBe('');
      }),
    );
  });
});

describe('words for a refusal', () => {
  const say = (text: string): string => {
    const result = parseGrams(text, english);
    return result.ok ? 'read' : gramsRefusalText(result.refusal, 'en', { massUg: gramsToUg(1.04), stepUg: hundredth });
  };

  test('say what to do', () => {
    expect(say('1,04')).toBe('You typed 1,04. Use a point, not a comma: 1.04.');
    expect(say('abc')).toBe('Type digits only, such as 1.04.');
    expect(say('1.045')).toBe('This scale shows 2 decimals. Type only what it shows.');
    expect(say('-1')).toBe('A weight cannot be under 0. Tare the scale and weigh again.');
    expect(say('700')).toBe('This scale weighs up to 600\u00a0g. Read it again.');
    expect(say('')).toBe('Type the weight that the scale shows.');
  });
});
