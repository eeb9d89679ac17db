// Capabilities: the clock, dice, the environment, the database driver and SQL each live in one place, so that everything else can be tested without them.
import ts from 'typescript';
import { freeNames } from './free-names.ts';
import type { Finding, House } from './house.ts';
import { findingAt, isProduction, lookAt } from './house.ts';

const isLauncher = (path: string): boolean => /^app\/_server\/.+\.mjs$/.test(path);
const isEdge = (path: string): boolean => /^app\/(_server|_cli)\//.test(path);

/** Reading the clock, by any of its names; `new Date(instant)`, Date.UTC and Date.parse only reckon. */
export function clocks(house: House): Finding[] {
  const where = (path: string): boolean => isProduction(path) && !isLauncher(path) && path !== 'app/_server/clock.ts';
  return globalsUsed(house, where).flatMap(({ node, name }) => {
    const read = clockRead(name, node);
    return read === undefined
      ? []
      : [findingAt(node, `${read} reads the clock: take the instant as an argument (only app/_server/clock.ts reads it)`)];
  });
}

function clockRead(name: string, node: ts.Identifier): string | undefined {
  const parent = node.parent;
  const member = ts.isPropertyAccessExpression(parent) ? parent.name.text : undefined;
  if (name === 'performance' || (name === 'process' && /^(hrtime|uptime)$/.test(member ?? ''))) return name;
  if (name === 'Temporal' && member === 'Now') return 'Temporal.Now';
  if (name !== 'Date') return undefined;
  const reckons =
    (ts.isNewExpression(parent) && parent.expression === node && (parent.arguments?.length ?? 0) > 0) ||
    member === 'UTC' ||
    member === 'parse' ||
    (ts.isBinaryExpression(parent) && parent.operatorToken.kind === ts.SyntaxKind.InstanceOfKeyword);
  return reckons ? undefined : parent.getText().slice(0, 40);
}

const sqlClock = /\bCURRENT_(TIME|DATE|TIMESTAMP)\b|'now'|\bunixepoch\(/i;
const sqlDice = /\brandom(blob)?\(/i;

/** A clock or dice inside SQL would go round the rule above: a default column value, a trigger. */
export function sqlCapabilities(house: House): Finding[] {
  const inMigrations = [...house.files]
    .filter(([path]) => /^db\/.*\.sql$/.test(path))
    .flatMap(([path, text]) => text.split('\n').map((line, index) => ({ path, line: index + 1, text: line })))
    .filter(({ text }) => sqlClock.test(text) || sqlDice.test(text))
    .map(({ path, line }) => ({ path, line, says: 'SQL that reads a clock or throws dice: hand the value in' }));
  const inCode = lookAt(
    house,
    (path) => path.startsWith('db/'),
    (node) => {
      const text = writtenText(node);
      return text !== undefined && (sqlClock.test(text) || sqlDice.test(text))
        ? 'SQL that reads a clock or throws dice: hand the value in'
        : undefined;
    },
  );
  return [...inMigrations, ...inCode];
}

const dice = /^(random(UUID|UUIDv7|Bytes|Int|Fill|FillSync)|getRandomValues|webcrypto|generateKey(Pair)?(Sync)?)$/;

/** A browser makes one random thing: the key of a request. */
const makesKeys = (path: string): boolean => path === 'app/_client/request-key.ts';

/** Randomness, whether from Math, the global crypto or node:crypto. */
export const randomness = (house: House): Finding[] =>
  lookAt(
    house,
    (path) => isProduction(path) && !isEdge(path) && !makesKeys(path),
    (node) => {
      if (!ts.isIdentifier(node)) return undefined;
      const parent = node.parent;
      const isMathDice = node.text === 'Math' && (!ts.isPropertyAccessExpression(parent) || parent.name.text === 'random');
      return isMathDice || dice.test(node.text) ? `${node.text} throws dice: take the id or the numbers as an argument` : undefined;
    },
  );

/** The process and its environment belong to the server and the commands; the database may ask for its own process and version. */
export function environment(house: House): Finding[] {
  const where = (path: string): boolean => isProduction(path) && !isEdge(path);
  return globalsUsed(house, where).flatMap(({ node, name }) => {
    if (name !== 'process') return [];
    const isOwn = node.getSourceFile().fileName.startsWith('db/') && /^process\.(pid|versions?)$/.test(node.parent.getText());
    return isOwn
      ? []
      : [findingAt(node, `${node.parent.getText().slice(0, 40)}: settings are read in app/_server and app/_cli and handed on`)];
  });
}

/** A connection opened anywhere else would escape the settings, the lock and the read-back of db/open.ts. */
export const strayDrivers = (house: House): Finding[] =>
  [...house.imports.values()].flat().flatMap(({ from, line, target, carries }) => {
    const opens = target.kind === 'package' && target.name === 'better-sqlite3' && carries === 'code';
    return opens && isProduction(from) && !/^db\/(open|lock)\.ts$/.test(from)
      ? [{ path: from, line, says: 'only db/open.ts and db/lock.ts open a database' }]
      : [];
  });

/** Capitals, or a text that is nothing but a lower-case statement; "Select a shade from the list" is neither. */
const statement =
  /\b(SELECT\b[\s\S]*\bFROM|INSERT( OR \w+)? INTO|UPDATE \w+ SET|DELETE FROM|(CREATE|DROP|ALTER)( \w+)? (TABLE|INDEX|TRIGGER|VIEW)|PRAGMA \w+|BEGIN (IMMEDIATE|EXCLUSIVE))\b|^\s*(select\b[\s\S]*\bfrom|insert into|update \w+ set|delete from|pragma \w+|begin (immediate|exclusive))\b/;

export const straySql = (house: House): Finding[] =>
  lookAt(
    house,
    (path) => isProduction(path) && !path.startsWith('db/'),
    (node) => {
      if (
        ts.isCallExpression(node) &&
        ts.isPropertyAccessExpression(node.expression) &&
        node.expression.name.text === 'prepare' &&
        node.arguments.length > 0
      )
        return 'prepares a query outside db';
      const text = writtenText(node);
      return text !== undefined && statement.test(text) ? 'SQL outside db: add a named query there' : undefined;
    },
  );

/** The text of a literal, or of a template with its holes left out. */
function writtenText(node: ts.Node): string | undefined {
  if (ts.isStringLiteralLike(node)) return node.text;
  return ts.isTemplateExpression(node) ? [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('?') : undefined;
}

const globalsUsed = (house: House, where: (path: string) => boolean): { node: ts.Identifier; name: string }[] =>
  [...house.sources].filter(([path]) => where(path)).flatMap(([, source]) => freeNames(source).filter(({ isType }) => !isType));
