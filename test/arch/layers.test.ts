// The table of rooms once more, written down the way DEVELOPERS.md draws it and tried pair by pair: each mark below is one planted import.
// y = anything, t = types only, . = nothing.
import { expect, test } from 'vitest';
import { checkHouse, show } from './check-house.ts';

const columns: readonly (readonly [string, string])[] = [
  ['lib/base', 'lib/base/end.ts'],
  ['lib/units', 'lib/units/end.ts'],
  ['a lower noun', 'lib/composition/end.ts'],
  ['a higher noun', 'lib/variants/end.ts'],
  ['a file for display', 'lib/weighing/band.ts'],
  ['a contract', 'lib/contracts/place-order.ts'],
  ['the contract of the rulebook', 'lib/contracts/rulebook.ts'],
  ['the contract of errors', 'lib/contracts/problem.ts'],
  ['a query', 'db/jars.ts'],
  ['opening the database', 'db/open.ts'],
  ['a flow', 'app/_flows/end.ts'],
  ['the server', 'app/_server/session.ts'],
  ['the worker', 'app/_server/worker.ts'],
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
  'lib/base/x.ts': /*         */ 'y... .... .... .... ....',
  'lib/units/x.ts': /*        */ 'yy.. .... .... .... ....',
  'lib/verdict/x.ts': /*      */ 'yyy. .... .... .... ....',
  'lib/contracts/x.ts': /*    */ 'yyyy yyyy .... .... ....',
  'db/x.ts': /*               */ 'yyyy y.y. yy.. .... ....',
  'app/_flows/x.ts': /*       */ 'yyyy y... yyy. .... ....',
  'app/_server/x.ts': /*      */ 'yy.. ...y .y.y t... ....',
  'app/_server/worker.ts': /* */ 'yyyy y... .... yy.. ....',
  'app/_server/clock.ts': /*  */ 'yy.. .... .... .... ....',
  'app/_server/serve.ts': /*  */ 'yy.. .... ...y ty.y ....',
  'app/_server/x.mjs': /*     */ '.... .... .... .... ....',
  'app/api/x/route.ts': /*    */ 'yy.. .yyy ..yy .... ....',
  'app/kiosk/page.tsx': /*    */ 'yyyy yyyy ..yy .... .yy.',
  'app/_print/page.tsx': /*   */ 'yyyy yyyy ..yy .... .yy.',
  'app/_cli/x.ts': /*         */ 'yyyy yyyy yyyy ty.y ....',
  'app/_client/x.ts': /*      */ 'yy.. yttt .... .... ..y.',
  'app/_ui/x.tsx': /*         */ 'yy.. yttt .... .... ..y.',
  'app/bench/x-screen.tsx': /**/ 'yy.. yttt .... .... .yy.',
  'test/unit/x.test.ts': /*   */ 'yyyy yyyy yyyy yyyy yyyy',
  'test/arch/x.test.ts': /*   */ '.... .... .... .... ....',
};

const opening = (path: string): string => {
  if (path.endsWith('-screen.tsx')) return "'use client';\n";
  return path.startsWith('lib/') ? '// Decides one thing.\n' : '';
};

/** Whether the import rule lets `from` import `to`, with code and as a type. */
function isLet(from: string, to: string, keyword: 'import' | 'import type'): boolean {
  const files = new Map([
    [to, `${opening(to)}export const end = 1;\nexport type End = 1;\n`],
    [from, `${opening(from)}${keyword} { ${keyword === 'import' ? 'end' : 'End'} } from '#${to}';\n`],
  ]);
  return checkHouse(files, ['import', 'room']).map(show).length === 0;
}

const pairs = Object.entries(rows).flatMap(([from, marks]) =>
  columns.map(([name, to], at) => ({ from, name, to, mark: marks.replaceAll(' ', '').charAt(at) })).filter(({ to }) => to !== from),
);

test.each(pairs)('$from → $name: $mark', ({ from, to, mark }) => {
  expect([isLet(from, to, 'import'), isLet(from, to, 'import type')]).toEqual([mark === 'y', mark === 'y' || mark === 't']);
});

test('every row has a mark for every column', () => {
  expect(Object.values(rows).map((marks) => marks.replaceAll(' ', '').length)).toEqual(Object.keys(rows).map(() => columns.length));
});
