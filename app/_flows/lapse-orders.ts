// An order that nobody took on by the close of its day lapses, and what was promised to it is free again.
import type { Writing } from '#db/connection.ts';
import { endOrderClaim, insertOrderEnd, listOpenOrders, orderStage } from '#db/orders.ts';
import { freeReservations } from '#db/reservations.ts';
import { findShop } from '#db/shop.ts';
import { addDays } from '#lib/units/time.ts';
import type { Flow } from './flow.ts';
import { record, stampOf } from './flow.ts';
import { OPEN_DAYS } from './show-queue.ts';

/** Lapses every unclaimed order of an earlier day; a shop that was never founded has none. @returns how many */
export const lapseOrders = (flow: Flow): number => flow.db.write((tx) => (findShop(tx) ? lapseEarlierOrders(tx, flow) : 0));

/** The same within a unit of work that has more to do. An order on hold lapses too, whoever had it in hand before. */
export function lapseEarlierOrders(tx: Writing, flow: Flow): number {
  const stamp = stampOf(tx, flow.now);
  const over = listOpenOrders(tx, addDays(stamp.localDay, -OPEN_DAYS)).filter(
    (view) => view.order.localDay < stamp.localDay && ['placed', 'held'].includes(orderStage(view)),
  );
  for (const { order, claim } of over) {
    freeReservations(tx, { orderId: order.id, reason: 'lapsed', atMs: flow.now });
    endOrderClaim(tx, claim, { byAccountId: null, reason: 'the order lapsed on hold', atMs: flow.now });
    insertOrderEnd(tx, {
      orderId: order.id,
      kind: 'lapsed',
      reason: 'Nobody took it on by the close of its day',
      byAccountId: null,
      ...stamp,
    });
    record(tx, flow, { kind: 'order-lapsed', body: { orderId: order.id } });
  }
  return over.length;
}
