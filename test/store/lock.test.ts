// One writer per folder, and no lock outlives its holder.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { describe, expect, onTestFinished, test } from 'vitest';
import { LockHeld, takeLock } from '#db/lock.ts';
import { freshFolder } from '#test/support/shop-db.ts';

const CHILD = fileURLToPath(new URL('./children/hold-lock.ts', import.meta.url));

async function holdElsewhere(dataDir: string): Promise<() => Promise<void>> {
  const child = spawn(process.execPath, ['--expose-gc', CHILD, dataDir, 'npm start (process 7)'], { stdio: ['ignore', 'pipe', 'inherit'] });
  const gone = once(child, 'exit');
  const kill = async (): Promise<void> => {
    child.kill('SIGKILL');
    await gone;
  };
  onTestFinished(kill);
  await once(child.stdout, 'data');
  return kill;
}

const holderOf = (dataDir: string): string => {
  try {
    takeLock(dataDir, 'me').release();
    return 'nobody';
  } catch (error) {
    if (error instanceof LockHeld) return error.holder;
    throw error;
  }
};

describe('the lock', () => {
  test('is held by another process until that is killed, and names it', async () => {
    const dataDir = freshFolder();
    const kill = await holdElsewhere(dataDir);
    expect(holderOf(dataDir)).toBe('npm start (process 7)');
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(holderOf(dataDir)).toBe('npm start (process 7)');
    await kill();
    expect(holderOf(dataDir)).toBe('nobody');
  });

  test('is refused a second time in the same process', () => {
    const dataDir = freshFolder();
    const lock = takeLock(dataDir, 'npm run restore');
    expect(holderOf(dataDir)).toBe('npm run restore');
    lock.release();
    lock.release();
    expect(holderOf(dataDir)).toBe('nobody');
  });

  test('of one folder says nothing about another', () => {
    const lock = takeLock(freshFolder(), 'one');
    expect(holderOf(freshFolder())).toBe('nobody');
    lock.release();
  });

  test('cannot be taken in a folder that is not there', () => {
    expect(() => takeLock(`${freshFolder()}/none`, 'me')).toThrow(/directory does not exist/);
  });
});
