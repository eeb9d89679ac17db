// The server, run by Node directly: it takes the data folder, puts its own HTTP server in front of Next, and ends in good order.
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { IncomingMessage, Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { networkInterfaces } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import next from 'next';
import { fillWithDemoShop } from '#app/_cli/demo/fill-folder.ts';
import { newId, readClock } from './clock.ts';
import type { Handle } from './http-server.ts';
import { makeHttpServer } from './http-server.ts';
import { logFault } from './log.ts';
import type { Held } from './prepare-data.ts';
import { prepareData } from './prepare-data.ts';
import type { ServeArguments } from './serve-arguments.ts';
import { parseServeArguments } from './serve-arguments.ts';
import { setServerContext } from './server-context.ts';
import { shutDown } from './shut-down.ts';
import { startFailure } from './start-failure.ts';
import { makeJobRunner } from './worker-host.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const GRACE_MS = 5_000;

/** One sentence on stderr and exit code 1. */
function refuseToStart(sentence: string): never {
  process.stderr.write(`jarwright: ${sentence}\n`);
  process.exit(1);
}

const parsed = parseServeArguments(process.argv.slice(2));
if (!parsed.ok) refuseToStart(parsed.refusal);
const settings: ServeArguments = parsed.value;
const dataDir = resolve(ROOT, process.env.JARWRIGHT_DATA || '.data');
const build = process.env.JARWRIGHT_BUILD;
if (!build || !existsSync(join(ROOT, build, 'BUILD_ID'))) refuseToStart('The pages are not built: start the shop with npm start.');
const packageJson: { version: string } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));

const startedAtMs = readClock();
const closers: (() => void | Promise<void>)[] = [];
const live: { handle: Handle | null; isStopping: boolean } = { handle: null, isStopping: false };

const server = makeHttpServer({
  names: settings.names,
  handler: () => (live.isStopping ? null : live.handle),
  onFault: (error: unknown, { method, url = '' }: IncomingMessage) =>
    logFault({ faultId: newId(), where: `${method} ${url.split('?', 1)[0]}`, error }),
});

async function start(): Promise<void> {
  // The port comes first: when it is taken, nothing on the disk has changed.
  const address = await listen(server, settings);
  const holder = `the shop at ${address.address}:${address.port} (process ${process.pid})`;
  const held: Held = await prepareData({ dataDir, holder, fill: settings.isEmpty ? null : makeDemo });
  closers.push(() => held.release());

  const usedBy = join(ROOT, build ?? '', `used-by-${process.pid}`);
  writeFileSync(usedBy, '');
  closers.push(() => rmSync(usedBy, { force: true }));

  const jobs = makeJobRunner();
  closers.push(() => jobs.close());
  setServerContext({
    dataDir,
    version: packageJson.version,
    startedAtMs,
    now: readClock,
    newId,
    jobs,
    onClose: (close) => closers.push(close),
  });

  const pages = next({ dev: false, dir: ROOT, hostname: settings.host, port: address.port });
  await pages.prepare();
  closers.push(() => pages.close());
  live.handle = pages.getRequestHandler();
  process.stdout.write(welcome(address));
}

/** Half a year of trade takes about a minute to tell; whoever waits should know for what. */
function makeDemo(folder: string): Promise<void> {
  process.stdout.write('Making the demonstration shop with half a year behind it: about a minute, this once.\n');
  return fillWithDemoShop(folder);
}

const listen = (on: Server, { host, port }: ServeArguments): Promise<AddressInfo> =>
  new Promise((done, fail) => {
    on.once('error', fail);
    on.listen(port, host, () => done(on.address() as AddressInfo));
  });

function welcome({ address, port }: AddressInfo): string {
  const reachable = ['0.0.0.0', '::'].includes(address) ? outsideAddresses() : [address];
  const urls = reachable.map((each) => `http://${each.includes(':') ? `[${each}]` : each}:${port}`);
  const people = join(dataDir, 'demo-people.txt');
  const lines = existsSync(people) ? readFileSync(people, 'utf8').trimEnd().split('\n') : [];
  const rows = [...urls.map((url) => `  open    ${url}`), `  data    ${dataDir}`, ...lines.map((line) => `  person  ${line}`)];
  return `Jarwright ${packageJson.version}\n${rows.join('\n')}\n`;
}

const outsideAddresses = (): string[] => [
  '127.0.0.1',
  ...Object.values(networkInterfaces()).flatMap((each = []) =>
    each.filter(({ family, internal }) => family === 'IPv4' && !internal).map(({ address }) => address),
  ),
];

async function closeAll(): Promise<void> {
  for (const close of closers.reverse()) await close();
}

/** A second signal does not wait for anybody. */
async function stop(): Promise<void> {
  if (live.isStopping) return server.closeAllConnections();
  live.isStopping = true;
  await shutDown({ server, close: closeAll, graceMs: GRACE_MS });
  process.exit(0);
}

process.on('SIGTERM', () => void stop());
process.on('SIGINT', () => void stop());

try {
  await start();
} catch (error) {
  const sentence = startFailure(error, { dataDir, host: settings.host, port: settings.port });
  await shutDown({ server, close: closeAll, graceMs: 0 });
  if (sentence === null) throw error;
  refuseToStart(sentence);
}
