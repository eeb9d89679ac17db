// Sold combinations: adding up, order, and what an export must not give away.
import { describe, expect, it } from 'vitest';
import { salesCsv } from '#lib/contracts/sales.ts';
import { combinationsSold, leader, maskedRows } from '#lib/review/combinations.ts';

const sold = (variantKey: string, jarsCount: number, isoWeek = 202_648) => ({
  isoWeek,
  variantKey,
  jarsCount,
  revenueMinor: jarsCount * 1500,
  remakesCount: 0,
});

describe('combinations sold', () => {
  it('add up over weeks, most jars first, equals by key', () => {
    const rows = [sold('b|', 2), sold('a|', 3), sold('b|', 4, 202_649), sold('c|', 3)];
    expect(combinationsSold(rows).map((one) => [one.variantKey, one.jarsCount, one.revenueMinor, one.sharePpm])).toEqual([
      ['b|', 6, 9000, 500_000],
      ['a|', 3, 4500, 250_000],
      ['c|', 3, 4500, 250_000],
    ]);
  });
  it('are none when nothing was sold', () => expect(combinationsSold([])).toEqual([]));
});

describe('the combination that leads', () => {
  const leads = (...counts: number[]) => leader(combinationsSold(counts.map((count, index) => sold(`${index}|`, count))));
  it('is named from twenty jars on', () => expect(leads(11, 9)).toMatchObject({ variantKey: '0|', jarsCount: 11 }));
  it('is nobody under twenty jars, however clear it looks', () => expect([leads(19), leads(1), leads()]).toEqual(Array(3).fill('too-few')));
  it('is nobody where two sold alike', () => expect(leads(10, 10, 5)).toBe('none'));
});

describe('masking of small groups', () => {
  it('hides a cell under five and one further, the smallest other, so that the total gives nothing back', () => {
    expect(maskedRows([40, 9, 9, 3])).toEqual({ rows: [false, true, false, true], isTotalMasked: false });
  });
  it('hides the total where no further cell is left', () =>
    expect(maskedRows([4, 2])).toEqual({ rows: [true, true], isTotalMasked: true }));
  it('shows five and more, and zero', () => expect(maskedRows([5, 0])).toEqual({ rows: [false, false], isTotalMasked: false }));
});

describe('the CSV file', () => {
  it('quotes, names its units and lets no cell be taken for a formula', () => {
    const text = salesCsv({
      rows: [
        { name: '=cmd("x")', jarsCount: 7, revenueMinor: 10_500 },
        { name: 'Fern', jarsCount: null, revenueMinor: null },
      ],
      totalCount: 9,
      currency: 'GBP',
    });
    expect(text).toBe(
      '"combination","jars_count","revenue_minor_GBP"\r\n"\'=cmd(""x"")","7","10500"\r\n"Fern","fewer than 5","fewer than 5"\r\n"total","9",""\r\n',
    );
  });
});
