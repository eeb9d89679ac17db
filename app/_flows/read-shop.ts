// The shop's own row, for whoever must know its name, zone, notice or secret.
import type { Shop } from '#db/shop.ts';
import { readShop } from '#db/shop.ts';
import type { Flow } from './flow.ts';

/** Throws a Fault in a shop that was never founded. */
export const shopOf = (flow: Pick<Flow, 'db'>): Shop => flow.db.read(readShop);
