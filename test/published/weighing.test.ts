// Weighing, aliquots and alligation against published figures.
import { describe, expect, it } from 'vitest';
import { exactOfUg } from '#lib/units/exact-mass.ts';
import { gramsToUg, massUg } from '#lib/units/mass.ts';
import { densityMgPerMl, volumeUl } from '#lib/units/material-property.ts';
import { factorPpm, sharePpm } from '#lib/units/share.ts';
import { vesselFinding } from '#lib/weighing/batch.ts';
import { creamPortions } from '#lib/weighing/cream-portions.ts';
import { aliquotFor, alligate, doublingsTo, leastWeighableUg, strengthOfMixture } from '#lib/weighing/premix.ts';
import { canWeigh, leastUg, repeatabilityLeastUg } from '#lib/weighing/scale.ts';
import { aBase } from '#test/support/a-base.ts';
import { aScaleProfile, aVessel } from '#test/support/an-offer.ts';

const scale = (stepUg: number, repeatabilityUg: number) =>
  aScaleProfile({ stepUg: massUg(stepUg), repeatabilityUg: massUg(repeatabilityUg) });
const mg = (milligrams: number) => massUg(Math.round(milligrams * 1000));
const percent = (value: number) => sharePpm(Math.round(value * 10_000));
const TENTH_PERCENT = factorPpm(1000);
const ONE_PERCENT = factorPpm(10_000);

describe('smallest weight by repeatability: USP general chapter <41> Balances, 2 s / m at most 0.10 %, s at least 0.41 d (factor from memory)', () => {
  it('is 820 d where the scale repeats better than 0.41 d', () => {
    for (const step of [100, 1000, 10_000]) expect(repeatabilityLeastUg(scale(step, 0), TENTH_PERCENT)).toBe(820 * step);
  });
  it.each([
    ['d 0.01 g, s 0.003 g', 10_000, 3000, 8.2],
    ['d 0.001 g, s 0.0008 g', 1000, 800, 1.6],
    ['d 0.1 mg, s under 0.041 mg', 100, 0, 0.082],
  ])('%s', (_, step, repeatability, grams) => {
    expect(repeatabilityLeastUg(scale(step, repeatability), TENTH_PERCENT)).toBe(gramsToUg(grams));
  });
  it.each([
    ['d 0.01 g, s 0.003 g', 10_000, 3000, 0.82],
    ['d 0.001 g, s 0.0008 g', 1000, 800, 0.16],
    ['d 0.1 mg, s under 0.041 mg', 100, 0, 0.0082],
  ])('a tenth with a tolerance of 1 %% of one’s own: %s', (_, step, repeatability, grams) => {
    expect(repeatabilityLeastUg(scale(step, repeatability), ONE_PERCENT)).toBe(gramsToUg(grams));
  });
  it('0.164 g at 5 % on d 0.01 g, s 0.003 g; three readings of the scale need more, 0.3 g', () => {
    const bench = scale(10_000, 3000);
    expect(repeatabilityLeastUg(bench, factorPpm(50_000))).toBe(164_000);
    expect(leastUg(bench, factorPpm(50_000))).toBe(300_000);
    expect(canWeigh(bench, exactOfUg(massUg(299_999)), factorPpm(50_000))).toBe(false);
    expect(canWeigh(bench, exactOfUg(massUg(300_000)), factorPpm(50_000))).toBe(true);
  });
});

describe('least weighable quantity = sensitivity requirement × 100 / % error (textbooks of pharmaceutical calculation)', () => {
  it.each([
    [6, 5, 120],
    [6, 1, 600],
    [4, 5, 80],
    [6, 12, 50],
  ])('%d mg at %d %% is %d mg', (sensitivity, error, least) => {
    expect(leastWeighableUg(mg(sensitivity), factorPpm(error * 10_000))).toBe(mg(least));
  });
});

describe('aliquot method (textbooks of pharmaceutical calculation)', () => {
  it('2 mg with 120 mg as the least: 120 mg in 7500 mg, 125 mg of it', () => {
    const made = aliquotFor(mg(2), mg(120), mg(125));
    expect(made).toEqual({
      ok: true,
      value: { factorCount: 60, weighUg: mg(120), diluentUg: mg(7380), totalUg: mg(7500), aliquotUg: mg(125) },
    });
  });
  it('12 mg with 120 mg as the least: 120 mg and 1080 mg, a tenth of it', () => {
    const made = aliquotFor(mg(12), mg(120), mg(120));
    expect(made).toEqual({
      ok: true,
      value: { factorCount: 10, weighUg: mg(120), diluentUg: mg(1080), totalUg: mg(1200), aliquotUg: mg(120) },
    });
  });
  it('refuses an aliquot that cannot be weighed, or that holds less than is needed', () => {
    expect(aliquotFor(mg(2), mg(120), mg(119))).toEqual({ ok: false, refusal: 'aliquot-not-weighable' });
    expect(aliquotFor(mg(200), mg(120), mg(150))).toEqual({ ok: false, refusal: 'aliquot-holds-too-little' });
  });
});

describe('alligation (textbooks of pharmaceutical calculation)', () => {
  it('ointments of 50, 20 and 5 % to 10 % are 1 : 1 : 10 parts', () => {
    expect(alligate([percent(50), percent(20), percent(5)], percent(10))).toEqual({ ok: true, value: [1, 1, 10] });
  });
  it('100 g of 0.2 % from 0.1 % and 0.5 % are 75 g and 25 g', () => {
    expect(alligate([percent(0.1), percent(0.5)], percent(0.2))).toEqual({ ok: true, value: [3, 1] });
  });
  it('3 % from 1 % and 5 % is half and half', () => {
    expect(alligate([percent(1), percent(5)], percent(3))).toEqual({ ok: true, value: [1, 1] });
  });
  it('8 % cannot be had from 3 % and 5 %; the same strength twice is any split', () => {
    expect(alligate([percent(3), percent(5)], percent(8))).toEqual({ ok: false, refusal: 'out-of-reach' });
    expect(alligate([percent(5), percent(5)], percent(5))).toEqual({ ok: true, value: [1, 1] });
  });
  it('medial: 200 g of 10 %, 50 g of 20 % and 100 g of 5 % are 10 %', () => {
    const mixed = strengthOfMixture([
      { massUg: gramsToUg(200), strengthPpm: percent(10) },
      { massUg: gramsToUg(50), strengthPpm: percent(20) },
      { massUg: gramsToUg(100), strengthPpm: percent(5) },
    ]);
    expect(mixed.heldPpmUg).toBe(100_000n * mixed.totalUg);
  });
});

describe('geometric dilution (standard procedure, from memory)', () => {
  it('1 part to 100 takes 7 doublings, 1 to 20 takes 5, 1 to 1 takes none', () => {
    expect([100, 20, 2, 1].map(doublingsTo)).toEqual([7, 5, 1, 0]);
  });
  it('1 g into 99 g of diluent: 1, 2, 4, 8, 16, 32, then what is left', () => {
    const portions = creamPortions({ inVesselUg: gramsToUg(1), creamUg: gramsToUg(99), stepUg: massUg(10_000), leastUg: massUg(0) });
    expect(portions).toEqual([1, 2, 4, 8, 16, 32, 36].map(gramsToUg));
  });
});

describe('volume of a mask: 50 g of density 1.05 g/mL fill 47.6 mL (arithmetic)', () => {
  const base = aBase({ densityMgPerMl: densityMgPerMl(1050) });
  it('fits into 47.7 mL and not into 47.6 mL', () => {
    expect(vesselFinding(base, aVessel({ capacityUl: volumeUl(47_700) }), gramsToUg(50))).toBeNull();
    expect(vesselFinding(base, aVessel({ capacityUl: volumeUl(47_600) }), gramsToUg(50))?.facts).toEqual({
      vesselId: 'vessel-100',
      needUl: 47_620,
      capacityUl: 47_600,
    });
  });
});
