// Each build has a folder named for what it was built from. A running shop keeps its own, so a test run or an update beside it
// never takes files from under it; builds that nobody uses are removed.
import { existsSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { BUILD_INPUTS, fingerprint } from './fingerprint.mjs';
import { runQuietly } from './run.mjs';
import { isAlive } from './turn.mjs';

const PREFIX = 'build-';

/** Written when a build is complete: one that was cut off is made again. */
const COMPLETE = 'jarwright-complete';

/**
 * Builds the pages if no build of exactly these inputs is there.
 * @param {string} root @param {string} node @param {NodeJS.ProcessEnv} env @param {(text: string) => void} say
 * @returns {Promise<string>} the build's folder, relative to root
 */
export async function ensureBuilt(root, node, env, say) {
  const folder = `.next/${PREFIX}${fingerprint(root, BUILD_INPUTS).slice(0, 16)}`;
  const isBuilt = existsSync(join(root, folder, COMPLETE));
  removeUnused(root, folder);
  if (isBuilt) return folder;
  say('Building the pages; this takes about half a minute.');
  await runQuietly(node, ['node_modules/next/dist/bin/next', 'build'], {
    cwd: root,
    env: { ...env, JARWRIGHT_BUILD: folder },
    failure: 'The pages could not be built.',
  });
  writeFileSync(join(root, folder, COMPLETE), '');
  return folder;
}

/** Process ids of the servers that run from this folder's builds. @param {string} root */
export const runningServers = (root) => buildFolders(root).flatMap((folder) => usersOf(join(root, folder)));

function removeUnused(root, keep) {
  for (const folder of buildFolders(root)) {
    if (folder !== keep && usersOf(join(root, folder)).length === 0) rmSync(join(root, folder), { recursive: true, force: true });
  }
}

const buildFolders = (root) =>
  existsSync(join(root, '.next'))
    ? readdirSync(join(root, '.next'))
        .filter((name) => name.startsWith(PREFIX))
        .map((name) => `.next/${name}`)
    : [];

/** A server leaves a file `used-by-<process id>` in its build. */
const usersOf = (folder) =>
  readdirSync(folder)
    .map((name) => /^used-by-(\d+)$/.exec(name))
    .filter((match) => match !== null)
    .map((match) => Number(match[1]))
    .filter(isAlive);
