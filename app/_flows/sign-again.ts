// A signature asks for the password once more. Every try is on record and counts towards the lock as at the front door, and a wrong one
// is a fact of its own: somebody stood at an open office.
import { findAccount, insertAuthAttempt } from '#db/people.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Flow } from './flow.ts';
import { record, staffOf } from './flow.ts';
import type { SignInTry } from './sign-in.ts';
import { tryAt } from './sign-in.ts';

/** What the password of the signed-in person must be checked against. */
export const beginSigning = (flow: Flow): SignInTry => flow.db.read((tx) => tryAt(tx, flow, findAccount(tx, staffOf(flow).accountId)));

export type SigningRefusal = { readonly kind: 'wrong-password' } | { readonly kind: 'locked' };

/** Puts the try on record and says whether the signature may go on. */
export function finishSigning(flow: Flow, { account, isLocked }: SignInTry, isRight: boolean): Result<null, SigningRefusal> {
  const outcome = isLocked ? 'locked' : account && isRight ? 'passed' : 'wrong';
  const { stationId } = staffOf(flow);
  return flow.db.write((tx): Result<null, SigningRefusal> => {
    insertAuthAttempt(tx, { id: flow.newId(), accountId: account?.id ?? null, stationId, outcome, atMs: flow.now });
    if (outcome === 'passed') return accept(null);
    record(tx, flow, { kind: 'signature-refused', body: { outcome } });
    return refuse({ kind: outcome === 'locked' ? 'locked' : 'wrong-password' });
  });
}
