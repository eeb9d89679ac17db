// What the shop brings to a verdict: the scales of its bench, its lots and its stops. From facts in the file to what the domain asks.

import type { Reading } from '#db/connection.ts';
import type { LotState } from '#db/lots.ts';
import { listStandingLots } from '#db/lots.ts';
import { listOpenReservations } from '#db/reservations.ts';
import { localDaysOf, readShop } from '#db/shop.ts';
import type { StationScale } from '#db/stations.ts';
import { listStationScales, listStations } from '#db/stations.ts';
import type { Stop } from '#db/stops.ts';
import { listStopsInForce } from '#db/stops.ts';
import type { Finding } from '#lib/base/finding.ts';
import { finding } from '#lib/base/finding.ts';
import { labelFindings } from '#lib/label/label-findings.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need, pairKey } from '#lib/rulebook/book.ts';
import type { JarSize, ScaleProfile } from '#lib/rulebook/offer.ts';
import type { Plan } from '#lib/rulebook/variant.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { massUg } from '#lib/units/mass.ts';
import type { InstantMs, LocalDay } from '#lib/units/time.ts';
import type { JudgeContext } from '#lib/verdict/verdict.ts';
import type { BenchLot } from '#lib/weighing/allocate-lots.ts';
import type { LineSource } from '#lib/weighing/bench-line.ts';
import { massLimits } from '#lib/weighing/mass-limits.ts';
import { benchFindings, lotFindings } from '#lib/weighing/mixing-card.ts';
import type { BenchScale } from '#lib/weighing/scale.ts';
import type { Flow } from './flow.ts';

export interface BenchStand {
  readonly stationId: string;
  readonly scales: readonly BenchScale[];
}

/** The shop without its shelves. */
export interface DayStand {
  readonly day: LocalDay;
  readonly zone: string;
  readonly bench: BenchStand | null;
  readonly stops: readonly Stop[];
}

export interface ShopStand extends DayStand {
  readonly lots: readonly BenchLot[];
}

/** The shop as it stands now, for one edition. Orders go to the first bench by code unless one is named. */
export const readShopStand = (tx: Reading, flow: Flow, book: Book, benchId: string | null = null): ShopStand => ({
  ...readDayStand(tx, flow, book, benchId),
  lots: readShelf(tx),
});

/** Every lot that is weighed and stands here. */
export function readShelf(tx: Reading): readonly BenchLot[] {
  const dayOf = localDaysOf(tx);
  return listStandingLots(tx).flatMap((state) => benchLotOf(state, dayOf) ?? []);
}

/** The same without its shelves, which most acts at a bench never ask for. */
export function readDayStand(tx: Reading, flow: Flow, book: Book, benchId: string | null = null): DayStand {
  const benches = listStations(tx).filter((station) => station.kind === 'bench' && (benchId === null || station.id === benchId));
  const stations = benches.map((station) => ({
    stationId: station.id,
    scales: listStationScales(tx, station.id).flatMap((scale) => benchScale(book, scale)),
  }));
  return {
    day: localDaysOf(tx)(flow.now),
    zone: readShop(tx).zone,
    bench: stations[0] ?? null,
    stops: listStopsInForce(tx),
  };
}

/** A real scale may only be stricter than its profile; one whose profile is gone cannot be used. */
function benchScale(book: Book, scale: StationScale): readonly BenchScale[] {
  const profile: ScaleProfile | undefined = book.scaleProfiles.get(scale.profileId);
  if (!profile) return [];
  return [
    {
      id: scale.id,
      code: scale.code,
      stepUg: massUg(Math.max(profile.stepUg, scale.stricterStepUg ?? 0)),
      repeatabilityUg: massUg(Math.max(profile.repeatabilityUg, scale.stricterRepeatabilityUg ?? 0)),
      capacityUg: massUg(Math.min(profile.capacityUg, scale.stricterCapacityUg ?? profile.capacityUg)),
    },
  ];
}

const STATUS = { quarantine: 'quarantine', released: 'released', held: 'held', spent: 'spent', rejected: 'held' } as const;

/** A lot as the domain sees it; null for one that is counted, not weighed. */
export function benchLotOf({ lot, status, openedAtMs, leftUg }: LotState, dayOf: (at: InstantMs) => LocalDay): BenchLot | null {
  const source = sourceOf(lot.kind, lot.refId);
  if (!source || leftUg === null) return null;
  const openedOn = openedAtMs === null ? null : dayOf(openedAtMs);
  return {
    id: lot.id,
    code: lot.code,
    source,
    status: STATUS[status],
    expiresOn: lot.expiryDay,
    openedOn,
    leftUg: massUg(Math.max(0, leftUg)),
    measuredPhX100: lot.measuredPhX100,
  };
}

function sourceOf(kind: LotState['lot']['kind'], refId: string): LineSource | null {
  if (kind === 'stock') return { kind: 'stock', stockId: refId };
  if (kind === 'base-cream') return { kind: 'cream' };
  return kind === 'base-oil' ? { kind: 'wetting-oil' } : null;
}

/** Checks 14 and 15 of this shop for a jar size. */
export function shopChecks(book: Book, stand: ShopStand, jarSize: JarSize): Pick<JudgeContext, 'bench' | 'shop'> {
  const { day, bench } = stand;
  const limitsOf = (plan: Plan) => massLimits({ book, plan, markets: book.rulebook.markets, day });
  const common = { book, jarSize, scales: bench?.scales ?? [], limitsOf };
  const lots = lotFindings({ ...common, lots: withoutStopped(stand), day, phDue: null, fullCleanAfterTags: [], warmestC: null });
  const weighing = benchFindings(common);
  const label = labelFindings({ book, jarSize, day });
  return {
    bench: (plan) => [...weighing(plan), ...label(plan)],
    shop: (plan) => [...stopFindings(book, stand.stops, plan), ...lots(plan)],
  };
}

/** The shop as one order finds it: what is promised to that very order is there for it. */
export function standFor(tx: Reading, stand: DayStand, orderId: string): ShopStand {
  const own = listOpenReservations(tx, orderId);
  const promisedUg = (lotId: string): number => own.reduce((sum, one) => (one.lotId === lotId ? sum + one.massUg : sum), 0);
  return { ...stand, lots: readShelf(tx).map((lot) => ({ ...lot, leftUg: massUg(lot.leftUg + promisedUg(lot.id)) })) };
}

/** A stopped lot is as good as not there. */
export const withoutStopped = ({ lots, stops }: Pick<ShopStand, 'lots' | 'stops'>): readonly BenchLot[] => {
  const stopped = new Set(stops.filter((stop) => stop.subjectKind === 'lot').map((stop) => stop.subjectId));
  return lots.filter((lot) => !stopped.has(lot.id));
};

/** Stops that name the variant or any part of its plan, as findings. */
export const stopFindings = (book: Book, stops: readonly Stop[], plan: Plan): readonly Finding[] =>
  stopsOnPlan(book, stops, plan).map((stop) => finding('stopped', stop.id, { subjectKind: stop.subjectKind, subjectId: stop.subjectId }));

/** Stops that name the variant, any part of its plan or a stock that came into the jar beside it. A lot is no part of a plan: whoever chooses lots leaves stopped ones out. */
export function stopsOnPlan(book: Book, stops: readonly Stop[], plan: Plan, furtherStockIds: readonly string[] = []): readonly Stop[] {
  if (stops.length === 0) return [];
  const stockIds = [...plan.lines.map((line) => line.stockId), ...furtherStockIds];
  const materialIds = [
    ...new Set([...stockIds.flatMap((id) => need(book.stocks, id).parts.map((part) => part.materialId)), ...book.baseMaterialIds]),
  ];
  const named = {
    material: new Set(materialIds),
    stock: new Set(stockIds),
    lot: new Set<string>(),
    pair: new Set(materialIds.flatMap((a) => materialIds.map((b) => pairKey(a, b)))),
    shade: new Set([plan.variant.shadeId]),
    active: new Set([...plan.variant.actives, ...(plan.adjuster ? [plan.adjuster] : [])].map((chosen) => chosen.activeId)),
    variant: new Set([variantKey(plan.variant)]),
  } satisfies Record<Stop['subjectKind'], ReadonlySet<string>>;
  return stops.filter((stop) => named[stop.subjectKind].has(stop.subjectId));
}
