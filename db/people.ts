// Accounts of staff: who they are, what their secret's hash is, and whether they may still come in.
import { and, asc, count, desc, eq, gt, sql } from 'drizzle-orm';
import type { InstantMs } from '#lib/units/time.ts';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { account, accountClosed, accountSecret, authAttempt } from './schema-people.ts';

export type AccountRow = Row<typeof account>;

export interface Account extends AccountRow {
  readonly closedAtMs: InstantMs | null;
}

const columns = {
  id: account.id,
  code: account.code,
  name: account.name,
  role: account.role,
  createdAtMs: account.createdAtMs,
  closedAtMs: accountClosed.atMs,
};
const closed = eq(accountClosed.accountId, account.id);

const all = prepared((orm) => orm.select(columns).from(account).leftJoin(accountClosed, closed).orderBy(asc(account.code)).prepare());
const byId = prepared((orm) =>
  orm
    .select(columns)
    .from(account)
    .leftJoin(accountClosed, closed)
    .where(eq(account.id, given('id')))
    .prepare(),
);
const byCode = prepared((orm) =>
  orm
    .select(columns)
    .from(account)
    .leftJoin(accountClosed, closed)
    .where(eq(account.code, given('code')))
    .prepare(),
);

export const insertAccount: (tx: Writing, row: AccountRow) => void = inserting(account);
export const insertAccountClosed: (tx: Writing, row: Row<typeof accountClosed>) => void = inserting(accountClosed);
export const findAccount = (tx: Reading, id: string): Account | undefined => byId(tx).get({ id });
export const findAccountByCode = (tx: Reading, code: string): Account | undefined => byCode(tx).get({ code });
export const listAccounts = (tx: Reading): readonly Account[] => all(tx).all();

const secret = prepared((orm) =>
  orm
    .select()
    .from(accountSecret)
    .where(eq(accountSecret.accountId, given('accountId')))
    .orderBy(desc(accountSecret.versionNo))
    .limit(1)
    .prepare(),
);
const insertSecret = inserting(accountSecret);

/** The argon2id hash that counts, in its own text form. */
export const findSecretHash = (tx: Reading, accountId: string): string | undefined => secret(tx).get({ accountId })?.hash;

/** A new secret takes the place of the one before. */
export function insertSecretHash(tx: Writing, { accountId, hash, atMs }: { accountId: string; hash: string; atMs: InstantMs }): void {
  insertSecret(tx, { accountId, versionNo: (secret(tx).get({ accountId })?.versionNo ?? 0) + 1, hash, atMs });
}

const lastPassed = sql`(select coalesce(max(p.at_ms), 0) from auth_attempt p where p.account_id = ${given('accountId')} and p.outcome = 'passed')`;
const wrongSince = prepared((orm) =>
  orm
    .select({ wrongCount: count() })
    .from(authAttempt)
    .where(
      and(
        eq(authAttempt.accountId, given('accountId')),
        eq(authAttempt.outcome, 'wrong'),
        gt(authAttempt.atMs, sql`max(${given('sinceMs')}, ${lastPassed})`),
      ),
    )
    .prepare(),
);

export const insertAuthAttempt: (tx: Writing, row: Row<typeof authAttempt>) => void = inserting(authAttempt);

/** Wrong tries at an account after an instant and after its last right one. */
export const countWrongAttempts = (tx: Reading, accountId: string, sinceMs: InstantMs): number =>
  wrongSince(tx).get({ accountId, sinceMs })?.wrongCount ?? 0;
