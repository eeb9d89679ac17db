// Oil that powders need before they meet water. Oil absorption by ISO 787-5 is a range per powder, not a constant; the figures here are inputs.
// Worked by hand apart from this program. That powders go into the oil side first is common practice, no source.
import { describe, expect, it } from 'vitest';
import { checkWetting, wettingOf } from '#lib/chemistry/wetting.ts';
import { mgPer100g } from '#lib/units/material-property.ts';
import { factorPpm, partToPpm, WHOLE_PPM } from '#lib/units/share.ts';
import { aHouse } from '#test/support/a-base.ts';
import { aBook, aPlannedJar } from '#test/support/a-jar.ts';
import { aMaterial, aPowder, aStock, aSubstance, parts } from '#test/support/a-material.ts';

const ids = ['illite', 'chromium-oxide', 'charcoal', 'oat', 'bisabolol'] as const;
const absorbing = (grams: number) => ({ oilAbsorptionMgPer100g: mgPer100g(grams * 1000) });
const book = aBook({
  substances: ids.map((id) => aSubstance(id)),
  materials: [
    aPowder('illite', absorbing(40)),
    aPowder('chromium-oxide', { ...absorbing(15), kind: 'pigment', colours: true }),
    aPowder('charcoal', absorbing(120)),
    aPowder('oat', absorbing(90)),
    aMaterial('bisabolol', { kind: 'liquid' }),
  ],
  stocks: [
    aStock('chromium-oxide', { id: 'green-in-clay', parts: parts({ 'chromium-oxide': 200_000, kaolin: 800_000 }), addedTo: 'paste' }),
    aStock('bisabolol', { id: 'bisabolol-in-oil', parts: parts({ bisabolol: 100_000, oil: 900_000 }), addedTo: 'paste' }),
  ],
});

const ppm = (shares: Readonly<Record<string, number>>) => {
  const found = wettingOf(book, aPlannedJar(book, shares));
  return { needed: partToPpm(found.needed, found.whole), available: partToPpm(found.available, found.whole) };
};

describe('wetting', () => {
  it('worked: kaolin 1.90 % (45), illite 0.50 % (40), chromium oxide 0.10 % (15): (0.855 + 0.200 + 0.015) × 1.5 = 1.605 %', () => {
    expect(ppm({ 'kaolin-neat': 15_000, 'illite-neat': 5000, 'green-in-clay': 5000 }).needed).toBe(16_050);
  });

  it('worked: charcoal 1.5 % (120) and oat 2.0 % (90) on kaolin 1.0 % (45) need (1.80 + 1.80 + 0.45) × 1.5 = 6.075 % where 3.82 % is there: refused', () => {
    const shares = { 'charcoal-neat': 15_000, 'oat-neat': 20_000, 'kaolin-neat': 10_000 };
    expect(ppm(shares)).toEqual({ needed: 60_750, available: 38_200 });
    expect(checkWetting(book, aPlannedJar(book, shares))).toEqual([
      { code: 'wetting-short', ruleId: 'wetting', facts: { neededPpm: 60_750, availablePpm: 38_200 } },
    ]);
  });

  it('worked: a premix of 10 % in oil brings nine tenths of its share as free oil', () => {
    // Additions 1 %: 4 % of 99 % wetting oil, and 0.9 % from the premix.
    expect(ppm({ 'bisabolol-in-oil': 10_000 })).toEqual({ needed: 0, available: 48_600 });
  });

  it('passes where need and oil are equal: 5 % of a powder of 76, without spare, beside 3.8 % oil', () => {
    const codesAt = (absorptionMg: number) => {
      const exact = aBook({
        materials: [aPowder('kaolin', { oilAbsorptionMgPer100g: mgPer100g(absorptionMg) })],
        rest: { house: aHouse({ wettingSparePpm: factorPpm(WHOLE_PPM) }) },
      });
      return checkWetting(exact, aPlannedJar(exact, { 'kaolin-neat': 50_000 })).map((found) => found.code);
    };
    expect([codesAt(76_000), codesAt(76_001)]).toEqual([[], ['wetting-short']]);
  });

  it('passes where the oil just suffices and not 1 ppm beyond', () => {
    // need 0.675 × share, oil 0.04 × (1 − share): equal at share 40 000 / 0.715 = 55 944.06 ppm.
    const codes = (share: number) => checkWetting(book, aPlannedJar(book, { 'kaolin-neat': share })).map((found) => found.code);
    expect([codes(55_944), codes(55_945)]).toEqual([[], ['wetting-short']]);
  });
});
