// What a type measures. A brand is a property named by a unique symbol that lib declares, as in Unit<'MassUg'> of lib/units/unit.ts;
// its home is the folder of lib that declares the symbol.
import ts from 'typescript';

export type Brand = { readonly name: string; readonly home: string };

/** The brands of a number, text or bigint type; several for a union of several units, none for a plain number. */
export function brandsOf(checker: ts.TypeChecker, type: ts.Type): readonly Brand[] {
  if (type.isUnion()) return distinct(type.types.flatMap((each) => brandsOf(checker, each)));
  if (!type.isIntersection()) return type.flags & ts.TypeFlags.TypeParameter ? brandsOfConstraint(checker, type) : [];
  return checker.getPropertiesOfType(type).flatMap((property) => {
    const home = homeOf(property);
    return home === undefined ? [] : [{ name: checker.typeToString(checker.getTypeOfSymbol(property)), home }];
  });
}

function brandsOfConstraint(checker: ts.TypeChecker, type: ts.Type): readonly Brand[] {
  const constraint = checker.getBaseConstraintOfType(type);
  return constraint === undefined || constraint === type ? [] : brandsOf(checker, constraint);
}

/** Brands of the type itself, of its elements and of its members, down to `depth` levels. */
export function brandsWithin(checker: ts.TypeChecker, type: ts.Type, depth: number): readonly Brand[] {
  const own = brandsOf(checker, type);
  if (own.length > 0 || depth === 0) return own;
  if (type.isUnionOrIntersection()) return distinct(type.types.flatMap((each) => brandsWithin(checker, each, depth)));
  if (!(type.flags & ts.TypeFlags.Object)) return [];
  const parts =
    checker.isArrayType(type) || checker.isTupleType(type) ? checker.getTypeArguments(type as ts.TypeReference) : membersOf(checker, type);
  return distinct(parts.flatMap((each) => brandsWithin(checker, each, depth - 1)));
}

function membersOf(checker: ts.TypeChecker, type: ts.Type): readonly ts.Type[] {
  const indexed = checker.getIndexInfosOfType(type).map((info) => info.type);
  const named = checker
    .getPropertiesOfType(type)
    .filter(({ declarations }) => declarations?.some((each) => !each.getSourceFile().isDeclarationFile));
  return [...indexed, ...named.map((property) => checker.getTypeOfSymbol(property))];
}

/** The folder of lib whose unique symbol names this property. */
function homeOf(property: ts.Symbol): string | undefined {
  if (!property.escapedName.toString().startsWith('__@')) return undefined;
  const file = property.declarations?.[0]?.getSourceFile().fileName ?? '';
  return /\/(lib\/[a-z]+)\//.exec(file)?.[1];
}

const distinct = (brands: readonly Brand[]): readonly Brand[] => [
  ...new Map(brands.map((brand) => [`${brand.home} ${brand.name}`, brand])).values(),
];
