// Durable facts: one ledger row a transaction, synced to the disk each time, on the disk of the temporary folder.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { record } from '#app/_flows/flow.ts';
import { newId, readClock } from '#app/_server/clock.ts';
import { runHere } from '#app/_server/run-here.ts';
import { openServices } from '#app/_server/services.ts';
import { toFlow } from '#app/_server/to-flow.ts';
import { migrateShop } from '#db/migrate.ts';
import { fillSmallShop } from '#test/support/small-shop/fill-small-shop.ts';
import type { Bench } from './bench.ts';
import { timed } from './bench.ts';

const ROWS_COUNT = 200;

export const ledgerBench: Bench = {
  name: 'ledger',
  says: 'append facts to the ledger, one durable transaction each',
  run: async (timesCount) => {
    const dataDir = mkdtempSync(join(tmpdir(), 'jarwright-bench-'));
    migrateShop(dataDir);
    await fillSmallShop(dataDir);
    const services = openServices({ dataDir, now: readClock, newId, runJob: runHere });
    const flow = toFlow({ services, now: readClock(), newId, actor: { kind: 'nobody' } });
    const rowsCount = ROWS_COUNT * timesCount;
    const { tookMs } = await timed(() => {
      for (let row = 0; row < rowsCount; row += 1) services.db.write((tx) => record(tx, flow, { kind: 'bench', body: { row } }));
    });
    services.db.close();
    rmSync(dataDir, { recursive: true });
    return { rowsCount, perSecondCount: Math.round((rowsCount * 1000) / tookMs) };
  },
};
