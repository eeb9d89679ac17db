// Cards that a person has read and found right. A card that changes is a card that somebody must read again.
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { goldenDifference, readGolden } from '#test/support/golden.ts';
import { goldenCards } from '#test/support/golden-cards.ts';

describe('golden cards', () => {
  it.each(Object.entries(goldenCards))('%s', (name, made) => {
    expect(goldenDifference(name, made())).toBeNull();
  });

  it('every file belongs to a card and says why it exists', () => {
    const files = readdirSync(new URL('cards/', import.meta.url)).map((file) => file.replace(/\.txt$/, ''));
    expect(files.sort()).toEqual(Object.keys(goldenCards).sort());
    for (const file of files) expect(readGolden(file)?.header[0]).toMatch(/^Why: \S/);
  });

  it('a card that differs in one figure is told by its line', () => {
    const right = goldenCards['fern-50g']?.() ?? '';
    expect(goldenDifference('fern-50g', right.replace('0.78 g', '0.79 g'))).toMatch(
      /fern-50g\.txt differs\nline 3\n {2}- 1 .*0\.78 g.*\n {2}\+ 1 .*0\.79 g/,
    );
    expect(goldenDifference('no-such-card', right)).toMatch(/does not exist/);
  });
});
