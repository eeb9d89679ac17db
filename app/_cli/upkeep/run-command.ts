// The frame of the commands that look after a shop's data: read the arguments, do the work, say what was done. Whatever a person can
// mend (a held lock, a full disk, a wrong folder) ends in one sentence and exit code 1; anything else is a fault and stays one.
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { startFailure } from '#app/_server/start-failure.ts';
import { takeLock } from '#db/lock.ts';
import { shopFile } from '#db/paths.ts';

export interface Said {
  readonly lines: readonly string[];
  /** 0: all is well. 1: done, or looked at, and something is not well. */
  readonly exitCode: 0 | 1;
}

/** A command that cannot be run as it was asked; the message is the sentence to show. */
export class NotRun extends Error {
  override readonly name = 'NotRun';
}

export const said = (...lines: readonly string[]): Said => ({ lines, exitCode: 0 });

export interface Asked {
  readonly dataDir: string;
  readonly positionals: readonly string[];
  readonly values: Readonly<Record<string, string | undefined>>;
}

/** Runs a command of the process and sets its exit code. `options` are the names of its `--name VALUE`. */
export function runCommand({ usage, options = [] }: { usage: string; options?: readonly string[] }, work: (asked: Asked) => Said): void {
  const dataDir = resolve(process.env.JARWRIGHT_DATA || '.data');
  try {
    const { lines, exitCode } = work({ dataDir, ...readArguments(usage, options) });
    process.stdout.write(lines.map((line) => `${line}\n`).join(''));
    process.exitCode = exitCode;
  } catch (error) {
    const sentence = error instanceof NotRun ? error.message : startFailure(error, { dataDir, host: '', port: 0 });
    if (sentence === null) throw error;
    process.stderr.write(`jarwright: ${sentence}\n`);
    process.exitCode = 1;
  }
}

function readArguments(usage: string, options: readonly string[]): Omit<Asked, 'dataDir'> {
  try {
    const named = Object.fromEntries(options.map((name) => [name, { type: 'string' as const }]));
    const { values, positionals } = parseArgs({ args: process.argv.slice(2), options: named, allowPositionals: true });
    return { values, positionals };
  } catch (error) {
    if (error instanceof TypeError && 'code' in error) throw new NotRun(`${error.message.split('. ')[0]}. Usage: ${usage}`);
    throw error;
  }
}

/** @throws NotRun where the data folder holds no shop */
export function needShop(dataDir: string): void {
  if (!existsSync(shopFile(dataDir))) throw new NotRun(`There is no shop in ${dataDir}: set JARWRIGHT_DATA to the folder that holds one.`);
}

/** Does the work as the one writer of the folder. @throws LockHeld while a shop runs on it */
export function holding<T>(dataDir: string, command: string, work: () => T): T {
  const lock = takeLock(dataDir, `${command} (process ${process.pid})`);
  try {
    return work();
  } finally {
    lock.release();
  }
}
