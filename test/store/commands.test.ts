// The commands that look after a shop's data, run as processes: what they print, how they end, and whom they refuse to disturb.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { describe, expect, onTestFinished, test } from 'vitest';
import { takeLock } from '#db/lock.ts';
import { migrateShop } from '#db/migrate.ts';
import { openShopDb } from '#db/open.ts';
import { backupsDir, shopFile } from '#db/paths.ts';
import { freshFolder } from '#test/support/shop-db.ts';
import { insertLots, insertShop, makeJar, publish } from '#test/support/shop-facts.ts';

const TOP = fileURLToPath(new URL('../..', import.meta.url));

function run(dataDir: string, name: 'backup' | 'restore' | 'verify' | 'purge', ...args: readonly string[]) {
  const file = join(TOP, 'app', '_cli', `${name}.ts`);
  const { status, stdout, stderr } = spawnSync(process.execPath, [file, ...args], {
    encoding: 'utf8',
    env: { ...process.env, JARWRIGHT_DATA: dataDir },
  });
  return { status, stdout, stderr };
}

function aShopOnDisk(): string {
  const dataDir = freshFolder();
  migrateShop(dataDir);
  const db = openShopDb(shopFile(dataDir));
  db.write((tx) => {
    insertShop(tx);
    insertLots(tx);
    makeJar(tx, 1, publish(tx, 'first').hash);
  });
  db.close();
  return dataDir;
}

describe('a closed shop', () => {
  test('is backed up, found sound, restored and purged', () => {
    const dataDir = aShopOnDisk();
    expect(run(dataDir, 'backup')).toMatchObject({ status: 0, stderr: '' });
    const [name = ''] = readdirSync(backupsDir(dataDir));
    expect(name).toMatch(/^shop-\d{4}-\d\d-\d\dT\d{6}Z$/);
    const backup = join(backupsDir(dataDir), name);
    expect(run(dataDir, 'verify', backup)).toMatchObject({ status: 0, stdout: expect.stringContaining('is sound') });
    expect(run(dataDir, 'restore', join(backup, 'shop.db'))).toMatchObject({
      status: 0,
      stdout: expect.stringContaining('What stood there before is kept in'),
    });
    expect(run(dataDir, 'purge')).toMatchObject({ status: 0, stdout: expect.stringContaining('Erased: 0 ledger bodies') });
    expect(run(dataDir, 'verify')).toMatchObject({ status: 0, stdout: expect.stringContaining("The ledger's 3 rows form one chain") });
  });

  test('that was tampered with is named damaged, exit code 1', () => {
    const dataDir = aShopOnDisk();
    const sqlite = new Database(shopFile(dataDir));
    sqlite.exec("DROP TRIGGER card_no_update; UPDATE card SET body = '{}'");
    sqlite.close();
    expect(run(dataDir, 'verify')).toMatchObject({
      status: 1,
      stdout: expect.stringMatching(/^Card 1 of order .* was changed.*\n1 found in /),
    });
  });
});

describe('a running shop', () => {
  test('is backed up and verified, but not restored or purged', () => {
    const dataDir = aShopOnDisk();
    const lock = takeLock(dataDir, 'the server (process 7)');
    const db = openShopDb(shopFile(dataDir));
    onTestFinished(() => {
      db.close();
      lock.release();
    });
    expect(run(dataDir, 'backup')).toMatchObject({ status: 0 });
    expect(run(dataDir, 'verify')).toMatchObject({ status: 0 });
    const [name = ''] = readdirSync(backupsDir(dataDir));
    const refused = {
      status: 1,
      stdout: '',
      stderr: `jarwright: The data folder ${dataDir} is in use by the server (process 7): stop that first.\n`,
    };
    expect(run(dataDir, 'restore', join(backupsDir(dataDir), name))).toEqual(refused);
    expect(run(dataDir, 'purge')).toEqual(refused);
  });
});

describe('a command that cannot be run as asked', () => {
  test.each([
    ['backup', ['--form', 'x'], /Unknown option '--form'\. Usage: npm run -s backup/],
    ['backup', ['x'], /"x" is not understood/],
    ['backup', [], /There is no shop in/],
    ['restore', [], /Name one backup/],
    ['restore', ['/nowhere'], /is not a backup/],
    ['verify', [], /There is no shop in/],
    ['verify', ['a', 'b'], /Name one backup at most/],
    ['purge', ['--years', '0'], /whole number from 1 to 99, not "0"/],
    ['purge', ['--years', 'ten'], /whole number from 1 to 99, not "ten"/],
  ] as const)('%s %j says so in one sentence', (name, args, says) => {
    const dataDir = freshFolder();
    const { status, stdout, stderr } = run(dataDir, name, ...args);
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(stderr).toMatch(says);
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(readdirSync(dataDir).filter((file) => file !== 'shop.lock')).toEqual([]);
  });
});
