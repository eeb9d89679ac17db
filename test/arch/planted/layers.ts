// Planted: rooms and the table of imports.
import type { Planted } from './planted.ts';
import { planted, said } from './planted.ts';

const share = { 'lib/units/share.ts': said('export const whole = 1;') };
const flow = {
  'app/_flows/show-shop.ts': "import { whole } from '#lib/units/share.ts';\nexport const showShop = () => whole;\n",
  ...share,
};
const verdict = { 'lib/verdict/judge.ts': said('export type Verdict = 1;\nexport const judge = () => 1;') };
const open = { 'db/open.ts': 'export const open = 1;\n' };

export const crimes: readonly Planted[] = [
  planted('room', 'a new folder in lib', { 'lib/pricing/price.ts': said('export const x = 1;') }),
  planted('room', 'a new folder in app', { 'app/mobile/page.tsx': 'export const x = 1;\n' }),
  planted('room', 'markup in lib', { 'lib/label/label.tsx': 'export const x = 1;\n' }),
  planted('room', 'a folder below db', { 'db/queries/jars.ts': 'export const x = 1;\n' }),
  planted('room', 'a handler that is not called route', { 'app/api/orders/handler.ts': 'export const x = 1;\n' }),
  planted('room', 'an unknown kind of test', { 'test/misfit/x.test.ts': 'export const x = 1;\n' }),
  ...['src/a.ts', 'tools/a.ts', 'vitest.config.ts', 'notes.md', 'docs/a.md'].map((path) =>
    planted('room', `${path} at the top`, { [path]: 'export const x = 1;\n' }),
  ),
  planted('import', 'lib importing db', { 'lib/units/x.ts': said("import { open } from '#db/open.ts';\nexport const x = open;"), ...open }),
  planted('import', 'lib importing a type of app', {
    'lib/review/x.ts': said("import type { A } from '#app/_flows/a.ts';\nexport type X = A;"),
    'app/_flows/a.ts': 'export type A = 1;\n',
  }),
  planted('import', 'a lower rank importing a higher', {
    'lib/chemistry/x.ts': said("import { judge } from '../verdict/judge.ts';\nexport const x = judge;"),
    ...verdict,
  }),
  planted('import', 'base importing units', {
    'lib/base/x.ts': said("import { whole } from '../units/share.ts';\nexport const x = whole;"),
    ...share,
  }),
  planted('import', 'a noun using zod', { 'lib/rulebook/x.ts': said("import { z } from 'zod';\nexport const x = z;") }),
  planted('import', 'a noun importing a contract', {
    'lib/review/x.ts': said("import { a } from '../contracts/a.ts';\nexport const x = a;"),
    'lib/contracts/a.ts': said('export const a = 1;'),
  }),
  planted('import', 'lib using a built-in of node', {
    'lib/edition/x.ts': said("import { createHash } from 'node:crypto';\nexport const x = createHash;"),
  }),
  planted('import', 'a lazy import', {
    'app/kiosk/page.tsx': "export async function load() {\n  return (await import('#db/open.ts')).open;\n}\n",
    ...open,
  }),
  planted('import', 'a re-export of another room', {
    'app/_flows/x.ts': "export { serve } from '#app/_server/serve.ts';\nexport const x = 1;\n",
    'app/_server/serve.ts': 'export const serve = 1;\n',
  }),
  planted('import', 'a file of the server holding the clock', {
    'app/_server/x.ts': "import { readClock } from './clock.ts';\nexport const x = readClock;\n",
    'app/_server/clock.ts': 'export const readClock = 1;\n',
  }),
  planted('import', 'a screen holding the clock', {
    'app/kiosk/page.tsx': "import { readClock } from '#app/_server/clock.ts';\nexport const x = readClock;\n",
    'app/_server/clock.ts': 'export const readClock = 1;\n',
  }),
  planted('import', 'a page that imports the starting file', {
    'app/kiosk/page.tsx': "import { serve } from '#app/_server/serve.ts';\nexport const x = serve;\n",
    'app/_server/serve.ts': 'export const serve = 1;\n',
  }),
  planted('import', 'the server computing in its own thread', {
    'app/_server/x.ts': "import { jobHandlers } from './job-handlers.ts';\nexport const x = jobHandlers;\n",
    'app/_server/job-handlers.ts': 'export const jobHandlers = 1;\n',
  }),
  planted('import', 'a require', { 'app/_server/x.ts': "export const x = require('drizzle-orm');\n" }),
  planted('import', 'an import type in a type position', {
    'app/api/a/route.ts': "export type X = import('#db/open.ts').Open;\n",
    'db/open.ts': 'export type Open = 1;\n',
  }),
  planted('import', 'db importing a contract that is not the rulebook', {
    'db/jars.ts': "import { a } from '#lib/contracts/place-order.ts';\nexport const x = a;\n",
    'lib/contracts/place-order.ts': said('export const a = 1;'),
  }),
  planted('import', 'a flow using next', { 'app/_flows/x.ts': "import { cookies } from 'next/headers';\nexport const x = cookies;\n" }),
  planted('import', 'a flow using react', { 'app/_flows/x.ts': "import { cache } from 'react';\nexport const x = cache;\n" }),
  planted('import', 'a flow using zod', { 'app/_flows/x.ts': "import { z } from 'zod';\nexport const x = z;\n" }),
  planted('import', 'a flow using drizzle', { 'app/_flows/x.ts': "import { eq } from 'drizzle-orm';\nexport const x = eq;\n" }),
  planted('import', 'a flow importing a contract', {
    'app/_flows/x.ts': "import { a } from '#lib/contracts/a.ts';\nexport const x = a;\n",
    'lib/contracts/a.ts': said('export const a = 1;'),
  }),
  planted('import', 'a handler importing db', {
    'app/api/a/route.ts': "import { open } from '#db/open.ts';\nexport const GET = () => open;\n",
    ...open,
  }),
  planted('import', 'a handler using next for more than types', {
    'app/api/a/route.ts': "import { NextResponse } from 'next/server';\nexport const GET = () => NextResponse;\n",
  }),
  ...['kiosk', 'bench', 'office', 'sign-in', 'jar', '_print'].map((screen) =>
    planted('import', `a page of ${screen} opening the database`, {
      [`app/${screen}/page.tsx`]: "import { open } from '#db/open.ts';\nexport const x = open;\n",
      ...open,
    }),
  ),
  planted('import', 'the server deciding with the engine', {
    'app/_server/services.ts': "import { judge } from '#lib/verdict/judge.ts';\nexport const x = judge;\n",
    ...verdict,
  }),
  planted('import', 'the server importing a flow', {
    'app/_server/services.ts': "import { showShop } from '#app/_flows/show-shop.ts';\nexport const x = showShop;\n",
    ...flow,
  }),
  planted('import', 'the launcher using a package', { 'app/_server/ready.mjs': "import next from 'next';\nexport const x = next;\n" }),
  planted('import', 'a shared piece importing a flow', {
    'app/_ui/swatch.tsx': "import { showShop } from '#app/_flows/show-shop.ts';\nexport const x = showShop;\n",
    ...flow,
  }),
  planted('import', 'browser code importing a contract for more than types', {
    'app/_client/send.ts': "import { a } from '#lib/contracts/a.ts';\nexport const x = a;\n",
    'lib/contracts/a.ts': said('export const a = 1;'),
  }),
  planted('import', 'browser code naming one type inside an import that stays', {
    'app/_client/send.ts': "import { type A } from '#lib/contracts/a.ts';\nexport type X = A;\n",
    'lib/contracts/a.ts': said('export type A = 1;'),
  }),
  planted('import', 'browser code importing the verdict, type or not', {
    'app/bench/judge-screen.tsx': "'use client';\nimport type { Verdict } from '#lib/verdict/judge.ts';\nexport type X = Verdict;\n",
    ...verdict,
  }),
  planted('import', 'browser code importing a noun file that is not for display', {
    'app/bench/x-screen.tsx': "'use client';\nimport { plan } from '#lib/weighing/plan.ts';\nexport const x = plan;\n",
    'lib/weighing/plan.ts': said('export const plan = 1;'),
  }),
  planted('import', 'browser code of a shared folder importing a screen', {
    'app/_client/x.ts': "import { y } from '../kiosk/y.ts';\nexport const x = y;\n",
    'app/kiosk/y.ts': 'export const y = 1;\n',
  }),
  planted('import', 'a form of the office importing code of the diff', {
    'app/office/x-form.tsx': "'use client';\nimport { diff } from '#lib/edition/diff.ts';\nexport const x = diff;\n",
    'lib/edition/diff.ts': said('export const diff = 1;'),
  }),
  ...['lib/answers/person.ts', 'lib/colour/mixing.ts', 'lib/rulebook/material.ts'].map((path) =>
    planted('import', `browser code importing ${path}`, {
      'app/_client/x.ts': `import { a } from '#${path}';\nexport const x = a;\n`,
      [path]: said('export const a = 1;'),
    }),
  ),
  planted('import', 'an old form of import', { 'app/_flows/x.ts': "import x = require('drizzle-orm');\nexport const y = x;\n" }),
  planted('import', 'an old form of import, of types', {
    'app/api/a/route.ts': "import type x = require('better-sqlite3');\nexport type Y = x;\n",
  }),
  planted('import', 'a passed-on type', {
    'app/_flows/x.ts': "export type { A } from '#lib/contracts/a.ts';\nexport const x = 1;\n",
    'lib/contracts/a.ts': said('export type A = 1;'),
  }),
  ...['require.resolve', 'import.meta.resolve'].map((load) =>
    planted('import', `an address found by ${load}`, { 'app/_server/x.ts': `export const x = ${load}('drizzle-orm');\n` }),
  ),
  planted('import', 'a worker started in a room that may not know it', {
    'app/bench/page.tsx': "export const x = new URL('#db/open.ts', import.meta.url);\n",
    ...open,
  }),
  planted('import', 'an unlisted package', { 'app/office/page.tsx': "import { chart } from 'some-charts';\nexport const x = chart;\n" }),
  planted('import', 'production importing test code', {
    'app/_cli/demo.ts': "import { shop } from '#test/support/shop.ts';\nexport const x = shop;\n",
    'test/support/shop.ts': 'export const shop = 1;\n',
  }),
  planted('import', 'one layer of tests importing another', {
    'test/unit/a.test.ts': "import { b } from '../flow/b.ts';\nexport const x = b;\n",
    'test/flow/b.ts': 'export const b = 1;\n',
  }),
  planted('lost import', 'a computed import', { 'app/_server/load.ts': 'export const load = (name: string) => import(name);\n' }),
  planted('lost import', 'the address of a launcher that is not there', {
    'test/support/x.ts': "export const x = new URL('../../app/_server/ready.mjs', import.meta.url);\n",
  }),
  planted('lost import', 'an import type whose target is no text', { 'app/_server/x.ts': 'export type X = import(number).Y;\n' }),
  planted('lost import', 'an import without its ending', {
    'lib/units/x.ts': said("import { whole } from './share';\nexport const x = whole;"),
    ...share,
  }),
  planted('lost import', 'a reference comment', { 'app/_server/x.ts': '/// <reference path="../other.d.ts" />\nexport const x = 1;\n' }),
  planted('climbing import', 'a relative path out of a top folder', {
    'db/jars.ts': "import { whole } from '../lib/units/share.ts';\nexport const x = whole;\n",
    ...share,
  }),
  planted('unit made abroad', 'a noun making its own unit', {
    'lib/label/x.ts': said("import { wholeUnit } from '../units/unit.ts';\nexport const inkUl = wholeUnit('InkUl');"),
    'lib/units/unit.ts': said('export const wholeUnit = (name: string) => name;'),
  }),
];

export const nearMisses: readonly Planted[] = [
  planted('room', 'files of every kind in their rooms', {
    'app/layout.tsx': 'export const x = 1;\n',
    'app/jar/[code]/page.tsx': 'export const x = 1;\n',
    'app/api/orders/route.ts': 'export const x = 1;\n',
    'db/migrations/0000_first_Tables.sql': 'CREATE TABLE jar (id TEXT PRIMARY KEY) STRICT;\n',
    'public/mark.svg': '<svg/>\n',
    '.ci/run': 'npm test\n',
    'README.md': '# Read me\n',
  }),
  planted('import', 'a higher rank importing a lower', {
    'lib/variants/x.ts': said("import { judge } from '../verdict/judge.ts';\nexport const x = judge;"),
    ...verdict,
  }),
  planted('import', 'a contract using zod and a noun', {
    'lib/contracts/x.ts': said(
      "import { z } from 'zod';\nimport type { Verdict } from '../verdict/judge.ts';\nexport const x = z;\nexport type X = Verdict;",
    ),
    ...verdict,
  }),
  planted('import', 'db importing the rulebook contract, drizzle and a noun', {
    'db/editions.ts':
      "import { eq } from 'drizzle-orm/sqlite-core';\nimport { a } from '#lib/contracts/rulebook.ts';\nexport const x = [eq, a];\n",
    'lib/contracts/rulebook.ts': said('export const a = 1;'),
  }),
  planted('import', 'a thin handler', {
    'app/api/a/route.ts':
      "import type { NextRequest } from 'next/server';\nimport { showShop } from '#app/_flows/show-shop.ts';\nexport const GET = (_: NextRequest) => showShop();\n",
    ...flow,
  }),
  planted('import', 'browser code with types of a contract and a file for display', {
    'app/bench/weigh-screen.tsx':
      "'use client';\nimport type { A } from '#lib/contracts/a.ts';\nimport { band } from '#lib/weighing/band.ts';\nexport const x: A = band;\n",
    'lib/contracts/a.ts': said("import { z } from 'zod';\nexport type A = 1;\nexport const a = z;"),
    'lib/weighing/band.ts': said("import { whole } from '../units/share.ts';\nexport const band = whole;"),
    ...share,
  }),
  planted('import', 'the starting file with the clock and the demo', {
    'app/_server/serve.ts':
      "import { demo } from '#app/_cli/demo.ts';\nimport { readClock } from './clock.ts';\nexport const x = [demo, readClock];\n",
    'app/_server/clock.ts': 'export const readClock = 1;\n',
    'app/_cli/demo.ts': 'export const demo = 1;\n',
  }),
  planted('import', 'types passed on where types may be taken', {
    'app/_client/x.ts': "export type { A } from '#lib/contracts/a.ts';\nexport const x = 1;\n",
    'lib/contracts/a.ts': said('export type A = 1;'),
  }),
  planted('import', 'an address of something that is no source', {
    'app/_server/x.ts':
      "export const x = [new URL('./page.html', import.meta.url), new URL('/kiosk.ts', 'http://localhost'), new Map([['./a.ts', 1]])];\n",
  }),
  planted('import', 'the worker using the engine', {
    'app/_server/worker.ts': "import { judge } from '#lib/verdict/judge.ts';\nexport const x = judge;\n",
    ...verdict,
  }),
  planted('lost import', 'the server naming the file of its worker', {
    'app/_server/start-worker.ts': "export const file = new URL('./worker.ts', import.meta.url);\n",
    'app/_server/worker.ts': 'export const x = 1;\n',
  }),
  planted('climbing import', 'relative inside a top folder, alias between them', {
    'db/jars.ts': "import { whole } from '#lib/units/share.ts';\nimport { open } from './open.ts';\nexport const x = [whole, open];\n",
    ...share,
    ...open,
  }),
  planted('climbing import', 'the address of a file that a test starts', {
    'test/e2e/a.ts': "export const x = new URL('../../app/_server/serve.ts', import.meta.url);\n",
    'app/_server/serve.ts': 'export const x = 1;\n',
  }),
  planted('unit made abroad', 'a unit made at home', {
    'lib/units/x.ts': said("import { wholeUnit } from './unit.ts';\nexport const inkUl = wholeUnit('InkUl');"),
    'lib/units/unit.ts': said('export const wholeUnit = (name: string) => name;'),
  }),
  planted('unit made abroad', 'the type of a unit, elsewhere', {
    'lib/label/x.ts': said("import type { Unit } from '../units/unit.ts';\nexport type X = Unit;"),
    'lib/units/unit.ts': said('export type Unit = 1;'),
  }),
];
