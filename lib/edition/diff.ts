// What differs between two rulebooks, row by row, worst first: whatever may let more be made than before must be looked at before it is signed.
// The exact effect is counted elsewhere (impact); this list errs on the side of "may widen".
import { canonicalJson } from '../base/canonical-json.ts';
import { compareBy } from '../base/compare.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { Effect } from './effect.ts';
import { EFFECTS, effectOf } from './effect.ts';

export interface DiffLine {
  /** Stable name of the place: "limits/eu-v-29/maxPpm". */
  readonly key: string;
  readonly section: keyof Rulebook;
  /** The row's id, or null for a section that is one object or value. */
  readonly rowId: string | null;
  readonly kind: 'added' | 'removed' | 'changed';
  /** The field inside the row; null when the whole row came or went. */
  readonly field: string | null;
  readonly before: string | null;
  readonly after: string | null;
  readonly effect: Effect;
}

/** Lines that turn `before` into `after`; empty for equal documents. */
export function diffRulebooks(before: Rulebook, after: Rulebook): readonly DiffLine[] {
  const sections = [...new Set([...Object.keys(before), ...Object.keys(after)])].sort() as (keyof Rulebook)[];
  const cautionTextIds = new Set(
    [...before.cautions, ...after.cautions].flatMap(({ textId, labelTextId }) => [textId, labelTextId ?? textId]),
  );
  const lines = sections.flatMap((section) => sectionLines(section, before[section], after[section], cautionTextIds));
  return lines.sort(
    compareBy(
      (line) => EFFECTS.indexOf(line.effect),
      (line) => line.key,
    ),
  );
}

type Raw = Omit<DiffLine, 'effect'> & { readonly was: unknown; readonly is: unknown; readonly whole: unknown };

function sectionLines(section: keyof Rulebook, was: unknown, is: unknown, cautionTextIds: ReadonlySet<string>): readonly DiffLine[] {
  if (canonicalJson(was) === canonicalJson(is)) return [];
  const raw = isRows(was) && isRows(is) ? rowLines(section, was, is) : fieldLines(section, null, was, is);
  return raw.map(({ was: before, is: after, whole, ...line }) => ({
    ...line,
    effect: effectOf({ ...line, was: before, is: after, whole, isCautionText: cautionTextIds.has(textIdOf(line)) }),
  }));
}

/** "en.caution.eyes" → "caution.eyes": the first part of a place among the texts is the language. */
export const textIdOf = ({ section, field }: Pick<DiffLine, 'section' | 'field'>): string =>
  section === 'texts' && field !== null ? field.slice(field.indexOf('.') + 1) : '';

type Row = { readonly id: string };
const isRows = (value: unknown): value is readonly Row[] =>
  Array.isArray(value) && value.every((row) => typeof row === 'object' && row !== null && 'id' in row);

function rowLines(section: keyof Rulebook, was: readonly Row[], is: readonly Row[]): readonly Raw[] {
  const before = new Map(was.map((row) => [row.id, row]));
  const after = new Map(is.map((row) => [row.id, row]));
  const whole = (rowId: string, kind: 'added' | 'removed', row: Row): Raw => ({
    key: `${section}/${rowId}`,
    section,
    rowId,
    kind,
    field: null,
    before: kind === 'removed' ? canonicalJson(row) : null,
    after: kind === 'added' ? canonicalJson(row) : null,
    was: kind === 'removed' ? row : undefined,
    is: kind === 'added' ? row : undefined,
    whole: row,
  });
  return [
    ...is.filter((row) => !before.has(row.id)).map((row) => whole(row.id, 'added', row)),
    ...was.filter((row) => !after.has(row.id)).map((row) => whole(row.id, 'removed', row)),
    ...is.flatMap((row) => (before.has(row.id) ? fieldLines(section, row.id, before.get(row.id), row) : [])),
  ];
}

/** Fields of one object that differ, down to single values; a list that grew or shrank is one value. */
function fieldLines(section: keyof Rulebook, rowId: string | null, was: unknown, is: unknown): readonly Raw[] {
  const walk = (path: readonly string[], old: unknown, now: unknown): readonly Raw[] => {
    if (canonicalJson(old ?? null) === canonicalJson(now ?? null)) return [];
    if (isList(old) && isList(now) && old.length === now.length)
      return old.flatMap((one, index) => walk([...path, String(index)], one, now[index]));
    if (isPlain(old) && isPlain(now)) {
      return [...new Set([...Object.keys(old), ...Object.keys(now)])].sort().flatMap((key) => walk([...path, key], old[key], now[key]));
    }
    const field = path.length > 0 ? path.join('.') : null;
    const key = [section, rowId, field].filter((each) => each !== null).join('/');
    return [{ key, section, rowId, kind: 'changed', field, before: shown(old), after: shown(now), was: old, is: now, whole: is }];
  };
  return walk([], was, is);
}

const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);
const isPlain = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const shown = (value: unknown): string | null => (value === undefined ? null : typeof value === 'string' ? value : canonicalJson(value));
