// A change of the rulebook for reading: places in words, and figures in the unit that the end of a field's name tells.
import type { OfficeText } from '../office-text.ts';

const LONGEST = 160;

/** "pairJudgements/lactic-illite/verdict" → "pair judgements / lactic-illite / verdict"; list places count from 1. */
export const placeInWords = (key: string): string =>
  key
    .split('/')
    .map((part, index) => (index === 1 ? part : fieldInWords(part)))
    .join(' / ');

/** Shows one value, or the members of a whole row; texts longer than a cell are cut. */
export function valueInWords(field: string | null, value: string, text: OfficeText): string {
  const shown = isRow(value) ? rowInWords(JSON.parse(value), text) : figureInWords(field ?? '', value, text);
  return shown.length > LONGEST ? `${shown.slice(0, LONGEST)}…` : shown;
}

const isRow = (value: string): boolean => value.startsWith('{') && value.endsWith('}');

const rowInWords = (row: Readonly<Record<string, unknown>>, text: OfficeText): string =>
  Object.entries(row)
    .filter(([name]) => name !== 'id')
    .map(([name, value]) =>
      typeof value === 'object' && value !== null
        ? `${fieldInWords(name)}: ${Array.isArray(value) ? value.length : rowInWords({ ...value }, text)}`
        : `${fieldInWords(name)} ${figureInWords(name, String(value), text)}`,
    )
    .join(' · ');

type Shows = (figure: number, text: OfficeText) => string;

const UNITS: Readonly<Record<string, Shows>> = {
  Ppm: (figure, { percent }) => percent(figure),
  Minor: (figure, { number }) => number(figure / 100),
  X100: (figure, { number }) => number(figure / 100),
  Ug: (figure, { number }) => `${number(figure / 1_000_000)} g`,
  Milli: (figure, { number }) => number(figure / 1000),
};
const UNIT_ENDING = new RegExp(`(${Object.keys(UNITS).join('|')})$`);

const fieldInWords = (name: string): string =>
  name
    .replace(/(^|\.)(\d+)(?=\.|$)/g, (_all, before: string, place: string) => `${before}${Number(place) + 1}`)
    .split('.')
    .map((part) =>
      part
        .replace(UNIT_ENDING, '')
        .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
        .toLowerCase(),
    )
    .join(' ');

function figureInWords(field: string, value: string, text: OfficeText): string {
  const shows = UNITS[UNIT_ENDING.exec(field)?.[0] ?? ''];
  const figure = Number(value);
  return shows && value.trim() !== '' && !Number.isNaN(figure) ? shows(figure, text) : value;
}
