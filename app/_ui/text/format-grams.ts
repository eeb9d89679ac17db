// Masses as people read them. A target is an order: no trailing zeros. A reading is a result: exactly the scale's digits.
// Rules of medication safety: leading zero, space before the unit, same decimals at both ends of a range
// (NHS Common User Interface MEDi-014 to -017; Joint Commission exception for reported values; NIST SP 811 for the space).
import { invariant } from '#lib/base/invariant.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { UG_PER_G } from '#lib/units/mass.ts';
import { decimalSign, formatNumber, NO_BREAK_SPACE } from './format-number.ts';

const FRACTION_DIGITS = 6;

/** Decimals that a scale of this step shows: 0.01 g → 2, 0.005 g → 3. */
export function decimalsOfStep(step: MassUg): number {
  invariant(step > 0, 'a scale has a step');
  return withoutZeros(fractionOf(step)).length;
}

const fractionOf = (mass: MassUg): string => String(mass % UG_PER_G).padStart(FRACTION_DIGITS, '0');
const withoutZeros = (digits: string): string => digits.replace(/0+$/, '');
const wholeOf = (mass: MassUg, lang: Lang): string => formatNumber(Math.trunc(mass / UG_PER_G), lang, 0);

/** Whole part and fraction without trailing zeros, for two cells that meet at the point: 24 600 000 → 24 | 6. */
export const gramsParts = (mass: MassUg, lang: Lang): { readonly whole: string; readonly fraction: string } => ({
  whole: wholeOf(mass, lang),
  fraction: withoutZeros(fractionOf(mass)),
});

/** Digits of an order, without unit: "24.6", "4". */
export function targetDigits(mass: MassUg, lang: Lang): string {
  const { whole, fraction } = gramsParts(mass, lang);
  return fraction === '' ? whole : `${whole}${decimalSign(lang)}${fraction}`;
}

/** Digits of a result, without unit, as many as the scale shows: "4.00". Throws a Fault when the reading has more. */
export function readingDigits(mass: MassUg, step: MassUg, lang: Lang): string {
  const decimals = decimalsOfStep(step);
  const fraction = fractionOf(mass);
  invariant(withoutZeros(fraction).length <= decimals, `a scale of step ${step} µg does not show ${mass} µg`);
  return decimals === 0 ? wholeOf(mass, lang) : `${wholeOf(mass, lang)}${decimalSign(lang)}${fraction.slice(0, decimals)}`;
}

const grams = (digits: string): string => `${digits}${NO_BREAK_SPACE}g`;

/** "0.12 g". */
export const formatTargetGrams = (mass: MassUg, lang: Lang): string => grams(targetDigits(mass, lang));

/** "4.00 g". */
export const formatReadingGrams = (mass: MassUg, step: MassUg, lang: Lang): string => grams(readingDigits(mass, step, lang));

// "to" and not a dash, which could be read as minus.
const rangeWords = { en: 'to', fr: 'à', de: 'bis', es: 'a', ar: 'إلى' } satisfies Record<Lang, string>;

/** "24.35 to 24.85 g": both ends with the scale's digits. */
export const formatRangeGrams = (lo: MassUg, hi: MassUg, step: MassUg, lang: Lang): string =>
  [readingDigits(lo, step, lang), rangeWords[lang], grams(readingDigits(hi, step, lang))].join(NO_BREAK_SPACE);
