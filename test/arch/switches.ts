// A default branch hides the case that somebody adds next year. It may only say "this cannot be": assertNever, or a throw.
import ts from 'typescript';
import type { Finding, House } from './house.ts';
import { isProduction, lookAt } from './house.ts';

export const softDefaults = (house: House): Finding[] =>
  lookAt(house, isProduction, (node) =>
    ts.isDefaultClause(node) && !node.statements.some(refuses)
      ? 'a default branch that goes on: name every case, end in assertNever'
      : undefined,
  );

function refuses(statement: ts.Statement): boolean {
  if (ts.isBlock(statement)) return statement.statements.some(refuses);
  if (ts.isThrowStatement(statement)) return true;
  const said = ts.isReturnStatement(statement) || ts.isExpressionStatement(statement) ? statement.expression : undefined;
  return said !== undefined && ts.isCallExpression(said) && said.expression.getText() === 'assertNever';
}

/** Every file of lib says in its first line what it decides and why that way. */
export const silentOpenings = (house: House): Finding[] =>
  [...house.files]
    .filter(([path, text]) => /^lib\/.*\.ts$/.test(path) && !/^\/[/*]/.test(text))
    .map(([path]) => ({ path, line: 1, says: 'opens without a comment on what it decides' }));
