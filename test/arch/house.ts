// The house as the rules see it: every file's text, every source parsed once, every import with both its ends.
// Rules are pure functions over it, so that each can be tried on planted files as well as on the real tree.
import ts from 'typescript';
import type { Import } from './imports.ts';
import { importsOf } from './imports.ts';

export type Files = ReadonlyMap<string, string>;

export type House = {
  readonly files: Files;
  readonly sources: ReadonlyMap<string, ts.SourceFile>;
  readonly imports: ReadonlyMap<string, readonly Import[]>;
};

/** One broken rule at one place; `line` counts from 1. */
export type Finding = { readonly path: string; readonly line: number; readonly says: string };

export type Rule = (house: House) => readonly Finding[];

const isSource = (path: string): boolean => /\.(ts|tsx|mts|cts|mjs|cjs|js|jsx)$/.test(path);

/** Parses every source file and reads its imports. Keys are paths from the top of the tree, with `/`. */
export function readHouse(files: Files): House {
  const sources = new Map<string, ts.SourceFile>();
  for (const [path, text] of files) {
    if (isSource(path)) sources.set(path, ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true));
  }
  const imports = new Map([...sources].map(([path, source]) => [path, importsOf(source, files)]));
  return { files, sources, imports };
}

/** The line, from 1, on which a node starts (its comments left out). */
export const lineOf = (node: ts.Node): number => node.getSourceFile().getLineAndCharacterOfPosition(node.getStart()).line + 1;

export const findingAt = (node: ts.Node, says: string): Finding => ({ path: node.getSourceFile().fileName, line: lineOf(node), says });

/** Every node below `root`, parents first. */
export function* nodesIn(root: ts.Node): Generator<ts.Node> {
  const waiting: ts.Node[] = [root];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    yield node;
    const children: ts.Node[] = [];
    ts.forEachChild(node, (child) => void children.push(child));
    waiting.push(...children.reverse());
  }
}

/** Looks at every node of the sources whose path the pattern accepts. */
export function lookAt(
  house: House,
  where: (path: string) => boolean,
  look: (node: ts.Node, path: string) => string | undefined,
): Finding[] {
  const found: Finding[] = [];
  for (const [path, source] of house.sources) {
    if (!where(path)) continue;
    for (const node of nodesIn(source)) {
      const says = look(node, path);
      if (says !== undefined) found.push(findingAt(node, says));
    }
  }
  return found;
}

/** True when the file opens with the directive, e.g. 'use client'. */
export function hasDirective(source: ts.SourceFile | undefined, directive: string): boolean {
  for (const statement of source?.statements ?? []) {
    if (!ts.isExpressionStatement(statement) || !ts.isStringLiteral(statement.expression)) return false;
    if (statement.expression.text === directive) return true;
  }
  return false;
}

export const isProduction = (path: string): boolean => /^(app|lib|db)\//.test(path);
