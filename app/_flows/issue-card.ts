// The card of one order from the lots that stand here now, and what it promises from each lot.

import { insertCard } from '#db/cards.ts';
import type { Reading, Writing } from '#db/connection.ts';
import { isLotPhMeasured } from '#db/jar-facts.ts';
import { insertReservation } from '#db/reservations.ts';
import type { Json } from '#lib/base/canonical-json.ts';
import type { Finding } from '#lib/base/finding.ts';
import type { Result } from '#lib/base/result.ts';
import { composePlan } from '#lib/composition/compose.ts';
import type { Book } from '#lib/rulebook/book.ts';
import type { JarSize } from '#lib/rulebook/offer.ts';
import type { Plan } from '#lib/rulebook/variant.ts';
import type { Card } from '#lib/weighing/card.ts';
import { massLimits } from '#lib/weighing/mass-limits.ts';
import { cardFor } from '#lib/weighing/mixing-card.ts';
import { phCheckFor } from '#lib/weighing/ph-due.ts';
import type { Flow } from './flow.ts';
import type { ShopStand } from './shop-context.ts';
import { withoutStopped } from './shop-context.ts';

export interface CardWish {
  readonly book: Book;
  readonly plan: Plan;
  readonly jarSize: JarSize;
}

/** The card, or why this shop cannot make the jar now. The pH is due until some jar of the same base lot has passed today. */
export function cardHere(tx: Reading, stand: ShopStand, { book, plan, jarSize }: CardWish): Result<Card, readonly Finding[]> {
  const jar = composePlan(book, plan);
  const ask = {
    book,
    plan,
    jarSize,
    scales: stand.bench?.scales ?? [],
    limits: massLimits({ book, plan, markets: book.rulebook.markets, day: stand.day }),
    lots: withoutStopped(stand),
    day: stand.day,
    fullCleanAfterTags: [],
    warmestC: null,
  };
  const card = cardFor({ ...ask, phDue: phCheckFor(book, jar, true) });
  const isMeasured = card.ok && baseLotIds(card.value).every((lotId) => isLotPhMeasured(tx, lotId, stand.day));
  return isMeasured ? cardFor({ ...ask, phDue: phCheckFor(book, jar, false) }) : card;
}

const baseLotIds = ({ lines }: Card): readonly string[] =>
  lines.filter((line) => line.source.kind === 'cream').flatMap((line) => line.lots.map((lot) => lot.lotId));

export interface CardIssue {
  readonly orderId: string;
  readonly editionHash: string;
  readonly card: Card;
  readonly reason: string;
}

/** Writes the card and promises its lots to the order. */
export function issueCard(tx: Writing, flow: Flow, { orderId, editionHash, card, reason }: CardIssue): void {
  insertCard(tx, { orderId, editionHash, body: card as unknown as Json, reason, atMs: flow.now });
  for (const share of card.lines.flatMap((line) => line.lots))
    insertReservation(tx, { id: flow.newId(), orderId, lotId: share.lotId, massUg: share.massUg, atMs: flow.now });
}
