// Dilution of the base by additions, against hand-worked figures and facts of the trade.
import { describe, expect, it } from 'vitest';
import { composePlan, materialPart } from '#lib/composition/compose.ts';
import { planVariant } from '#lib/composition/plan-variant.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { PlanLine } from '#lib/rulebook/variant.ts';
import { partToPpm, sharePpm } from '#lib/units/share.ts';
import { localDay } from '#lib/units/time.ts';
import { judge } from '#lib/verdict/judge.ts';
import { aBase } from '#test/support/a-base.ts';
import { aMaterial, aPowder, aStock, aSubstance, noAcidity, parts } from '#test/support/a-material.ts';
import { aRulebook } from '#test/support/a-rulebook.ts';
import { aLevel, anActive, aShade } from '#test/support/an-offer.ts';

/** 10.00 % glycerin in the base, 4 % wetting oil, kaolin as the only addition. */
const glycerinBook = () => {
  const book = aRulebook();
  return openBook({
    ...book,
    base: aBase({ parts: parts({ water: 831_000, glycerin: 100_000, oil: 60_000, phenoxyethanol: 9_000 }) }),
    substances: [...book.substances, aSubstance('glycerin')],
    materials: [...book.materials, aMaterial('glycerin', { kind: 'liquid', classes: ['humectant'] })],
  });
};

const line = (stockId: string, share: number, materialId: string): PlanLine => ({
  stockId,
  sharePpm: sharePpm(share),
  purpose: 'shade',
  materialId,
});

describe('a base of 10.00 % glycerin with the full 5 % allowance used (hand-worked)', () => {
  const book = glycerinBook();
  const jar = composePlan(book, { lines: [line('kaolin-neat', 50_000, 'kaolin')] });
  const percent = (found: typeof jar.cream): number => partToPpm(found, jar.whole) / 10_000;

  it.each([
    ['glycerin 9.50 %', () => percent(materialPart(jar, 'glycerin')), 9.5],
    ['wetting oil 3.80 %', () => percent(jar.wettingOil), 3.8],
    ['cream 91.20 %', () => percent(jar.cream), 91.2],
    ['additions 5.00 %', () => percent(jar.additions), 5],
  ])('holds %s', (_, found, expected) => expect(found()).toBe(expected));
});

describe('the allowance kept free for clays, colours and actives together is 5 % (common practice, no source)', () => {
  const verdictAt = (share: number) =>
    judge(
      openBook({ ...aRulebook(), shades: [aShade('pale', { kaolin: share })] }),
      { variant: { shadeId: 'pale', actives: [] }, adjuster: null, lines: [line('kaolin-neat', share, 'kaolin')] },
      { day: localDay('2026-11-25') },
    );
  const codes = (share: number) => {
    const verdict = verdictAt(share);
    return verdict.kind === 'permitted' ? [] : verdict.findings.map((found) => found.code);
  };

  it('permits 5.0000 % as far as the allowance goes', () => expect(codes(50_000)).not.toContain('allowance-exceeded'));
  it('refuses 5.0001 %', () => expect(codes(50_001)).toContain('allowance-exceeded'));
});

describe('netted carriers (hand-worked)', () => {
  it('a 20 % premix of chromium oxide in kaolin brings 0.40 % kaolin, so the neat kaolin line is 1.50 % instead of 1.90 %', () => {
    const base = aRulebook();
    const book = openBook({
      ...base,
      substances: [...base.substances, aSubstance('illite'), aSubstance('chromium-oxide'), aSubstance('panthenol')],
      materials: [
        ...base.materials,
        aPowder('illite'),
        aPowder('chromium-oxide', { kind: 'pigment', colours: true }),
        aMaterial('panthenol', { kind: 'liquid', acidity: noAcidity() }),
      ],
      stocks: [
        ...base.stocks.filter((stock) => !stock.isBlend),
        aStock('illite', { addedTo: 'paste' }),
        aStock('chromium-oxide', { id: 'chromium-20', parts: parts({ 'chromium-oxide': 200_000, kaolin: 800_000 }), addedTo: 'paste' }),
        aStock('panthenol', { id: 'panthenol-75', parts: parts({ panthenol: 750_000, water: 250_000 }) }),
      ],
      shades: [aShade('fern', { kaolin: 19_000, illite: 5_000, 'chromium-oxide': 1_000 })],
      actives: [anActive('niacinamide', [aLevel(20_000)]), anActive('panthenol', [aLevel(3_000)])],
    });
    const variant = {
      shadeId: 'fern',
      actives: [
        { activeId: 'niacinamide', levelPpm: sharePpm(20_000) },
        { activeId: 'panthenol', levelPpm: sharePpm(3_000) },
      ],
    };
    const { plans } = planVariant(book, variant, null);
    const shares = Object.fromEntries(plans[0]?.lines.map((one) => [one.stockId, one.sharePpm]) ?? []);
    expect(shares).toEqual({
      'kaolin-neat': 15_000,
      'illite-neat': 5_000,
      'chromium-20': 5_000,
      'niacinamide-neat': 20_000,
      'panthenol-75': 4_000,
    });
    expect(Object.values(shares).reduce((sum, share) => sum + share, 0)).toBe(49_000);
  });
});
