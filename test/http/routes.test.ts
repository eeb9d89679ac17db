// Walks over every route of the tree: each is made by defineRoute, says its method and roles, and lets in nobody else.
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { Actor, RouteRole } from '#app/_server/actor.ts';
import { admit, STAFF_ROLES } from '#app/_server/actor.ts';
import type { Route } from '#app/_server/define-route.ts';
import type { Edge } from '#app/_server/edge.ts';
import type { Services } from '#app/_server/services.ts';
import { instantMs } from '#lib/units/time.ts';
import { ROUTE_ROLES } from './route-roles.data.ts';

type Found = { readonly path: string; readonly name: string; readonly route: Route };

const API = fileURLToPath(new URL('../../app/api/', import.meta.url));
const files = readdirSync(API, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('route.ts'));
const modules = (import.meta as unknown as { glob: (pattern: string, how: { eager: true }) => Record<string, Record<string, Route>> }).glob(
  '../../app/api/**/route.ts',
  { eager: true },
);
const routes: readonly Found[] = Object.entries(modules).flatMap(([path, module]) =>
  Object.entries(module).map(([name, route]) => ({ path: path.replace('../../app', '').replace('/route.ts', ''), name, route })),
);

const ACTORS: readonly Actor[] = [
  { kind: 'nobody' },
  { kind: 'kiosk', stationId: 'station-1' },
  ...STAFF_ROLES.map((role): Actor => ({ kind: 'staff', accountId: 'account-1', role, stationId: null })),
];

/** An outside in which nothing may be touched: whoever is turned away must be so before anything is read. */
const edgeFor = (actor: Actor): Edge => ({
  services: () => ({ now: () => instantMs(0), newId: () => 'id' }) as unknown as Services,
  readSession: () => actor,
  logFault: ({ error }) => {
    throw error;
  },
  newId: () => 'fault',
});

const ask = ({ route, name }: Found, actor: Actor): Promise<Response> => {
  const post = { method: 'POST', body: 'no json', headers: { 'content-type': 'text/plain', origin: 'http://shop.test' } };
  return route.respond(edgeFor(actor), new Request('http://shop.test/api', name === 'POST' ? post : {}), {});
};

test('every file of app/api was looked at', () => {
  expect(files.length).toBeGreaterThan(0);
  expect(Object.keys(modules)).toHaveLength(files.length);
});

test('the routes that exist, with their roles, are those of the table', () => {
  expect(Object.fromEntries(routes.map(({ name, path, route }) => [`${name} ${path}`, [...route.definition.roles]]))).toEqual(ROUTE_ROLES);
});

describe.each(routes)('$name $path', (found) => {
  const { route, name } = found;

  test('is made by defineRoute under its own method, for at least one role', () => {
    expect(route.definition?.method).toBe(name);
    expect(route.definition.roles.length).toBeGreaterThan(0);
    expect(new Set<RouteRole>(route.definition.roles).size).toBe(route.definition.roles.length);
  });

  test.each(ACTORS)('%j', async (actor) => {
    const admission = admit(route.definition.roles, actor);
    if (admission === 'admitted') {
      // A read that is let in would run; a write goes on to its body, which is no JSON.
      if (name === 'POST') expect((await ask(found, actor)).status).toBe(415);
      else expect(name).toBe('GET');
    } else {
      expect((await ask(found, actor)).status).toBe(admission === 'signed-out' ? 401 : 403);
    }
  });
});
