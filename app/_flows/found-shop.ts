// The first thing a new shop's file holds: who it is and where its day begins. Nothing can be recorded before.
import type { Writing } from '#db/connection.ts';
import { findShop, foundShop } from '#db/shop.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Flow } from './flow.ts';
import { record } from './flow.ts';

export interface NewShop {
  /** Two capital letters; they begin every batch code. */
  readonly shopCode: string;
  readonly name: string;
  /** IANA zone. */
  readonly zone: string;
  /** At least 32 random bytes as text, for sealing what the kiosk may not read. */
  readonly sealingSecret: string;
  readonly isDemo: boolean;
  /** Shown wherever invented data is; empty for a real shop. */
  readonly notice: string;
}

export type FoundRefusal = { readonly kind: 'shop-exists' } | { readonly kind: 'unknown-zone' };

export const isKnownZone = (zone: string): boolean => zone === 'UTC' || Intl.supportedValuesOf('timeZone').includes(zone);

/** Within a unit of work that has more to do. */
export function insertShop(tx: Writing, flow: Flow, shop: NewShop): Result<null, FoundRefusal> {
  if (!isKnownZone(shop.zone)) return refuse({ kind: 'unknown-zone' });
  if (findShop(tx)) return refuse({ kind: 'shop-exists' });
  foundShop(tx, { ...shop, foundedAtMs: flow.now }, flow.newId());
  record(tx, flow, { kind: 'shop-founded', body: { shopCode: shop.shopCode, zone: shop.zone, isDemo: shop.isDemo } });
  return accept(null);
}

export const isFounded = (flow: Pick<Flow, 'db'>): boolean => flow.db.read((tx) => findShop(tx) !== undefined);
