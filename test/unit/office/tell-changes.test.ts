// What the signer reads: every change of every section whole, in words, with names for ids. Nothing is cut and nothing is raw.
import { describe, expect, it } from 'vitest';
import { officeText } from '#app/office/office-text.ts';
import { namesOf } from '#app/office/publish/rulebook-names.ts';
import type { ToldChange } from '#app/office/publish/tell-changes.ts';
import { placeInWords, tellChanges } from '#app/office/publish/tell-changes.ts';
import { diffRulebooks } from '#lib/edition/diff.ts';
import { wordDiff } from '#lib/edition/word-diff.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { aDemoRulebook, TEST_DAY } from '#test/support/a-demo-book.ts';
import { bend } from '#test/support/bend.ts';

const before = openBook(aDemoRulebook());
const book = before.rulebook;
const told = (after: Rulebook): readonly ToldChange[] => tellChanges(diffRulebooks(book, after), before, after, officeText());
const shown = (changes: readonly ToldChange[]): readonly string[] =>
  changes.flatMap(({ section, name, lines }) => lines.map(({ label, was, is }) => `${section}: ${name}. ${label}: ${was} → ${is}`));

describe('a change in words', () => {
  it('a new judgement: the verdict before and after first, then why, then who', () => {
    const grounds = { reason: 'It clumps within a week.', source: 'bench notes', by: 'formulator', on: TEST_DAY };
    const judgement = { id: 'x', firstMaterialId: 'illite', secondMaterialId: 'panthenol', verdict: 'never', ...grounds } as const;
    const [change, ...others] = told({ ...book, pairJudgements: [...book.pairJudgements, judgement] });
    expect(others).toEqual([]);
    expect([change?.section, change?.name, change?.kind]).toEqual(['Judgement', 'Illite, green with Panthenol', 'added']);
    expect(change?.lines.map(({ label, was, is }) => [label, was, is])).toEqual([
      ['Verdict', 'Fine, by its classes', 'Never'],
      ['Reason', null, 'It clumps within a week.'],
      ['Source', null, 'bench notes'],
      ['By', null, 'formulator'],
      ['On', null, '25 Nov 2026'],
    ]);
  });
  it('a changed judgement is one entry, however many of its fields changed, and has one tick', () => {
    const changes = told({
      ...book,
      pairJudgements: book.pairJudgements.map(({ limit: _gone, ...one }) => ({ ...one, verdict: 'fine' as const, reason: 'Seen.' })),
    });
    expect(changes.map(({ name, effect, lookKeys }) => [name, effect, lookKeys])).toEqual([
      [
        'Lactic acid 50 %, part neutral with Illite, green',
        'widens',
        ['pairJudgements/lactic-illite/limit', 'pairJudgements/lactic-illite/verdict'],
      ],
    ]);
    expect(changes[0]?.lines.map(({ label }) => label)).toEqual(['Verdict', 'Limit', 'Reason']);
  });
  it('money has its sign, a level its share', () =>
    expect(shown(told(bend(book, ['actives', 0, 'levels', 1, 'priceMinor'], moneyMinor(275))))).toEqual([
      'Active: Niacinamide. Levels, 2\u00a0%, price: £2 → £2.75',
    ]));
  it('a whole row reads on, without brackets', () =>
    expect(shown(told({ ...book, personCaps: [] }))).toEqual([
      'Personal cap: acid low. Class: acid → null',
      'Personal cap: acid low. Most: 1\u00a0% → null',
    ]));
  it('names stand in place of ids, and lists are told one by one', () =>
    expect(shown(told(bend(book, ['scopes', 0, 'shadeIds'], ['chalk-down'])))).toEqual([
      'Approval or refusal: range 1 (approve). Shades: Chalk Down, Fern Bank, Rust Seam → Chalk Down',
    ]));
  it('a caution’s words stand with the caution, word by word', () => {
    const [change] = told(
      bend(book, ['texts', 'en', 'caution.time'], `${book.texts.en?.['caution.time']?.replace(/\S+$/, 'lukewarm water.')}`),
    );
    expect([change?.section, change?.name, change?.effect, change?.lines[0]?.label]).toEqual([
      'Caution',
      '“time”',
      'cautions',
      'Words, in English',
    ]);
    const pieces = change?.lines[0]?.pieces ?? [];
    expect(pieces.some((piece) => piece.kind === 'gone') && pieces.some((piece) => piece.kind === 'same')).toBe(true);
    expect(pieces.flatMap((piece) => (piece.kind === 'gone' ? [] : piece.text)).join('')).toBe(change?.lines[0]?.is);
  });
});

it('texts that share little are read one after the other', () => {
  const [change] = told(bend(book, ['texts', 'en', 'caution.time'], 'Ask us how long this mask may stay on your face.'));
  expect(change?.lines[0]).toMatchObject({ pieces: null, is: 'Ask us how long this mask may stay on your face.' });
});

it('the place of a fault is told by name', () => {
  const placeOf = (...path: (string | number)[]) => placeInWords(path, book, namesOf([book]), officeText());
  expect([placeOf('markets', 1, 'makerMandate'), placeOf('actives', 0, 'levels', 1), placeOf('base', 'ph'), placeOf('shades')]).toEqual([
    'Market: US, mandate as maker',
    'Active: Niacinamide, levels, 2\u00a0%',
    'Base, pH window',
    'Shade',
  ]);
});

describe('word by word', () => {
  it.each([
    ['Rinse with warm water.', 'Rinse well with warm water.', 'Rinse [+well ]with warm water.'],
    ['Do not use on broken skin.', 'Use on skin.', '[-Do not use ][+Use ]on [-broken ]skin.'],
    ['', 'New', '[+New]'],
    ['Old', '', '[-Old]'],
  ])('%s → %s', (was, is, expected) =>
    expect(
      wordDiff(was, is)
        .map(({ kind, text }) => (kind === 'same' ? text : `[${kind === 'new' ? '+' : '-'}${text}]`))
        .join(''),
    ).toBe(expected),
  );
});

const LONG = `${'word '.repeat(300)}end`;

/** Every place below a value that holds something else than a list or an object. */
function leaves(value: unknown, path: readonly (string | number)[] = []): readonly (readonly (string | number)[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  const entries: readonly (readonly [string | number, unknown])[] = Array.isArray(value)
    ? value.slice(0, 2).map((one, index) => [index, one] as const)
    : Object.entries(value).slice(0, 40);
  return entries.flatMap(([key, member]) => leaves(member, [...path, key]));
}

const at = (value: unknown, path: readonly (string | number)[]): unknown =>
  path.reduce<unknown>((there, key) => (there as Record<string | number, unknown>)[key], value);
const otherThan = (value: unknown): unknown =>
  typeof value === 'number'
    ? value + 1
    : typeof value === 'boolean'
      ? !value
      : /^\d{4}-\d\d-\d\d$/.test(String(value))
        ? '2026-12-31'
        : LONG;

/** Signs of a document where a sentence should stand: braces, quoted keys, names of fields, ids of texts, a cut. */
const RAW = /[{}[\]]|":|…|\b[a-z]+[a-z0-9]*[A-Z][a-z]|Ppm\b|Minor\b|X100|undefined|\bnull\b|NaN/;

function expectReadable(changes: readonly ToldChange[]): void {
  expect(changes).not.toEqual([]);
  for (const { section, name, lines } of changes) {
    expect(lines).not.toEqual([]);
    for (const { label, was, is } of lines) {
      expect(label).not.toBe('');
      for (const words of [section, name, label, was ?? '', is ?? '']) expect(words.replaceAll('pKa', 'acidity')).not.toMatch(RAW);
    }
  }
}

describe.each(Object.keys(book) as (keyof Rulebook)[])('no change of %s is cut or raw', (section) => {
  it('one value at a time', () => {
    for (const path of leaves(book[section], [section])) {
      const is = otherThan(at(book, path));
      const changes = told(bend(book, path, is));
      expectReadable(changes);
      if (is === LONG && !/Ids?$/i.test(String(path.findLast((part) => typeof part === 'string')))) {
        expect(changes.flatMap(({ lines }) => lines.map((line) => line.is))).toEqual([expect.stringContaining(LONG)]);
      }
    }
  });
  it('a whole row that comes, goes, or is emptied', () => {
    const rows: unknown = book[section];
    if (!Array.isArray(rows)) return expectReadable(told(bend(book, [section], emptied(rows))));
    const [first] = rows;
    expectReadable(told(bend(book, [section], [])));
    if (typeof first !== 'object' || !('id' in first)) return;
    expectReadable(told(bend(book, [section, rows.length], { ...first, id: 'one-more' })));
    for (const [field, value] of Object.entries(first))
      if (Array.isArray(value) && value.length > 0) expectReadable(told(bend(book, [section, 0, field], [])));
  });
});

const emptied = (value: unknown): unknown => (typeof value === 'string' ? `${value} more` : typeof value === 'number' ? value + 1 : {});
