// Planted: what pure code may not take from the machine, and the capabilities that live in one place each.
import type { Planted } from './planted.ts';
import { planted, said } from './planted.ts';

const lib = (code: string): Record<string, string> => ({ 'lib/label/x.ts': said(code) });
const flow = (code: string): Record<string, string> => ({ 'app/_flows/x.ts': `${code}\n` });
const on = (path: string, code: string): Record<string, string> => ({ [path]: `${code}\n` });

const strange = [
  'fetch',
  'console',
  'setTimeout',
  'setInterval',
  'queueMicrotask',
  'globalThis',
  'window',
  'Buffer',
  'Reflect',
  'Error',
  'Atomics',
  'WeakRef',
];

export const crimes: readonly Planted[] = [
  ...strange.map((name) => planted('global', `lib using ${name}`, lib(`export const x = () => ${name};`))),
  planted('global', 'base using fetch', on('lib/base/x.ts', said('export const x = () => fetch;'))),
  planted('global', 'a global as the head of a type', lib('export type X = NodeJS.Timeout;')),
  planted('global', 'a global as a default in a pattern', lib('export const x = ({ y = fetch }: { y?: unknown }) => y;')),
  planted('global', 'lib promising', lib('export const x = (y: Promise<number>) => y;')),
  planted('global', 'a flow writing to the console', flow("export const x = () => console.log('x');")),
  planted('global', 'a global in a shorthand', lib('export const x = () => ({ fetch });')),
  planted('import.meta', 'lib asking where it runs', lib('export const x = () => import.meta.url;')),
  planted('async', 'an async function in lib', lib('export async function x() {\n  return 1;\n}')),
  planted('async', 'an async arrow in a flow', flow('export const x = async () => 1;')),
  planted('async', 'await at the top', flow('export const x = await 1;')),
  planted('async', 'a loop that waits', flow('for await (const x of [1]) void x;')),
  planted(
    'catch',
    'a flow that catches to go on',
    flow('export function x(y: () => number) {\n  try {\n    return y();\n  } catch {\n    return 0;\n  }\n}'),
  ),
  planted('state', 'a let at the top', lib('let x = 0;\nexport const y = () => (x += 1);')),
  planted('state', 'an exported let', flow('export let x = 0;')),
  planted('state', 'a map to be filled', lib('const seen = new Map<string, number>();\nexport const y = () => seen.set("a", 1);')),
  planted('state', 'a list to be filled', lib('const seen: string[] = [];\nexport const y = () => seen.push("a");')),
  ...['new Set<string>()', 'new WeakMap<object, number>()', 'new Array<number>()', '{}', '[]'].map((made) =>
    planted('state', `${made} at the top`, lib(`const kept = ${made};\nexport const y = () => kept;`)),
  ),
  planted(
    'state',
    'a map of readonly lists to be filled',
    lib('const kept: Map<string, readonly string[]> = new Map();\nexport const y = () => kept;'),
  ),
  planted('class', 'a class in a noun', lib('export class Label {}')),
  planted('class', 'a class in base that is no fault', on('lib/base/x.ts', said('export class Bag extends Map {}'))),
  ...`getFullYear getMonth getDate getDay getHours getMinutes getSeconds getTimezoneOffset setHours toDateString toTimeString toLocaleString toLocaleDateString
    toLocaleTimeString toLocaleLowerCase toLocaleUpperCase`
    .split(/\s+/)
    .map((method) => planted('host setting', method, lib(`export const x = (at: any) => at.${method}();`))),
  planted('host setting', 'a date in the zone of the machine', lib('export const x = () => new Date(2026, 10, 25);')),

  planted('host setting', 'an order that depends on the machine', lib("export const x = (a: string) => a.localeCompare('b', 'en');")),
  planted('host setting', 'Intl without a language', lib('export const x = () => new Intl.NumberFormat();')),
  ...['Date.now()', 'new Date()', 'Date()', '[Date]', 'new Map(Date)', 'undefined ?? Date'].map((code) =>
    planted('clock', `lib reading ${code}`, lib(`export const x = () => ${code};`)),
  ),
  planted('clock', 'a flow reading the clock', flow('export const x = () => new Date().getTime();')),
  planted('clock', 'db reading the clock', on('db/jars.ts', 'export const x = () => Date.now();')),
  planted('clock', 'a screen reading the clock', on('app/bench/page.tsx', 'export const x = () => Date.now();')),
  planted('clock', 'another file of the server reading the clock', on('app/_server/services.ts', 'export const x = () => Date.now();')),
  planted('clock', 'the clock by another name', on('app/_server/services.ts', 'const { now } = Date;\nexport const x = now;')),
  planted('clock', 'the performance clock', on('app/_ui/x.tsx', 'export const x = () => performance.now();')),
  ...['process.hrtime()', 'process.uptime()', 'Temporal.Now.instant()'].map((read) =>
    planted('clock', read, on('app/_cli/x.ts', `export const x = () => ${read};`)),
  ),
  planted(
    'sql capability',
    'a migration with a default of now',
    on('db/migrations/0000_a.sql', 'CREATE TABLE a (at INTEGER DEFAULT (unixepoch())) STRICT;'),
  ),
  ...['CURRENT_TIMESTAMP', 'CURRENT_DATE', 'CURRENT_TIME', "datetime('now')", 'random()'].map((read) =>
    planted('sql capability', `a query with ${read}`, on('db/jars.ts', `export const x = "SELECT ${read}";`)),
  ),
  planted(
    'sql capability',
    'a migration that throws dice',
    on('db/migrations/0000_a.sql', 'CREATE TABLE a (id BLOB DEFAULT (randomblob(16))) STRICT;'),
  ),
  planted(
    'sql capability',
    'a query that throws dice',
    on('db/jars.ts', `export const x = (t: string) => \`SELECT hex(randomblob(8)) FROM \${t}\`;`),
  ),
  planted('dice', 'lib throwing dice', lib('export const x = () => Math.random();')),
  planted(
    'dice',
    'dice by another name',
    on('app/bench/x-screen.tsx', "'use client';\nconst { random } = Math;\nexport const x = random;"),
  ),
  ...`randomUUID randomUUIDv7 randomBytes randomInt randomFill randomFillSync getRandomValues webcrypto generateKey generateKeySync generateKeyPair generateKeyPairSync`
    .split(/\s+/)
    .map((name) => planted('dice', `db with ${name}`, on('db/jars.ts', `export const x = (c: any) => c.${name};`))),
  planted('environment', 'a screen reading the environment', on('app/office/page.tsx', 'export const x = process.env.A;')),
  planted('environment', 'db reading the environment', on('db/open.ts', 'export const x = process.env.JARWRIGHT_DATA;')),
  planted('environment', 'a screen asking for its process', on('app/office/page.tsx', 'export const x = process.pid;')),
  planted('environment', 'the environment by another name', on('db/open.ts', 'const { env } = process;\nexport const x = env;')),
  planted(
    'driver',
    'a second place that opens a database',
    on('db/jars.ts', "import Database from 'better-sqlite3';\nexport const x = () => new Database('a');"),
  ),
  ...[
    'SELECT id FROM jar',
    'INSERT INTO jar VALUES (1)',
    'INSERT OR IGNORE INTO jar VALUES (1)',
    'UPDATE jar SET x = 1',
    'DELETE FROM jar',
    'CREATE TABLE jar (id)',
    'CREATE UNIQUE INDEX a ON jar (id)',
    'DROP TRIGGER a',
    'ALTER TABLE jar ADD x',
    'CREATE VIEW a AS SELECT 1',
    'PRAGMA user_version',
    'BEGIN IMMEDIATE',
    'BEGIN EXCLUSIVE',
    'insert into jar values (1)',
    'update jar set x = 1',
    'delete from jar',
    'pragma user_version',
    'begin immediate',
    'begin exclusive',
    '  select id\\n from jar',
  ].map((statement) => planted('sql', `${statement} in a flow`, flow(`export const x = '${statement}';`))),
  planted('sql', 'SQL behind a hole of a template', flow(`export const x = (a: string) => \`\${a} DELETE FROM jar\`;`)),
  planted(
    'sql',
    'SQL in a template in a handler',
    on('app/api/a/route.ts', `export const x = (id: string) => \`DELETE FROM jar WHERE id = \${id}\`;`),
  ),
  planted('sql', 'SQL in lower case', on('app/_cli/x.ts', "export const x = 'select id from jar';")),
  planted(
    'sql',
    'a query prepared outside db',
    on('app/_cli/x.ts', 'export const x = (db: { prepare(q: string): void }, q: string) => db.prepare(q);'),
  ),
];

export const nearMisses: readonly Planted[] = [
  planted(
    'global',
    'names of the file itself, members and keys',
    lib('type Process = { fetch: number };\nexport const x = (process: Process) => process.fetch + { console: 1 }.console;'),
  ),
  planted(
    'global',
    'names of the language',
    lib('export const x = (ids: ReadonlySet<string>): readonly string[] => Object.keys(Array.from(ids));'),
  ),
  planted('global', 'names declared in every way there is', {
    ...lib(
      `import type * as console from '../base/a.ts';
import type { a as fetch } from '../base/a.ts';
export function Buffer<window>(process: window) {
  const { b: self } = { b: process };
  name: for (;;) break name;
  return [self, Buffer, function Atomics() { return Atomics; }];
}
export interface Event { location: Event; close(): void }
export type Worker = Worker[] | console.A | Event | typeof fetch;`,
    ),
    'lib/base/a.ts': said('export type A = 1;\nexport const a = 1;'),
  }),
  planted('global', 'a label, a tuple and a constant', lib("export type T = [fetch: number];\nexport const x = ['a'] as const;")),
  planted('global', 'the console of a command', on('app/_cli/verify.ts', "export const x = () => console.log('x');")),
  planted('import.meta', 'the server asking where it runs', on('app/_server/x.ts', 'export const x = () => import.meta.url;')),
  planted('async', 'a loop that does not wait', flow('export function x(y: readonly number[]) {\n  for (const z of y) void z;\n}')),
  planted('async', 'an async server', on('app/_server/x.ts', 'export async function x() {\n  await 1;\n}')),
  planted(
    'catch',
    'try with finally',
    flow('export function x(y: () => number, z: () => void) {\n  try {\n    return y();\n  } finally {\n    z();\n  }\n}'),
  ),
  planted(
    'state',
    'things at the top that hold no state',
    lib('const text = new TextEncoder();\nconst one = { a: 1 };\nexport const x = [text, one];'),
  ),
  planted(
    'state',
    'a let inside a function, constants at the top',
    lib(
      "const names = new Map([['a', 1]]);\nconst none: readonly string[] = [];\nexport function x() {\n  let y = 0;\n  y += names.size + none.length;\n  return y;\n}",
    ),
  ),
  planted('class', 'the fault of base', on('lib/base/invariant.ts', said('export class Fault extends Error {}'))),
  planted(
    'host setting',
    'UTC, a named zone and a named language',
    lib(
      "export const x = (at: Date, zone: string) => [at.getUTCHours(), Date.UTC(2026, 10, 25), new Intl.DateTimeFormat('en', { timeZone: zone }), at.toLocaleString('en')];",
    ),
  ),
  planted(
    'clock',
    'reckoning with an instant that was handed in',
    lib("export const x = (at: number) => [new Date(at).toISOString(), Date.parse('2026-11-25'), at instanceof Date];"),
  ),
  planted('clock', 'the one file that reads the clock, the launcher and a test', {
    'app/_server/clock.ts': 'export const now = () => Date.now();\n',
    'app/_server/ready.mjs': 'export const now = () => Date.now();\n',
    'test/bench/a.ts': 'export const now = () => performance.now();\n',
    'test/support/b.ts':
      "import Database from 'better-sqlite3';\nexport const x = () => [Date.now(), Math.random(), process.env.A, new Database('a').prepare('SELECT id FROM jar')];\n",
  }),
  planted(
    'sql capability',
    'a column whose name holds the word',
    on('db/jars.ts', 'export const x = "SELECT now_ms, random_seed_no FROM a WHERE at < ?";'),
  ),
  planted('dice', 'ids made at the edge; arithmetic in lib', {
    'app/_server/services.ts': "import { randomUUID } from 'node:crypto';\nexport const x = () => randomUUID();\n",
    'app/_cli/demo.ts': 'export const x = () => Math.random();\n',
    'app/_client/request-key.ts': 'export const x = () => crypto.getRandomValues(new Uint8Array(16));\n',
    ...lib('export const x = (a: number) => Math.round(a);'),
  }),
  planted('environment', 'the server reads its settings; db its process number', {
    'app/_server/settings.ts': 'export const x = process.env.JARWRIGHT_DATA;\n',
    'db/lock.ts': 'export const x = process.pid;\n',
    'db/driver-guard.ts': 'export const x = process.versions;\n',
    'app/office/page.tsx': 'export const x = (process: { env: string }) => process.env;\n',
  }),
  planted('driver', 'open and lock, and a type elsewhere', {
    'db/open.ts': "import Database from 'better-sqlite3';\nexport const x = () => new Database('a');\n",
    'db/lock.ts': "import Database from 'better-sqlite3';\nexport const x = () => new Database('b');\n",
    'db/work.ts': "import type Database from 'better-sqlite3';\nexport type X = Database.Database;\n",
  }),
  planted('sql', 'plain words, and SQL in db', {
    'app/_ui/text/en.ts':
      "export const x = ['Select one shade from the list', 'Update the lot, set it aside', 'Delete from the queue', 'pragmatic'];\n",
    'db/jars.ts': "export const x = 'SELECT id FROM jar';\n",
    'app/_server/x.ts': 'export const x = (next: { prepare(): void }) => [/a/.exec("a"), next.prepare()];\n',
  }),
];
