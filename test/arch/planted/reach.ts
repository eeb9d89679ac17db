// Planted: what a browser may reach through other files, cycles, barrels and names.
import type { Planted } from './planted.ts';
import { planted, said } from './planted.ts';

const share = { 'lib/units/share.ts': said('export const whole = 1;') };
const flow = {
  'app/_flows/show-shop.ts': "import { whole } from '#lib/units/share.ts';\nexport const showShop = () => whole;\n",
  ...share,
};
const verdict = { 'lib/verdict/judge.ts': said('export type Verdict = 1;\nexport const judge = () => 1;') };

export const crimes: readonly Planted[] = [
  planted('browser leak', 'browser code reaching a flow through a screen file', {
    'app/kiosk/start-screen.tsx': "'use client';\nimport { y } from './shared-words.ts';\nexport const x = y;\n",
    'app/kiosk/shared-words.ts': "import { showShop } from '#app/_flows/show-shop.ts';\nexport const y = showShop;\n",
    ...flow,
  }),
  planted('browser leak', 'browser code reaching the engine through two files', {
    'app/bench/card-screen.tsx': "'use client';\nimport { y } from './one.ts';\nexport const x = y;\n",
    'app/bench/one.ts': "import { z } from './two.ts';\nexport const y = z;\n",
    'app/bench/two.ts': "import { judge } from '#lib/verdict/judge.ts';\nexport const z = judge;\n",
    ...verdict,
  }),
  planted('browser leak', 'browser code reaching the engine through a file for display', {
    'app/_ui/band.tsx': "import { band } from '#lib/weighing/band.ts';\nexport const x = band;\n",
    'lib/weighing/band.ts': said("import { judge } from '../verdict/judge.ts';\nexport const band = judge;"),
    ...verdict,
  }),
  planted('browser leak', 'browser code reaching zod', {
    'app/kiosk/start-screen.tsx': "'use client';\nimport { y } from './words.ts';\nexport const x = y;\n",
    'app/kiosk/words.ts': "import { a } from '#lib/contracts/a.ts';\nexport const y = a;\n",
    'lib/contracts/a.ts': said("import { z } from 'zod';\nexport const a = z;"),
  }),
  planted('browser leak', 'browser code reaching a package of the server', {
    'app/kiosk/start-screen.tsx': "'use client';\nimport { y } from './words.ts';\nexport const x = y;\n",
    'app/kiosk/words.ts': "import { cookies } from 'next/headers';\nexport const y = cookies;\n",
  }),
  ...['app/_server/x.ts', 'app/_flows/x.ts', 'app/api/a/route.ts', 'lib/label/x.ts', 'db/x.ts'].map((path) =>
    planted('stray client', `the directive in ${path}`, {
      [path]: path.startsWith('lib/')
        ? "// Decides one thing.\n'use client';\nexport const x = 1;\n"
        : "'use client';\nexport const x = 1;\n",
    }),
  ),
  planted('heavy kiosk', 'the kiosk importing the query library', {
    'app/kiosk/start-screen.tsx': "'use client';\nimport { useQuery } from '@tanstack/react-query';\nexport const x = useQuery;\n",
  }),
  planted('heavy kiosk', 'the kiosk reaching the query library through _client', {
    'app/kiosk/page.tsx': "import { y } from '#app/_client/queries.ts';\nexport const x = y;\n",
    'app/_client/queries.ts': "import { useQuery } from '@tanstack/react-query';\nexport const y = useQuery;\n",
  }),
  planted('cycle', 'two files that need each other', {
    'lib/law/a.ts': said("import { b } from './b.ts';\nexport const a = () => b;"),
    'lib/law/b.ts': said("import { a } from './a.ts';\nexport const b = () => a;"),
  }),
  planted('cycle', 'three files, by types alone', {
    'lib/law/a.ts': said("import type { B } from './b.ts';\nexport type A = B[];"),
    'lib/law/b.ts': said("import type { C } from './c.ts';\nexport type B = C[];"),
    'lib/law/c.ts': said("import type { A } from './a.ts';\nexport type C = A[];"),
  }),
  planted('barrel', 'a file that only passes on', {
    'lib/law/all.ts': said("export { a } from './a.ts';"),
    'lib/law/a.ts': said('export const a = 1;'),
  }),
  planted('barrel', 'a file that imports and passes on', {
    'lib/law/all.ts': said("import { a } from './a.ts';\nexport { a };"),
    'lib/law/a.ts': said('export const a = 1;'),
  }),
  planted('barrel', 'a star', {
    'lib/law/all.ts': said("export * from './a.ts';\nexport const b = 1;"),
    'lib/law/a.ts': said('export const a = 1;'),
  }),
  planted('barrel', 'a star under a name', {
    'lib/law/all.ts': said("export * as a from './a.ts';\nexport const b = 1;"),
    'lib/law/a.ts': said('export const a = 1;'),
  }),
  planted('barrel', 'an index file', { 'lib/law/index.ts': said('export const a = 1;') }),
  planted('barrel', 'an index file with markup', { 'app/_ui/index.tsx': 'export const a = 1;\n' }),
  ...['proxy.ts', 'middleware.ts', 'instrumentation.ts', 'instrumentation-client.ts', 'proxy.tsx'].map((name) =>
    planted('name', `a file that Next runs by its name: ${name}`, { [`app/${name}`]: 'export const x = 1;\n' }),
  ),
  ...['src', 'util', 'utils', 'helper', 'helpers', 'misc', 'common', 'shared', 'stuff'].flatMap((name) => [
    planted('name', `a folder called ${name}`, { [`lib/law/${name}/a.ts`]: said('export const a = 1;') }),
    planted('name', `a file called ${name}`, { [`db/${name}.ts`]: 'export const a = 1;\n' }),
  ]),
  planted('name', 'capitals', { 'app/_ui/CoreColumn.tsx': 'export const a = 1;\n' }),
];

export const nearMisses: readonly Planted[] = [
  planted('browser leak', 'an erased type on the way', {
    'app/kiosk/start-screen.tsx': "'use client';\nimport { y } from './words.ts';\nexport const x = y;\n",
    'app/kiosk/words.ts': "import type { Verdict } from '#lib/verdict/judge.ts';\nexport const y = (v: Verdict) => v;\n",
    ...verdict,
  }),
  planted('browser leak', 'a page of the server that holds browser code and reads a flow', {
    'app/kiosk/page.tsx':
      "import { connection } from 'next/server';\nimport { x } from './start-screen.tsx';\nimport { showShop } from '#app/_flows/show-shop.ts';\nexport default async function Page() {\n  await connection();\n  return [x, showShop()];\n}\n",
    'app/kiosk/start-screen.tsx': "'use client';\nexport const x = 1;\n",
    ...flow,
  }),
  planted('browser leak', 'browser code reaching react through a screen file', {
    'app/kiosk/start-screen.tsx': "'use client';\nimport { y } from './words.ts';\nexport const x = y;\n",
    'app/kiosk/words.ts': "import { useState } from 'react';\nexport const y = useState;\n",
  }),
  planted('stray client', 'the directive where browser code lives', {
    'app/bench/x-screen.tsx': "'use client';\nexport const x = 1;\n",
    'app/_print/x.tsx': "'use client';\nexport const x = 1;\n",
    'app/_ui/x.tsx': "'use client';\nexport const x = 1;\n",
  }),
  planted('heavy kiosk', 'the bench with the query library', {
    'app/bench/queue-screen.tsx': "'use client';\nimport { useQuery } from '@tanstack/react-query';\nexport const x = useQuery;\n",
  }),
  planted('cycle', 'a diamond', {
    'lib/law/a.ts': said("import { b } from './b.ts';\nimport { c } from './c.ts';\nexport const a = [b, c];"),
    'lib/law/b.ts': said("import { d } from './d.ts';\nexport const b = d;"),
    'lib/law/c.ts': said("import { d } from './d.ts';\nexport const c = d;"),
    'lib/law/d.ts': said('export const d = 1;'),
  }),
  planted('barrel', 'a file that passes one name on beside its own', {
    'lib/law/x.ts': said("export { a } from './a.ts';\nexport const b = 2;"),
    'lib/law/a.ts': said('export const a = 1;'),
  }),
  planted('barrel', 'an entry that only imports', {
    'test/support/all.ts': "import './one.ts';\n",
    'test/support/one.ts': 'export const x = 1;\n',
  }),
  planted('name', 'brackets, groups and many endings', {
    'app/office/(trace)/lots/[...path]/page.module.css': '.a {}\n',
    'lib/law/eu-limits.data.ts': said('export const x = 1;'),
    'app/_server/proxy-address.ts': 'export const x = 1;\n',
  }),
];
