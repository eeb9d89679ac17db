// What a test run may not leave behind: processes it started and changes in the working tree.
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';

/** Set in the environment of everything a run starts, so that what outlives it can be told from all else on the machine. */
export const RUN_MARK = 'JARWRIGHT_RUN';

/** Running processes that carry the mark, as `number command`. Read from /proc, so Linux only; null elsewhere. */
export function markedProcesses(mark: string): string[] | null {
  if (process.platform !== 'linux') return null;
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .filter((pid) => readProc(pid, 'environ').includes(`${RUN_MARK}=${mark}\0`))
    .map((pid) => `${pid} ${readProc(pid, 'cmdline').replaceAll('\0', ' ').trim()}`)
    .filter((line) => / ./.test(line));
}

/** A process may end while it is looked at; another user's may not be read. Neither can be ours. */
function readProc(pid: string, file: 'environ' | 'cmdline'): string {
  try {
    return readFileSync(`/proc/${pid}/${file}`, 'latin1');
  } catch {
    return '';
  }
}

/** A fingerprint of everything uncommitted, or null where there is no git checkout. */
export function treeState(cwd: string): string | null {
  try {
    const read = (args: string[]): string =>
      execFileSync('git', args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'], maxBuffer: 1 << 28 });
    return createHash('sha256')
      .update(read(['status', '--porcelain']))
      .update(read(['diff', 'HEAD']))
      .digest('hex');
  } catch {
    return null;
  }
}
