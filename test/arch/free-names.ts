// The names a file uses but does not declare: what it takes from the language and the machine. Found by parsing alone, without a type checker:
// a name declared anywhere in the file counts as the file's own.
import ts from 'typescript';
import { nodesIn } from './house.ts';

export type FreeName = { readonly node: ts.Identifier; readonly name: string; readonly isType: boolean };

export function freeNames(source: ts.SourceFile): readonly FreeName[] {
  const own = new Set<string>();
  const used: ts.Identifier[] = [];
  for (const node of nodesIn(source)) {
    if (!ts.isIdentifier(node)) continue;
    if (declares(node)) own.add(node.text);
    else if (isUse(node)) used.push(node);
  }
  return used.filter((node) => !own.has(node.text)).map((node) => ({ node, name: node.text, isType: ts.isPartOfTypeNode(node) }));
}

/** `const x`, `(x) =>`, `{ x }` in a pattern, functions, types, type parameters and imports. */
function declares(node: ts.Identifier): boolean {
  const parent = node.parent;
  const named =
    ts.isVariableDeclaration(parent) ||
    ts.isParameter(parent) ||
    ts.isBindingElement(parent) ||
    ts.isFunctionDeclaration(parent) ||
    ts.isFunctionExpression(parent) ||
    ts.isClassLike(parent) ||
    ts.isInterfaceDeclaration(parent) ||
    ts.isTypeAliasDeclaration(parent) ||
    ts.isTypeParameterDeclaration(parent) ||
    ts.isImportClause(parent) ||
    ts.isImportSpecifier(parent) ||
    ts.isNamespaceImport(parent) ||
    ts.isImportEqualsDeclaration(parent) ||
    ts.isModuleDeclaration(parent) ||
    ts.isEnumDeclaration(parent);
  return named && parent.name === node;
}

/** False where an identifier is only a label on something else: a member, a key, a tuple label, `const` in `as const`. */
function isUse(node: ts.Identifier): boolean {
  const parent = node.parent;
  if (ts.isQualifiedName(parent)) return parent.left === node;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isBindingElement(parent) || ts.isImportSpecifier(parent)) return parent.propertyName !== node;
  if (
    ts.isExportSpecifier(parent) ||
    ts.isNamespaceExport(parent) ||
    ts.isMetaProperty(parent) ||
    ts.isJsxAttribute(parent) ||
    ts.isImportAttribute(parent)
  )
    return false;
  if (ts.isLabeledStatement(parent) || ts.isBreakOrContinueStatement(parent) || ts.isNamedTupleMember(parent)) return false;
  if (ts.isTypeReferenceNode(parent) && ts.isConstTypeReference(parent)) return false;
  const labelled =
    ts.isPropertyAssignment(parent) ||
    ts.isMethodDeclaration(parent) ||
    ts.isMethodSignature(parent) ||
    ts.isPropertyDeclaration(parent) ||
    ts.isPropertySignature(parent) ||
    ts.isGetAccessor(parent) ||
    ts.isSetAccessor(parent) ||
    ts.isEnumMember(parent);
  return !(labelled && parent.name === node);
}
