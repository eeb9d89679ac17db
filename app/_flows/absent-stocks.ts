// Stocks of which the shop has nothing it may use: no lot that is released, in date and not empty, or a stop on it.
import type { Book } from '#lib/rulebook/book.ts';
import type { ShopStand } from './shop-context.ts';
import { withoutStopped } from './shop-context.ts';

export function absentStocks(book: Book, stand: ShopStand): ReadonlySet<string> {
  const present = new Set(
    withoutStopped(stand).flatMap(({ source, status, expiresOn, leftUg }) =>
      source.kind === 'stock' && status === 'released' && expiresOn >= stand.day && leftUg > 0 ? [source.stockId] : [],
    ),
  );
  const stopped = new Set(
    stand.stops.filter(({ subjectKind }) => ['stock', 'material'].includes(subjectKind)).map(({ subjectId }) => subjectId),
  );
  return new Set(
    book.rulebook.stocks
      .filter(({ id, parts }) => !present.has(id) || stopped.has(id) || parts.some(({ materialId }) => stopped.has(materialId)))
      .map(({ id }) => id),
  );
}
