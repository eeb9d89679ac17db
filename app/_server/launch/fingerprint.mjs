// What was installed or built is told apart by content, not by time stamps: a checkout or a copy changes times at will.
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** What the build reads. Tests are no part of it. */
export const BUILD_INPUTS = ['app', 'lib', 'db', 'public', 'next.config.js', 'tsconfig.json', 'package-lock.json'];

/**
 * SHA-256 (hex) over the names and contents of files and folders below `root`; hidden files are left out.
 * @param {string} root @param {readonly string[]} paths @param {string} [salt] anything else that the result depends on
 */
export function fingerprint(root, paths, salt = '') {
  const hash = createHash('sha256').update(salt);
  for (const path of paths.flatMap((start) => filesBelow(root, start))) {
    const bytes = readFileSync(join(root, path));
    hash.update(`\0${path}\0${bytes.length}\0`).update(bytes);
  }
  return hash.digest('hex');
}

/** @returns {string[]} paths relative to root with forward slashes, in one order on every system */
function filesBelow(root, path) {
  if (!existsSync(join(root, path))) return [];
  if (!statSync(join(root, path)).isDirectory()) return [path];
  return readdirSync(join(root, path))
    .filter((name) => !name.startsWith('.'))
    .sort()
    .flatMap((name) => filesBelow(root, `${path}/${name}`));
}
