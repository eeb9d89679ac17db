// Units on the real tree and on planted files, with one TypeScript program for both.
import { beforeAll, describe, expect, test } from 'vitest';
import { show } from './check-house.ts';
import type { UnitRuleName } from './check-units.ts';
import { checkUnits, unitRules } from './check-units.ts';
import type { Finding } from './house.ts';
import { plantedUnits } from './planted/units.ts';
import { checkedProgram } from './program.ts';
import { endsInUnit, suffixes } from './suffixes.ts';
import { readTree } from './tree.ts';

const plantedPath = (folder: string, at: number): string => `${folder}/planted-${at}.ts`;
let found: (Finding & { readonly rule: UnitRuleName })[] = [];
let errorsIn: (path: string) => readonly string[] = () => [];

beforeAll(() => {
  const real = [...readTree().keys()].filter((path) => /^(app|lib|db)\/.*\.tsx?$/.test(path));
  expect(real).toContain('lib/units/unit.ts');
  const planted = Object.fromEntries(plantedUnits.map(({ folder, code }, at) => [plantedPath(folder, at), code]));
  const checked = checkedProgram(real, planted);
  expect(checked.sources.size).toBe(real.length + plantedUnits.length);
  found = checkUnits(checked);
  errorsIn = checked.errorsIn;
}, 120_000);

test('the real tree breaks no rule of units', () => {
  const planted = new Set(plantedUnits.map(({ folder }, at) => plantedPath(folder, at)));
  expect(found.filter(({ path }) => !planted.has(path)).map(show)).toEqual([]);
});

describe('planted units', () => {
  test.each(plantedUnits.map((each, at) => ({ ...each, at })))('$rule: $name', ({ rule, folder, at }) => {
    expect(errorsIn(plantedPath(folder, at))).toEqual([]);
    const here = found.filter(({ path }) => path === plantedPath(folder, at));
    expect([...new Set(here.map((each) => each.rule))], here.map(show).join('\n')).toEqual(rule === null ? [] : [rule]);
  });

  test('every rule is tried, and so is its absence', () => {
    const tried = new Set(plantedUnits.map(({ rule }) => rule));
    expect([...(Object.keys(unitRules) as UnitRuleName[]), null].filter((rule) => !tried.has(rule))).toEqual([]);
  });
});

describe('unit suffixes', () => {
  test.each(['targetMassUg', 'phX100Min', 'limitPpmMax', 'seq', 'week', 'orderNo', 'temperatureC', 'irritancyUnits', 'acidityUmolPerKg'])(
    '%s says its unit',
    (name) => {
      expect(endsInUnit(name)).toBe(true);
    },
  );
  test.each(['target', 'mass', 'weight', 'amount', 'bug', 'lid', 'casino', 'min', 'Ug', 'aBC', 'g', 'c', 'ums'])('%s does not', (name) => {
    expect(endsInUnit(name)).toBe(false);
  });
  test('each is listed once', () => expect(new Set(suffixes).size).toBe(suffixes.length));
});
