// Every way one file can pull in another: import, export … from, import(), require, import types, and new URL beside import.meta.
// A lazy import is an import: hiding it inside a function does not move it to another room.
import { posix } from 'node:path';
import ts from 'typescript';

export type Target =
  | { readonly kind: 'file'; readonly path: string }
  | { readonly kind: 'package'; readonly name: string }
  | { readonly kind: 'lost'; readonly why: string };

/**
 * What comes through: code that runs here, types that are erased, or no more than the address of a file that runs elsewhere.
 * `import { type T }` carries code: only `import type` is erased whole.
 */
export type Carries = 'code' | 'types' | 'address';

export type Import = {
  readonly from: string;
  readonly line: number;
  readonly spec: string;
  readonly carries: Carries;
  readonly target: Target;
};

type Written = { readonly node: ts.Node; readonly spec: ts.Node | undefined; readonly carries: Carries };

/** Resolves `./x.ts`, `../x.ts` and `#top/x.ts` against the files there are; anything else is a package. */
function resolve(from: string, spec: string, files: ReadonlyMap<string, string>): Target {
  if (!/^[.#/]/.test(spec)) return { kind: 'package', name: spec };
  const path = spec.startsWith('#') ? spec.slice(1) : posix.join(posix.dirname(from), spec);
  if (files.has(path)) return { kind: 'file', path };
  return { kind: 'lost', why: `"${spec}" is no file of this tree (write the path with its ending)` };
}

export function importsOf(source: ts.SourceFile, files: ReadonlyMap<string, string>): readonly Import[] {
  const found: Import[] = [];
  const add = ({ node, spec, carries }: Written): void => {
    const text = spec !== undefined && ts.isStringLiteralLike(spec) ? spec.text : undefined;
    const line = source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
    const target: Target =
      text === undefined
        ? { kind: 'lost', why: 'an import whose target is computed cannot be checked; write the path out' }
        : resolve(source.fileName, text, files);
    found.push({ from: source.fileName, line, spec: text ?? '(computed)', carries, target });
  };
  const visit = (node: ts.Node): void => {
    const written = writtenImport(node);
    if (written !== undefined) add(written);
    ts.forEachChild(node, visit);
  };
  visit(source);
  for (const reference of source.referencedFiles) {
    found.push({
      from: source.fileName,
      line: 1,
      spec: reference.fileName,
      carries: 'types',
      target: { kind: 'lost', why: 'use import type, not a reference comment' },
    });
  }
  return found;
}

function writtenImport(node: ts.Node): Written | undefined {
  if (ts.isImportDeclaration(node)) {
    return { node, spec: node.moduleSpecifier, carries: node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword ? 'types' : 'code' };
  }
  if (ts.isExportDeclaration(node) && node.moduleSpecifier !== undefined) {
    return { node, spec: node.moduleSpecifier, carries: node.isTypeOnly ? 'types' : 'code' };
  }
  if (ts.isImportEqualsDeclaration(node) && ts.isExternalModuleReference(node.moduleReference)) {
    return { node, spec: node.moduleReference.expression, carries: node.isTypeOnly ? 'types' : 'code' };
  }
  if (ts.isImportTypeNode(node)) {
    return { node, spec: ts.isLiteralTypeNode(node.argument) ? node.argument.literal : undefined, carries: 'types' };
  }
  if (ts.isCallExpression(node) && isLoader(node.expression)) return { node, spec: node.arguments[0], carries: 'code' };
  if (isSourceUrl(node)) return { node, spec: node.arguments?.[0], carries: 'address' };
  return undefined;
}

const isLoader = (callee: ts.Expression): boolean =>
  callee.kind === ts.SyntaxKind.ImportKeyword ||
  (ts.isIdentifier(callee) && callee.text === 'require') ||
  /^(require|import\.meta)\.resolve$/.test(callee.getText());

/** `new URL('./x.ts', import.meta.url)`, the way a worker or a child process names its file. */
const isSourceUrl = (node: ts.Node): node is ts.NewExpression => {
  if (!ts.isNewExpression(node) || node.expression.getText() !== 'URL') return false;
  const [file, base] = node.arguments ?? [];
  return base?.getText() === 'import.meta.url' && file !== undefined && ts.isStringLiteralLike(file) && /\.(tsx?|mjs)$/.test(file.text);
};
