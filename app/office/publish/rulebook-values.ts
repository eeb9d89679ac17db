// Values of a rulebook as people read them: money with its sign, shares in per cent, names in place of ids, lists told one by one.
import { LANGS } from '#lib/rulebook/language.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { isLocalDay, localDay } from '#lib/units/time.ts';
import type { OfficeText } from '../office-text.ts';
import type { Names } from './rulebook-names.ts';
import { fieldWord, isTextField, plainWords } from './rulebook-names.ts';

export interface Teller {
  readonly text: OfficeText;
  readonly names: Names;
  readonly currency: string;
}

type Shows = (figure: number, teller: Teller) => string;

const scaled =
  (by: number, unit: string): Shows =>
  (figure, { text }) =>
    `${text.number(figure / by, 6)}${unit === '' ? '' : `\u00a0${unit}`}`;
const money: Shows = (figure, { text, currency }) => text.money(moneyMinor(figure), currency);

/** By the end of a field's name, the longest first. */
const UNITS: readonly (readonly [RegExp, Shows])[] = [
  [/MinorPerKg$/, (figure, teller) => `${money(figure, teller)} per kg`],
  [/[mM]inor$/, money],
  [/UmolPerKg$|^umolPerKg$/, scaled(1, 'µmol per kg')],
  [/UgPerKgDay$/, scaled(1, 'µg per kg and day')],
  [/MgPer100g$/, scaled(1000, 'g per 100 g')],
  [/MgPerMl$/, scaled(1000, 'g per mL')],
  [/UnitsPerPpm$|Units$|Count$/, scaled(1, '')],
  [/X1000$/, scaled(1000, '')],
  [/X100$/, scaled(100, '')],
  [/Ppm$/, (figure, { text }) => text.percent(figure)],
  [/Milli$/, scaled(1000, '')],
  [/Hours$/, scaled(1, 'hours')],
  [/Days$/, scaled(1, 'days')],
  [/Months$/, scaled(1, 'months')],
  [/Cm2$/, scaled(1, 'cm²')],
  [/Mg$/, scaled(1000, 'g')],
  [/Ug$/, scaled(1_000_000, 'g')],
  [/Ul$/, scaled(1000, 'mL')],
  [/Um$/, scaled(1000, 'mm')],
  [/TemperatureC$/, scaled(1, '°C')],
  [/WeightG$/, scaled(1000, 'kg')],
];

/** Fields whose value says what it is. */
const NO_LABEL = /^(kind|name|tag|sharePpm|levelPpm|factorPpm|benefitMilli|code)$|Ids?$/;

/** One value in words, whole. Null where there is none. */
export function valueInWords(value: unknown, field: string, teller: Teller): string | null {
  if (value === undefined || value === null || value === '') return null;
  if (typeof value === 'boolean') return teller.text.t(value ? 'value-yes' : 'value-no');
  if (typeof value === 'number') return figureInWords(value, field, teller);
  if (typeof value === 'string') return stringInWords(value, field, teller);
  const told = Array.isArray(value) ? listInWords(value, field, teller) : objectInWords(value as Readonly<Record<string, unknown>>, teller);
  return told === '' ? null : told;
}

const figureInWords = (figure: number, field: string, teller: Teller): string =>
  (UNITS.find(([ending]) => ending.test(field))?.[1] ?? scaled(1, ''))(figure, teller);

/** A word of a closed list, such as "swelling-clay". */
const isListWord = (value: string): boolean => /^[a-z][a-z0-9]*(-[a-z0-9]+)+$/.test(value);

function stringInWords(value: string, field: string, { text, names }: Teller): string {
  if (isTextField(field)) return `“${names.text(value)}”`;
  if (field === 'verdict') return verdictInWords(value, text);
  const name = names.id(field, value);
  if (name !== null) return name;
  if (isLocalDay(value)) return text.day(localDay(value));
  return isListWord(value) && field !== 'code' ? plainWords(value) : value;
}

export function verdictInWords(verdict: string, { t }: OfficeText): string {
  const known = (['never', 'limit', 'caution', 'fine'] as const).find((one) => one === verdict);
  return known ? t(`verdict-${known}`) : verdict;
}

function listInWords(list: readonly unknown[], field: string, teller: Teller): string {
  const told = list.map((one, index) => `${placeInWords(field, index)}${valueInWords(one, field, teller) ?? teller.text.t('none')}`);
  return told.join(list.some((one) => typeof one === 'object') ? '; ' : ', ');
}

/** The need table has a place for every half pH from 3.0 on; other lists need no word for their places. */
const placeInWords = (field: string, index: number): string => (field === 'umolPerKg' ? `pH\u00a0${3 + index / 2}: ` : '');

/** "Kaolin 1.9 %", "2 %, on sale yes, price £2": what needs no label stands with what comes before it. */
function objectInWords(object: Readonly<Record<string, unknown>>, teller: Teller): string {
  const hasName = 'name' in object || 'textId' in object;
  return Object.entries(object)
    .filter(([field]) => !(field === 'id' && hasName))
    .reduce((told, [field, value]) => {
      const words = valueInWords(value, field, teller);
      if (words === null) return told;
      const label = labelOf(field);
      if (NO_LABEL.test(field) || label === object.kind || field === 'id') return told === '' ? words : `${told} ${words}`;
      return `${told}${told === '' ? '' : ', '}${label} ${words}`;
    }, '');
}

/** "en" among names is a language. */
export function labelOf(field: string): string {
  const lang = LANGS.find((one) => one === field);
  return lang ? languageName(lang) : fieldWord(field);
}

const languageNames = new Intl.DisplayNames(['en'], { type: 'language' });
export const languageName = (lang: string): string => languageNames.of(lang) ?? lang;
