// Legal limits as data: each with its source, its dates, and whether somebody has read the text or remembers it.
import type { FactorPpm, SharePpm } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';
import type { MarketId, ProductKind } from './language.ts';

interface RowOrigin {
  readonly id: string;
  readonly marketId: MarketId;
  readonly source: string;
  readonly status: 'verified' | 'from-memory' | 'house';
  readonly fromDay?: LocalDay;
  readonly untilDay?: LocalDay;
}

/** Σ share × factor over its substances may not exceed the limit; 0 = not permitted at all. */
export interface SubstanceLimit extends RowOrigin {
  readonly kind: 'substance';
  readonly productKinds: readonly ProductKind[];
  readonly substances: readonly { readonly substanceId: string; readonly factorPpm: FactorPpm }[];
  readonly maxPpm: SharePpm;
  /** What the limit is expressed as, in words: "as acid", "as zinc". */
  readonly expressedAs: string;
  /** Owed as soon as any of it is in the jar. */
  readonly cautionId?: string;
}

/** Permits a substance to give colour in this market. */
export interface ColourantPermission extends RowOrigin {
  readonly kind: 'colourant';
  readonly substanceId: string;
  readonly conditions: string;
}

export type LimitRow = SubstanceLimit | ColourantPermission;

export interface Market {
  readonly id: MarketId;
  readonly productKind: ProductKind;
  /** Which things need a colourant row: pigments only, or everything that gives colour (US). */
  readonly colourantsListed: 'pigments' | 'all-colouring';
  readonly responsiblePerson: { readonly name: string; readonly address: string; readonly contact: string };
  readonly safetyReport?: { readonly id: string; readonly on: LocalDay; readonly assessor: string; readonly scope: string };
  readonly notificationReference?: string;
  readonly makerMandate?: string;
}
