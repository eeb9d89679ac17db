// Makes the data folder ready for a server: taken, migrated, and on the first start filled with the demo shop. Whatever fails leaves
// no half-made shop behind: the demo is made in a folder of its own and its database file is moved into place last.
import { existsSync, mkdirSync, readdirSync, renameSync, rmdirSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { takeLock } from '#db/lock.ts';
import { migrateShop } from '#db/migrate.ts';
import { shopFile } from '#db/paths.ts';

type Settings = {
  readonly dataDir: string;
  /** Who holds the lock, in words for the next one who asks. */
  readonly holder: string;
  /** Fills a migrated shop in the folder it is given; null leaves a new shop empty. */
  readonly fill: ((dataDir: string) => void | Promise<void>) | null;
};

export type Held = { readonly release: () => void };

const STAGING = 'being-made';

/** Takes the folder until `release`. @throws the lock's, the driver's or the system's error, with nothing changed */
export async function prepareData({ dataDir, holder, fill }: Settings): Promise<Held> {
  const made = mkdirSync(dataDir, { recursive: true });
  const lock = takeLock(dataDir, holder);
  try {
    const staging = join(dataDir, STAGING);
    rmSync(staging, { recursive: true, force: true });
    if (existsSync(shopFile(dataDir))) migrateShop(dataDir);
    else await makeShop(dataDir, staging, fill);
    return lock;
  } catch (error) {
    rmSync(join(dataDir, STAGING), { recursive: true, force: true });
    lock.release();
    if (made !== undefined && readdirSync(dataDir).length === 0) rmdirSync(dataDir);
    throw error;
  }
}

async function makeShop(dataDir: string, staging: string, fill: Settings['fill']): Promise<void> {
  mkdirSync(staging);
  migrateShop(staging);
  await fill?.(staging);
  const shop = basename(shopFile(staging));
  const others = readdirSync(staging).filter((name) => name !== shop);
  for (const name of [...others, shop]) renameSync(join(staging, name), join(dataDir, name));
  rmdirSync(staging);
}
