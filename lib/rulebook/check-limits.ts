// Limit rows make sense, and nothing is offered that breaks one: a level with its tolerance, a shade, or the base alone.
// The verdict asks again on the day of sale; here an author learns it before anything is judged.
import type { DocumentPath } from '../base/document-fault.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';
import type { Bands } from './base.ts';
import type { Book } from './book.ts';
import { substancesIn } from './held-shares.ts';
import type { LimitRow, SubstanceLimit } from './limit.ts';
import type { Active } from './offer.ts';
import type { Faults, SoundnessFault } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';
import { materialPpm, suppliesOf } from './supply.ts';

/** Without a day every row counts as in force. */
export function* checkLimits(book: Book, day?: LocalDay): Faults {
  for (const [index, row] of book.rulebook.limits.entries()) yield* rowFaults(['limits', index], row);
  const alone = baseHeld(book, WHOLE_PPM);
  const atAllowance = baseHeld(book, WHOLE_PPM - book.rulebook.base.allowancePpm);
  const offered = offersOf(book);
  for (const binding of rowsThatBind(book, day)) {
    yield* baseFaults(binding, alone);
    for (const offer of offered) yield* overLimit(offer, binding, { bands: book.rulebook.house.bands, atAllowance });
  }
}

function* rowFaults(path: DocumentPath, row: LimitRow): Faults {
  const { fromDay, untilDay } = row;
  if (fromDay !== undefined && untilDay !== undefined && fromDay >= untilDay)
    yield fault([...path, 'untilDay'], 'dates-reversed', { fromDay, untilDay });
  if (row.kind === 'colourant') return;
  if (row.productKinds.length === 0) yield fault([...path, 'productKinds'], 'limit-without-kinds', {});
  if (row.substances.length === 0) yield fault([...path, 'substances'], 'empty-list', { what: 'substance under this limit' });
  for (const [index, { factorPpm }] of row.substances.entries()) {
    if (factorPpm === 0)
      yield fault([...path, 'substances', index, 'factorPpm'], 'out-of-range', { found: 0, least: 1, most: 1_000_000_000 });
  }
}

interface BindingRow {
  readonly row: SubstanceLimit;
  /** Set where the row only comes into force after the day asked about. */
  readonly comesOn: LocalDay | null;
}

/** Substance rows of the book's markets for their kind of product that are not over yet. */
function rowsThatBind({ rulebook }: Book, day: LocalDay | undefined): readonly BindingRow[] {
  return rulebook.limits.flatMap((row): BindingRow[] => {
    if (row.kind !== 'substance') return [];
    const sold = rulebook.markets.some((market) => market.id === row.marketId && row.productKinds.includes(market.productKind));
    const over = day !== undefined && row.untilDay !== undefined && row.untilDay <= day;
    const comesOn = day !== undefined && row.fromDay !== undefined && row.fromDay > day ? row.fromDay : null;
    return sold && !over ? [{ row, comesOn }] : [];
  });
}

/** Substances in parts of 10^18. */
type HeldE18 = ReadonlyMap<string, bigint>;

/** What a jar can be offered, with every way to bring it in, and the tolerance of its line where it has its own. */
interface Offer {
  readonly path: DocumentPath;
  readonly ways: readonly HeldE18[];
  readonly tauPpm: number | undefined;
}

const scaled = (held: ReadonlyMap<string, bigint>, timesPpm: number): HeldE18 =>
  new Map([...held].map(([id, part]) => [id, part * BigInt(timesPpm)]));

const baseHeld = (book: Book, basePpm: number): HeldE18 => scaled(substancesIn(book, book.rulebook.base.parts), basePpm);

/** Shades as their powders, and every permitted level by each stock that brings it in whole ppm. */
function offersOf(book: Book): readonly Offer[] {
  const shades = book.rulebook.shades.map(
    (shade, index): Offer => ({
      path: ['shades', index, 'parts'],
      ways: [scaled(substancesIn(book, shade.parts), WHOLE_PPM)],
      tauPpm: undefined,
    }),
  );
  const levels = book.rulebook.actives.flatMap((active, index) =>
    active.levels.flatMap((level, at): Offer[] => {
      const path = ['actives', index, 'levels', at, 'levelPpm'];
      return level.permitted ? [{ path, ways: waysToAdd(book, active, level.levelPpm), tauPpm: active.tauPpm }] : [];
    }),
  );
  return [...shades, ...levels];
}

function waysToAdd(book: Book, active: Active, levelPpm: number): readonly HeldE18[] {
  const wanted = materialPpm(active, levelPpm);
  const supplies = wanted === null ? [] : suppliesOf(book, active.materialId, wanted);
  return supplies.map(({ stock, suppliedPpm }) => scaled(substancesIn(book, stock.parts), suppliedPpm));
}

/** Σ part × factor as the limit expresses it, in parts of 10^24. */
const expressed = (row: SubstanceLimit, heldE18: HeldE18): bigint =>
  row.substances.reduce((sum, { substanceId, factorPpm }) => sum + (heldE18.get(substanceId) ?? 0n) * BigInt(factorPpm), 0n);

/** In 10^30: the limit, and anything compared with it. */
const limitE30 = (row: SubstanceLimit): bigint => BigInt(row.maxPpm) * 10n ** 24n;
const toPpm = (e30: bigint): number => Number(e30 / 10n ** 18n) / 1_000_000;

/** What stands beside an offer: the base at full allowance, and the tolerances of the house. */
interface Beside {
  readonly bands: Bands;
  readonly atAllowance: HeldE18;
}

/** An offer with its tolerance. It is at fault only when every way to add it breaks the limit. */
function* overLimit({ path, ways, tauPpm }: Offer, binding: BindingRow, { bands, atAllowance }: Beside): Faults {
  const { row } = binding;
  const brought = ways.map((way) => expressed(row, way));
  if (brought.length === 0 || brought.includes(0n)) return;
  const base = expressed(row, atAllowance) * BigInt(WHOLE_PPM);
  const totals = brought.map((part) => part * BigInt(WHOLE_PPM + (tauPpm ?? tauAt(bands, row, part))) + base);
  if (totals.some((total) => total <= limitE30(row))) return;
  yield breach(path, binding, { foundPpm: Math.min(...totals.map(toPpm)), now: 'over-legal-limit', later: 'over-coming-limit' });
}

/** The narrow tolerance where the limit lies near what is brought, else the usual one. */
function tauAt(bands: Bands, row: SubstanceLimit, brought: bigint): number {
  const isNear = brought * BigInt(WHOLE_PPM + bands.nearLimitPpm) >= limitE30(row);
  return isNear ? bands.nearLimitTauPpm : bands.usualPpm;
}

function* baseFaults(binding: BindingRow, alone: HeldE18): Faults {
  const found = expressed(binding.row, alone) * BigInt(WHOLE_PPM);
  if (found > limitE30(binding.row)) {
    yield breach(['base', 'parts'], binding, { foundPpm: toPpm(found), now: 'base-over-limit', later: 'base-over-coming-limit' });
  }
}

interface Breach {
  readonly foundPpm: number;
  readonly now: 'over-legal-limit' | 'base-over-limit';
  readonly later: 'over-coming-limit' | 'base-over-coming-limit';
}

function breach(path: DocumentPath, { row, comesOn }: BindingRow, { foundPpm, now, later }: Breach): SoundnessFault {
  const facts = { limitId: row.id, foundPpm, maxPpm: row.maxPpm };
  return comesOn === null ? fault(path, now, facts) : fault(path, later, { ...facts, fromDay: comesOn });
}
