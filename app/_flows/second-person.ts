// The second pair of eyes: somebody else, signed in for this one act on a blank form. Who tries and fails is on record like at any sign-in.
import { insertAuthAttempt } from '#db/people.ts';
import type { Role } from '#db/schema-people.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Flow } from './flow.ts';
import { staffOf } from './flow.ts';
import type { SignInTry } from './sign-in.ts';

/** Who may check somebody's weighing. */
const CHECKING: readonly Role[] = ['mixer', 'checker', 'formulator'];

export type SecondRefusal = { readonly kind: 'second-locked' | 'second-wrong' | 'second-same-person' | 'second-role' };

/** The account of the second person. `isRight`: the password belonged to the account of the attempt. */
export function admitSecond(
  flow: Flow,
  attempt: SignInTry,
  isRight: boolean,
  roles: readonly Role[] = CHECKING,
): Result<{ readonly accountId: string }, SecondRefusal> {
  const { account, isLocked } = attempt;
  const outcome = isLocked ? 'locked' : account && isRight ? 'passed' : 'wrong';
  flow.db.write((tx) =>
    insertAuthAttempt(tx, {
      id: flow.newId(),
      accountId: account?.id ?? null,
      stationId: staffOf(flow).stationId,
      outcome,
      atMs: flow.now,
    }),
  );
  if (isLocked) return refuse({ kind: 'second-locked' });
  if (!account || !isRight) return refuse({ kind: 'second-wrong' });
  if (account.id === staffOf(flow).accountId) return refuse({ kind: 'second-same-person' });
  return roles.includes(account.role) ? accept({ accountId: account.id }) : refuse({ kind: 'second-role' });
}
