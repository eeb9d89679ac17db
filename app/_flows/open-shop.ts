// An empty folder becomes a shop: its own row and the first account, made by whoever stands before it, once.
import { listAccounts } from '#db/people.ts';
import type { Result } from '#lib/base/result.ts';
import { refuse } from '#lib/base/result.ts';
import type { Flow } from './flow.ts';
import type { FoundRefusal, NewShop } from './found-shop.ts';
import { insertShop } from './found-shop.ts';
import type { AccountRefusal, NewAccount } from './open-accounts.ts';
import { insertNewAccount } from './open-accounts.ts';

export type OpenShopRefusal = FoundRefusal | AccountRefusal | { readonly kind: 'accounts-exist' };

export function openShop(flow: Flow, shop: NewShop, account: NewAccount): Result<{ readonly accountId: string }, OpenShopRefusal> {
  return flow.db.write((tx): Result<{ readonly accountId: string }, OpenShopRefusal> => {
    if (listAccounts(tx).length > 0) return refuse({ kind: 'accounts-exist' });
    const founded = insertShop(tx, flow, shop);
    return founded.ok ? insertNewAccount(tx, flow, account) : founded;
  });
}
