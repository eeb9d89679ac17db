// A limit on a jar as a sum over its lines: Σ mass × (content − allowed) may not exceed 0 (may not fall under it for a minimum).
// Plain exact data, so that any check of the jar's composition can be asked of every corner of the bands.
import type { FindingCode } from '../base/finding.ts';

/** What one unit of mass of a line brings towards a limit and what it makes room for, both as numerators over the limit's whole. */
export interface LineShare {
  readonly content: bigint;
  /** The limit itself; for a solubility, the limit × the line's water. */
  readonly allowed: bigint;
}

/** Where a limit comes from; only law and caps narrow a band before any sum is looked at. */
export type LimitBasis = 'law' | 'cap' | 'judgement' | 'solubility' | 'preservation' | 'exposure' | 'allowance';

export interface MassLimit {
  /** Unique among the limits of a jar. */
  readonly id: string;
  /** The finding that the jar would draw if it broke the limit. */
  readonly code: FindingCode;
  readonly basis: LimitBasis;
  readonly direction: 'at-most' | 'at-least';
  readonly whole: bigint;
  readonly shares: ReadonlyMap<string, LineShare>;
}

/** How far a unit of a line's mass pushes the jar over the limit (over whole); positive = towards breaking it. */
export function pushOf(limit: MassLimit, lineId: string): bigint {
  const share = limit.shares.get(lineId);
  if (!share) return 0n;
  return limit.direction === 'at-most' ? share.content - share.allowed : share.allowed - share.content;
}
