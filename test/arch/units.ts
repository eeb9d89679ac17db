// Units that must not meet. Brands alone refuse `takesMass(share)` and `mass === share`, but `mass + share`, `mass < share` and
// Math.max(mass, share) compile: this lint refuses them, and refuses casts that make a unit outside its home.
import ts from 'typescript';
import type { Brand } from './brands.ts';
import { brandsOf, brandsWithin } from './brands.ts';
import type { Finding } from './house.ts';
import { lineOf, nodesIn } from './house.ts';
import type { Checked } from './program.ts';

const { SyntaxKind } = ts;
const meeting: ReadonlySet<ts.SyntaxKind> = new Set([
  SyntaxKind.PlusToken,
  SyntaxKind.MinusToken,
  SyntaxKind.PercentToken,
  SyntaxKind.LessThanToken,
  SyntaxKind.LessThanEqualsToken,
  SyntaxKind.GreaterThanToken,
  SyntaxKind.GreaterThanEqualsToken,
  SyntaxKind.PlusEqualsToken,
  SyntaxKind.MinusEqualsToken,
  SyntaxKind.PercentEqualsToken,
  // The compiler compares two brands with == and ===, but not where a cast or a sum has dropped one of them.
  SyntaxKind.EqualsEqualsToken,
  SyntaxKind.EqualsEqualsEqualsToken,
  SyntaxKind.ExclamationEqualsToken,
  SyntaxKind.ExclamationEqualsEqualsToken,
]);
const running: ReadonlySet<ts.SyntaxKind> = new Set([
  SyntaxKind.PlusEqualsToken,
  SyntaxKind.MinusEqualsToken,
  SyntaxKind.PercentEqualsToken,
]);
const adding: ReadonlySet<ts.SyntaxKind> = new Set([SyntaxKind.PlusToken, SyntaxKind.MinusToken, SyntaxKind.PercentToken]);
const choosing: ReadonlySet<ts.SyntaxKind> = new Set([SyntaxKind.QuestionQuestionToken, SyntaxKind.BarBarToken]);
const keepsUnit = /^(Math\.(min|max|abs|round|floor|ceil|trunc|hypot)|Number|BigInt)$/;
const scaling: ReadonlySet<ts.SyntaxKind> = new Set([SyntaxKind.AsteriskToken, SyntaxKind.SlashToken]);

const inHome = (path: string): boolean => path.startsWith('lib/units/');

/** Two units in one sum, difference, remainder, comparison, running sum, or call of Math.min, max or hypot. */
export const mixedUnits = (checked: Checked): Finding[] =>
  eachNode(checked, (node, path) => {
    if (inHome(path)) return undefined;
    const names = namesOf(unitsMeeting(checked.checker, node));
    return names.length > 1 ? `${names.join(' and ')} meet in "${node.getText().slice(0, 60)}"` : undefined;
  });

function unitsMeeting(checker: ts.TypeChecker, node: ts.Node): readonly Brand[] {
  const units = (parts: readonly ts.Expression[]): readonly Brand[] => parts.flatMap((each) => unitsOf(checker, each));
  if (ts.isBinaryExpression(node) && meeting.has(node.operatorToken.kind))
    return units([...(running.has(node.operatorToken.kind) ? heldIn(checker, node.left) : []), node.left, node.right]);
  if (!ts.isCallExpression(node)) return [];
  return /^Math\.(min|max|hypot)$/.test(node.expression.getText()) ? units(node.arguments) : units(foldedBy(node));
}

/** What `x += …` adds to: the start of x, whatever its author called it, and everything else that is added to it. */
function heldIn(checker: ts.TypeChecker, target: ts.Expression): readonly ts.Expression[] {
  const symbol = checker.getSymbolAtLocation(target);
  const declared = symbol?.valueDeclaration;
  if (declared === undefined || !ts.isVariableDeclaration(declared)) return [];
  const others = [...nodesIn(declared.getSourceFile())].flatMap((node) =>
    ts.isBinaryExpression(node) && running.has(node.operatorToken.kind) && checker.getSymbolAtLocation(node.left) === symbol
      ? [node.right]
      : [],
  );
  return [...(declared.initializer === undefined ? [] : [declared.initializer]), ...others];
}

/** Start and step of a fold: `reduce((sum, each) => sum + each, start)`. */
function foldedBy(node: ts.CallExpression): readonly ts.Expression[] {
  if (!ts.isPropertyAccessExpression(node.expression) || !/^reduce(Right)?$/.test(node.expression.name.text)) return [];
  const [step, start] = node.arguments;
  if (step === undefined || !ts.isArrowFunction(step) || ts.isBlock(step.body)) return start === undefined ? [] : [start];
  return start === undefined ? [step.body] : [step.body, start];
}

/** What an expression measures: its type's brand, or, where arithmetic has dropped the brand, the brands of what was added up or chosen from. */
function unitsOf(checker: ts.TypeChecker, node: ts.Expression): readonly Brand[] {
  const brands = brandsOf(checker, checker.getTypeAtLocation(node));
  return brands.length > 0 ? brands : partsOf(checker, node).flatMap((part) => unitsOf(checker, part));
}

function partsOf(checker: ts.TypeChecker, node: ts.Expression): readonly ts.Expression[] {
  if (ts.isParenthesizedExpression(node) || ts.isNonNullExpression(node) || ts.isAsExpression(node)) return [node.expression];
  if (ts.isPrefixUnaryExpression(node)) return [node.operand];
  if (ts.isConditionalExpression(node)) return [node.whenTrue, node.whenFalse];
  if (ts.isBinaryExpression(node)) {
    if (scaling.has(node.operatorToken.kind)) return [node.left, node.right].some(isConstant) ? [node.left, node.right] : [];
    return adding.has(node.operatorToken.kind) || choosing.has(node.operatorToken.kind) ? [node.left, node.right] : [];
  }
  if (ts.isCallExpression(node)) return keepsUnit.test(node.expression.getText()) ? [...node.arguments] : foldedBy(node);
  return ts.isIdentifier(node) ? initialiserOf(checker, node) : [];
}

/** Twice a mass is a mass; a mass times anything that has a name may be another thing. */
const isConstant = (node: ts.Expression): boolean => ts.isNumericLiteral(node) || ts.isBigIntLiteral(node);

/** `const total = mass + mass` has lost its brand to the compiler, not to us; a type written beside it is the author's own word. */
function initialiserOf(checker: ts.TypeChecker, node: ts.Identifier): readonly ts.Expression[] {
  const declared = checker.getSymbolAtLocation(node)?.valueDeclaration;
  if (declared === undefined || !ts.isVariableDeclaration(declared) || declared.type !== undefined) return [];
  return declared.initializer === undefined ? [] : [declared.initializer];
}

/**
 * A unit made by a cast, or by a guard that claims one, away from the folder that owns it.
 * A cast from unknown or any is looked into more deeply: nothing is known of what comes out of JSON.parse.
 */
export const castUnits = (checked: Checked): Finding[] =>
  eachNode(checked, (node, path) => {
    const claim = claimOf(checked.checker, node);
    if (claim === undefined) return undefined;
    const known = new Set(namesOf(claim.known));
    const made = claim.made.find(({ name, home }) => !path.startsWith(`${home}/`) && !known.has(name));
    return made === undefined ? undefined : `makes ${made.name} without its constructor: "${node.getText().slice(0, 60)}"`;
  });

function claimOf(checker: ts.TypeChecker, node: ts.Node): { made: readonly Brand[]; known: readonly Brand[] } | undefined {
  if (ts.isAsExpression(node)) {
    const from = checker.getTypeAtLocation(node.expression);
    const depth = from.flags & (ts.TypeFlags.Any | ts.TypeFlags.Unknown) ? 3 : 1;
    return { made: brandsWithin(checker, checker.getTypeFromTypeNode(node.type), depth), known: brandsWithin(checker, from, depth) };
  }
  if (!ts.isTypePredicateNode(node) || node.type === undefined || !ts.isIdentifier(node.parameterName)) return undefined;
  const declared = checker.getSymbolAtLocation(node.parameterName);
  return {
    made: brandsOf(checker, checker.getTypeFromTypeNode(node.type)),
    known: declared === undefined ? [] : brandsOf(checker, checker.getTypeOfSymbol(declared)),
  };
}

const namesOf = (brands: readonly Brand[]): string[] => [...new Set(brands.map(({ name }) => name))];

export function eachNode({ sources }: Checked, look: (node: ts.Node, path: string) => string | undefined): Finding[] {
  return [...sources].flatMap(([path, source]) =>
    [...nodesIn(source)].flatMap((node) => {
      const says = look(node, path);
      return says === undefined ? [] : [{ path, line: lineOf(node), says }];
    }),
  );
}
