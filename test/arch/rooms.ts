// The rooms of the house and who may import whom. Deny by default: a file in no room, a room not named, a package not named are all refused,
// so that a new folder or a new dependency is a decision made here and not an accident made elsewhere.
import type ts from 'typescript';
import { hasDirective } from './house.ts';

/** `all` = anything; `types` = imports that carry no code; a pattern = only the files it matches; `codeOf` = code of those files, and types of
 * all others, or of those that `typesOf` names. */
export type Leave = 'all' | 'types' | RegExp | { readonly codeOf: RegExp; readonly typesOf?: RegExp };

export type Room = {
  readonly name: string;
  readonly holds: RegExp;
  readonly rooms: Readonly<Record<string, Leave>>;
  readonly packages: Readonly<Record<string, 'all' | 'types'>>;
};

/** Lowest first: a folder of lib sees itself and what stands before it. */
export const ranks = [
  'base',
  'units',
  'rulebook',
  'composition',
  'chemistry',
  'law',
  'colour',
  'answers',
  'verdict',
  'variants',
  'weighing',
  'label',
  'edition',
  'testplan',
  'review',
] as const;

const domain = (names: readonly string[], leave: Leave = 'all'): Record<string, Leave> =>
  Object.fromEntries(names.map((name) => [`lib/${name}`, leave]));

const foundations = domain(['base', 'units']);
const nouns = domain(ranks.slice(2));

/** The few files of nouns that a browser may hold: arithmetic for showing, no rule and no recipe. */
const forDisplay = {
  'lib/rulebook': /^lib\/rulebook\/language\.ts$/,
  'lib/weighing': /^lib\/weighing\/(band|readings)\.ts$/,
  'lib/answers': { codeOf: /^lib\/answers\/visit(-answers)?\.ts$/, typesOf: /^lib\/answers\/kiosk-questions\.ts$/ },
  'lib/colour': /^lib\/colour\/colour-name(\.data)?\.ts$/,
} as const;

const codeForDisplay = Object.fromEntries(
  Object.entries(forDisplay).map(([name, leave]) => [name, { codeOf: leave instanceof RegExp ? leave : leave.codeOf }]),
);

const libRooms: Room[] = ranks.map((name, rank) => ({
  name: `lib/${name}`,
  holds: new RegExp(`^lib/${name}/.+\\.ts$`),
  rooms: domain(ranks.slice(0, rank + 1)),
  packages: {},
}));

const browser = { ...foundations, ...forDisplay, 'lib/contracts': 'types', client: 'all' } as const;
const browserPackages = {
  react: 'all',
  'react-dom': 'all',
  'intl-messageformat': 'all',
  '@tanstack/react-query': 'all',
  '@fontsource-variable': 'all',
} as const;
const screenRooms = {
  ...foundations,
  ...nouns,
  'lib/contracts': 'all',
  flows: 'all',
  server: 'all',
  'variant-token': 'all',
  client: 'all',
} as const;
const everything = {
  ...screenRooms,
  db: 'all',
  api: 'all',
  cli: 'all',
  screens: 'all',
  'use-client': 'all',
  'office-client': 'all',
  worker: 'all',
  'open-editions': 'all',
  'variant-token': 'all',
  clock: 'all',
  serve: 'all',
  launcher: 'all',
  'test/support': 'all',
  'test/look': 'all',
} as const;
const testPackages = { vitest: 'all', 'fast-check': 'all', 'node:': 'all' } as const;

export const rooms: readonly Room[] = [
  ...libRooms,
  {
    // Wire ↔ domain and nothing else: the closed lists of the rulebook, and of every other noun no more than its types.
    name: 'lib/contracts',
    holds: /^lib\/contracts\/.+\.ts$/,
    rooms: { ...foundations, ...domain(ranks.slice(2), 'types'), 'lib/rulebook': 'all', 'lib/contracts': 'all' },
    packages: { zod: 'all' },
  },
  { name: 'db/config', holds: /^db\/drizzle\.config\.ts$/, rooms: {}, packages: { 'drizzle-kit': 'all' } },
  {
    name: 'db',
    holds: /^db\/[^/]+\.ts$/,
    rooms: { ...foundations, ...nouns, 'lib/contracts': /^lib\/contracts\/rulebook[^/]*\.ts$/, db: 'all' },
    packages: {
      'drizzle-orm': 'all',
      'better-sqlite3': 'all',
      zod: 'all',
      'node:fs': 'all',
      'node:path': 'all',
      'node:url': 'all',
      'node:crypto': 'all',
    },
  },
  { name: 'db/migrations', holds: /^db\/migrations\/.+\.(sql|json)$/, rooms: {}, packages: {} },
  { name: 'flows', holds: /^app\/_flows\/.+\.ts$/, rooms: { ...foundations, ...nouns, db: 'all', flows: 'all' }, packages: {} },
  { name: 'launcher', holds: /^app\/_server\/.+\.mjs$/, rooms: { launcher: 'all' }, packages: { 'node:': 'all' } },
  // The clock is a room of its own, so that only those who start a process can hold it; all others are handed an instant.
  { name: 'clock', holds: /^app\/_server\/clock\.ts$/, rooms: foundations, packages: { 'node:crypto': 'all' } },
  // The worker thread and its jobs: the one part of the server that computes.
  {
    name: 'worker',
    holds: /^app\/_server\/(worker|jobs|job-handlers|run-here)\.ts$/,
    rooms: { ...foundations, ...nouns, clock: 'all', worker: 'all', 'open-editions': 'all' },
    packages: { 'node:': 'all' },
  },
  // The editions a process keeps open, for its flows and for its worker: the one file of the server that reads a rulebook.
  {
    name: 'open-editions',
    holds: /^app\/_server\/open-editions\.ts$/,
    rooms: {
      ...foundations,
      'lib/rulebook': 'all',
      'lib/variants': 'all',
      'lib/contracts': /^lib\/contracts\/rulebook\.ts$/,
      flows: 'types',
    },
    packages: {},
  },
  // The token that stands for a variant in the kiosk, sealed and opened again: an edge between wire and domain, kept beside the seal.
  {
    name: 'variant-token',
    holds: /^app\/_server\/variant-token\.ts$/,
    rooms: { ...foundations, 'lib/rulebook': 'types', 'lib/contracts': /^lib\/contracts\/variant\.ts$/, server: 'all' },
    packages: {},
  },
  // The file that starts the server and hands everything to everyone; nobody imports it.
  {
    name: 'serve',
    holds: /^app\/_server\/serve\.ts$/,
    rooms: { ...foundations, clock: 'all', server: 'all', cli: 'all', worker: 'types' },
    packages: { next: 'all', 'node:': 'all' },
  },
  {
    name: 'server',
    holds: /^app\/_server\/.+\.ts$/,
    rooms: {
      ...foundations,
      'lib/contracts': /^lib\/contracts\/problem\.ts$/,
      db: /^db\/(open|connection|lock|migrate|outage|paths|sha256)\.ts$/,
      // Types, to hand a flow what it needs; the frame's own two questions: who asks, and the shop's secret; and the two things that
      // nobody asks for: the end of a day, and orders that meet a new edition.
      flows: { codeOf: /^app\/_flows\/(sign-in|read-shop|lapse-orders|rejudge-open-orders)\.ts$/ },
      server: 'all',
      worker: 'types',
      'open-editions': 'all',
    },
    packages: { next: 'all', 'node:': 'all', zod: 'types', 'bwip-js': 'all' },
  },
  {
    name: 'api',
    holds: /^app\/api\/.+\/route\.ts$/,
    rooms: { ...foundations, 'lib/contracts': 'all', flows: 'all', server: 'all', 'variant-token': 'all' },
    packages: { next: 'types' },
  },
  {
    name: 'cli',
    holds: /^app\/_cli\/.+\.ts$/,
    rooms: {
      ...foundations,
      ...nouns,
      'lib/contracts': 'all',
      db: 'all',
      flows: 'all',
      server: 'all',
      worker: 'all',
      clock: 'all',
      cli: 'all',
    },
    packages: { 'node:': 'all', zod: 'types' },
  },
  { name: 'client', holds: /^app\/(_client|_ui)\/.+\.(ts|tsx|css|woff2|svg)$/, rooms: browser, packages: browserPackages },
  {
    name: 'screens',
    holds: /^app\/((kiosk|bench|office|sign-in|jar|_print)\/.+|[^/]+)\.(ts|tsx|css)$/,
    rooms: { ...screenRooms, screens: 'all', 'use-client': 'all', 'office-client': 'all' },
    packages: { next: 'all', react: 'all', 'bwip-js': 'all', '@fontsource-variable': 'all' },
  },
  // Sample pages of the shared look and the script that takes their pictures.
  {
    name: 'test/look',
    holds: /^test\/support\/look\//,
    rooms: { ...everything, 'test/look': 'all' },
    packages: { ...testPackages, react: 'all', 'react-dom': 'all', '@playwright/test': 'all' },
  },
  ...['unit', 'property', 'published', 'golden', 'type', 'store', 'flow', 'http', 'bench', 'support'].map(
    (layer): Room => ({
      name: `test/${layer}`,
      holds: new RegExp(`^test/${layer}/`),
      rooms: { ...everything, [`test/${layer}`]: 'all' },
      packages: { ...testPackages, zod: 'all', 'better-sqlite3': 'all', 'drizzle-orm': 'all', 'drizzle-kit': 'all', next: 'types' },
    }),
  ),
  {
    name: 'test/e2e',
    holds: /^test\/e2e\//,
    rooms: { ...everything, 'test/e2e': 'all' },
    packages: { '@playwright/test': 'all', '@axe-core/playwright': 'all', 'node:': 'all' },
  },
  { name: 'test/arch', holds: /^test\/arch\//, rooms: { 'test/arch': 'all' }, packages: { ...testPackages, typescript: 'all' } },
  {
    name: 'test/config',
    holds: /^test\/[^/]+\.(ts|json|jsonc)$/,
    rooms: { 'test/support': 'all' },
    packages: { vitest: 'all', '@playwright/test': 'all', 'node:': 'all' },
  },
  { name: 'config', holds: /^next\.config\.js$/, rooms: {}, packages: { next: 'types', 'node:': 'all' } },
  {
    name: 'papers',
    holds: /^(README\.md|DEVELOPERS\.md|package\.json|package-lock\.json|tsconfig\.json|\.[a-z-]+(\.json)?|\.ci\/.+|public\/.+)$/,
    rooms: {},
    packages: {},
  },
];

/** A screen file that says 'use client' runs in the browser: the browser's row without the walls of _client. */
export const useClient: Room = {
  name: 'use-client',
  holds: /^$/,
  rooms: { ...browser, screens: 'all', 'use-client': 'all' },
  packages: browserPackages,
};

/** The office edits the rulebook and shows its verdicts, so its forms know the types of every noun; code stays behind the same wall. */
const officeClient: Room = {
  ...useClient,
  name: 'office-client',
  rooms: { ...useClient.rooms, ...domain(ranks.slice(2), 'types'), ...codeForDisplay, 'office-client': 'all' },
};

export function roomOf(path: string, source: ts.SourceFile | undefined): Room | undefined {
  const room = rooms.find((each) => each.holds.test(path));
  if (room?.name !== 'screens' || !hasDirective(source, 'use client')) return room;
  return path.startsWith('app/office/') ? officeClient : useClient;
}

/** The rooms whose code ends up in a browser. */
export const isBrowserRoom = (room: Room | undefined): boolean => /^(client|use-client|office-client)$/.test(room?.name ?? '');

/** The leave a room has for a package, by its longest listed beginning (`next` covers `next/server`, `node:` every built-in). */
export function packageLeave(room: Room, name: string): 'all' | 'types' | undefined {
  const listed = Object.keys(room.packages).find(
    (each) => name === each || name.startsWith(`${each}/`) || (each.endsWith(':') && name.startsWith(each)),
  );
  return listed === undefined ? undefined : room.packages[listed];
}

/** Whether a leave covers one import of the file at `path`. */
export function isCovered(leave: Leave | undefined, path: string, carriesCode: boolean): boolean {
  if (leave === undefined || leave === 'all') return leave === 'all';
  if (leave === 'types') return !carriesCode;
  if (leave instanceof RegExp) return leave.test(path);
  return leave.codeOf.test(path) || (!carriesCode && (leave.typesOf?.test(path) ?? true));
}
