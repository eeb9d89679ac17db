// Planted: the web, sizes, words, switches. Banned words are written in two halves here too.
import type { Planted } from './planted.ts';
import { planted, said } from './planted.ts';

const on = (path: string, code: string): Record<string, string> => ({ [path]: `${code}\n` });
const flow = on('app/_flows/show-shop.ts', 'export const showShop = () => 1;');
const page = (opening: string, head = "import { connection } from 'next/server';\n"): Record<string, string> => ({
  'app/office/page.tsx': `${head}import { rows } from './rows.ts';\nexport default async function Page() {\n${opening}  return rows();\n}\n`,
  'app/office/rows.ts': "import { showShop } from '#app/_flows/show-shop.ts';\nexport const rows = () => showShop();\n",
  ...flow,
});
const lines = (count: number): string => Array.from({ length: count }, (_, at) => `export const x${at} = ${at};`).join('\n');
const longFunction = (count: number, last: string): string =>
  `export function f() {\n${Array.from({ length: count - 3 }, (_, at) => `  void ${at};`).join('\n')}\n  return ${last};\n}`;
const chooses = (branch: string): string =>
  `export function f(k: 'a' | 'b') {\n  switch (k) {\n    case 'a':\n      return 1;\n    default:${branch}\n  }\n}`;

export const crimes: readonly Planted[] = [
  planted('frozen page', 'a page that reaches a flow through another file and does not wait', page('')),
  planted('frozen page', 'a page that waits too late', page('  const early = rows();\n  await connection();\n  void early;\n')),
  planted('frozen page', 'a page with a connection of its own', page('  await connection();\n', 'const connection = async () => 1;\n')),
  planted('frozen page', 'a page whose other function waits', {
    'app/office/page.tsx':
      "import { connection } from 'next/server';\nimport { showShop } from '#app/_flows/show-shop.ts';\nexport async function other() {\n  await connection();\n}\nexport default function Page() {\n  return showShop();\n}\n",
    ...flow,
  }),
  planted('frozen page', 'a layout that does not wait', {
    'app/bench/layout.tsx':
      "import { showShop } from '#app/_flows/show-shop.ts';\nexport default function Layout() {\n  return showShop();\n}\n",
    ...flow,
  }),
  planted('style', 'a style attribute', on('app/_ui/swatch.tsx', "export const Swatch = () => <i style={{ color: 'red' }} />;")),
  planted(
    'style',
    'a style attribute on a component',
    on('app/_ui/swatch.tsx', 'export const Swatch = (P: () => null, s: string) => <P style={s} />;'),
  ),
  planted(
    'style',
    'a style hidden in a spread',
    on('app/_ui/swatch.tsx', "export const Swatch = () => <i {...{ style: { color: 'red' } }} />;"),
  ),
  planted('style', 'an empty style element without a nonce', on('app/_print/sheet.tsx', 'export const Sheet = () => <style />;')),
  planted('style', 'a style element without a nonce', on('app/_print/sheet.tsx', "export const Sheet = () => <style>{'a {}'}</style>;")),
  planted(
    'markup',
    'markup put in as text',
    on('app/_print/code.tsx', 'export const Code = (svg: string) => <i dangerouslySetInnerHTML={{ __html: svg }} />;'),
  ),
  planted('markup', 'markup put in by property', on('app/_client/x.ts', "export const x = (e: any) => (e.innerHTML = 'a');")),
  ...['outerHTML', 'insertAdjacentHTML', 'srcDoc', 'srcdoc'].map((name) =>
    planted('markup', name, on('app/_client/x.ts', `export const x = (e: any) => e.${name};`)),
  ),
  planted('markup', 'text run as code', on('app/_client/x.ts', "export const x = () => eval('1');")),
  planted('markup', 'text made a function', on('app/_client/x.ts', "export const x = () => new Function('1');")),
  planted('server action', 'a file of actions', on('app/office/save.ts', "'use server';\nexport async function save() {}")),
  planted('server action', 'one action', on('app/office/page.tsx', "export const x = async () => {\n  'use server';\n};")),
  planted('file size', '301 lines in lib', on('lib/law/x.ts', said(lines(300)).trimEnd())),
  planted('file size', '251 lines of a screen', on('app/office/page.tsx', lines(251))),
  planted('file size', '61 lines of a handler', on('app/api/a/route.ts', lines(61))),
  planted('function size', '71 lines', on('app/_server/x.ts', longFunction(71, '1'))),
  planted('function size', '71 lines in a .tsx without markup', on('app/_ui/x.tsx', longFunction(71, '1'))),
  planted('function size', '121 lines of markup', on('app/_ui/x.tsx', longFunction(121, '<i />'))),
  planted(
    'function size',
    '71 lines of an arrow function',
    on('db/jars.ts', longFunction(71, '1').replace('export function f()', 'export const f = () =>')),
  ),
  planted('parameters', 'five parameters', on('app/_server/x.ts', 'export const f = (a: 1, b: 1, c: 1, d: 1, e: 1) => [a, b, c, d, e];')),
  ...[
    ['/wo', 'rk/x'],
    ['/tm', 'p/x'],
    ['/ho', 'me/x'],
    ['TO', 'DO'],
    ['FIX', 'ME'],
    ['@ts', '-ignore'],
    ['@ts', '-nocheck'],
    ['biome', '-ignore lint: x'],
    ['biome', '-ignore lint/style/x:'],
  ].flatMap((halves) => [
    planted('banned word', `${halves.join('…')} in a comment`, on('app/_server/x.ts', `// ${halves.join('')}\nexport const x = 1;`)),
    planted('banned word', `${halves.join('…')} in a document`, on('README.md', `a ${halves.join('')}`)),
  ]),
  ...[
    ['it.sk', 'ip'],
    ['it.on', 'ly'],
    ['it.to', 'do'],
    ['it.sk', 'ipIf'],
    ['it.fai', 'ls'],
  ].map((halves) => planted('banned word', `${halves.join('…')} in a test`, on('test/unit/x.test.ts', `${halves.join('')}('a', 1);`))),
  ...['app/_server/x.ts', 'db/x.ts', 'lib/label/x.ts'].map((path) =>
    planted(
      'expected error',
      `an expected compile error in ${path}`,
      on(path, `// Decides one thing.\n// @ts${'-expect-error'} wrong\nexport const x: string = 1;`),
    ),
  ),
  planted('default', 'a default that goes on', on('app/_flows/x.ts', chooses('\n      return 2;'))),
  planted('default', 'a default that calls something else', on('app/_flows/x.ts', chooses('\n      return String(k);'))),
  planted('default', 'an empty default', on('lib/label/x.ts', said(chooses('')))),
  planted(
    'default',
    'a throw only on one way through',
    on('app/_ui/x.tsx', chooses("\n      if (k) throw new Error('x');\n      return 2;")),
  ),
  planted('opening comment', 'a file of lib that says nothing', on('lib/label/x.ts', 'export const x = 1;')),
  planted(
    'opening comment',
    'a file of lib that says something too late',
    on('lib/label/x.ts', 'export const x = 1;\n// Decides one thing.'),
  ),
];

export const nearMisses: readonly Planted[] = [
  planted('frozen page', 'a page that waits first', page('  await connection();\n')),
  planted('frozen page', 'a frame of pages that is no page itself', {
    'app/office/office-page.tsx':
      "import { showShop } from '#app/_flows/show-shop.ts';\nexport const OfficePage = () => <p>{showShop()}</p>;\n",
    ...flow,
  }),
  planted('frozen page', 'a page that only borrows a type of a flow', {
    'app/office/page.tsx':
      "import type { Shop } from '#app/_flows/show-shop.ts';\nexport default function Page(shop: Shop) {\n  return shop;\n}\n",
    'app/_flows/show-shop.ts': 'export type Shop = 1;\n',
  }),
  planted(
    'style',
    'SVG attributes, a class, a nonce, a key in data',
    on(
      'app/_print/sheet.tsx',
      'export const paper = { style: \'matt\' };\nexport const Sheet = (n: string) => <><style nonce={n} /><rect fill="red" {...{ rx: 1 }} {...paper} width={3} className="a" /></>;',
    ),
  ),
  planted('markup', 'text as text', on('app/_print/code.tsx', 'export const Code = (text: string) => <i title="innerHTML">{text}</i>;')),
  planted('server action', 'the words in a sentence', on('app/office/page.tsx', "export const x = 'use server';")),
  planted('file size', 'exactly as long as allowed, and tables of data', {
    ...on('lib/law/x.ts', said(lines(299)).trimEnd()),
    ...on('lib/law/limits.data.ts', said(lines(900))),
    ...on('app/office/page.tsx', lines(250)),
    'db/x.ts': lines(300),
    ...on('app/api/a/route.ts', lines(60)),
    ...on('test/unit/x.test.ts', lines(900)),
  }),
  planted('function size', 'exactly as long as allowed', {
    ...on('app/_server/x.ts', longFunction(70, '1')),
    ...on('app/_ui/x.tsx', longFunction(120, '<i />')),
  }),
  planted('parameters', 'four parameters', on('app/_server/x.ts', 'export const f = (a: 1, b: 1, c: 1, d: 1) => [a, b, c, d];')),
  planted('banned word', 'words that only look alike', {
    ...on(
      'app/_server/x.ts',
      `// biome${'-ignore'} lint/style/noNonNullAssertion: the line above proves it\nexport const x = ['framework/x', 'attempt', 'stodos', '/jar/x'];`,
    ),
    ...on('test/unit/x.test.ts', "await it('a', 1);\nexit(1);\nsubmit(2);"),
  }),
  planted(
    'expected error',
    'an expected compile error in a test of types',
    on('test/type/x.test.ts', `// @ts${'-expect-error'} wrong\nexport const x: string = 1;`),
  ),
  planted('default', 'defaults that refuse', {
    ...on(
      'lib/label/a.ts',
      said(chooses('\n      return assertNever(k);').replace('export', "import { assertNever } from '../base/invariant.ts';\nexport")),
    ),
    ...on('lib/base/invariant.ts', said('export const assertNever = (k: never): never => k;')),
    ...on(
      'app/_server/d.ts',
      chooses('\n      assertNever(k);').replace('export', "import { assertNever } from '#lib/base/invariant.ts';\nexport"),
    ),
    ...on('app/_server/b.ts', chooses(" {\n      throw new Error('b');\n    }")),
    ...on('test/unit/c.test.ts', chooses('\n      return 2;')),
  }),
  planted('opening comment', 'a block comment', on('lib/label/x.ts', '/** Decides one thing. */\nexport const x = 1;')),
];
