// How far a filled pack may fall short of its label. Masses in whole milligrams.

export interface ErrorRow {
  /** Nominal above this, or at it for the first row. */
  readonly aboveMg: number;
  readonly upToMg: number;
  readonly allowed: { readonly kind: 'share'; readonly perMille: number } | { readonly kind: 'mass'; readonly mg: number };
}

const share = (aboveMg: number, upToMg: number, perMille: number): ErrorRow => ({ aboveMg, upToMg, allowed: { kind: 'share', perMille } });
const mass = (aboveMg: number, upToMg: number, mg: number): ErrorRow => ({ aboveMg, upToMg, allowed: { kind: 'mass', mg } });

/**
 * Tolerable negative errors by nominal content: Directive 76/211/EEC, Annex I, 2.4 (the same table in OIML R 87).
 * Rows up to 1000 g read in the text; 1000–10 000 g and the rounding (up to 0.1 g) from memory.
 */
export const EU_TOLERABLE_ERRORS: readonly ErrorRow[] = [
  share(5000, 50_000, 90),
  mass(50_000, 100_000, 4500),
  share(100_000, 200_000, 45),
  mass(200_000, 300_000, 9000),
  share(300_000, 500_000, 30),
  mass(500_000, 1_000_000, 15_000),
  share(1_000_000, 10_000_000, 15),
];

/** Maximum allowable variations by weight: NIST Handbook 133, Table 2-5, first rows, from memory. */
export const US_ALLOWABLE_VARIATIONS: readonly ErrorRow[] = [
  share(0, 36_000, 100),
  mass(36_000, 54_000, 3600),
  mass(54_000, 81_000, 5400),
  mass(81_000, 117_000, 7200),
  mass(117_000, 154_000, 9000),
];
