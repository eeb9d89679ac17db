// The shop's own row and its incarnations.
import { desc } from 'drizzle-orm';
import { invariant } from '#lib/base/invariant.ts';
import type { InstantMs, LocalDay } from '#lib/units/time.ts';
import { isoWeek, localDaysIn } from '#lib/units/time.ts';
import type { Reading, Writing } from './connection.ts';
import type { Stamp } from './ledger.ts';
import type { Row } from './query.ts';
import { inserting, prepared } from './query.ts';
import { incarnation, shop } from './schema-shop.ts';

export type Shop = Omit<Row<typeof shop>, 'rowNo'>;
export type Incarnation = Row<typeof incarnation>;

const one = prepared((orm) => orm.select().from(shop).prepare());
const zones = prepared(() => new Map<string, (at: InstantMs) => LocalDay>());
const insertShop = inserting(shop);
const insertIncarnation = inserting(incarnation);
const latest = prepared((orm) => orm.select().from(incarnation).orderBy(desc(incarnation.incarnationNo)).limit(1).prepare());

/** Undefined in a file that was migrated but never founded. */
export const findShop = (tx: Reading): Shop | undefined => one(tx).get();

/** @throws Fault in a shop that was never founded */
export function readShop(tx: Reading): Shop {
  const found = findShop(tx);
  invariant(found, 'the shop has not been founded');
  return found;
}

/** Writes the shop's row and its first incarnation. @param incarnationId a new UUIDv7 */
export function foundShop(tx: Writing, founded: Shop, incarnationId: string): void {
  insertShop(tx, { ...founded, rowNo: 1 });
  insertIncarnation(tx, { incarnationNo: 1, id: incarnationId, origin: 'founded', startedAtMs: founded.foundedAtMs });
}

/** The life that the file is in now. */
export const findIncarnation = (tx: Reading): Incarnation | undefined => latest(tx).get();

/** A new life after a restore. */
export function beginIncarnation(tx: Writing, begun: Omit<Incarnation, 'incarnationNo'>): void {
  insertIncarnation(tx, { ...begun, incarnationNo: (findIncarnation(tx)?.incarnationNo ?? 0) + 1 });
}

/** The shop's local day of any instant; a zone's rules are read once per connection. */
export function localDaysOf(tx: Reading): (at: InstantMs) => LocalDay {
  const { zone } = readShop(tx);
  const known = zones(tx).get(zone);
  if (known) return known;
  const dayOf = localDaysIn(zone);
  zones(tx).set(zone, dayOf);
  return dayOf;
}

/** An instant with the shop's local day and week. */
export function stampIn(tx: Reading, atMs: InstantMs): Stamp {
  const day = localDaysOf(tx)(atMs);
  return { atMs, localDay: day, isoWeek: isoWeek(day) };
}
