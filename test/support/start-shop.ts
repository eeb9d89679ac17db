// A shop for tests: the real server as a process of its own, on a free port and a data folder that is thrown away.

import type { ChildProcess } from 'node:child_process';
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { prepareData } from '#app/_server/prepare-data.ts';

const SERVE = fileURLToPath(new URL('../../app/_server/serve.ts', import.meta.url));
const START_LIMIT_MS = 60_000;

export type Ended = {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly stdout: string;
  readonly stderr: string;
};

export type Shop = {
  readonly url: string;
  readonly pid: number;
  readonly dataDir: string;
  /** Sends SIGTERM (or another signal) and waits for the end. */
  readonly stop: (signal?: NodeJS.Signals) => Promise<Ended>;
};

type Launch = {
  readonly args?: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
  /** Fills the folder before the server comes; without it the server makes the demonstration. */
  readonly fill?: (dataDir: string) => Promise<void>;
};

/** Runs the server until it ends by itself: for the starts that must fail. */
export const runServer = (launch: Launch): Promise<Ended> => ending(launchServer(launch));

/** Starts a shop and waits until it says where it is. The folder is removed when it stops. */
export async function startShop({ args = [], env = {}, fill }: Launch = {}): Promise<Shop> {
  const dataDir = mkdtempSync(join(tmpdir(), 'jarwright-e2e-'));
  if (fill) (await prepareData({ dataDir, holder: 'a test', fill })).release();
  const child = launchServer({ args: ['--port', '0', ...args], env: { JARWRIGHT_DATA: dataDir, ...env } });
  const ended = ending(child).finally(() => rmSync(dataDir, { recursive: true, force: true }));
  const url = await Promise.race([
    openUrl(child),
    ended.then(({ code, stderr }) => Promise.reject(new Error(`no start (${code}): ${stderr}`))),
  ]);
  return {
    url,
    pid: child.pid ?? 0,
    dataDir,
    stop: async (signal = 'SIGTERM') => {
      child.kill(signal);
      return ended;
    },
  };
}

const launchServer = ({ args = [], env = {} }: Launch): ChildProcess =>
  spawn(process.execPath, [SERVE, ...args], { env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });

/** Keeps what the process prints and gives it with how it ended. */
function ending(child: ChildProcess): Promise<Ended> {
  const printed = { stdout: '', stderr: '' };
  for (const stream of ['stdout', 'stderr'] as const) {
    child[stream]?.setEncoding('utf8').on('data', (text: string) => {
      printed[stream] += text;
    });
  }
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code, signal) => resolve({ code, signal, ...printed }));
  });
}

function openUrl(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('the server did not say where it is in time')), START_LIMIT_MS);
    timer.unref();
    const seen = { text: '' };
    child.stdout?.on('data', (text: string) => {
      seen.text += text;
      const match = /open\s+(http:\S+)/.exec(seen.text);
      if (!match?.[1]) return;
      clearTimeout(timer);
      resolve(match[1]);
    });
  });
}
