// The answer to an act at the bench: where the order stands after it, so that a screen never guesses what its act came to.
import type { Result } from '#lib/base/result.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { Flow } from './flow.ts';
import type { CardView } from './show-card.ts';
import { showCard } from './show-card.ts';

export type CardReply = { readonly ok: true; readonly view: CardView } | { readonly ok: false; readonly refusal: BenchRefusal };

export function cardReply(flow: Flow, orderId: string, outcome: Result<null, BenchRefusal>): CardReply {
  if (!outcome.ok) return outcome;
  const view = showCard(flow, orderId);
  return view ? { ok: true, view } : { ok: false, refusal: { kind: 'no-such-order' } };
}
