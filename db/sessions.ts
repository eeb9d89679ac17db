// Sessions by the SHA-256 of their token; the token itself exists in the browser's cookie only.
import { and, eq, gt, isNull } from 'drizzle-orm';
import type { InstantMs } from '#lib/units/time.ts';
import type { Reading, Writing } from './connection.ts';
import type { AccountRow } from './people.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { account, accountClosed, session, sessionEnd, station } from './schema-people.ts';
import type { Station } from './stations.ts';

export type SessionRow = Row<typeof session>;

/** A session that still counts: not ended, not expired, its account not closed. Account null: a kiosk standing for its station. */
export interface OpenSession {
  readonly session: SessionRow;
  readonly account: AccountRow | null;
  readonly station: Station | null;
}

const open = prepared((orm) =>
  orm
    .select({ session, account, station })
    .from(session)
    .leftJoin(account, eq(account.id, session.accountId))
    .leftJoin(station, eq(station.id, session.stationId))
    .leftJoin(sessionEnd, eq(sessionEnd.tokenSha256, session.tokenSha256))
    .leftJoin(accountClosed, eq(accountClosed.accountId, session.accountId))
    .where(
      and(
        eq(session.tokenSha256, given('tokenSha256')),
        gt(session.expiresAtMs, given('atMs')),
        isNull(sessionEnd.tokenSha256),
        isNull(accountClosed.accountId),
      ),
    )
    .prepare(),
);
const openOf = prepared((orm) =>
  orm
    .select({ session })
    .from(session)
    .leftJoin(sessionEnd, eq(sessionEnd.tokenSha256, session.tokenSha256))
    .where(and(eq(session.accountId, given('accountId')), gt(session.expiresAtMs, given('atMs')), isNull(sessionEnd.tokenSha256)))
    .prepare(),
);

export const insertSession: (tx: Writing, row: SessionRow) => void = inserting(session);
export const insertSessionEnd: (tx: Writing, row: Row<typeof sessionEnd>) => void = inserting(sessionEnd);

export const findOpenSession = (tx: Reading, tokenSha256: string, atMs: InstantMs): OpenSession | undefined =>
  open(tx).get({ tokenSha256, atMs });

/** Everywhere an account is signed in. */
export const listOpenSessions = (tx: Reading, accountId: string, atMs: InstantMs): readonly SessionRow[] =>
  openOf(tx)
    .all({ accountId, atMs })
    .map((row) => row.session);
