import { execFileSync, spawn } from 'node:child_process';
import { chmodSync, cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, test } from 'vitest';
import { findBrowser } from '#app/_server/launch/browser.mjs';
import { runningServers } from '#app/_server/launch/builds.mjs';
import { abilitiesOf, lacks, pinnedPath } from '#app/_server/launch/choose-node.mjs';
import { BUILD_INPUTS, fingerprint } from '#app/_server/launch/fingerprint.mjs';
import { inTurn } from '#app/_server/launch/turn.mjs';

const TOP = fileURLToPath(new URL('../..', import.meta.url));
const folders: string[] = [];

function folder(files: Readonly<Record<string, string>> = {}): string {
  const made = mkdtempSync(join(tmpdir(), 'jarwright-launcher-'));
  folders.push(made);
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(join(made, path, '..'), { recursive: true });
    writeFileSync(join(made, path), text);
  }
  return made;
}

afterEach(() => {
  for (const each of folders.splice(0)) rmSync(each, { recursive: true, force: true });
});

describe('the fingerprint of what a build reads', () => {
  const files = { 'app/a.ts': 'one', 'app/deep/b.ts': 'two', 'package-lock.json': '{}' };

  test('is the same for the same contents, whatever the times of the files', () => {
    expect(fingerprint(folder(files), ['app', 'package-lock.json'])).toBe(fingerprint(folder(files), ['app', 'package-lock.json']));
  });

  test.each([
    ['a changed file', { ...files, 'app/a.ts': 'One' }],
    ['a new file', { ...files, 'app/c.ts': '' }],
    ['a moved file', { 'app/deep/a.ts': 'one', 'app/deep/b.ts': 'two', 'package-lock.json': '{}' }],
    ['text moved from one file to the next', { ...files, 'app/a.ts': 'onet', 'app/deep/b.ts': 'wo' }],
  ])('changes with %s', (_case, changed) => {
    expect(fingerprint(folder(changed), ['app', 'package-lock.json'])).not.toBe(fingerprint(folder(files), ['app', 'package-lock.json']));
  });

  test('is blind to tests and to hidden files', () => {
    const more = { ...files, 'test/a.test.ts': 'x', 'app/.swap': 'x' };
    expect(fingerprint(folder(more), BUILD_INPUTS)).toBe(fingerprint(folder(files), BUILD_INPUTS));
  });
});

describe('the choice of a Node', () => {
  test('every platform pinned in package.json has its path, and the other way round', () => {
    const { optionalDependencies } = JSON.parse(readFileSync(join(TOP, 'package.json'), 'utf8')) as {
      optionalDependencies: Record<string, string>;
    };
    const paths = ['linux-x64', 'linux-arm64', 'darwin-x64', 'darwin-arm64', 'win32-x64'].map((each) =>
      pinnedPath(...(each.split('-') as [string, string])),
    );
    expect(paths.map((path) => path?.split('/')[0]).sort()).toEqual(Object.keys(optionalDependencies).sort());
    expect(pinnedPath('sunos', 'x64')).toBeNull();
  });

  test('says what an older Node lacks', () => {
    expect(lacks({ version: 'v20.20.2', napi: 9, stripsTypes: false, hasArgon2: false, hasUuid7: false })).toEqual([
      'Node-API 10',
      'type stripping',
      'argon2',
      'UUIDv7',
    ]);
    expect(lacks({ version: 'v26.10.0', napi: 10, stripsTypes: true, hasArgon2: true, hasUuid7: true })).toEqual([]);
  });

  test('asks this Node, and gets no answer from what does not run', () => {
    const own = abilitiesOf(process.execPath);
    expect(own && lacks(own)).toEqual([]);
    const root = folder({ node: 'no program' });
    chmodSync(join(root, 'node'), 0o755);
    expect(abilitiesOf(join(root, 'node'))).toBeNull();
    expect(abilitiesOf(join(root, 'absent'))).toBeNull();
  });
});

test('two commands take turns, and a turn whose holder has died is free', async () => {
  const root = folder({ '.ready/turn': '2147483646' });
  const order: string[] = [];
  const said: string[] = [];
  const work = (name: string) => async () => {
    order.push(`${name} begins`);
    await new Promise((resolve) => setTimeout(resolve, 30));
    order.push(`${name} ends`);
  };
  await Promise.all([inTurn(root, (text) => said.push(text), work('first')), inTurn(root, (text) => said.push(text), work('second'))]);
  expect(order.map((line) => line.split(' ')[1])).toEqual(['begins', 'ends', 'begins', 'ends']);
  expect(said.some((text) => text.includes('waiting'))).toBe(true);
  expect(existsSync(join(root, '.ready/turn'))).toBe(false);
});

test('a build knows which of its servers still run', () => {
  const root = folder({
    [`.next/build-a/used-by-${process.pid}`]: '',
    '.next/build-b/used-by-2147483646': '',
    '.next/other/used-by-1': '',
  });
  expect(runningServers(root)).toEqual([process.pid]);
});

test('a browser on the path is taken when it runs, and left when it does not', () => {
  const root = folder({ 'broken/chromium': '#!/bin/sh\nexit 127\n', 'good/chromium': '#!/bin/sh\necho Chromium 1\n' });
  for (const each of ['broken', 'good']) chmodSync(join(root, each, 'chromium'), 0o755);
  const env = {
    PATH: `${join(root, 'broken')}:${join(root, 'good')}`,
    PLAYWRIGHT_BROWSERS_PATH: join(root, 'none'),
  } as unknown as NodeJS.ProcessEnv;
  expect(findBrowser(env)).toBe(join(root, 'good', 'chromium'));
  expect(findBrowser({ ...env, PATH: join(root, 'broken') })).toBeUndefined();
});

describe('the launcher as a process', () => {
  /** A checkout with the real launcher, one command, and an npm that notes its calls instead of fetching anything. */
  function checkout(npm: string): string {
    const root = folder({
      'package-lock.json': '{"lockfileVersion": 3}',
      'app/_cli/greet.ts': 'const name: string = process.argv[2]; process.stdout.write(["hello", name].join(" ")); process.exitCode = 3;',
      'npm.cjs': npm,
    });
    cpSync(join(TOP, 'app/_server/launch'), join(root, 'app/_server/launch'), { recursive: true });
    cpSync(join(TOP, 'app/_server/ready.mjs'), join(root, 'app/_server/ready.mjs'));
    return root;
  }

  const GOOD_NPM = `const fs = require('node:fs'); fs.mkdirSync('node_modules', { recursive: true });
    fs.appendFileSync('calls.txt', process.argv.slice(2).join(' ') + '\\n'); console.warn('npm warn deprecated something');`;

  function launch(root: string, args: readonly string[]): Promise<{ code: number | null; stdout: string; stderr: string }> {
    const child = spawn(process.execPath, ['app/_server/ready.mjs', ...args], {
      cwd: root,
      env: { ...process.env, npm_execpath: join(root, 'npm.cjs') },
    });
    const printed = { stdout: '', stderr: '' };
    child.stdout.on('data', (chunk) => {
      printed.stdout += chunk;
    });
    child.stderr.on('data', (chunk) => {
      printed.stderr += chunk;
    });
    return new Promise((resolve) => child.once('close', (code) => resolve({ code, ...printed })));
  }

  test('installs once per lock file, keeps the noise of npm off the screen and gives the exit code of the command', async () => {
    const root = checkout(GOOD_NPM);
    const first = await launch(root, ['greet', 'you']);
    expect(first).toEqual({
      code: 3,
      stdout: 'hello you',
      stderr: 'jarwright: Installing the packages of the lock file; this takes about a minute.\n',
    });
    expect(await launch(root, ['greet', 'again'])).toEqual({ code: 3, stdout: 'hello again', stderr: '' });
    writeFileSync(join(root, 'package-lock.json'), '{"lockfileVersion": 3, "packages": {}}');
    await launch(root, ['greet', 'you']);
    const calls = readFileSync(join(root, 'calls.txt'), 'utf8').trim().split('\n');
    expect(calls).toHaveLength(2);
    expect(calls[0]).toContain('ci --include=dev --include=optional');
  });

  test('a failed installation is one sentence, the command and its last lines, and is tried again the next time', async () => {
    const root = checkout(`console.error('npm error network unreachable'); process.exit(1);`);
    for (const _try of [1, 2]) {
      const { code, stderr } = await launch(root, ['greet']);
      expect(code).toBe(1);
      expect(stderr).toMatch(
        /could not be installed.*\n {2}command: .*npm\.cjs ci .*\n {2}\| npm error network unreachable\n {2}\| exit code 1\n$/,
      );
    }
  });

  test('an unknown command is told which there are', async () => {
    const { code, stderr } = await launch(checkout(GOOD_NPM), ['gret']);
    expect([code, stderr]).toEqual([1, 'jarwright: There is no command "gret": try one of start, test, check, bench, greet.\n']);
  });

  test('packages are not changed under a running shop', async () => {
    const root = checkout(GOOD_NPM);
    mkdirSync(join(root, '.next/build-a'), { recursive: true });
    writeFileSync(join(root, `.next/build-a/used-by-${process.pid}`), '');
    const { code, stderr } = await launch(root, ['greet']);
    expect(code).toBe(1);
    expect(stderr).toContain(`a shop runs from this folder (process ${process.pid})`);
  });

  test('the launcher parses on the oldest Node it promises: no syntax newer than 2022', () => {
    // Node 18 implements ES2022; the check is that none of the newer built-ins are called.
    const text = execFileSync(
      'cat',
      [
        'app/_server/ready.mjs',
        ...['browser', 'builds', 'choose-node', 'fingerprint', 'install', 'run', 'stop', 'turn'].map(
          (name) => `app/_server/launch/${name}.mjs`,
        ),
      ],
      { cwd: TOP, encoding: 'utf8' },
    );
    expect(text).not.toMatch(
      /\.(toSorted|toReversed|toSpliced|findLast|groupBy|isWellFormed)\(|Promise\.withResolvers|import\.meta\.(dirname|filename)|with \{ type/,
    );
    expect(text).not.toMatch(/from '(?!node:|\.)/);
  });
});
