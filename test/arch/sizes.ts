// Sizes: a file that fits in one look, a function that does one thing, at most four arguments. Tables of data are exempt and say so in their name.
import ts from 'typescript';
import type { Finding, House } from './house.ts';
import { isProduction, lineOf, nodesIn } from './house.ts';

/** Files allowed to be longer, with the length they may not exceed. The list may only shrink: see `staleLeave`. */
export const outgrown: Readonly<Record<string, number>> = {};

const lengthOf = (text: string): number => text.split('\n').length - (text.endsWith('\n') ? 1 : 0);

function limitOf(path: string): number {
  if (path.endsWith('/route.ts')) return 60;
  return path.endsWith('.tsx') ? 250 : 300;
}

const isMeasured = (path: string): boolean => isProduction(path) && !path.endsWith('.data.ts') && !path.startsWith('db/migrations/');

export const longFiles = (house: House, leave: Readonly<Record<string, number>> = outgrown): Finding[] =>
  [...house.sources.keys()].filter(isMeasured).flatMap((path) => {
    const lines = lengthOf(house.files.get(path) ?? '');
    const limit = leave[path] ?? limitOf(path);
    return lines > limit ? [{ path, line: limit + 1, says: `${lines} lines, at most ${limit}: split it by meaning` }] : [];
  });

/** An entry of the list that is no longer needed, or that is larger than its file. */
export const staleLeave = (house: House, leave: Readonly<Record<string, number>> = outgrown): Finding[] =>
  Object.entries(leave).flatMap(([path, allowed]) => {
    const lines = lengthOf(house.files.get(path) ?? '');
    return lines === allowed && lines > limitOf(path)
      ? []
      : [{ path, line: 1, says: `has ${lines} lines now: lower or remove its entry in outgrown` }];
  });

/** Longest body: 70 lines, 120 for a function that returns markup. */
export function longFunctions(house: House): Finding[] {
  return functionsOf(house).flatMap((node) => {
    const source = node.getSourceFile();
    const lines = source.getLineAndCharacterOfPosition(node.end).line + 2 - lineOf(node);
    const limit =
      source.fileName.endsWith('.tsx') &&
      [...nodesIn(node)].some((each) => ts.isJsxElement(each) || ts.isJsxSelfClosingElement(each) || ts.isJsxFragment(each))
        ? 120
        : 70;
    return lines > limit ? [{ path: source.fileName, line: lineOf(node), says: `a function of ${lines} lines, at most ${limit}` }] : [];
  });
}

export const manyParameters = (house: House): Finding[] =>
  functionsOf(house)
    .filter((node) => node.parameters.length > 4)
    .map((node) => ({
      path: node.getSourceFile().fileName,
      line: lineOf(node),
      says: `${node.parameters.length} parameters, at most 4: take an object`,
    }));

const functionsOf = (house: House): ts.FunctionLikeDeclaration[] =>
  [...house.sources]
    .filter(([path]) => isProduction(path))
    .flatMap(([, source]) =>
      [...nodesIn(source)].filter(
        (node): node is ts.FunctionLikeDeclaration => ts.isFunctionLike(node) && 'body' in node && node.body !== undefined,
      ),
    );
