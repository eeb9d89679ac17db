// The shop's own sealer, made once per process from the secret in its file.
import { shopOf } from '#app/_flows/read-shop.ts';
import type { Sealer } from './seal.ts';
import { makeSealer } from './seal.ts';
import type { Services } from './services.ts';

const made = new WeakMap<Services['db'], Sealer>();

export function sealerOf({ db }: Pick<Services, 'db'>): Sealer {
  const sealer = made.get(db) ?? makeSealer(shopOf({ db }).sealingSecret);
  made.set(db, sealer);
  return sealer;
}
