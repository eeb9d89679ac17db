// A process killed between any two statements of an order or a weighing leaves the whole of it or nothing, and a sound file. The same
// request sent again, as a counter does after a restart, comes to the same end, once.
import { spawnSync } from 'node:child_process';
import { copyFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { APPLICATION_ID, connect, openShopDb, SCHEMA_VERSION } from '#db/open.ts';
import { verifyShop } from '#db/verify.ts';
import { dueReading, mixUntil, orderJar } from '#test/support/a-bench-order.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop } from '#test/support/a-shop.ts';
import { everythingStored, orderAsked } from '#test/support/a-visit.ts';
import { freshFolder } from '#test/support/shop-db.ts';
import type { KillJob } from './children/kill-job.ts';
import { runJob } from './children/kill-job.ts';

const CHILD = fileURLToPath(new URL('./children/run-flow.ts', import.meta.url));
const ONE_PROCESS_EACH_MS = 120_000;

const anOrder = (shop: AShop): KillJob => ({ flow: 'place-order', actor: { kind: 'nobody' }, asked: orderAsked(shop) });

/** The first weighing of a jar: it also opens its lot and settles what the order was promised of it. */
function aReading(shop: AShop): KillJob {
  const orderId = mixUntil(shop, orderJar(shop), { lineNo: 1 });
  return { flow: 'record-reading', actor: shop.as('mixer').actor, asked: dueReading(shop, orderId) };
}

test.each([
  ['an order', anOrder, ['customer_order', 'card', 'reservation', 'request', 'ledger', 'ledger_body']],
  ['a reading', aReading, ['reading', 'lot_event', 'request', 'ledger', 'ledger_body']],
])(
  '%s is whole or absent wherever its process is killed, and asked for again it is there once, with the same answer',
  (_, jobIn, tables) => {
    const shop = aShop();
    const job = jobIn(shop);
    const folder = freshFolder();
    const file = fileOf(shop, folder);
    const before = stored(file);
    const whole = copied(file, 'whole.db');
    const answer = again(whole, job);
    const after = stored(whole);
    expect(answer).toMatchObject({ ok: true });
    expect(tables.filter((table) => lineOf(before, table) === lineOf(after, table))).toEqual([]);

    const { writes } = run(copied(file, 'undisturbed.db'), 'never', job);
    expect(writes.length).toBeGreaterThan(tables.length);
    for (const killAt of [...writes, 0]) {
      const killed = copied(file, `killed-${killAt}.db`);
      expect(run(killed, killAt, job).signal, `before statement ${killAt}`).toBe('SIGKILL');
      expect(verifyShop(killed, null).problems).toEqual([]);
      expect(stored(killed) === (killAt === 0 ? after : before), `killed before statement ${killAt}`).toBe(true);
      expect(again(killed, job)).toEqual(answer);
      expect(stored(killed) === after, `asked again after ${killAt}`).toBe(true);
    }
  },
  ONE_PROCESS_EACH_MS,
);

/** The shop of a test as a file that was closed in good order. */
function fileOf(shop: AShop, folder: string): string {
  const file = join(folder, 'shop.db');
  shop.sqlite.pragma(`application_id = ${APPLICATION_ID}`);
  shop.sqlite.pragma(`user_version = ${SCHEMA_VERSION}`);
  writeFileSync(file, shop.sqlite.serialize());
  return file;
}

function copied(file: string, name: string): string {
  const copy = join(file, '..', name);
  copyFileSync(file, copy);
  return copy;
}

/** The flow in a process of its own; between two statements that only read the file stays the same, so it need not die there. */
function run(file: string, killAt: number | 'never', job: KillJob): { signal: NodeJS.Signals | null; writes: readonly number[] } {
  const child = spawnSync(process.execPath, [CHILD, file, String(killAt), JSON.stringify(job)], { encoding: 'utf8' });
  expect(child.stderr).toBe('');
  return { signal: child.signal, writes: child.stdout === '' ? [] : (JSON.parse(child.stdout) as number[]) };
}

function again(file: string, job: KillJob): unknown {
  const db = openShopDb(file);
  const answer = runJob(db, job);
  db.close();
  return answer;
}

function stored(file: string): string {
  const sqlite = connect(file);
  const text = everythingStored({ sqlite });
  sqlite.close();
  return text;
}

const lineOf = (text: string, table: string): string | undefined => text.split('\n').find((line) => line.startsWith(`${table}: `));
