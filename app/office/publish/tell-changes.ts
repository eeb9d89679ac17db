// The changes of a draft as their signer reads them: one entry a row of the rulebook, worst first, every value whole and in words.
import type { DiffLine } from '#lib/edition/diff.ts';
import { textIdOf } from '#lib/edition/diff.ts';
import type { Effect } from '#lib/edition/effect.ts';
import type { Piece } from '#lib/edition/word-diff.ts';
import { wordDiff } from '#lib/edition/word-diff.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { PairJudgement } from '#lib/rulebook/judgement.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { pairRulings } from '#lib/verdict/pair-verdict.ts';
import type { OfficeText } from '../office-text.ts';
import type { Names, Section } from './rulebook-names.ts';
import { namesOf, plainWords, sectionWord } from './rulebook-names.ts';
import type { Teller } from './rulebook-values.ts';
import { labelOf, languageName, valueInWords, verdictInWords } from './rulebook-values.ts';

export interface ToldLine {
  readonly id: string;
  readonly label: string;
  /** Null: there was none, or there is none any more. */
  readonly was: string | null;
  readonly is: string | null;
  /** For a text that was reworded: word by word. */
  readonly pieces: readonly Piece[] | null;
}

export interface ToldChange {
  readonly id: string;
  /** "Judgement", "Shade" */
  readonly section: string;
  /** "Niacinamide with Panthenol"; empty for a section without rows. */
  readonly name: string;
  readonly kind: DiffLine['kind'];
  readonly effect: Effect;
  /** Keys of its lines that must be looked at. */
  readonly lookKeys: readonly string[];
  readonly lines: readonly ToldLine[];
}

interface Telling extends Teller {
  readonly before: Book | null;
  readonly books: { readonly before: Rulebook | null; readonly after: Rulebook };
}

interface Told extends Omit<ToldChange, 'lines' | 'lookKeys'> {
  readonly line: DiffLine;
  readonly lines: readonly ToldLine[];
}

/** `diff` leads from `before` to `after` and comes worst first, and so do the entries. */
export function tellChanges(diff: readonly DiffLine[], before: Book | null, after: Rulebook, text: OfficeText): readonly ToldChange[] {
  const books = { before: before?.rulebook ?? null, after };
  const names = namesOf([after, ...(books.before ? [books.before] : [])]);
  const telling: Telling = { text, names, currency: after.currency, before, books };
  const groups = Map.groupBy(
    diff.map((line) => tell(line, telling)),
    (told) => told.id,
  );
  return [...groups.values()].map((group) => {
    const [{ id, section, name, kind, effect }] = group as [Told, ...Told[]];
    return {
      id,
      section,
      name,
      kind,
      effect,
      lookKeys: group.filter(({ line }) => line.effect === 'widens').map(({ line }) => line.key),
      lines: group.flatMap((told) => told.lines).sort((a, b) => rankOf(a.id) - rankOf(b.id)),
    };
  });
}

/** A judgement reads: verdict, then what goes with it, then why and who. */
const ORDER = [
  /^verdict/,
  /^limit/,
  /^cautionId/,
  /^(?!reason|source|evidence|by$|on$)/,
  /^reason/,
  /^source/,
  /^evidence/,
  /^by$/,
  /^on$/,
];
const rankOf = (lineId: string): number => ORDER.findIndex((pattern) => pattern.test(lineId));

function tell(line: DiffLine, telling: Telling): Told {
  if (line.section === 'texts') return tellText(line, telling);
  const { section, rowId, kind, effect, field } = line;
  const row = { before: rowOf(telling.books.before, line), after: rowOf(telling.books.after, line) };
  const lines = field === null && rowId !== null ? wholeRow(line, row, telling) : [oneLine(line, row, telling)];
  const name = rowId === null ? '' : telling.names.row(section, rowId);
  return { id: [section, rowId ?? ''].join('/'), section: sectionWord(section), name, kind, effect, line, lines };
}

function rowOf(book: Rulebook | null, { section, rowId }: DiffLine): unknown {
  const found: unknown = book?.[section];
  if (rowId === null || !Array.isArray(found)) return found;
  return found.find((row: { readonly id: string }) => row.id === rowId);
}

interface Sides {
  readonly before: unknown;
  readonly after: unknown;
}

/** Said by the name of the row already. */
const IN_THE_NAME = /^(id|firstMaterialId|secondMaterialId|firstClass|secondClass)$/;

function wholeRow({ kind, section, rowId }: DiffLine, { before, after }: Sides, telling: Telling): readonly ToldLine[] {
  const judged = section === 'pairJudgements' ? telling.books.after.pairJudgements.find((one) => one.id === rowId) : undefined;
  return Object.entries((kind === 'added' ? after : before) ?? {})
    .filter(([field]) => !IN_THE_NAME.test(field))
    .map(([field, value]) => {
      const told = valueInWords(value, field, telling) ?? telling.text.t('none');
      const other = field === 'verdict' && judged ? rulingBefore(judged, telling) : null;
      const [was, is] = kind === 'added' ? [other, told] : [told, null];
      return { id: field, label: capital(labelOf(field)), was, is, pieces: null };
    });
}

/** What held for a pair before it had a judgement of its own. */
function rulingBefore({ firstMaterialId, secondMaterialId }: PairJudgement, { before, text }: Telling): string {
  if (!before?.materials.has(firstMaterialId) || !before.materials.has(secondMaterialId)) return text.t('verdict-not-judged');
  const rulings = pairRulings(before, firstMaterialId, secondMaterialId, true);
  if (rulings === 'judged-with-the-base') return text.t('verdict-with-the-base');
  const [first] = rulings;
  return first ? text.t('verdict-by-class', { verdict: verdictInWords(first.verdict, text) }) : text.t('verdict-not-judged');
}

function oneLine({ section, field }: DiffLine, { before, after }: Sides, telling: Telling): ToldLine {
  const path = field === null ? [] : field.split('.');
  const last = path.findLast((part) => !/^\d+$/.test(part)) ?? section;
  const [was = null, is = null] = [before, after].map((side) => valueInWords(path.reduce(member, side), last, telling));
  const label = path.length === 0 ? sectionWord(section) : pathInWords(path, before, after, telling);
  return { id: field ?? section, label: capital(label), was, is, pieces: piecesOf(was, is) };
}

const member = (value: unknown, part: string): unknown =>
  typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>)[part] : undefined;

/** "levels.1.priceMinor" → "levels, 2 %, price": a place in a list is called by what stands there. */
function pathInWords(path: readonly string[], before: unknown, after: unknown, telling: Teller): string {
  const words = path.map((part, index) => {
    if (!/^\d+$/.test(part)) return labelOf(part);
    const upTo = path.slice(0, index + 1);
    const there = upTo.reduce(member, before) ?? upTo.reduce(member, after);
    return path[index - 1] === 'umolPerKg' ? `at pH\u00a0${3 + Number(part) / 2}` : elementName(there, Number(part), telling);
  });
  return words.join(', ');
}

/** What tells one element of a list from the next, the most telling first. */
const TELLING_FIELDS = ['levelPpm', 'materialId', 'substanceId', 'activeId', 'concernId', 'textId', 'name', 'tag', 'kind', 'id'];

function elementName(element: unknown, index: number, telling: Teller): string {
  const field = TELLING_FIELDS.find((one) => member(element, one) !== undefined);
  const value = field === undefined ? null : valueInWords(member(element, field), field, telling);
  return value === null ? String(index + 1) : plainWords(value);
}

/** Texts belong to the row that says them: a caution's words stand with the caution. */
function tellText(line: DiffLine, telling: Telling): Told {
  const { kind, effect, field } = line;
  const [lang = ''] = (field ?? '').split('.');
  const textId = textIdOf(line);
  const wholeLanguage = field === null || !field.includes('.');
  const owner = wholeLanguage ? null : telling.names.owner(textId);
  const at = (book: Rulebook | null): string | null => {
    const texts: unknown = book?.texts[lang as keyof Rulebook['texts']];
    const value = wholeLanguage ? texts : member(texts, textId);
    return valueInWords(value, '', telling);
  };
  const [was, is] = [at(telling.books.before), at(telling.books.after)];
  const language = telling.text.t('in-language', { language: lang === '' ? '' : languageName(lang) });
  const label = owner ? `${owner.words}, ${language}` : language;
  const toldLine = { id: field ?? 'texts', label: capital(label), was, is, pieces: piecesOf(was, is) };
  const section: Section = owner?.section ?? 'texts';
  const rowId = owner?.rowId ?? (wholeLanguage ? lang : textId);
  const name = owner ? telling.names.row(owner.section, owner.rowId) : wholeLanguage ? '' : plainWords(textId);
  return { id: `${section}/${rowId}`, section: sectionWord(section), name, kind, effect, line, lines: [toldLine] };
}

/** Word by word where most of the words stayed; two texts that share little are read one after the other. */
function piecesOf(was: string | null, is: string | null): readonly Piece[] | null {
  if (was === null || is === null) return null;
  const pieces = wordDiff(was, is);
  const keptLength = pieces.reduce((sum, piece) => (piece.kind === 'same' ? sum + piece.text.length : sum), 0);
  return keptLength * 2 > Math.max(was.length, is.length) ? pieces : null;
}

/** A place of the rulebook as a fault names it: ["markets", 1, "makerMandate"] → "Market: US, mandate as maker". */
export function placeInWords(path: readonly (string | number)[], book: Rulebook, names: Names, text: OfficeText): string {
  const [section, ...rest] = path.map(String);
  if (section === undefined || !(section in book)) return path.join(', ');
  const at = section as Section;
  const rows: unknown = book[at];
  const [row] = rest;
  const there = row === undefined ? undefined : member(rows, row);
  const id = member(there, 'id');
  const [head, steps, inside] =
    typeof id === 'string' ? [`${sectionWord(at)}: ${names.row(at, id)}`, rest.slice(1), there] : [sectionWord(at), rest, rows];
  const words = pathInWords(steps, inside, inside, { text, names, currency: book.currency });
  return words === '' ? head : `${head}, ${words}`;
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
