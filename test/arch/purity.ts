// Purity: lib and the flows get time, ids and randomness handed in, answer at once and keep nothing between calls.
// Deny by default: a global name is refused unless it stands in the lists below.
import ts from 'typescript';
import { freeNames } from './free-names.ts';
import type { Finding, House } from './house.ts';
import { findingAt, lookAt } from './house.ts';

const isLib = (path: string): boolean => path.startsWith('lib/');
const isPure = (path: string): boolean => isLib(path) || path.startsWith('app/_flows/');

const language = new Set(
  `undefined NaN Infinity Math Number BigInt String Boolean Symbol Object Array Map Set WeakMap JSON Date Intl RegExp Iterator
  ArrayBuffer DataView Int8Array Uint8Array Int16Array Uint16Array Int32Array Uint32Array Float64Array BigInt64Array BigUint64Array
  TextEncoder TextDecoder structuredClone encodeURIComponent decodeURIComponent
  Record Readonly Partial Required Pick Omit Exclude Extract NonNullable ReturnType Parameters NoInfer Uppercase Lowercase Capitalize Uncapitalize
  ReadonlyArray ReadonlyMap ReadonlySet Iterable IterableIterator Generator ArrayLike ArrayBufferLike RegExpExecArray RegExpMatchArray`.split(
    /\s+/,
  ),
);

/** A name taken from the machine: a clock, a network, a console, the host's process and whatever else is not on the lists. */
export const strangeGlobals = (house: House): Finding[] =>
  [...house.sources]
    .filter(([path]) => isPure(path))
    .flatMap(([path, source]) =>
      freeNames(source)
        .filter(({ name }) => !language.has(name) && !(name === 'Error' && path.startsWith('lib/base/')))
        .map(({ node, name }) => findingAt(node, `"${name}" is not among the names that pure code may take from the language`)),
    );

export const metaInPure: (house: House) => Finding[] = (house) =>
  lookAt(house, isPure, (node) => (ts.isMetaProperty(node) ? 'import.meta tells where the code runs' : undefined));

/** A unit of work is a plain synchronous function. (The name Promise is refused with the other globals.) */
export const asyncInPure = (house: House): Finding[] =>
  lookAt(house, isPure, (node) => {
    if (node.kind === ts.SyntaxKind.AsyncKeyword) return 'an async function in synchronous code';
    return ts.isAwaitExpression(node) || (ts.isForOfStatement(node) && node.awaitModifier !== undefined)
      ? 'await in synchronous code'
      : undefined;
  });

/** Whatever is caught here would be swallowed: expected refusals are values, faults end the request. */
export const caughtInPure = (house: House): Finding[] =>
  lookAt(house, isPure, (node) => (ts.isCatchClause(node) ? 'a catch: return a refusal as a value, let a fault through' : undefined));

/** Something at the top of a module that a later call could find changed. */
export const moduleState = (house: House): Finding[] =>
  lookAt(house, isPure, (node) => {
    if (!ts.isVariableStatement(node) || !ts.isSourceFile(node.parent)) return undefined;
    if ((node.declarationList.flags & ts.NodeFlags.Const) === 0) return 'let or var at the top of a module is state';
    const holder = node.declarationList.declarations.find(
      ({ initializer, type }) => initializer !== undefined && isEmptyContainer(initializer) && !/^readonly\b/i.test(type?.getText() ?? ''),
    );
    return holder === undefined ? undefined : `"${holder.name.getText()}" starts empty at the top of a module, so it can only be state`;
  });

function isEmptyContainer(value: ts.Expression): boolean {
  if (ts.isNewExpression(value))
    return /^(Map|Set|WeakMap|Array)$/.test(value.expression.getText()) && (value.arguments ?? []).length === 0;
  return (
    (ts.isArrayLiteralExpression(value) && value.elements.length === 0) ||
    (ts.isObjectLiteralExpression(value) && value.properties.length === 0)
  );
}

/** Functions over readonly objects do; the one class is the fault that base throws (elsewhere the name Error itself is refused). */
export const classesInPure = (house: House): Finding[] =>
  lookAt(house, isPure, (node) => {
    if (!ts.isClassLike(node)) return undefined;
    const isFault = node.heritageClauses?.[0]?.types[0]?.expression.getText() === 'Error';
    return isFault ? undefined : 'a class: use functions over readonly objects';
  });

const localGetter = /^(get|set)(FullYear|Month|Date|Day|Hours|Minutes|Seconds|TimezoneOffset)$|^to(Date|Time)String$/;
const hostLocale = /^toLocale(Date|Time|Lower|Upper)?(Case|String)$/;

/** Something that depends on the time zone or language of the machine, so that two machines would answer differently. */
export const hostSettings = (house: House): Finding[] =>
  lookAt(house, isPure, (node) => {
    if (ts.isNewExpression(node)) return hostConstructor(node);
    if (!ts.isCallExpression(node) || !ts.isPropertyAccessExpression(node.expression)) return undefined;
    const method = node.expression.name.text;
    if (localGetter.test(method)) return `${method} depends on the zone of the machine: use the UTC form`;
    if (hostLocale.test(method) && node.arguments.length === 0) return `${method} depends on the language of the machine`;
    return method === 'localeCompare' ? 'localeCompare depends on the machine: compare by code units (lib/base/compare.ts)' : undefined;
  });

function hostConstructor(node: ts.NewExpression): string | undefined {
  const made = node.expression.getText();
  const count = node.arguments?.length ?? 0;
  if (made === 'Date' && count > 1) return 'new Date(y, m, …) depends on the zone of the machine: use Date.UTC';
  return made.startsWith('Intl.') && count === 0 ? `${made} without a language depends on the machine` : undefined;
}
