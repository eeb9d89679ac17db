// A stop ends only when two people say so, each under a name of their own.
import { findStop, insertStopLifted } from '#db/stops.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { Flow } from './flow.ts';
import { record, staffOf } from './flow.ts';

export interface LiftAsked {
  readonly stopId: string;
  readonly reason: string;
  /** Signed in for this act and not the one who asks: see admitSecond. */
  readonly secondAccountId: string;
}

export type LiftRefusal = { readonly kind: 'no-such-stop' | 'lifted-already' };

export function liftStop(flow: Flow, { stopId, reason, secondAccountId }: LiftAsked): Result<null, LiftRefusal> {
  return flow.db.write((tx) => {
    const found = findStop(tx, stopId);
    if (!found) return refuse({ kind: 'no-such-stop' });
    if (found.lifted) return refuse({ kind: 'lifted-already' });
    const firstAccountId = staffOf(flow).accountId;
    insertStopLifted(tx, { stopId, firstAccountId, secondAccountId, reason, atMs: flow.now });
    record(tx, flow, { kind: 'stop-lifted', body: { stopId, secondAccountId, reason } });
    return accept(null);
  });
}
