// What is promised to open orders: made with the order, freed when the stuff is weighed or the order ends otherwise.
import { and, asc, eq, isNull } from 'drizzle-orm';
import type { InstantMs } from '#lib/units/time.ts';
import type { Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { reservation, reservationFreed } from './schema-orders.ts';

export type Reservation = Row<typeof reservation>;
export type ReservationFreed = Row<typeof reservationFreed>;

const open = prepared((orm) =>
  orm
    .select({ reservation })
    .from(reservation)
    .leftJoin(reservationFreed, eq(reservationFreed.reservationId, reservation.id))
    .where(and(eq(reservation.orderId, given('orderId')), isNull(reservationFreed.reservationId)))
    .orderBy(asc(reservation.id))
    .prepare(),
);
const insertFreed = inserting(reservationFreed);

export const insertReservation: (tx: Writing, row: Reservation) => void = inserting(reservation);

export const listOpenReservations = (tx: Reading, orderId: string): readonly Reservation[] =>
  open(tx)
    .all({ orderId })
    .map((row) => row.reservation);

export interface Freeing {
  readonly orderId: string;
  /** Only what is promised from this lot; absent: all of the order. */
  readonly lotId?: string;
  readonly reason: ReservationFreed['reason'];
  readonly atMs: InstantMs;
}

export function freeReservations(tx: Writing, { orderId, lotId, reason, atMs }: Freeing): void {
  for (const promised of listOpenReservations(tx, orderId)) {
    if (lotId === undefined || promised.lotId === lotId)
      insertFreed(tx, { reservationId: promised.id, lotId: promised.lotId, massUg: promised.massUg, reason, atMs });
  }
}
