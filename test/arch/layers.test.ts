// The table of rooms once more, written down the way DEVELOPERS.md draws it and tried pair by pair: each mark below is one planted import.
// y = anything, t = types only, . = nothing. A second table does the same for packages.
import { expect, test } from 'vitest';
import { checkHouse, show } from './check-house.ts';
import { ranks, roomOf, rooms } from './rooms.ts';

const columns: readonly (readonly [string, string])[] = [
  ['lib/base', 'lib/base/end.ts'],
  ['lib/units', 'lib/units/end.ts'],
  ['the rulebook', 'lib/rulebook/end.ts'],
  ['a lower noun', 'lib/composition/end.ts'],
  ['a higher noun', 'lib/variants/end.ts'],
  ['a file for display', 'lib/weighing/band.ts'],
  ['the reducer of a visit', 'lib/answers/visit.ts'],
  ['the questions of the kiosk', 'lib/answers/kiosk-questions.ts'],
  ['other answers', 'lib/answers/person.ts'],
  ['a contract', 'lib/contracts/place-order.ts'],
  ['the contract of the rulebook', 'lib/contracts/rulebook.ts'],
  ['the contract of errors', 'lib/contracts/problem.ts'],
  ['a query', 'db/jars.ts'],
  ['opening the database', 'db/open.ts'],
  ['a flow', 'app/_flows/end.ts'],
  ['the flow of signing in', 'app/_flows/sign-in.ts'],
  ['the server', 'app/_server/session.ts'],
  ['the worker', 'app/_server/worker.ts'],
  ['the open editions', 'app/_server/open-editions.ts'],
  ['the token of a variant', 'app/_server/variant-token.ts'],
  ['the clock', 'app/_server/clock.ts'],
  ['serve.ts', 'app/_server/serve.ts'],
  ['a command', 'app/_cli/end.ts'],
  ['a handler', 'app/api/end/route.ts'],
  ['a screen', 'app/bench/end.ts'],
  ['browser code', 'app/_client/end.ts'],
  ['a test', 'test/support/end.ts'],
];

/** One mark for each column above, in that order. */
const rows: Readonly<Record<string, string>> = {
  'lib/base/x.ts': /*                */ 'y........ ... .. .. ...... .....',
  'lib/units/x.ts': /*               */ 'yy....... ... .. .. ...... .....',
  'lib/verdict/x.ts': /*             */ 'yyyy..yyy ... .. .. ...... .....',
  'lib/contracts/x.ts': /*           */ 'yyytttttt yyy .. .. ...... .....',
  'db/x.ts': /*                      */ 'yyyyyyyyy .y. yy .. ...... .....',
  'app/_flows/x.ts': /*              */ 'yyyyyyyyy ... yy yy ...... .....',
  'app/_server/x.ts': /*             */ 'yy....... ..y .y ty yty... .....',
  'app/_server/worker.ts': /*        */ 'yyyyyyyyy ... .. .. .yy.y. .....',
  'app/_server/run-here.ts': /*      */ 'yyyyyyyyy ... .. .. .yy.y. .....',
  'app/_server/open-editions.ts': /* */ 'yyy.y.... .y. .. tt ...... .....',
  'app/_server/variant-token.ts': /**/ 'yyt...... ... .. .. y..... .....',
  'app/_server/clock.ts': /*         */ 'yy....... ... .. .. ...... .....',
  'app/_server/serve.ts': /*         */ 'yy....... ... .. .. yt..y. y....',
  'app/_server/x.mjs': /*            */ '......... ... .. .. ...... .....',
  'app/api/x/route.ts': /*           */ 'yy....... yyy .. yy y..y.. .....',
  'app/kiosk/page.tsx': /*           */ 'yyyyyyyyy yyy .. yy y..y.. ..yy.',
  'app/_print/page.tsx': /*          */ 'yyyyyyyyy yyy .. yy y..y.. ..yy.',
  'app/_cli/x.ts': /*                */ 'yyyyyyyyy yyy yy yy yy..y. y....',
  'app/_client/x.ts': /*             */ 'yy...yyt. ttt .. .. ...... ...y.',
  'app/_ui/x.tsx': /*                */ 'yy...yyt. ttt .. .. ...... ...y.',
  'app/bench/x-screen.tsx': /*       */ 'yy...yyt. ttt .. .. ...... ..yy.',
  'app/office/x-screen.tsx': /**/ 'yytttyytt ttt .. .. ...... ..yy.',
  'test/unit/x.test.ts': /*          */ 'yyyyyyyyy yyy yy yy yyyyyy yyyyy',
  'test/support/look/x.tsx': /*      */ 'yyyyyyyyy yyy yy yy yyyyyy yyyyy',
  'test/arch/x.test.ts': /*          */ '......... ... .. .. ...... .....',
};

const opening = (path: string): string => {
  if (path.endsWith('-screen.tsx')) return "'use client';\n";
  return path.startsWith('lib/') ? '// Decides one thing.\n' : '';
};

const packages: readonly string[] = [
  'zod',
  'drizzle-orm/sqlite-core',
  'better-sqlite3',
  'node:fs',
  'node:crypto',
  'node:http',
  'fs',
  'next',
  'next/server',
  'react',
  'react-dom',
  '@tanstack/react-query',
  'intl-messageformat',
  '@fontsource-variable/x',
  'bwip-js/node',
  'vitest',
  'fast-check',
  '@playwright/test',
  'typescript',
  'nextjs',
];

/** One mark for each package above, in that order. */
const packageRows: Readonly<Record<string, string>> = {
  'lib/base/x.ts': /*          */ '... .... ........ .....',
  'lib/units/x.ts': /*         */ '... .... ........ .....',
  'lib/colour/x.ts': /*        */ '... .... ........ .....',
  'lib/contracts/x.ts': /*     */ 'y.. .... ........ .....',
  'db/x.ts': /*                */ 'yyy yy.. ........ .....',
  'app/_flows/x.ts': /*        */ '... .... ........ .....',
  'app/_server/x.ts': /*       */ 't.. yyy. yy.....y .....',
  'app/_server/worker.ts': /*  */ '... yyy. ........ .....',
  'app/_server/open-editions.ts': /**/ '... .... ........ .....',
  'app/_server/variant-token.ts': /**/ '... .... ........ .....',
  'app/_server/clock.ts': /*   */ '... .y.. ........ .....',
  'app/_server/serve.ts': /*   */ '... yyy. yy...... .....',
  'app/_server/a/x.mjs': /*    */ '... yyy. ........ .....',
  'app/api/x/route.ts': /*     */ '... .... tt...... .....',
  'app/office/page.tsx': /*    */ '... .... yyy...yy .....',
  'app/_print/page.tsx': /*    */ '... .... yyy...yy .....',
  'app/_cli/x.ts': /*          */ 't.. yyy. ........ .....',
  'app/_client/x.ts': /*       */ '... .... ..yyyyy. .....',
  'app/_ui/x.tsx': /*          */ '... .... ..yyyyy. .....',
  'app/bench/x-screen.tsx': /* */ '... .... ..yyyyy. .....',
  'next.config.js': /*         */ '... yyy. tt...... .....',
  'test/store/x.test.ts': /*   */ 'yyy yyy. tt...... yy...',
  'test/e2e/x.spec.ts': /*     */ '... yyy. ........ ..y..',
  'test/support/look/x.tsx': /**/ '... yyy. ..yy.... yyy..',
  'test/arch/x.test.ts': /*    */ '... yyy. ........ yy.y.',
  'test/vitest.config.ts': /*  */ '... yyy. ........ y.y..',
};

/** Whether the import rule lets `from` import `to` (an alias or a package), with code or as a type. */
function isLet(from: string, to: string, keyword: 'import' | 'import type'): boolean {
  const files = new Map([[from, `${opening(from)}${keyword} { ${keyword === 'import' ? 'end' : 'End'} } from '${to}';\n`]]);
  if (to.startsWith('#')) files.set(to.slice(1), `${opening(to.slice(1))}export const end = 1;\nexport type End = 1;\n`);
  return checkHouse(files, ['import', 'room']).map(show).length === 0;
}

const marksOf = (row: string): string => row.replaceAll(' ', '');
const trials = [
  ...Object.entries(rows).flatMap(([from, row]) =>
    columns.map(([name, to], at) => ({ from, name, to: `#${to}`, mark: marksOf(row).charAt(at) })),
  ),
  ...Object.entries(packageRows).flatMap(([from, row]) =>
    packages.map((to, at) => ({ from, name: to, to, mark: marksOf(row).charAt(at) })),
  ),
];

test.each(trials.filter(({ from, to }) => to !== `#${from}`))('$from → $name: $mark', ({ from, to, mark }) => {
  expect([isLet(from, to, 'import'), isLet(from, to, 'import type')]).toEqual([mark === 'y', mark === 'y' || mark === 't']);
});

test('every row has a mark for every column', () => {
  expect(Object.values(rows).filter((row) => marksOf(row).length !== columns.length)).toEqual([]);
  expect(Object.values(packageRows).filter((row) => marksOf(row).length !== packages.length)).toEqual([]);
});

test('every room stands in a row, save those that hold no code', () => {
  const tried = new Set([...Object.keys(rows), ...Object.keys(packageRows)].map((path) => roomOf(path, undefined)?.name));
  const silent = ['db/migrations', 'papers', 'db/config'];
  const likeStore = [
    'test/unit',
    'test/property',
    'test/published',
    'test/golden',
    'test/type',
    'test/flow',
    'test/http',
    'test/bench',
    'test/support',
  ];
  const nounsLikeVerdict = ranks.slice(2).map((name) => `lib/${name}`);
  expect(rooms.map(({ name }) => name).filter((name) => ![...tried, ...silent, ...likeStore, ...nounsLikeVerdict].includes(name))).toEqual(
    [],
  );
});
