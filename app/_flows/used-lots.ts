// Every lot that a standing fact of a jar names, as it stands now.
import type { Reading } from '#db/connection.ts';
import { listJarFacts } from '#db/jar-facts.ts';
import type { LotState } from '#db/lots.ts';
import { findLot } from '#db/lots.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { BenchOrder } from './bench-order.ts';

export function usedLots(tx: Reading, { view }: Pick<BenchOrder, 'view'>): readonly LotState[] {
  const { readings, voids, mends } = listJarFacts(tx, view.jar?.batchCode ?? '');
  const voided = new Set(voids.map((one) => one.readingId));
  const lotIds = new Set([
    ...readings.filter((one) => !voided.has(one.id)).map((one) => one.lotId),
    ...mends.flatMap((one) => one.lotId ?? []),
  ]);
  return [...lotIds].map((lotId) => {
    const state = findLot(tx, lotId);
    invariant(state, `lot ${lotId} is gone`);
    return state;
  });
}
