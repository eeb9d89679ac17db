// Limit rows make sense, and nothing is offered that breaks one: a level with its tolerance, a shade, or the base alone.
// The verdict asks again on the day of sale; here an author learns it before anything is judged.
import type { DocumentPath } from '../base/document-fault.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';
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
  for (const row of rowsThatBind(book, day)) {
    yield* baseFaults(book, row);
    for (const [index, shade] of book.rulebook.shades.entries()) {
      const found = { heldE18: scaled(substancesIn(book, shade.parts), WHOLE_PPM), tauPpm: undefined };
      yield* overLimit(['shades', index, 'parts'], book, row, [found]);
    }
    for (const [index, active] of book.rulebook.actives.entries()) {
      for (const [at, level] of active.levels.entries()) {
        if (level.permitted)
          yield* overLimit(['actives', index, 'levels', at, 'levelPpm'], book, row, waysToAdd(book, active, level.levelPpm));
      }
    }
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

/** One way to bring an offer into a jar: substances in parts of 10^18, and the tolerance of its line where the offer has its own. */
interface Addition {
  readonly heldE18: ReadonlyMap<string, bigint>;
  readonly tauPpm: number | undefined;
}

const scaled = (held: ReadonlyMap<string, bigint>, timesPpm: number): ReadonlyMap<string, bigint> =>
  new Map([...held].map(([id, part]) => [id, part * BigInt(timesPpm)]));

function waysToAdd(book: Book, active: Active, levelPpm: number): readonly Addition[] {
  const wanted = materialPpm(active, levelPpm);
  const supplies = wanted === null ? [] : suppliesOf(book, active.materialId, wanted);
  return supplies.map(({ stock, suppliedPpm }) => ({
    heldE18: scaled(substancesIn(book, stock.parts), suppliedPpm),
    tauPpm: active.tauPpm,
  }));
}

/** Σ part × factor as the limit expresses it, in parts of 10^24. */
const expressed = (row: SubstanceLimit, heldE18: ReadonlyMap<string, bigint>): bigint =>
  row.substances.reduce((sum, { substanceId, factorPpm }) => sum + (heldE18.get(substanceId) ?? 0n) * BigInt(factorPpm), 0n);

const baseHeld = (book: Book, sharePpm: number): ReadonlyMap<string, bigint> =>
  scaled(substancesIn(book, book.rulebook.base.parts), sharePpm);

/** In 10^30: the limit, and anything compared with it. */
const limitE30 = (row: SubstanceLimit): bigint => BigInt(row.maxPpm) * 10n ** 24n;
const toPpm = (e30: bigint): number => Number(e30 / 10n ** 18n) / 1_000_000;

/** An offer with its tolerance beside the base at full allowance. It is at fault only when every way to add it breaks the limit. */
function* overLimit(path: DocumentPath, book: Book, binding: BindingRow, ways: readonly Addition[]): Faults {
  const { row } = binding;
  const base = expressed(row, baseHeld(book, WHOLE_PPM - book.rulebook.base.allowancePpm)) * BigInt(WHOLE_PPM);
  const found = ways.map((way) => {
    const brought = expressed(row, way.heldE18);
    return { brought, total: brought * BigInt(WHOLE_PPM + tauAt(book, row, brought, way.tauPpm)) + base };
  });
  if (found.length === 0 || found.some(({ brought, total }) => brought === 0n || total <= limitE30(row))) return;
  const leastPpm = Math.min(...found.map(({ total }) => toPpm(total)));
  yield breach(path, binding, { foundPpm: leastPpm, now: 'over-legal-limit', later: 'over-coming-limit' });
}

/** The offer's own tolerance; else the narrow one where the limit lies near what it brings, else the usual one. */
function tauAt(book: Book, row: SubstanceLimit, brought: bigint, own: number | undefined): number {
  const { bands } = book.rulebook.house;
  const isNear = brought * BigInt(WHOLE_PPM + bands.nearLimitPpm) >= limitE30(row);
  return own ?? (isNear ? bands.nearLimitTauPpm : bands.usualPpm);
}

function* baseFaults(book: Book, binding: BindingRow): Faults {
  const found = expressed(binding.row, baseHeld(book, WHOLE_PPM)) * BigInt(WHOLE_PPM);
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
