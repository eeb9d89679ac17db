// Names for what a rulebook only numbers or ids: rows by what people call them, texts by what they say and by the row that says them.
import { FIELD_WORDS, SECTION_WORDS } from '#app/_ui/text/rulebook-words/en.ts';
import { assertNever } from '#lib/base/invariant.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';

export type Section = keyof Rulebook;
const sectionWords: Readonly<Record<Section, string>> = SECTION_WORDS;

/** The section that a field's ids point into. */
const POINTS_TO: Readonly<Record<string, Section>> = {
  materialId: 'materials',
  firstMaterialId: 'materials',
  secondMaterialId: 'materials',
  substanceId: 'substances',
  stockId: 'stocks',
  shadeIds: 'shades',
  activeId: 'actives',
  cautionId: 'cautions',
  staffCautionIds: 'cautions',
  concernId: 'concerns',
  capId: 'personCaps',
  evidenceId: 'evidence',
  evidenceIds: 'evidence',
  overridesClassJudgementId: 'classJudgements',
  skipsQuestionIds: 'questions',
  vesselId: 'vessels',
  labelSizeId: 'labelSizes',
  fits: 'jarSizes',
};

export interface TextOwner {
  readonly section: Section;
  readonly rowId: string;
  /** "good point", "options words" */
  readonly words: string;
}

export interface Names {
  /** "Niacinamide with Panthenol" */
  readonly row: (section: Section, rowId: string) => string;
  /** The name behind the id in a field; null for a field that holds no id. */
  readonly id: (field: string, id: string) => string | null;
  /** What a text says; its id in words where nobody wrote it. */
  readonly text: (textId: string) => string;
  readonly owner: (textId: string) => TextOwner | null;
}

interface Row {
  readonly id: string;
}

/** Of both books, the later one first: a row that went is still called by its name. */
export function namesOf(books: readonly Rulebook[]): Names {
  const rows = new Map<string, Row>();
  const owners = new Map<string, TextOwner>();
  for (const book of books)
    for (const section of Object.keys(book) as Section[])
      for (const row of rowsOf(book[section])) {
        const key = `${section}/${row.id}`;
        if (!rows.has(key)) rows.set(key, row);
        for (const [textId, words] of textsIn(row, [])) if (!owners.has(textId)) owners.set(textId, { section, rowId: row.id, words });
      }
  const text = (textId: string): string =>
    books.map((book) => book.texts[book.languages[0] ?? 'en']?.[textId]).find((found) => found !== undefined) ?? plainWords(textId);
  const names: Names = {
    row: (section, rowId) => {
      const row = rows.get(`${section}/${rowId}`);
      return row ? rowName(section, row, names) : plainWords(rowId);
    },
    id: (field, id) => {
      const section = POINTS_TO[field];
      if (section) return names.row(section, id);
      return /Ids?$/.test(field) ? plainWords(id) : null;
    },
    text,
    owner: (textId) => owners.get(textId) ?? null,
  };
  return names;
}

const rowsOf = (section: unknown): readonly Row[] =>
  Array.isArray(section) ? section.filter((row): row is Row => typeof row === 'object' && row !== null && 'id' in row) : [];

export const isTextField = (field: string): boolean => /(^t|T)extId$/.test(field);

/** Every text id inside a row with the fields that lead to it, in words. */
function textsIn(value: unknown, path: readonly string[]): readonly (readonly [string, string])[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([field, member]): readonly (readonly [string, string])[] => {
    const here = /^\d+$/.test(field) ? path : [...path, fieldWord(field)];
    return typeof member === 'string' && isTextField(field) ? [[member, here.join(', ')]] : textsIn(member, here);
  });
}

type As<S extends Section> = Rulebook[S] extends readonly (infer R)[] ? R : never;

function rowName(section: Section, row: Row, names: Names): string {
  const as = <S extends Section>(_: S): As<S> => row as unknown as As<S>;
  switch (section) {
    case 'pairJudgements':
      return `${names.row('materials', as(section).firstMaterialId)} with ${names.row('materials', as(section).secondMaterialId)}`;
    case 'classJudgements':
      return `${plainWords(as(section).firstClass)} with ${plainWords(as(section).secondClass)}`;
    case 'classRules': {
      const { first, second } = as(section);
      return plainWords([first, second].flatMap((side) => side?.materialClass ?? []).join(' with '));
    }
    case 'materials':
    case 'stocks':
    case 'shades':
    case 'actives':
      return as(section).name.en ?? plainWords(row.id);
    case 'substances':
      return as(section).labelNames.EU;
    case 'cautions':
      return `“${plainWords(row.id)}”`;
    case 'concerns':
    case 'questions':
      return `“${names.text(as(section).textId)}”`;
    case 'scopes':
      return `${plainWords(row.id)} (${as(section).kind})`;
    case 'personCaps':
      return plainWords(row.id);
    case 'limits': {
      const limit = as(section);
      const ids = limit.kind === 'colourant' ? [limit.substanceId] : limit.substances.map((one) => one.substanceId);
      return `${limit.marketId}, ${ids.map((id) => names.row('substances', id)).join(', ')}`;
    }
    case 'evidence':
      return `${plainWords(as(section).kind)} ${plainWords(row.id)}`;
    case 'jarSizes':
    case 'vessels':
    case 'scaleProfiles':
      return as(section).code;
    case 'markets':
      return row.id;
    case 'labelSizes':
      return plainWords(row.id);
    case 'schemaVersion':
    case 'code':
    case 'title':
    case 'notice':
    case 'currency':
    case 'languages':
    case 'base':
    case 'house':
    case 'crossContacts':
    case 'texts':
      return plainWords(row.id);
    default:
      return assertNever(section);
  }
}

export const sectionWord = (section: Section): string => sectionWords[section];

/** "try-first" → "try first", "label.directions" → "label directions" */
export const plainWords = (id: string): string => id.replace(/[-_.]+/g, ' ').trim();

const UNIT_ENDING =
  /(UmolPerKg|UgPerKgDay|MgPer100g|MinorPerKg|MgPerMl|UnitsPerPpm|X1000|X100|Minor|Milli|Count|Units|Hours|Months|Days|Ppm|Cm2|Mg|Ug|Ul|Um|C|G)$/;

/** "dermalAbsorptionPpm" → "dermal absorption" */
export function fieldWord(field: string): string {
  const known = FIELD_WORDS[field];
  if (known !== undefined) return known;
  return field
    .replace(UNIT_ENDING, '')
    .replace(/Ids?$/, '')
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .replace(/\bPh\b/gi, 'pH')
    .replace(/^[A-Z]?[a-z ]+.*$/, (words) => words.toLowerCase().replace(/\bph\b/g, 'pH'));
}
