// Planted for the type checker: units that meet, casts that make units, and numbers on the wire or in a table without a unit in their name.
import type { UnitRuleName } from '../check-units.ts';

/** One line of code under a fixed opening; `rule` is the one rule it breaks, or null for a near miss. */
type Line = { readonly rule: UnitRuleName | null; readonly name: string; readonly code: string };

const opening = `// Decides one thing.
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';
import type { SharePpm } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';
import type { BigUnit, Unit } from '../units/unit.ts';
type MassDifferenceUg = Unit<'MassDifferenceUg'>;
type ShareE18 = BigUnit<'ShareE18'>;
declare const m: MassUg, n: MassUg, d: MassDifferenceUg, s: SharePpm, p: number, maybe: MassUg | undefined, day: LocalDay;
declare const e: ShareE18, masses: readonly MassUg[], mixed: readonly (MassUg | SharePpm)[], line: { targetMassUg: MassUg; sharePpm: SharePpm };
declare const raw: unknown, rows: readonly number[], json: string, nothing: number | undefined, store: { holder: object };
export type Used = [typeof m, typeof n, typeof d, typeof s, typeof p, typeof maybe, typeof day, typeof e, typeof masses, typeof mixed, typeof line, typeof raw, typeof rows, typeof json, typeof nothing, typeof store];
void massUg;
`;

const mix = (name: string, code: string): Line => ({ rule: 'units meet', name, code: `export const x = ${code};` });
const cast = (name: string, code: string): Line => ({ rule: 'unit cast', name, code });
const fine = (name: string, code: string): Line => ({ rule: null, name, code });

const lines: readonly Line[] = [
  mix('a sum', 'm + s'),
  mix('a difference', 'm - s'),
  mix('a remainder', 'm % s'),
  ...['<', '<=', '>', '>='].map((sign) => mix(`an ordering by ${sign}`, `m ${sign} s`)),
  mix('a unit behind a longer sum', 'p + m - s'),
  mix('a smallest', 'Math.min(m, s)'),
  mix('a largest among numbers', 'Math.max(p, m, 3, s)'),
  mix('a spread list', 'Math.max(...mixed)'),
  mix('a spread list beside another unit', 'Math.max(...masses, s)'),
  mix('a root of squares', 'Math.hypot(m, s)'),
  mix('members of an object', 'line.targetMassUg > line.sharePpm'),
  mix('a mass that may be missing', '(maybe ?? 0) + s'),
  mix('a mass and a difference of masses', 'm + d'),
  mix('exact shares and masses', 'e < m'),
  mix('a unit behind a sum of its own', '(m + n) < s'),
  mix('a unit behind signs and rounding', '-Math.abs(m) < s'),
  ...[
    'm - n',
    'm % n',
    'p + m',
    'm + p',
    '+(m + n)',
    '-(m + n)',
    'p > 0 ? m + n : 0',
    'p > 0 ? 0 : m + n',
    'nothing ?? m + n',
    'p || m + n',
    '(m + n)!',
  ].map((sum) => mix(`a unit behind ${sum}`, `(${sum}) < s`)),
  ...['min', 'max', 'hypot'].map((call) => mix(`a unit behind Math.${call}`, `Math.${call}(m + n, 1) < s`)),
  ...['abs', 'round', 'floor', 'ceil', 'trunc'].map((call) => mix(`a unit behind Math.${call}`, `Math.${call}(m + n) < s`)),
  mix('a unit turned into a plain number', 'Number(m) > s'),
  mix('an exact unit turned into a plain number', 'Number(e) + s'),
  mix('twice a unit', 'm * 2 > s'),
  mix('half of a unit', '(m + n) / 2 > s'),
  mix('a fold that starts with another unit', 'masses.reduce((a: number, b) => a + b, s)'),
  mix('a unit behind a fold', 'masses.reduce((a: number, b) => a + b, 0) > s'),
  mix('an equality behind a cast', '(m as number) === s'),
  mix('an equality with a cast', 'm === (s as number)'),
  mix('a loose equality with a cast', 'm == (s as number)'),
  mix('an inequality of sums', 'm + n !== s'),
  { rule: 'units meet', name: 'a running sum that began as another unit', code: 'let x: number = m;\nx += s;\nexport { x };' },
  { rule: 'units meet', name: 'a running difference', code: 'let x = m + n;\nx -= s;\nexport { x };' },
  { rule: 'units meet', name: 'a running sum of two units', code: 'let x = 0;\nx += m;\nx += s;\nexport { x };' },
  { rule: 'units meet', name: 'a unit behind a constant', code: 'const total = m + n;\nexport const x = total < s;' },
  { rule: 'units meet', name: 'a type parameter bound to a unit', code: 'export const f = <T extends MassUg>(t: T) => t < s;' },
  cast('a cast from a number', 'export const x = p as MassUg;'),
  cast('a cast of a list that may be missing', 'export const x = rows as readonly MassUg[] | null;'),
  cast('a cast of a deep document', 'export const x = raw as { readonly lines: readonly { readonly targetMassUg: MassUg }[] };'),
  cast('an assertion that claims a unit', 'export function f(y: number): asserts y is MassUg {}'),
  cast('a cast through unknown', 'export const x = s as unknown as MassUg;'),
  cast('a cast of a list', 'export const x = rows as readonly MassUg[];'),
  cast('a cast of an object', 'export const x = raw as { readonly targetMassUg: MassUg };'),
  cast('a cast of what was parsed', 'export const x = JSON.parse(json) as Record<string, SharePpm>;'),
  cast('a cast to a day', "export const x = '2026-11-25' as LocalDay;"),
  cast('a guard that claims a unit', 'export const x = (y: number): y is MassUg => y > 0;'),
  fine('sums and orderings of one unit', 'export const x = [m + n, m - n, m < n, Math.max(m, n), Math.min(...masses)];'),
  fine('a unit and a plain number', 'export const x = [m + 1, m < p, Math.max(0, m)];'),
  fine('products and quotients', 'export const x = [m * s, m / s, (m * s) / 1_000_000 + m];'),
  fine('products with what has a name, and counts', 'export const x = [m * p > s, m / p > s, Number(json) > s, m === n, m * 2 > n];'),
  fine('folds of one unit', 'export const x = [masses.reduce((a: number, b) => a + b, m), masses.reduce((a, b) => a + b * s, 0) > s];'),
  fine('running sums of one unit', 'let x: number = m;\nx += n;\nx += 1;\nexport { x };'),
  fine('roots, powers and calls', 'export const x = [Math.sqrt(m + n) < s, Math.pow(m, s), String.fromCharCode(m, s)];'),
  fine('a number that its author calls a plain number', 'const total: number = m + n;\nexport const x = total < s;'),
  fine('a constructor', 'export const x: MassUg = massUg(m + n);'),
  fine('days in order', 'export const x = (other: LocalDay) => day < other;'),
  fine(
    'casts that keep the unit',
    'export const x = [m as MassUg | undefined, masses as MassUg[], Object.fromEntries([["a", m]]) as Record<string, MassUg>];',
  ),
  fine('a cast of a thing that holds units somewhere inside', 'export const x = store as { holder: { at: { targetMassUg: MassUg } } };'),
  fine('a cast to something without units', "export const x = [raw as string, ['a'] as const, m as number];"),
  fine('a guard that narrows', 'export const x = (y: MassUg | undefined): y is MassUg => y !== undefined;'),
];

const contract = (fields: string): string =>
  `// Decides one thing.\nimport { z } from 'zod';\nimport { massUg } from '../units/mass.ts';\nconst loose = z.int();\nexport const planted = z.strictObject({ ${fields} });\nvoid [massUg, loose];\n`;
const table = (columns: string): string =>
  `// Decides one thing.\nimport { customType, integer, real, sqliteTable, text } from 'drizzle-orm/sqlite-core';\nimport { massUg as makeMassUg } from '#lib/units/mass.ts';\nimport type { MassUg } from '#lib/units/mass.ts';\n` +
  `const massUg = customType<{ data: MassUg; driverData: number }>({ dataType: () => 'integer', fromDriver: makeMassUg });\n` +
  `export const planted = sqliteTable('planted', { ${columns} });\nvoid [integer, real, text, massUg];\n`;

const inContract = (rule: UnitRuleName | null, fields: string): PlantedUnit => ({
  rule,
  name: `field ${fields}`,
  folder: 'lib/contracts',
  code: contract(fields),
});
const inTable = (rule: UnitRuleName | null, columns: string): PlantedUnit => ({
  rule,
  name: `column ${columns}`,
  folder: 'db',
  code: table(columns),
});

export type PlantedUnit = { readonly rule: UnitRuleName | null; readonly name: string; readonly folder: string; readonly code: string };

export const plantedUnits: readonly PlantedUnit[] = [
  ...lines.map(({ rule, name, code }) => ({ rule, name, folder: 'lib/weighing', code: `${opening}${code}\n` })),
  {
    rule: 'unit cast',
    name: 'a cast in the contracts',
    folder: 'lib/contracts',
    code: "// Decides one thing.\nimport type { MassUg } from '../units/mass.ts';\nexport const x = 1 as MassUg;\n",
  },
  {
    rule: null,
    name: 'casts and mixtures at home, where units are converted',
    folder: 'lib/units',
    code: "// Decides one thing.\nimport type { MassUg } from './mass.ts';\nimport type { SharePpm } from './share.ts';\nexport const x = 1 as MassUg;\nexport const isLess = (a: MassUg, b: SharePpm) => a < b;\n",
  },
  ...[
    'target: z.number()',
    'mass: z.int().nullable()',
    'weight: z.number().optional()',
    'readings: z.array(z.int())',
    'shares: z.record(z.string(), z.int())',
    'amount: z.union([z.literal(1), z.null(), z.number()])',
    'target: z.int().transform(massUg)',
    'place: z.literal(3)',
    'area: z.int().transform(String)',
    "'exact': z.bigint()",
    'lines: z.array(z.strictObject({ target: z.int() }))',
    'umUg2: z.int()',
    'typed: z.string().transform(Number)',
    'pair: z.tuple([z.int(), z.int()])',
    'loose',
  ].map((fields) => inContract('naked number', fields)),
  ...[
    'targetMassUg: z.int(), phX100Min: z.int(), seq: z.int(), week: z.int().nullable(), version: z.literal(1)',
    'readingsUg: z.array(z.int())',
    'note: z.string(), isDone: z.boolean(), kind: z.literal("a")',
    'lines: z.array(z.strictObject({ targetMassUg: z.int().transform(massUg), name: z.string() }))',
    'sharesPpm: z.record(z.string(), z.int())',
    'target: z.strictObject({ massUg: z.int() })',
    'facts: z.record(z.string(), z.union([z.string(), z.number(), z.null()]))',
    'body: z.json()',
  ].map((fields) => inContract(null, fields)),
  ...["target: integer('target').notNull()", 'weight: real()', 'reading: massUg()', "lid: integer({ mode: 'number' })"].map((columns) =>
    inTable('naked number', columns),
  ),
  ...[
    "targetMassUg: integer('target_mass_ug').notNull(), readingUg: massUg('reading_ug'), seq: integer().notNull()",
    "isOpen: integer({ mode: 'boolean' }), id: text('id').primaryKey(), note: text()",
  ].map((columns) => inTable(null, columns)),
  {
    rule: 'naked number',
    name: 'a fact of a finding, in a type',
    folder: 'lib/base',
    code: '// Decides one thing.\nexport type MoreFacts = { readonly found: number };\n',
  },
  {
    rule: 'naked number',
    name: 'a fact of a finding',
    folder: 'lib/base',
    code: "// Decides one thing.\nexport interface Facts {\n  'cap-exceeded': { found: number };\n}\n",
  },
  {
    rule: null,
    name: 'facts with units',
    folder: 'lib/base',
    code: "// Decides one thing.\nexport interface Facts {\n  'cap-exceeded': { foundPpm: number; cap: string; leastUg: number | null };\n}\nexport interface Entry {\n  check: 1 | 2;\n}\n",
  },
  inTable('column name', "targetMassUg: integer('target_mass_g').notNull()"),
  inTable('column name', "jarId: text('order_id').notNull()"),
];
