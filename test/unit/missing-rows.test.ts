// A rulebook that forgets a substance which the law restricts. Regulation (EC) No 1223/2009, Annex V/29 (phenoxyethanol) and V/3, III/98
// (salicylic acid), as the reference rows hold them.
import { describe, expect, it } from 'vitest';
import { missingRows } from '#lib/law/missing-rows.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { localDay } from '#lib/units/time.ts';
import { aDemoRulebook, TEST_DAY } from '#test/support/a-demo-book.ts';

const plain = aDemoRulebook();
const found = (bend: Partial<Rulebook>, day = TEST_DAY) =>
  missingRows({ ...plain, ...bend }, day).map((row) => `${row.marketId} ${row.substanceId}: ${row.source}`);
const phenoxyethanolRows = plain.limits.filter(
  (row) => row.kind === 'substance' && row.substances.some((one) => one.substanceId === 'phenoxyethanol'),
);

describe('restricted substances', () => {
  it('of the small shop all have a row', () => expect(found({})).toEqual([]));

  it('without a row are named with the text that restricts them', () => {
    expect(phenoxyethanolRows.length).toBeGreaterThan(0);
    const limits = plain.limits.filter((row) => !phenoxyethanolRows.includes(row));
    expect(found({ limits })).toEqual(['EU phenoxyethanol: Regulation (EC) No 1223/2009, Annex V/29']);
  });

  it('count as forgotten when their only row is over, not while it is in force or still to come', () => {
    const dated = (days: { readonly fromDay?: string; readonly untilDay?: string }) =>
      plain.limits.map((row) =>
        phenoxyethanolRows.includes(row)
          ? {
              ...row,
              ...(days.fromDay && { fromDay: localDay(days.fromDay) }),
              ...(days.untilDay && { untilDay: localDay(days.untilDay) }),
            }
          : row,
      );
    expect(found({ limits: dated({ untilDay: TEST_DAY }) })).toHaveLength(1);
    expect(found({ limits: dated({ untilDay: '2026-11-26' }) })).toEqual([]);
    expect(found({ limits: dated({ fromDay: '2027-01-01' }) })).toEqual([]);
  });

  it('are found by their label name in any letters, and only where a material holds them', () => {
    const salicylic = {
      ...(plain.substances[0] ?? expect.fail()),
      id: 'salicylic',
      isWater: false,
      labelNames: { EU: 'Salicylic Acid', US: 'SALICYLIC ACID' },
    };
    const substances = [...plain.substances, salicylic];
    expect(found({ substances })).toEqual([]);
    const [first, ...others] = plain.materials;
    const materials = [
      {
        ...(first ?? expect.fail()),
        substances: [...(first?.substances ?? []), { substanceId: 'salicylic', sharePpm: plain.base.allowancePpm }],
      },
      ...others,
    ];
    const named = found({ substances, materials });
    expect(named.length).toBeGreaterThan(0);
    expect(named.every((line) => line.startsWith('EU salicylic: '))).toBe(true);
  });

  it('of a market that is not on sale do not matter', () => {
    const limits = plain.limits.filter((row) => !phenoxyethanolRows.includes(row));
    expect(found({ limits, markets: plain.markets.filter((market) => market.id !== 'EU') })).toEqual([]);
  });
});
