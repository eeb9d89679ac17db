// One act on one order at the bench: is it a repetition, whose order is it, may it go on; then the decision, and request, fact and
// ledger row in one transaction.
import type { Writing } from '#db/connection.ts';
import { findRequest, insertRequest } from '#db/requests.ts';
import type { Json } from '#lib/base/canonical-json.ts';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { BenchOrder } from './bench-order.ts';
import { readBenchOrder } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import { record, staffOf } from './flow.ts';

/** What an act comes to: its facts, and what the ledger says of them. */
export interface BenchFacts {
  readonly save: (tx: Writing) => void;
  readonly kind: string;
  readonly body: Readonly<Record<string, Json>>;
}

export type BenchDecision = Result<BenchFacts, BenchRefusal>;

export interface BenchAsked {
  readonly requestKey: string;
  readonly orderId: string;
}

export interface BenchAct extends BenchAsked {
  /** Everything that was asked for: the same key with other content is refused. No password. */
  readonly content: Json;
  /** Anybody may do it, in any stage; else only whoever claimed the order, and only while it is being mixed. */
  readonly isShared?: boolean;
  readonly decide: (tx: Writing, bench: BenchOrder) => BenchDecision;
}

/** The same key again does nothing a second time. */
export function actAtBench(flow: Flow, { requestKey, orderId, content, isShared = false, decide }: BenchAct): Result<null, BenchRefusal> {
  const sha256 = flow.sha256(canonicalJson({ orderId, content, by: staffOf(flow).accountId }));
  return flow.db.write((tx): Result<null, BenchRefusal> => {
    const known = findRequest(tx, requestKey, sha256);
    if (known.kind === 'other-content') return refuse({ kind: 'other-content' });
    if (known.kind === 'repeated') return accept(null);
    const bench = readBenchOrder(tx, flow, orderId);
    if (!bench) return refuse({ kind: 'no-such-order' });
    const barred = isShared ? null : barFrom(flow, bench);
    if (barred) return refuse(barred);
    const decided = decide(tx, bench);
    if (!decided.ok) return decided;
    const { save, kind, body } = decided.value;
    insertRequest(tx, { key: requestKey, sha256, outcome: { ok: true }, atMs: flow.now });
    save(tx);
    record(tx, flow, { kind, body: { orderId, ...body }, editionHash: bench.edition.head.hash });
    return accept(null);
  });
}

function barFrom(flow: Flow, { view, stage }: BenchOrder): BenchRefusal | null {
  if (stage !== 'claimed' && stage !== 'mixing') return { kind: 'not-this-step' };
  return view.claim?.byAccountId === staffOf(flow).accountId ? null : { kind: 'not-yours' };
}

/** What keeps a jar from going on: a stop on its recipe, or on a lot that it names or holds. Throwing it away is still possible. */
export const stoppedBy = ({ stops }: BenchOrder): BenchRefusal | null =>
  stops.length > 0 ? { kind: 'stopped', reasons: stops.map((stop) => stop.reason) } : null;
