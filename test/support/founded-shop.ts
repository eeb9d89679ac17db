// A shop in memory that has been founded, stocked and has published once: where most store tests start.

import type { TestShop } from './shop-db.ts';
import { freshShop } from './shop-db.ts';
import { insertLots, insertShop, publish } from './shop-facts.ts';

/** A founded shop with lots and one edition. */
export function shopWithEdition(): TestShop & { readonly editionHash: string } {
  const shop = freshShop();
  const editionHash = shop.db.write((tx) => {
    insertShop(tx);
    insertLots(tx);
    return publish(tx, 'first').hash;
  });
  return { ...shop, editionHash };
}
