// The challenge test proved the preservative down to a share of the jar; at full allowance the base must still bring that much.

import { WHOLE_PPM } from '../units/share.ts';
import type { Book } from './book.ts';
import { substancesIn } from './held-shares.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

export function* checkPreservation(book: Book): Faults {
  const { parts, allowancePpm, preservation } = book.rulebook.base;
  if (preservation.preservatives.length === 0)
    yield fault(['base', 'preservation', 'preservatives'], 'empty-list', { what: 'preservative' });
  const evidence = book.rulebook.evidence.find((one) => one.id === preservation.evidenceId);
  if (evidence && evidence.kind !== 'challenge') {
    yield fault(['base', 'preservation', 'evidenceId'], 'evidence-wrong-kind', { evidenceId: evidence.id, kind: 'challenge' });
  }
  const held = substancesIn(book, parts);
  for (const [index, { substanceId, provenMinPpm }] of preservation.preservatives.entries()) {
    const path = ['base', 'preservation', 'preservatives', index, 'provenMinPpm'];
    // Both sides in parts of 10^18: share × share × what the allowance leaves of the base.
    const left = (held.get(substanceId) ?? 0n) * BigInt(WHOLE_PPM - allowancePpm);
    const least = BigInt(provenMinPpm) * 10n ** 12n;
    if (left < least) yield fault(path, 'preservative-diluted', { substanceId, foundPpm: Number(left / 10n ** 12n), minPpm: provenMinPpm });
  }
}
