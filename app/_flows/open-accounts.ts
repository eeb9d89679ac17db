// Accounts of staff, opened by a manager: a formulator who could open a second account would sign their own work. The first account of
// a shop comes with the shop itself (open-shop).

import type { Writing } from '#db/connection.ts';
import type { Account } from '#db/people.ts';
import { findAccountByCode, insertAccount, insertSecretHash, listAccounts } from '#db/people.ts';
import type { Role } from '#db/schema-people.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Flow } from './flow.ts';
import { record } from './flow.ts';

export interface NewAccount {
  readonly code: string;
  readonly name: string;
  readonly role: Role;
  /** argon2id in its own text form. */
  readonly secretHash: string;
}

export type AccountRefusal = { readonly kind: 'name-taken' };

export const hasAccounts = (flow: Pick<Flow, 'db'>): boolean => flow.db.read((tx) => listAccounts(tx).length > 0);

export const listStaff = (flow: Pick<Flow, 'db'>): readonly Account[] => flow.db.read((tx) => listAccounts(tx));

/** Opens a further account. */
export function openAccount(flow: Flow, account: NewAccount): Result<{ readonly accountId: string }, AccountRefusal> {
  return flow.db.write((tx) => insertNewAccount(tx, flow, account));
}

/** Within a unit of work that has more to do. */
export function insertNewAccount(
  tx: Writing,
  flow: Flow,
  { code, name, role, secretHash }: NewAccount,
): Result<{ readonly accountId: string }, AccountRefusal> {
  if (findAccountByCode(tx, code)) return refuse({ kind: 'name-taken' });
  const accountId = flow.newId();
  insertAccount(tx, { id: accountId, code, name, role, createdAtMs: flow.now });
  insertSecretHash(tx, { accountId, hash: secretHash, atMs: flow.now });
  record(tx, flow, { kind: 'account-opened', body: { accountId, role } });
  return accept({ accountId });
}
