// What stands between a draft and an edition. Everything open is listed at once, each with the place to mend it.
import { compareText } from '../base/compare.ts';
import type { MissingRow } from '../law/missing-rows.ts';
import { missingRows } from '../law/missing-rows.ts';
import type { MarketId } from '../rulebook/language.ts';
import type { Market } from '../rulebook/limit.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { LocalDay } from '../units/time.ts';
import { addDays } from '../units/time.ts';
import type { DiffLine } from './diff.ts';

/** How far ahead a limit row that comes into force is announced. */
const AHEAD_DAYS = 90;
/** A signature for something that widens use says why, in at least so many words. */
const LEAST_WORDS_COUNT = 10;

export type OpenPoint =
  | { readonly kind: 'unsound'; readonly faultsCount: number }
  | { readonly kind: 'nothing-changed' }
  | { readonly kind: 'not-looked-at'; readonly keys: readonly string[] }
  | { readonly kind: 'own-work' }
  | { readonly kind: 'no-reason'; readonly leastWordsCount: number }
  | { readonly kind: 'no-market' }
  | { readonly kind: 'nothing-permitted' }
  | { readonly kind: 'restricted-without-row'; readonly rows: readonly MissingRow[] };

export type Notice =
  | { readonly kind: 'market-left-out'; readonly marketId: MarketId; readonly missing: readonly string[] }
  | { readonly kind: 'limit-ahead'; readonly limitId: string; readonly fromDay: LocalDay }
  /** It waits for its hour, and never comes into force once this one does. */
  | { readonly kind: 'replaces-edition'; readonly editionNo: number };

export interface GateQuestion {
  readonly draft: Rulebook;
  /** Errors of the soundness check; warnings do not block. */
  readonly faultsCount: number;
  readonly diff: readonly DiffLine[];
  readonly variantsCount: number;
  /** Everybody who edited since the last edition. */
  readonly authorIds: readonly string[];
  readonly approverId: string;
  /** Keys of the lines that the approver opened. */
  readonly lookedAt: readonly string[];
  readonly reason: string;
  readonly day: LocalDay;
  /** Editions that wait for their hour and that this one would overtake. */
  readonly replacesEditionNos: readonly number[];
}

export interface Gate {
  /** Empty: may be published. */
  readonly open: readonly OpenPoint[];
  readonly notices: readonly Notice[];
}

export function publishGate(asked: GateQuestion): Gate {
  return {
    open: openPoints(asked),
    notices: [
      ...asked.draft.markets.flatMap((market): readonly Notice[] => {
        const missing = missingDuties(market);
        return missing.length > 0 ? [{ kind: 'market-left-out', marketId: market.id, missing }] : [];
      }),
      ...limitsAhead(asked.draft, asked.day),
      ...asked.replacesEditionNos.map((editionNo): Notice => ({ kind: 'replaces-edition', editionNo })),
    ],
  };
}

function openPoints(asked: GateQuestion): readonly OpenPoint[] {
  const widening = asked.diff.filter((line) => line.effect === 'widens').map((line) => line.key);
  const unseen = widening.filter((key) => !asked.lookedAt.includes(key));
  const words = asked.reason.split(/\s+/).filter((word) => word !== '').length;
  const served = servedDraft(asked.draft);
  const forgotten = missingRows(served, asked.day);
  const when = (holds: boolean, point: OpenPoint): readonly OpenPoint[] => (holds ? [point] : []);
  return [
    ...when(asked.faultsCount > 0, { kind: 'unsound', faultsCount: asked.faultsCount }),
    ...when(asked.diff.length === 0, { kind: 'nothing-changed' }),
    ...when(unseen.length > 0, { kind: 'not-looked-at', keys: unseen }),
    ...when(asked.authorIds.includes(asked.approverId), { kind: 'own-work' }),
    ...when(widening.length > 0 && words < LEAST_WORDS_COUNT, { kind: 'no-reason', leastWordsCount: LEAST_WORDS_COUNT }),
    ...when(served.markets.length === 0, { kind: 'no-market' }),
    ...when(asked.variantsCount === 0, { kind: 'nothing-permitted' }),
    ...when(forgotten.length > 0, { kind: 'restricted-without-row', rows: forgotten }),
  ];
}

/** A market is published only with a responsible person, a safety report, a notification and the shop's mandate as maker. */
function missingDuties(market: Market): readonly string[] {
  const { name, address } = market.responsiblePerson;
  const duties = {
    responsiblePerson: name !== '' && address !== '',
    safetyReport: market.safetyReport,
    notificationReference: market.notificationReference,
    makerMandate: market.makerMandate,
  };
  return Object.entries(duties)
    .filter(([, met]) => !met)
    .map(([duty]) => duty)
    .sort(compareText);
}

const limitsAhead = (draft: Rulebook, day: LocalDay): readonly Notice[] =>
  draft.limits.flatMap((row): Notice[] =>
    row.fromDay !== undefined && row.fromDay > day && row.fromDay <= addDays(day, AHEAD_DAYS)
      ? [{ kind: 'limit-ahead', limitId: row.id, fromDay: row.fromDay }]
      : [],
  );

/** The document that is frozen, and that the edition before it is compared with: the draft with only the markets that meet every duty. */
export const servedDraft = (draft: Rulebook): Rulebook => ({
  ...draft,
  markets: draft.markets.filter((market) => missingDuties(market).length === 0),
});
