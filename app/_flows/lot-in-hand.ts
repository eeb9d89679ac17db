// The lot that a code names, held against what the card asks for.
import type { Reading } from '#db/connection.ts';
import type { LotState } from '#db/lots.ts';
import { findLot, findLotByCode } from '#db/lots.ts';
import { localDaysOf } from '#db/shop.ts';
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { massUg } from '#lib/units/mass.ts';
import type { LineSource } from '#lib/weighing/bench-line.ts';
import type { ShelfLot } from '#lib/weighing/lot-check.ts';
import { checkLot } from '#lib/weighing/lot-check.ts';
import type { NextWeighing } from '#lib/weighing/next-weighing.ts';
import type { BenchOrder } from './bench-order.ts';
import type { BenchRefusal } from './bench-refusal.ts';
import type { DayStand } from './shop-context.ts';
import { benchLotOf } from './shop-context.ts';

export interface FoundLot {
  readonly lotId: string;
  readonly isOpened: boolean;
  /** More than the books say is left. */
  readonly missingUg: MassUg;
}

export interface LotAsked {
  readonly line: { readonly source: LineSource };
  readonly weighing: Pick<NextWeighing, 'lot'>;
  readonly shownCode: string;
  readonly massUg: MassUg;
  /** It lies in the vessel or boat already: then the books have to follow, however much they say is left. */
  readonly isPoured: boolean;
}

export function lotInHand(
  tx: Reading,
  bench: BenchOrder,
  { line, weighing, shownCode, massUg: mass, isPoured }: LotAsked,
): Result<FoundLot, BenchRefusal> {
  const { edition, stand } = bench;
  const code = shownCode.trim().toUpperCase();
  const expectedCode = weighing.lot?.lotCode ?? null;
  const wrong = (fault: Extract<BenchRefusal, { kind: 'lot' }>['fault']) =>
    refuse({ kind: 'lot', fault, expectedCode, shownCode: code } as const);
  const state = findLotByCode(tx, code);
  const shown = state && shelfLot(tx, stand, state);
  if (!state || !shown) return wrong('unknown');
  const onCard = weighing.lot === null ? undefined : findLot(tx, weighing.lot.lotId);
  const checked = checkLot(edition.book, shown, {
    source: line.source,
    massUg: isPoured ? massUg(Math.min(mass, shown.thereUg)) : mass,
    onCard: (onCard && shelfLot(tx, stand, onCard)) ?? null,
    day: stand.day,
  });
  return checked.ok
    ? accept({ lotId: state.lot.id, isOpened: state.openedAtMs !== null, missingUg: massUg(Math.max(0, mass - shown.thereUg)) })
    : wrong(checked.refusal);
}

/** Null for a lot that is counted, not weighed. */
function shelfLot(tx: Reading, { stops }: DayStand, state: LotState): ShelfLot | null {
  const lot = benchLotOf(state, localDaysOf(tx));
  if (!lot || state.leftUg === null) return null;
  return {
    lot,
    thereUg: massUg(Math.max(0, state.leftUg + state.reservedUg)),
    isStopped: stops.some((stop) => stop.subjectKind === 'lot' && stop.subjectId === state.lot.id),
  };
}
