// Packages are installed when the lock file says something else than at the last time; the stamp lies among them and goes with them.
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runningServers } from './builds.mjs';
import { fingerprint } from './fingerprint.mjs';
import { runQuietly } from './run.mjs';
import { Stop } from './stop.mjs';

/**
 * Installs exactly what the lock file pins, if that is not there yet.
 * @param {string} root @param {NodeJS.ProcessEnv} env @param {(text: string) => void} say
 */
export async function ensureInstalled(root, env, say) {
  const stamp = join(root, 'node_modules', '.jarwright-installed');
  const wanted = fingerprint(root, ['package-lock.json'], `${process.platform}-${process.arch}`);
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return;

  const servers = runningServers(root);
  if (servers.length > 0) {
    throw new Stop(`New packages are due, but a shop runs from this folder (process ${servers.join(', ')}): stop it and try again.`);
  }
  say('Installing the packages of the lock file; this takes about a minute.');
  rmSync(stamp, { force: true });
  const [npm, ...first] = npmCommand();
  const flags = ['ci', '--include=dev', '--include=optional', '--no-audit', '--no-fund', '--loglevel=error'];
  await runQuietly(npm, [...first, ...flags], { cwd: root, env, failure: 'The packages could not be installed (is the network there?).' });
  writeFileSync(stamp, wanted);
}

/** npm itself when it runs us, else the one on the PATH. */
function npmCommand() {
  const cli = process.env.npm_execpath;
  if (cli && /\.c?js$/.test(cli)) return [process.execPath, cli];
  return [process.platform === 'win32' ? 'npm.cmd' : 'npm'];
}
