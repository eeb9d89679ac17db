// The house stands: no rule is broken on the real tree, every planted crime is caught, and no near miss is.
import { describe, expect, test } from 'vitest';
import type { RuleName } from './check-house.ts';
import { checkHouse, rules, show } from './check-house.ts';
import { readHouse } from './house.ts';
import * as layers from './planted/layers.ts';
import * as purity from './planted/purity.ts';
import * as reach from './planted/reach.ts';
import * as webAndWords from './planted/web-and-words.ts';
import { longFiles, outgrown, staleLeave } from './sizes.ts';
import { readTree } from './tree.ts';

const crimes = [layers, purity, reach, webAndWords].flatMap((each) => each.crimes);
const nearMisses = [layers, purity, reach, webAndWords].flatMap((each) => each.nearMisses);
const filesOf = (files: Readonly<Record<string, string>>): Map<string, string> => new Map(Object.entries(files));
const names = Object.keys(rules) as RuleName[];

test('the real tree breaks no rule', { timeout: 120_000 }, () => {
  const tree = readTree();
  expect(tree.has('lib/units/unit.ts') && tree.has('package.json')).toBe(true);
  expect(checkHouse(tree).map(show)).toEqual([]);
});

describe('planted crimes are caught by their rule and by no other', () => {
  test.each(crimes)('$rule: $name', ({ rule, files }) => {
    const found = checkHouse(filesOf(files));
    expect([...new Set(found.map((each) => each.rule))]).toEqual([rule]);
    const without = names.filter((name) => name !== rule);
    expect(checkHouse(filesOf(files), without)).toEqual([]);
  });
});

describe('near misses pass', () => {
  test.each(nearMisses)('$rule: $name', ({ files }) => {
    expect(checkHouse(filesOf(files)).map(show)).toEqual([]);
  });
});

test('a finding names the file and the line', () => {
  const code =
    "// Decides one thing.\nimport { a } from './a.ts';\nimport { z } from 'zod';\n\n/** The time. */\nexport const now = () => Date.now();\n// TO" +
    'DO\nexport const x = [a, z];\n';
  const found = checkHouse(new Map([['lib/label/x.ts', code]]));
  expect(found.map(({ path, line, rule }) => `${path}:${line} ${rule}`).toSorted()).toEqual([
    'lib/label/x.ts:2 lost import',
    'lib/label/x.ts:3 import',
    'lib/label/x.ts:6 clock',
    'lib/label/x.ts:7 banned word',
  ]);
  const migration = new Map([['db/migrations/0000_a.sql', 'CREATE TABLE a (\n  at INTEGER DEFAULT CURRENT_TIMESTAMP\n);\n']]);
  expect(checkHouse(migration)[0]?.line).toBe(2);
});

test('every rule has a crime and a near miss', () => {
  const sized: RuleName[] = ['size list'];
  const tried = (list: readonly { rule: RuleName }[]): Set<RuleName> => new Set([...list.map(({ rule }) => rule), ...sized]);
  expect(names.filter((name) => !tried(crimes).has(name) || !tried(nearMisses).has(name))).toEqual([]);
});

describe('the list of outgrown files may only shrink', () => {
  const house = readHouse(
    new Map([
      ['lib/law/x.ts', 'x;\n'.repeat(320)],
      ['lib/law/y.ts', 'y;\n'.repeat(300)],
    ]),
  );
  test('it holds nothing', () => expect(Object.keys(outgrown)).toEqual([]));
  test('an entry lets its file be as long as it is, and no longer', () => {
    expect(longFiles(house, { 'lib/law/x.ts': 320 })).toEqual([]);
    expect(longFiles(house, { 'lib/law/x.ts': 319 })).toHaveLength(1);
  });
  test('an entry that is no longer needed, or too large, or has no file is stale', () => {
    expect(staleLeave(house, { 'lib/law/x.ts': 320 })).toEqual([]);
    expect(staleLeave(house, { 'lib/law/x.ts': 321 })).toHaveLength(1);
    expect(staleLeave(house, { 'lib/law/y.ts': 300 })).toHaveLength(1);
    expect(staleLeave(house, { 'lib/law/gone.ts': 400 })).toHaveLength(1);
  });
});
