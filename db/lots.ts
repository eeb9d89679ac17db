// Lots with what is left of them: what came in, less what left, less what is promised to open orders.
import type { SQL } from 'drizzle-orm';
import { and, asc, desc, eq, gte, sql } from 'drizzle-orm';
import type { MassDifferenceUg } from '#lib/units/mass.ts';
import { massDifferenceUg } from '#lib/units/mass.ts';
import type { InstantMs, LocalDay } from '#lib/units/time.ts';
import { instantMs } from '#lib/units/time.ts';
import type { Orm, Reading, Writing } from './connection.ts';
import type { Row } from './query.ts';
import { given, inserting, prepared } from './query.ts';
import { lotUse } from './schema-bench.ts';
import type { LotEventKind, LotKind } from './schema-lots.ts';
import { lot, lotEvent, lotParent } from './schema-lots.ts';

export type Lot = Row<typeof lot>;
export type LotEvent = Row<typeof lotEvent>;
export type LotParent = Row<typeof lotParent>;
export type LotUse = Row<typeof lotUse>;

/** The last word on a lot; `quarantine` until the first. */
export type LotStatus = 'quarantine' | Exclude<LotEventKind, 'opened'>;

export interface LotState {
  readonly lot: Lot;
  readonly status: LotStatus;
  readonly openedAtMs: InstantMs | null;
  /** Still promised to open orders. */
  readonly reservedUg: MassDifferenceUg;
  /** Free to promise; negative when the records say that more left than came in. Null for a lot that is counted. */
  readonly leftUg: MassDifferenceUg | null;
  /** Null for a lot that is weighed. */
  readonly leftCount: number | null;
}

const status = sql<LotStatus>`coalesce((select e.kind from lot_event e where e.lot_id = lot.id and e.kind <> 'opened' order by e.event_no desc limit 1), 'quarantine')`;
const openedAtMs = sql<number | null>`(select e.at_ms from lot_event e where e.lot_id = lot.id and e.kind = 'opened')`;
const leftMassUg = sql<number>`(select coalesce(sum(u.left_mass_ug), 0) from lot_use u where u.lot_id = lot.id)`;
const leftCount = sql<number>`(select coalesce(sum(u.left_count), 0) from lot_use u where u.lot_id = lot.id)`;
const reservedUg = sql<number>`(select coalesce(sum(r.mass_ug), 0) from reservation r where r.lot_id = lot.id) - (select coalesce(sum(f.mass_ug), 0) from reservation_freed f where f.lot_id = lot.id)`;
const standing = sql`not exists (select 1 from lot_event e where e.lot_id = lot.id and e.kind in ('spent', 'rejected'))`;

const states = (orm: Orm, where: SQL | undefined) =>
  orm
    .select({ lot, status, openedAtMs, leftMassUg, leftCount, reservedUg })
    .from(lot)
    .where(where)
    .orderBy(asc(lot.expiryDay), asc(lot.code))
    .prepare();

const allStanding = prepared((orm) => states(orm, standing));
const usable = prepared((orm) =>
  states(
    orm,
    and(eq(lot.kind, given('kind')), eq(lot.refId, given('refId')), gte(lot.expiryDay, given('onDay')), sql`${status} = 'released'`),
  ),
);
const byId = prepared((orm) => states(orm, eq(lot.id, given('id'))));
const byCode = prepared((orm) => states(orm, eq(lot.code, given('code'))));

type Found = ReturnType<ReturnType<typeof byId>['all']>[number];

const stateOf = (found: Found): LotState => ({
  lot: found.lot,
  status: found.status,
  openedAtMs: found.openedAtMs === null ? null : instantMs(found.openedAtMs),
  reservedUg: massDifferenceUg(found.reservedUg),
  leftUg: found.lot.receivedMassUg === null ? null : massDifferenceUg(found.lot.receivedMassUg - found.leftMassUg - found.reservedUg),
  leftCount: found.lot.receivedCount === null ? null : found.lot.receivedCount - found.leftCount,
});

const stateOrNone = (found: Found | undefined): LotState | undefined => (found === undefined ? undefined : stateOf(found));

export const insertLot: (tx: Writing, row: Lot) => void = inserting(lot);
export const insertLotParent: (tx: Writing, row: LotParent) => void = inserting(lotParent);
export const insertLotUse: (tx: Writing, row: LotUse) => void = inserting(lotUse);

export const findLot = (tx: Reading, id: string): LotState | undefined => stateOrNone(byId(tx).get({ id }));
export const findLotByCode = (tx: Reading, code: string): LotState | undefined => stateOrNone(byCode(tx).get({ code }));

/** Every lot that is neither spent nor rejected, first to expire first. */
export const listStandingLots = (tx: Reading): readonly LotState[] => allStanding(tx).all().map(stateOf);

/** The released lots of one thing that have not expired by a day, first to expire first. */
export const listUsableLots = (tx: Reading, wanted: { kind: LotKind; refId: string; onDay: LocalDay }): readonly LotState[] =>
  usable(tx).all(wanted).map(stateOf);

const events = prepared((orm) =>
  orm
    .select()
    .from(lotEvent)
    .where(eq(lotEvent.lotId, given('lotId')))
    .orderBy(asc(lotEvent.eventNo))
    .prepare(),
);
const uses = prepared((orm) =>
  orm
    .select()
    .from(lotUse)
    .where(eq(lotUse.lotId, given('lotId')))
    .orderBy(asc(lotUse.atMs), asc(lotUse.id))
    .prepare(),
);
const lastEvent = prepared((orm) =>
  orm
    .select()
    .from(lotEvent)
    .where(eq(lotEvent.lotId, given('lotId')))
    .orderBy(desc(lotEvent.eventNo))
    .limit(1)
    .prepare(),
);
const insertEvent = inserting(lotEvent);

/** Adds the next event of a lot. */
export const insertLotEvent = (tx: Writing, row: Omit<LotEvent, 'eventNo'>): void =>
  insertEvent(tx, { ...row, eventNo: (lastEvent(tx).get({ lotId: row.lotId })?.eventNo ?? 0) + 1 });

export const listLotEvents = (tx: Reading, lotId: string): readonly LotEvent[] => events(tx).all({ lotId });
export const listLotUses = (tx: Reading, lotId: string): readonly LotUse[] => uses(tx).all({ lotId });
