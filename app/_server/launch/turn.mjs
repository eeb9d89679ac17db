// Two commands started at once must not install or build into each other: the second waits for its turn.
import { closeSync, mkdirSync, openSync, readFileSync, rmSync, writeSync } from 'node:fs';
import { join } from 'node:path';

const POLL_MS = 300;

/**
 * Runs `work` alone on this checkout. A turn whose holder has died is free again.
 * @template T @param {string} root @param {(text: string) => void} say @param {() => Promise<T>} work @returns {Promise<T>}
 */
export async function inTurn(root, say, work) {
  const file = join(root, '.ready', 'turn');
  mkdirSync(join(root, '.ready'), { recursive: true });
  for (let tries = 0; !tryTake(file); tries += 1) {
    if (tries === 0) say('Another command is preparing this folder; waiting for it.');
    await new Promise((resolve) => setTimeout(resolve, POLL_MS));
  }
  try {
    return await work();
  } finally {
    rmSync(file, { force: true });
  }
}

function tryTake(file) {
  try {
    const handle = openSync(file, 'wx');
    writeSync(handle, String(process.pid));
    closeSync(handle);
    return true;
  } catch (error) {
    if (error.code !== 'EEXIST') throw error;
    const holder = readHolder(file);
    if (holder > 0 && !isAlive(holder)) rmSync(file, { force: true });
    return false;
  }
}

/** 0 while the other command has made the file but not yet written its number. */
function readHolder(file) {
  try {
    return Number(readFileSync(file, 'utf8'));
  } catch (error) {
    if (error.code === 'ENOENT') return 0;
    throw error;
  }
}

/** @param {number} pid */
export function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === 'EPERM';
  }
}
