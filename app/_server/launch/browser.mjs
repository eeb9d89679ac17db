// The browser journeys need a Chromium. It is looked for where one usually is, then installed, else the command to type is printed.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { delimiter, join } from 'node:path';
import { runQuietly } from './run.mjs';
import { Stop } from './stop.mjs';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome.exe'];
const IN_CACHE = ['chrome-linux/chrome', 'chrome-linux64/chrome', 'chrome-win/chrome.exe', 'chrome-win64/chrome.exe'].concat(
  ['chrome-mac', 'chrome-mac-x64', 'chrome-mac-arm64'].flatMap((folder) => [
    `${folder}/Chromium.app/Contents/MacOS/Chromium`,
    `${folder}/Google Chrome for Testing.app/Contents/MacOS/Google Chrome for Testing`,
  ]),
);

/**
 * The path of a Chromium, installing one if need be.
 * @param {string} root @param {string} node @param {NodeJS.ProcessEnv} env @param {(text: string) => void} say
 * @returns {Promise<string>} @throws {Stop}
 */
export async function ensureBrowser(root, node, env, say) {
  if (env.CHROMIUM) {
    if (existsSync(env.CHROMIUM)) return env.CHROMIUM;
    throw new Stop(`CHROMIUM names ${env.CHROMIUM}, which is not there: correct or unset it.`);
  }
  const there = findBrowser(env);
  if (there) return there;
  say('Installing Chromium for the browser tests; this takes about a minute.');
  const failures = [];
  for (const [file, args] of installers(node)) {
    const failure = await attempt(() => runQuietly(file, args, { cwd: root, env, failure: 'Chromium could not be installed.' }));
    const found = findBrowser(env);
    if (found) return found;
    if (failure) failures.push(`${file} ${args.join(' ')}: ${failure.tail.at(-2) ?? failure.tail.at(-1)}`);
  }
  throw new Stop('The browser tests need Chromium and it could not be installed: install it or set CHROMIUM to its path.', {
    command: process.platform === 'linux' ? 'sudo apt-get install -y --no-install-recommends chromium' : 'npx playwright install chromium',
    tail: failures,
  });
}

/** @param {NodeJS.ProcessEnv} env @returns {string | undefined} */
export function findBrowser(env) {
  const onPath = (env.PATH ?? '').split(delimiter).flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return [...onPath, ...cached(env)].find((file) => existsSync(file) && canRun(file));
}

/** A downloaded browser may lack libraries of the system. Only on Linux does --version print and end. */
const canRun = (file) => process.platform !== 'linux' || spawnSync(file, ['--version'], { stdio: 'ignore', timeout: 30_000 }).status === 0;

/** Browsers that Playwright downloaded, newest first. */
function cached(env) {
  const places = {
    linux: join(homedir(), '.cache', 'ms-playwright'),
    darwin: join(homedir(), 'Library', 'Caches', 'ms-playwright'),
    win32: join(env.LOCALAPPDATA ?? homedir(), 'ms-playwright'),
  };
  const folder = env.PLAYWRIGHT_BROWSERS_PATH || places[process.platform] || places.linux;
  if (!existsSync(folder)) return [];
  const versions = readdirSync(folder)
    .filter((name) => /^chromium-\d+$/.test(name))
    .sort((a, b) => Number(b.slice(9)) - Number(a.slice(9)));
  return versions.flatMap((version) => IN_CACHE.map((path) => join(folder, version, path)));
}

function installers(node) {
  const own = [node, ['node_modules/@playwright/test/cli.js', 'install', 'chromium']];
  const isDebianRoot = process.platform === 'linux' && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
  if (!isDebianRoot) return [own];
  return [own, ['apt-get', ['update']], ['apt-get', ['install', '-y', '--no-install-recommends', 'chromium']]];
}

/** The Stop of a step that failed, or null: the next way is tried then. */
async function attempt(step) {
  try {
    await step();
    return null;
  } catch (error) {
    if (error instanceof Stop) return error;
    throw error;
  }
}
