// Where brands vanish, in SQL and JSON, the name must say what the number measures: it ends in a unit from the one list below.
import ts from 'typescript';
import type { Finding } from './house.ts';
import type { Checked } from './program.ts';
import { eachNode } from './units.ts';

/** Units as written at the end of a name; Min and Max may follow (`phX100Min`). A unit that a new field needs is added here, on purpose. */
export const suffixes: readonly string[] = [
  // mass, volume, length, area, temperature
  'Ug',
  'Mg',
  'G',
  'Kg',
  'Ul',
  'Ml',
  'Um',
  'Mm',
  'Cm2',
  'C',
  // shares, ratios, composed units
  'Ppm',
  'Milli',
  'Thousandths',
  'UmolPerKg',
  'MgPerMl',
  'MgPer100g',
  'UnitsPerPpm',
  'Units',
  // pH, money
  'Ph',
  'PhX100',
  'X100',
  'X1000',
  'Minor',
  'MinorPerKg',
  // time
  'Ms',
  'S',
  'Hours',
  'Day',
  'Days',
  'Week',
  'Months',
  'Year',
  'Years',
  // bytes, counts and places in an order
  'Bytes',
  'Count',
  'Seq',
  'No',
  'Index',
  'Version',
];

/** `targetMassUg`, `phX100Min`, or the bare `seq`, `week`, `version`. */
export function endsInUnit(name: string): boolean {
  const stem = name.replace(/(Min|Max)$/, '');
  return suffixes.some(
    (suffix) =>
      (stem.length > 1 && stem === suffix.charAt(0).toLowerCase() + suffix.slice(1)) ||
      (stem.endsWith(suffix) && /[a-z0-9]/.test(stem.charAt(stem.length - suffix.length - 1))),
  );
}

/** A numeric field of a wire schema, a numeric column, or a numeric fact of a finding, whose name does not say its unit. */
export const nakedNumbers = (checked: Checked): Finding[] =>
  eachNode(checked, (node, path) => {
    const named = quantities(checked.checker, node, path);
    if (named === undefined || endsInUnit(named.name) || !named.types.some((each) => isNumeric(checked.checker, each))) return undefined;
    return `"${named.name}" is a number without a unit at the end of its name (known units: test/arch/suffixes.ts)`;
  });

/** What a node names, with the types of the values that travel under that name. */
function quantities(
  checker: ts.TypeChecker,
  node: ts.Node,
  path: string,
): { readonly name: string; readonly types: readonly ts.Type[] } | undefined {
  if (path.startsWith('lib/base/') && ts.isPropertySignature(node))
    return isFact(node) ? { name: node.name.getText(), types: [checker.getTypeAtLocation(node)] } : undefined;
  if (
    !/^(lib\/contracts\/|db\/(schema|json|planted))/.test(path) ||
    !(ts.isPropertyAssignment(node) || ts.isShorthandPropertyAssignment(node))
  )
    return undefined;
  const type = checker.getTypeAtLocation(ts.isPropertyAssignment(node) ? node.initializer : node.name);
  return ts.isIdentifier(node.name) || ts.isStringLiteral(node.name) ? { name: node.name.text, types: carried(checker, type) } : undefined;
}

/** A column whose name in SQL is not the snake-case form of its name in code. */
export const misnamedColumns = (checked: Checked): Finding[] =>
  eachNode(checked, (node, path) => {
    if (
      !path.startsWith('db/') ||
      !ts.isPropertyAssignment(node) ||
      columnData(checked.checker, checked.checker.getTypeAtLocation(node.initializer)) === undefined
    )
      return undefined;
    const given = columnName(node.initializer);
    const wanted = node.name.getText().replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
    return given === undefined || given.replaceAll('_', '') === wanted.replaceAll('_', '')
      ? undefined
      : `column "${given}" is called ${node.name.getText()} in code`;
  });

/** A member, however deep, of an interface or type called …Facts: findings cross the wire with their facts. */
function isFact(node: ts.Node): boolean {
  const holder = ts.findAncestor(node, (each) => ts.isInterfaceDeclaration(each) || ts.isTypeAliasDeclaration(each));
  return (
    holder !== undefined && (ts.isInterfaceDeclaration(holder) || ts.isTypeAliasDeclaration(holder)) && holder.name.text.endsWith('Facts')
  );
}

/** The values a zod schema or a drizzle column carries; nothing for any other type. */
function carried(checker: ts.TypeChecker, type: ts.Type): readonly ts.Type[] {
  const column = columnData(checker, type);
  if (column !== undefined) return [column];
  const isSchema = checker.getPropertyOfType(type, '_zod') !== undefined;
  return isSchema ? ['_output', '_input'].flatMap((side) => memberType(checker, type, side) ?? []) : [];
}

function columnData(checker: ts.TypeChecker, type: ts.Type): ts.Type | undefined {
  const inner = memberType(checker, type, '_');
  return inner !== undefined && checker.getPropertyOfType(inner, 'columnType') !== undefined
    ? memberType(checker, inner, 'data')
    : undefined;
}

function memberType(checker: ts.TypeChecker, type: ts.Type, name: string): ts.Type | undefined {
  const member = checker.getPropertyOfType(type, name);
  return member === undefined ? undefined : checker.getTypeOfSymbol(member);
}

/** Numbers, branded or not, alone or perhaps missing, in a list or in a record. What may as well be text (any JSON) is no quantity. */
function isNumeric(checker: ts.TypeChecker, type: ts.Type): boolean {
  if (type.isUnion()) {
    const present = type.types.filter(({ flags }) => !(flags & (ts.TypeFlags.Null | ts.TypeFlags.Undefined)));
    return present.length > 0 && present.every((each) => isNumeric(checker, each));
  }
  if (type.isIntersection()) return type.types.some((each) => isNumeric(checker, each));
  if (type.flags & (ts.TypeFlags.NumberLike | ts.TypeFlags.BigIntLike)) return true;
  if (checker.isArrayType(type) || checker.isTupleType(type))
    return checker.getTypeArguments(type as ts.TypeReference).some((each) => isNumeric(checker, each));
  return checker.getIndexInfosOfType(type).some((info) => type.flags & ts.TypeFlags.Object && isNumeric(checker, info.type));
}

/** The text given to the innermost call of `integer('mass_ug').notNull()`. */
function columnName(node: ts.Expression): string | undefined {
  if (ts.isPropertyAccessExpression(node)) return columnName(node.expression);
  if (!ts.isCallExpression(node)) return undefined;
  if (ts.isPropertyAccessExpression(node.expression)) return columnName(node.expression);
  const [name] = node.arguments;
  return name !== undefined && ts.isStringLiteral(name) ? name.text : undefined;
}
