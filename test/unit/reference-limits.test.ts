// The rows that the editor offers must be whole: each names its text, its state of knowledge, and a figure that a rulebook can hold.
import { describe, expect, it } from 'vitest';
import { isInForce } from '#lib/law/limits.ts';
import { REFERENCE_COLOURANTS, REFERENCE_LIMITS } from '#lib/law/reference-limits.data.ts';
import { localDay } from '#lib/units/time.ts';

const rows = [...REFERENCE_LIMITS, ...REFERENCE_COLOURANTS];

describe('reference rows', () => {
  it('have ids of their own and name the text they come from', () => {
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
    for (const row of rows) {
      expect(row.id).toMatch(/^(eu|us)-[a-z0-9-]+$/);
      expect(row.source).toMatch(row.marketId === 'EU' ? /^Regulation \(EC\) No 1223\/2009, Annex (III|IV|V)\b/ : /^21 CFR 73\.\d+$/);
    }
  });

  it.each(REFERENCE_LIMITS.map((row) => [row.id, row] as const))(
    '%s limits at least one named substance, once each, in at least one kind of product',
    (_id, row) => {
      expect(row.substances.length).toBeGreaterThan(0);
      expect(new Set(row.substances.map((one) => one.name)).size).toBe(row.substances.length);
      for (const one of row.substances) {
        expect(one.name).toBe(one.name.toUpperCase());
        expect(one.factorPpm).toBeGreaterThan(0);
        expect(one.factorPpm).toBeLessThanOrEqual(1_000_000);
      }
      expect(row.productKinds.length).toBeGreaterThan(0);
      expect(row.maxPpm).toBeLessThan(1_000_000);
      expect(row.expressedAs).toMatch(/^as /);
    },
  );

  it('offers each colourant once per market and number', () => {
    expect(new Set(REFERENCE_COLOURANTS.map((row) => `${row.marketId} ${row.colourIndex}`)).size).toBe(REFERENCE_COLOURANTS.length);
    expect(REFERENCE_COLOURANTS.every((row) => /^77\d{3}(:1)?$/.test(row.colourIndex))).toBe(true);
  });

  it('offers no clay and no charcoal as a US colourant, no silver and no mica as an EU one', () => {
    const numbers = (marketId: string) => REFERENCE_COLOURANTS.filter((row) => row.marketId === marketId).map((row) => row.colourIndex);
    expect(numbers('US').filter((number) => ['77004', '77266', '77267', '77268:1'].includes(number))).toEqual([]);
    expect(numbers('EU').filter((number) => ['77820', '77019'].includes(number))).toEqual([]);
  });
});

describe('in force', () => {
  it('from the first day on, until the day before the last: rows that follow each other share a day', () => {
    const day = localDay('2026-05-01');
    expect(isInForce({ untilDay: day }, localDay('2026-04-30'))).toBe(true);
    expect(isInForce({ untilDay: day }, day)).toBe(false);
    expect(isInForce({ fromDay: day }, day)).toBe(true);
    expect(isInForce({ fromDay: day }, localDay('2026-04-30'))).toBe(false);
    expect(isInForce({}, day)).toBe(true);
  });
});
