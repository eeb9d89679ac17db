// Which lots a line is taken from: the first to expire goes first, but a line is split over lots only when no single one has enough,
// since every further weighing adds its own error and its own chance of a mix-up.
import { compareBy } from '../base/compare.ts';
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { PhX100 } from '../units/chemistry.ts';
import type { MassUg } from '../units/mass.ts';
import { massUg } from '../units/mass.ts';
import type { LocalDay } from '../units/time.ts';
import { addDays, daysBetween, earliestDay } from '../units/time.ts';
import type { LineSource } from './bench-line.ts';
import { lineIdOf, stockIdOf } from './bench-line.ts';

/** A lot that stands in the shop. A base lot is two of these, its cream and its wetting oil. */
export interface BenchLot {
  readonly id: string;
  readonly code: string;
  readonly source: LineSource;
  readonly status: 'quarantine' | 'released' | 'held' | 'spent';
  readonly expiresOn: LocalDay;
  readonly openedOn: LocalDay | null;
  /** Not yet used or reserved. */
  readonly leftUg: MassUg;
  /** Of a lot of cream, as it came in; null: not measured, so it is taken for the approved one. */
  readonly measuredPhX100: PhX100 | null;
}

/** What of a line comes from which lot. */
export interface LotShare {
  readonly lotId: string;
  readonly lotCode: string;
  readonly massUg: MassUg;
}

/** A line as lots see it. */
export interface LotAsk {
  readonly source: LineSource;
  readonly targetUg: MassUg;
  /** Upper end of the band: a lot has enough when it lasts for this. */
  readonly mostUg: MassUg;
  readonly stepUg: MassUg;
}

/** Last day on which a lot may be used: its expiry, or the days in use from its opening (today, when it is still closed). */
export function lastDayOf(book: Book, lot: BenchLot, today: LocalDay): LocalDay {
  const inUseDays = lot.source.kind === 'stock' ? need(book.stocks, lot.source.stockId).inUseDays : book.rulebook.base.inUseDays;
  return inUseDays === undefined ? lot.expiresOn : earliestDay(lot.expiresOn, addDays(lot.openedOn ?? today, inUseDays));
}

/** Shares that sum to the target, or why there are none: nothing left, or nothing that lives long enough. */
export function allocateLots(book: Book, lots: readonly BenchLot[], today: LocalDay, ask: LotAsk): Result<readonly LotShare[], Finding> {
  const minDays = book.rulebook.house.minRemainingLifeDays;
  const stockId = stockIdOf(ask.source);
  const usable = lots
    .filter((lot) => lot.status === 'released' && lineIdOf(lot.source) === lineIdOf(ask.source))
    .map((lot) => ({ lot, lastDay: lastDayOf(book, lot, today), lifeDays: daysBetween(today, lastDayOf(book, lot, today)) }))
    .filter(({ lifeDays }) => lifeDays >= 0)
    .sort(
      compareBy(
        ({ lastDay }) => lastDay,
        ({ lot }) => lot.code,
        ({ lot }) => lot.id,
      ),
    );
  const lasting = usable.filter(({ lifeDays }) => lifeDays >= minDays).map(({ lot }) => lot);
  const shares = sharesOf(lasting, ask);
  if (shares) return accept(shares);
  if (
    !sharesOf(
      usable.map(({ lot }) => lot),
      ask,
    )
  )
    return refuse(finding('no-lot', stockId, { stockId, neededUg: ask.mostUg }));
  const lifeDays = Math.max(...usable.map((one) => one.lifeDays).filter((days) => days < minDays));
  return refuse(finding('lot-life-short', stockId, { stockId, lifeDays, minDays }));
}

function sharesOf(lots: readonly BenchLot[], ask: LotAsk): readonly LotShare[] | null {
  const single = lots.find((lot) => lot.leftUg >= ask.mostUg);
  if (single) return [{ lotId: single.id, lotCode: single.code, massUg: ask.targetUg }];
  const shares: LotShare[] = [];
  const rest = lots.reduce((missing, lot) => {
    const taken = Math.min(missing, Math.floor(lot.leftUg / ask.stepUg) * ask.stepUg);
    if (taken > 0) shares.push({ lotId: lot.id, lotCode: lot.code, massUg: massUg(taken) });
    return missing - taken;
  }, ask.targetUg as number);
  const all = lots.reduce((sum, lot) => sum + lot.leftUg, 0);
  return rest === 0 && all >= ask.mostUg ? shares : null;
}
