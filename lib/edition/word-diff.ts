// Two texts word by word: what stayed, what went, what came. The longest common sequence of words decides, and nothing is left out.

export interface Piece {
  readonly kind: 'same' | 'gone' | 'new';
  readonly text: string;
}

/** The pieces that are not gone, one after the other, are the new text; those that are not new are the old one, but for white space. */
export function wordDiff(was: string, is: string): readonly Piece[] {
  const old = wordsOf(was);
  const now = wordsOf(is);
  const common = commonCounts(old, now);
  const pieces: Piece[] = [];
  const add = (kind: Piece['kind'], text: string): void => {
    const last = pieces.at(-1);
    if (last?.kind === kind) pieces[pieces.length - 1] = { kind, text: last.text + text };
    else pieces.push({ kind, text });
  };
  let [i, j] = [0, 0];
  while (i < old.length || j < now.length) {
    const [gone, come] = [old[i], now[j]];
    if (gone !== undefined && come !== undefined && gone.trim() === come.trim()) {
      add('same', come);
      i += 1;
      j += 1;
    } else if (come === undefined || (gone !== undefined && at(common, i + 1, j) >= at(common, i, j + 1))) {
      add('gone', gone ?? '');
      i += 1;
    } else {
      add('new', come);
      j += 1;
    }
  }
  return pieces;
}

/** Each word with the white space behind it. */
const wordsOf = (text: string): readonly string[] => text.match(/^\s+|\S+\s*/g) ?? [];

const at = (table: readonly (readonly number[])[], i: number, j: number): number => table[i]?.[j] ?? 0;

/** How many words the rests of both texts share from each place on. */
function commonCounts(old: readonly string[], now: readonly string[]): readonly (readonly number[])[] {
  const table = Array.from({ length: old.length + 1 }, () => new Array<number>(now.length + 1).fill(0));
  for (let i = old.length - 1; i >= 0; i -= 1) {
    const row = table[i] ?? [];
    for (let j = now.length - 1; j >= 0; j -= 1) {
      row[j] = old[i]?.trim() === now[j]?.trim() ? at(table, i + 1, j + 1) + 1 : Math.max(at(table, i + 1, j), at(table, i, j + 1));
    }
  }
  return table;
}
