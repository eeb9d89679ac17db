// A process killed between any two statements of a unit of work leaves the whole of it or nothing, and a sound file.
import { spawnSync } from 'node:child_process';
import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { migrateFile } from '#db/migrate.ts';
import { openShopDb } from '#db/open.ts';
import { verifyShop } from '#db/verify.ts';
import { freshFolder } from '#test/support/shop-db.ts';
import { insertLots, insertShop, publish } from '#test/support/shop-facts.ts';

const CHILD = fileURLToPath(new URL('./children/place-order.ts', import.meta.url));

function foundedShop(folder: string): { file: string; editionHash: string } {
  const file = join(folder, 'founded.db');
  migrateFile(file);
  const db = openShopDb(file);
  const editionHash = db.write((tx) => {
    insertShop(tx);
    insertLots(tx);
    return publish(tx, 'first').hash;
  });
  db.checkpoint();
  db.close();
  return { file, editionHash };
}

/** Rows that the order's unit of work writes, by table. */
function written(file: string): Readonly<Record<string, unknown>> {
  const db = openShopDb(file);
  const count = (table: string): unknown => db.read((tx) => tx.orm.$client.prepare(`SELECT count(*) FROM ${table}`).pluck().get());
  const tables = ['request', 'customer_order', 'card', 'reservation', 'ledger', 'ledger_body'];
  const rows = Object.fromEntries(tables.map((table) => [table, count(table)]));
  db.close();
  return rows;
}

const NOTHING = { request: 0, customer_order: 0, card: 0, reservation: 0, ledger: 0, ledger_body: 0 };
const WHOLE = { request: 1, customer_order: 1, card: 1, reservation: 1, ledger: 1, ledger_body: 1 };

test('killed before any statement: nothing; after the commit: everything', () => {
  const folder = freshFolder();
  const { file, editionHash } = foundedShop(folder);
  const run = (killAt: number): { signal: NodeJS.Signals | null; rows: unknown; saidCount: number } => {
    const copy = join(folder, `killed-${killAt}.db`);
    copyFileSync(file, copy);
    const child = spawnSync(process.execPath, [CHILD, copy, String(killAt), editionHash], { encoding: 'utf8' });
    expect(child.stderr).toBe('');
    expect(verifyShop(copy, null).problems).toEqual([]);
    return { signal: child.signal, rows: written(copy), saidCount: Number(child.stdout) };
  };
  const undisturbed = run(999);
  expect(undisturbed).toMatchObject({ signal: null, rows: WHOLE });
  expect(undisturbed.saidCount).toBeGreaterThan(10);
  for (let killAt = 1; killAt <= undisturbed.saidCount; killAt += 1) {
    expect(run(killAt), `killed before statement ${killAt}`).toMatchObject({ signal: 'SIGKILL', rows: NOTHING });
  }
  expect(run(0)).toMatchObject({ signal: 'SIGKILL', rows: WHOLE });
});
