// Names: what no file or folder may be called, and no barrels, which hide where a thing lives. (What may stand at the top, rooms.ts says.)
import ts from 'typescript';
import type { Finding, House } from './house.ts';

const vague = /^(src|utils?|helpers?|misc|common|shared|stuff)$/;
const special = /^(proxy|middleware|instrumentation|instrumentation-client)\.(ts|tsx|js|mjs)$/;

/** `word-word`, `_word`, `[param]`, `[...rest]` (these two are names in the code, so camelCase), `(group)`, and for files any number of `.word` endings. */
const kebab = /^(_?[a-z0-9]+(-[a-z0-9]+)*|\[(\.\.\.)?[a-z]+([A-Z][a-z]+)*\]|\([a-z-]+\))(\.[a-z0-9]+(-[a-z0-9]+)*)*$/;

export const badNames = (house: House): Finding[] =>
  [...house.files.keys()].flatMap((path) => {
    const says = nameRefusal(path);
    return says === undefined ? [] : [{ path, line: 1, says }];
  });

function nameRefusal(path: string): string | undefined {
  if (!/^(app|lib|db|test)\//.test(path) || path.startsWith('db/migrations/')) return undefined;
  const parts = path.split('/');
  const name = parts.at(-1) ?? '';
  if (special.test(name)) return 'is a file that Next runs by its name alone; the server is app/_server/serve.ts';
  const stems = [...parts.slice(0, -1), name.split('.')[0] ?? ''];
  if (stems.some((stem) => vague.test(stem))) return 'has a name that says nothing: name it for what it decides';
  return parts.every((part) => kebab.test(part)) ? undefined : 'is not in kebab-case';
}

/** A barrel: an index file, a file that only passes on, or `export *` anywhere. */
export function barrels(house: House): Finding[] {
  return [...house.sources].flatMap(([path, source]) => {
    if (/(^|\/)index\.[a-z]+$/.test(path)) return [{ path, line: 1, says: 'an index file is a barrel' }];
    const starred = source.statements.some((each) => ts.isExportDeclaration(each) && each.moduleSpecifier !== undefined && !hasNames(each));
    if (starred) return [{ path, line: 1, says: 'export * hides where a name lives' }];
    const passesOn = source.statements.some((each) => ts.isExportDeclaration(each));
    const ownsNothing = source.statements.every((each) => ts.isExportDeclaration(each) || ts.isImportDeclaration(each));
    return passesOn && ownsNothing ? [{ path, line: 1, says: 'only passes on what other files own' }] : [];
  });
}

const hasNames = (each: ts.ExportDeclaration): boolean => each.exportClause !== undefined && ts.isNamedExports(each.exportClause);
