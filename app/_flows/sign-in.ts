// Letting staff in. The password itself is checked outside, since that takes its time; here stands who may try, and what a right answer opens.

import type { Reading } from '#db/connection.ts';
import type { Account } from '#db/people.ts';
import { countWrongAttempts, findAccountByCode, findSecretHash, insertAuthAttempt } from '#db/people.ts';
import type { OpenSession } from '#db/sessions.ts';
import { findOpenSession, insertSession, insertSessionEnd } from '#db/sessions.ts';
import { findStation } from '#db/stations.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { instantMs } from '#lib/units/time.ts';
import type { Flow } from './flow.ts';

const MINUTE_MS = 60_000;
/** Wrong passwords in a row that close an account for a while. */
const MOST_WRONG_COUNT = 5;
const LOCKED_MS = 15 * MINUTE_MS;
export const STAFF_SESSION_MS = 12 * 60 * MINUTE_MS;

export interface SignInTry {
  readonly account: Account | null;
  /** Hash to check the password against; null where no password can be right. */
  readonly secretHash: string | null;
  readonly isLocked: boolean;
}

/** What the password must be checked against. A tablet likes to begin a name with a capital; that is no other name. */
export const beginSignIn = (flow: Flow, code: string): SignInTry =>
  flow.db.read((tx) => tryAt(tx, flow, findAccountByCode(tx, code) ?? findAccountByCode(tx, code.toLowerCase())));

/** The same for an account that is known already. */
export function tryAt(tx: Reading, flow: Flow, account: Account | undefined): SignInTry {
  if (!account || account.closedAtMs !== null) return { account: null, secretHash: null, isLocked: false };
  const wrong = countWrongAttempts(tx, account.id, instantMs(Math.max(0, flow.now - LOCKED_MS)));
  return { account, secretHash: findSecretHash(tx, account.id) ?? null, isLocked: wrong >= MOST_WRONG_COUNT };
}

export type SignInRefusal =
  | { readonly kind: 'wrong-name-or-password' }
  | { readonly kind: 'locked' }
  | { readonly kind: 'unknown-station' };

export interface SignedIn {
  readonly tokenSha256: string;
  readonly isRight: boolean;
  readonly stationId: string | null;
}

/** Records the attempt and, when it was right, opens a session for the token whose hash is given. */
export function finishSignIn(
  flow: Flow,
  attempt: SignInTry,
  { tokenSha256, isRight, stationId }: SignedIn,
): Result<Account, SignInRefusal> {
  return flow.db.write((tx): Result<Account, SignInRefusal> => {
    const { account, isLocked } = attempt;
    const note = (outcome: 'passed' | 'wrong' | 'locked'): void =>
      insertAuthAttempt(tx, { id: flow.newId(), accountId: account?.id ?? null, stationId, outcome, atMs: flow.now });
    if (stationId !== null && !findStation(tx, stationId)) return refuse({ kind: 'unknown-station' });
    if (isLocked) {
      note('locked');
      return refuse({ kind: 'locked' });
    }
    if (!account || !isRight) {
      note('wrong');
      return refuse({ kind: 'wrong-name-or-password' });
    }
    note('passed');
    insertSession(tx, {
      tokenSha256,
      accountId: account.id,
      stationId,
      createdAtMs: flow.now,
      expiresAtMs: instantMs(flow.now + STAFF_SESSION_MS),
    });
    return accept(account);
  });
}

/** Who holds this session now. */
export const openSession = (flow: Pick<Flow, 'db' | 'now'>, tokenSha256: string): OpenSession | null =>
  flow.db.read((tx) => findOpenSession(tx, tokenSha256, flow.now) ?? null);

/** Ends a session; one that has ended already stays as it is. */
export function signOut(flow: Flow, tokenSha256: string): void {
  flow.db.write((tx) => {
    if (findOpenSession(tx, tokenSha256, flow.now)) insertSessionEnd(tx, { tokenSha256, reason: 'signed-out', atMs: flow.now });
  });
}
