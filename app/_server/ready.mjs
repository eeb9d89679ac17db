// The launcher behind every npm script: plain JavaScript on built-ins only, since it runs before anything is installed and on any
// Node from 18 on. It installs, picks the Node that runs the rest, builds, finds a browser, and hands over.
import { existsSync, readdirSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureBrowser } from './launch/browser.mjs';
import { ensureBuilt } from './launch/builds.mjs';
import { chooseNode } from './launch/choose-node.mjs';
import { ensureInstalled } from './launch/install.mjs';
import { handOver } from './launch/run.mjs';
import { Stop, stopText } from './launch/stop.mjs';
import { inTurn } from './launch/turn.mjs';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const say = (text) => process.stderr.write(`jarwright: ${text}\n`);

/** What each command needs before it runs, and what it then runs. Any other name is a file of app/_cli. */
const COMMANDS = {
  start: { needs: ['build'], file: 'app/_server/serve.ts' },
  test: { needs: ['build', 'browser'], file: 'test/support/run-all.ts', before: ['test'] },
  check: { needs: [], file: 'test/support/run-all.ts', before: ['check'] },
  bench: { needs: ['build'], file: 'test/bench/run.ts' },
};

async function main([name = '', ...rest]) {
  const command = COMMANDS[name] ?? dataCommand(name);
  const { node, env } = await inTurn(root, say, () => prepare(command.needs));
  return handOver(node, [join(root, command.file), ...(command.before ?? []), ...rest], { cwd: root, env });
}

/** A command of app/_cli: one file a command, run by Node directly. */
function dataCommand(name) {
  const folder = join(root, 'app', '_cli');
  const names = existsSync(folder)
    ? readdirSync(folder)
        .filter((file) => file.endsWith('.ts'))
        .map((file) => file.slice(0, -3))
    : [];
  if (!names.includes(name)) {
    throw new Stop(`There is no command "${name}": try one of ${[...Object.keys(COMMANDS), ...names].join(', ')}.`);
  }
  return { needs: [], file: `app/_cli/${name}.ts` };
}

async function prepare(needs) {
  const outer = { ...process.env, NEXT_TELEMETRY_DISABLED: '1' };
  await ensureInstalled(root, outer, say);
  const node = chooseNode(root, process.execPath);
  const path = [dirname(node), join(root, 'node_modules', '.bin'), outer.PATH ?? ''].join(delimiter);
  const env = { ...outer, PATH: path };
  if (needs.includes('build')) env.JARWRIGHT_BUILD = await ensureBuilt(root, node, env, say);
  if (needs.includes('browser')) env.CHROMIUM = await ensureBrowser(root, node, env, say);
  return { node, env };
}

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (error) {
  process.stderr.write(`${stopText(asStop(error))}\n`);
  process.exitCode = 1;
}

/** The file system's own refusals are a person's business, not a fault of the program. */
function asStop(error) {
  if (error instanceof Stop) return error;
  if (['EACCES', 'EPERM', 'EROFS'].includes(error.code)) return new Stop(`This folder cannot be written: ${error.path}.`);
  if (error.code === 'ENOSPC') return new Stop('The disk is full.');
  throw error;
}
