// What a file reaches through any chain of imports that carries code. A wall is worth nothing if a third file stands beside it with a door.
import ts from 'typescript';
import type { Finding, House } from './house.ts';
import { findingAt, hasDirective } from './house.ts';
import type { Import } from './imports.ts';
import { isBrowserRoom, isCovered, packageLeave, roomOf, useClient } from './rooms.ts';

/** Every import reached from `start` over code-carrying imports, each with the files that led to it. */
function* reached(house: House, start: string): Generator<{ readonly step: Import; readonly trail: readonly string[] }> {
  const seen = new Set([start]);
  const waiting: { path: string; trail: readonly string[] }[] = [{ path: start, trail: [start] }];
  for (let at = waiting.shift(); at !== undefined; at = waiting.shift()) {
    for (const step of house.imports.get(at.path) ?? []) {
      if (step.carries !== 'code') continue;
      yield { step, trail: at.trail };
      if (step.target.kind !== 'file' || seen.has(step.target.path)) continue;
      seen.add(step.target.path);
      waiting.push({ path: step.target.path, trail: [...at.trail, step.target.path] });
    }
  }
}

/** Browser code that reaches the database, a flow, the server or the engine by way of a file that is no browser file itself. */
export function leaks(house: House): Finding[] {
  const starts = [...house.sources].filter(([path, source]) => isBrowserRoom(roomOf(path, source)));
  return starts.flatMap(([start]) => {
    for (const { step, trail } of reached(house, start)) {
      const direct = isBrowserRoom(roomOf(step.from, house.sources.get(step.from)));
      const what = direct ? undefined : forbiddenInBrowser(house, step);
      if (what !== undefined)
        return [{ path: start, line: 1, says: `runs in the browser and reaches ${what}: ${[...trail, step.spec].join(' → ')}` }];
    }
    return [];
  });
}

function forbiddenInBrowser(house: House, { target }: Import): string | undefined {
  if (target.kind === 'package') return packageLeave(useClient, target.name) === undefined ? `the package ${target.name}` : undefined;
  if (target.kind === 'lost') return undefined;
  const room = roomOf(target.path, house.sources.get(target.path))?.name ?? 'a file without a room';
  return isCovered(useClient.rooms[room], target.path, true) ? undefined : room;
}

/** Browser code in a room of the server: the directive would open a door that no row of the table knows. */
export const strayClients = (house: House): Finding[] =>
  [...house.sources]
    .filter(([path, source]) => hasDirective(source, 'use client') && !isBrowserRoom(roomOf(path, source)))
    .map(([path]) => ({ path, line: 1, says: "'use client' outside the screens, _client and _ui" }));

/** The kiosk loads on a shop's network with a customer waiting: no query library in any of its chains. */
export function heavyKiosk(house: House): Finding[] {
  const starts = [...house.sources.keys()].filter((path) => path.startsWith('app/kiosk/'));
  return starts.flatMap((start) => {
    for (const { step, trail } of reached(house, start)) {
      if (step.target.kind === 'package' && step.target.name.startsWith('@tanstack/')) {
        return [{ path: start, line: 1, says: `the kiosk reaches ${step.spec}: ${trail.join(' → ')}` }];
      }
    }
    return [];
  });
}

/** A page or layout that reads through a flow but does not wait for a request first: the build would freeze its data for ever. */
export function frozenPages(house: House): Finding[] {
  const pages = [...house.sources].filter(([path]) => /^app\/(.*\/)?(page|layout)\.tsx$/.test(path));
  return pages.flatMap(([path, source]) => {
    const flow = [...reached(house, path)].find(({ step }) => step.target.kind === 'file' && step.target.path.startsWith('app/_flows/'));
    if (flow === undefined || waitsForRequest(source)) return [];
    return [findingAt(source, `reads ${flow.step.spec} but its default export does not open with "await connection()"`)];
  });
}

function waitsForRequest(source: ts.SourceFile): boolean {
  const imported = source.statements.some(
    (each) => ts.isImportDeclaration(each) && /^import \{[^}]*\bconnection\b[^}]*\} from 'next\/server'/.test(each.getText()),
  );
  const page = source.statements.find(
    (each) => ts.isFunctionDeclaration(each) && each.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.DefaultKeyword),
  );
  const first = page !== undefined && ts.isFunctionDeclaration(page) ? page.body?.statements[0] : undefined;
  return imported && first?.getText() === 'await connection();';
}
