// `npm run check` and `npm test`: every check in order, one row each, and a closing line `N passed, N failed`. A check that is no
// test (types, lint, leftovers) counts as one failure when it fails and as nothing when it holds.
import { spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { markedProcesses, RUN_MARK, treeState } from './leftovers.ts';
import type { Totals } from './strict-reporter.ts';

const TOP = fileURLToPath(new URL('../..', import.meta.url));
const MODULES = join(TOP, 'node_modules');
const RESULTS = join(TOP, 'test-results');
const MARK = randomUUID();
const LEFTOVER_GRACE_MS = 5_000;

type Ran = { readonly isOk: boolean; readonly output: string };
type Row = { readonly name: string; readonly passed: number; readonly failed: number; readonly says: string };

/** Runs a program of node_modules with this Node. Its output goes to the screen as it comes, or is kept. */
function run(
  program: string,
  args: readonly string[],
  { env = {}, isShown = false }: { env?: Record<string, string>; isShown?: boolean } = {},
): Promise<Ran> {
  const child = spawn(process.execPath, [join(MODULES, program), ...args], {
    cwd: TOP,
    env: { ...process.env, [RUN_MARK]: MARK, ...env },
    stdio: ['ignore', isShown ? 'inherit' : 'pipe', isShown ? 'inherit' : 'pipe'],
  });
  const kept = { text: '' };
  for (const stream of [child.stdout, child.stderr]) {
    stream?.setEncoding('utf8').on('data', (text: string) => {
      kept.text += text;
    });
  }
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code) => resolve({ isOk: code === 0, output: kept.text }));
  });
}

const check = (name: string, isOk: boolean, says: string): Row => ({ name, passed: 0, failed: isOk ? 0 : 1, says: isOk ? 'ok' : says });

/** Next writes the types of routes and pages first. */
async function types(): Promise<Row> {
  const typegen = await run('next/dist/bin/next', ['typegen'], { env: { JARWRIGHT_BUILD: '' } });
  if (!typegen.isOk) return check('types', false, typegen.output);
  const tsc = await run('typescript/bin/tsc', ['--noEmit', '-p', '.']);
  return check('types', tsc.isOk, tsc.output);
}

async function lint(): Promise<Row> {
  const biome = await run('@biomejs/biome/bin/biome', ['check', '--max-diagnostics=50', '--diagnostic-level=warn']);
  return check('lint', biome.isOk, biome.output);
}

async function fastTests(): Promise<Row> {
  const file = join(RESULTS, 'fast.json');
  rmSync(file, { force: true });
  const args = ['run', '--config', 'test/vitest.config.ts', '--reporter=dot', '--reporter=./test/support/strict-reporter.ts'];
  const { isOk } = await run('vitest/vitest.mjs', args, { env: { JARWRIGHT_TOTALS: file }, isShown: true });
  return judged('fast tests', isOk, readTotals(file));
}

async function journeys(): Promise<Row> {
  const file = join(RESULTS, 'e2e.json');
  rmSync(file, { force: true });
  const { isOk } = await run('@playwright/test/cli.js', ['test', '--config', 'test/playwright.config.ts'], { isShown: true });
  const report = readJson<{ stats: { expected: number; unexpected: number; flaky: number; skipped: number } }>(file);
  const totals = report && {
    passed: report.stats.expected,
    failed: report.stats.unexpected,
    skipped: report.stats.skipped,
    retried: report.stats.flaky,
  };
  return judged('journeys', isOk, totals);
}

const readTotals = (file: string): Totals | null => readJson<Totals>(file);

function readJson<T>(file: string): T | null {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return null;
  }
}

/** No report, no test, a skip or a retry is a failure, whatever the runner's exit code says. */
function judged(name: string, isOk: boolean, totals: Totals | null): Row {
  if (totals === null) return { name, passed: 0, failed: 1, says: 'left no report' };
  const { passed, failed, skipped, retried } = totals;
  const wrongs = [
    passed + failed === 0 ? 'no test ran' : null,
    skipped > 0 ? `${skipped} skipped` : null,
    retried > 0 ? `${retried} retried` : null,
    !isOk && failed === 0 ? 'the run failed outside its tests' : null,
  ].filter((wrong) => wrong !== null);
  return { name, passed, failed: failed + wrongs.length, says: [`${passed} passed, ${failed} failed`, ...wrongs].join(', ') };
}

async function leftovers(): Promise<Row> {
  for (let waitedMs = 0; waitedMs < LEFTOVER_GRACE_MS && markedProcesses(MARK)?.length; waitedMs += 250) {
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
  const left = markedProcesses(MARK);
  return left === null
    ? { ...check('processes', true, ''), says: 'not looked for on this system' }
    : check('processes', left.length === 0, `still running:\n${left.join('\n')}`);
}

function tree(before: string | null): Row {
  if (before === null) return { ...check('tree', true, ''), says: 'not compared: no git checkout' };
  return check('tree', treeState(TOP) === before, 'the run changed files of the working tree: see git status');
}

async function timed(step: () => Promise<Row> | Row): Promise<Row> {
  const startMs = Date.now();
  const row = await step();
  const seconds = ((Date.now() - startMs) / 1000).toFixed(1);
  process.stdout.write(`${row.name.padEnd(12)}${seconds.padStart(6)} s  ${row.says}\n`);
  return row;
}

async function main(mode: string | undefined, rest: readonly string[]): Promise<number> {
  if ((mode !== 'check' && mode !== 'test') || rest.length > 0) {
    process.stderr.write(`jarwright: ${mode} takes no arguments here; for single tests use npx vitest or npx playwright.\n`);
    return 1;
  }
  const before = treeState(TOP);
  const first = await Promise.all([timed(types), timed(lint)]);
  const rows = [...first, await timed(fastTests)];
  if (mode === 'test') rows.push(await timed(journeys), await timed(leftovers), await timed(() => tree(before)));
  const sum = (key: 'passed' | 'failed'): number => rows.reduce((total, row) => total + row[key], 0);
  process.stdout.write(`${sum('passed')} passed, ${sum('failed')} failed\n`);
  return sum('failed') === 0 ? 0 : 1;
}

process.exitCode = await main(process.argv[2], process.argv.slice(3));
