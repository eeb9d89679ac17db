// How long a jar may be used: as long as the shortest-lived thing in it. Regulation (EC) No 1223/2009, Article 19(1)(c):
// up to 30 months a date is owed; above that the time after opening takes its place.
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { LocalDay } from '../units/time.ts';
import { addDays, addMonths, earliestDay } from '../units/time.ts';

const DATED_UP_TO_MONTHS = 30;

/** A lot as it stands when the jar is mixed: open by then. */
export interface UsedLot {
  readonly expiresOn: LocalDay;
  readonly openedOn: LocalDay;
  /** Null: opening does not shorten its life. */
  readonly inUseDays: number | null;
}

export interface LifeAsk {
  readonly mixedOn: LocalDay;
  readonly jarLifeMonths: number;
  /** Lots of every line, base lots included. */
  readonly lots: readonly UsedLot[];
  /** Null: the packaging does not expire. */
  readonly packagingExpiresOn: LocalDay | null;
}

/** The earliest of jar life, every lot's expiry, every lot's days in use, and the packaging's. */
export function lastDayOfUse({ mixedOn, jarLifeMonths, lots, packagingExpiresOn }: LifeAsk): LocalDay {
  const inUse = lots.flatMap(({ openedOn, inUseDays }) => (inUseDays === null ? [] : [addDays(openedOn, inUseDays)]));
  const packaging = packagingExpiresOn === null ? [] : [packagingExpiresOn];
  return earliestDay(addMonths(mixedOn, jarLifeMonths), ...lots.map((lot) => lot.expiresOn), ...inUse, ...packaging);
}

/** What the label says: a date, with its month form MM/YYYY, or the months after opening. */
export type Durability =
  | { readonly kind: 'date'; readonly day: LocalDay; readonly monthText: string }
  | { readonly kind: 'opening-period'; readonly openedMonths: number };

/** Refused when the jar would be past its day already. Exactly 30 months still owe a date. */
export function durabilityOf(ask: LifeAsk, openedMonths: number): Result<Durability, 'already-over'> {
  const day = lastDayOfUse(ask);
  if (day < ask.mixedOn) return refuse('already-over');
  if (day > addMonths(ask.mixedOn, DATED_UP_TO_MONTHS)) return accept({ kind: 'opening-period', openedMonths });
  return accept({ kind: 'date', day, monthText: monthOver(day) });
}

/** The last month that is over by a day: a day that ends its month counts. */
export function monthOver(day: LocalDay): string {
  const next = addDays(day, 1);
  const over = addDays(next, -Number(next.slice(8, 10)));
  return `${over.slice(5, 7)}/${over.slice(0, 4)}`;
}
