// A card as it was issued. Its hash was written with it, so a body that still has that hash is the card that this program made.
import type { Card as IssuedCard } from '#db/cards.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { Card } from '#lib/weighing/card.ts';
import type { Flow } from './flow.ts';

/** Throws a Fault for a damaged card: it must not be weighed from. */
export function storedCard(flow: Pick<Flow, 'sha256'>, issued: IssuedCard): Card {
  invariant(flow.sha256(issued.body) === issued.sha256, `the card of order ${issued.orderId} is damaged`);
  const card: Card = JSON.parse(issued.body);
  return card;
}
