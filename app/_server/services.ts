// What every flow is given: the database, one clock, one maker of ids, one hash. Opened once per process, on the first request.
import { createHash } from 'node:crypto';
import type { OpenEditions } from '#app/_flows/flow.ts';
import type { ShopDb } from '#db/connection.ts';
import type { OpenSettings } from '#db/open.ts';
import { openShopDb } from '#db/open.ts';
import { shopFile } from '#db/paths.ts';
import type { InstantMs } from '#lib/units/time.ts';
import { keepDaysEnding } from './end-of-day.ts';
import type { RunJob } from './jobs.ts';
import { makeOpenEditions } from './open-editions.ts';
import type { ServerContext } from './server-context.ts';
import { serverContext } from './server-context.ts';

export type Services = {
  readonly db: ShopDb;
  readonly dataDir: string;
  readonly now: () => InstantMs;
  readonly newId: () => string;
  /** SHA-256 as lower-case hex. */
  readonly sha256: (bytes: string | Uint8Array) => string;
  readonly editions: OpenEditions;
  /** Long work, off this thread. */
  readonly runJob: RunJob;
};

export const sha256 = (bytes: string | Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

type Opening = Pick<ServerContext, 'dataDir' | 'now' | 'newId'> & Pick<Services, 'runJob'> & Pick<OpenSettings, 'isInTheMaking'>;

/** Opens the shop's file. Whoever calls this closes `db`. */
export const openServices = ({ dataDir, now, newId, runJob, isInTheMaking = false }: Opening): Services => ({
  db: openShopDb(shopFile(dataDir), { isInTheMaking }),
  dataDir,
  now,
  newId,
  sha256,
  editions: makeOpenEditions(),
  runJob,
});

const KEY = Symbol.for('jarwright.services');
const shared = globalThis as { [KEY]?: Services };

/** The services of this server process; its pages and its handlers are bundled apart and share them through globalThis. */
export function services(): Services {
  if (shared[KEY]) return shared[KEY];
  const context = serverContext();
  const opened = openServices({ ...context, runJob: context.jobs.run });
  const stopEndingDays = keepDaysEnding(() => ({ ...opened, now: opened.now(), actor: { kind: 'nobody' } }), opened.newId);
  context.onClose(() => {
    stopEndingDays();
    opened.db.checkpoint();
    opened.db.close();
  });
  shared[KEY] = opened;
  return opened;
}
