import { describe, expect, it } from 'vitest';
import { lowerEnd, mayLieOutside, measuredJarPh, phBounds, predictedJarPh, shownPhX100, upperEnd } from '#lib/chemistry/jar-ph.ts';
import { jarNeeds, NEED_GRAIN, needAt, needErrorAt } from '#lib/chemistry/need.ts';
import { checkPh, predictPh } from '#lib/chemistry/ph-check.ts';
import type { AcidityTable } from '#lib/rulebook/material.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { factorPpm } from '#lib/units/share.ts';
import { aBase, aHouse } from '#test/support/a-base.ts';
import { aBook, aPlannedJar, aWeighedJar } from '#test/support/a-jar.ts';
import { aMaterial, anAcidityTable, aStock, aSubstance, aWindow, parts } from '#test/support/a-material.ts';

/** A straight need: `perPh` µmol/kg for each pH above `zeroX100`. */
const straight = (zeroX100: number, perPh: number): AcidityTable =>
  anAcidityTable(...Array.from({ length: 13 }, (_, index) => Math.round(((300 + 50 * index - zeroX100) / 100) * perPh)));

/** A base of 4 mmol/kg per pH around 6.00 and one addition. */
const bookWith = (acidity: AcidityTable | undefined, rest: Parameters<typeof aBook>[0] = {}) =>
  aBook({
    substances: [aSubstance('active')],
    materials: [aMaterial('active', { acidity, classes: ['vitamin'] })],
    ...rest,
    rest: { base: aBase({ acidity: straight(600, 4000), ph: aWindow(330, 750) }), ...rest.rest },
  });

const known = (book: ReturnType<typeof aBook>, jar: ReturnType<typeof aPlannedJar>) => {
  const needs = jarNeeds(book, jar);
  if (needs.kind !== 'known') throw new Error('needs are missing');
  return needs;
};

describe('needs of a jar', () => {
  const book = bookWith(straight(400, 100_000));
  const jar = aPlannedJar(book, { 'active-neat': 20_000 });

  it('are exact sums between the points too', () => {
    // At pH 5.37: base 0.98 × 4000 × −0.63 = −2469.6, addition 0.02 × 100 000 × 1.37 = 2740, in µmol/kg of jar.
    const perKg = (need: bigint) => Number((need * 1000n) / (jar.whole * NEED_GRAIN)) / 1000;
    expect(perKg(needAt(known(book, jar), 537))).toBe(270.4);
    // u = 10 % of 137 000 of the addition.
    expect(perKg(needErrorAt(known(book, jar), 537))).toBe(274);
  });

  it('carry at least the floor of the error, and a stock’s own share of it', () => {
    const perKg = (need: bigint) => Number(need / (jar.whole * NEED_GRAIN));
    expect(perKg(needErrorAt(known(book, jar), 400))).toBe(0.02 * 2000);
    const careful = bookWith(straight(400, 100_000), { stocks: [aStock('active', { acidityErrorPpm: factorPpm(500_000) })] });
    expect(perKg(needErrorAt(known(careful, aPlannedJar(careful, { 'active-neat': 20_000 })), 500))).toBe(0.02 * 50_000);
  });

  it('use a stock’s own table in place of its materials', () => {
    const own = bookWith(straight(400, 100_000), { stocks: [aStock('active', { acidity: straight(500, 100_000) })] });
    const root = (opened: typeof own) => predictPh(opened, aPlannedJar(opened, { 'active-neat': 20_000 }));
    expect(root(own)).not.toEqual(root(book));
  });

  it('name every stock that has no full table, and read water and inert carriers as zero', () => {
    const missing = bookWith(undefined, {
      stocks: [aStock('active'), aStock('active', { id: 'half', parts: parts({ active: 500_000, water: 500_000 }) })],
    });
    expect(jarNeeds(missing, aPlannedJar(missing, { 'active-neat': 100, half: 100, 'kaolin-neat': 100 }))).toEqual({
      kind: 'missing',
      stockIds: ['active-neat', 'half'],
    });
    const inert = aBook({ substances: [aSubstance('mica')], materials: [aMaterial('mica', { acidity: undefined, classes: ['inert'] })] });
    expect(jarNeeds(inert, aPlannedJar(inert, { 'mica-neat': 100 })).kind).toBe('known');
    expect(jarNeeds(missing, aPlannedJar(missing, { 'active-neat': 0 })).kind).toBe('known');
  });

  it('follow the jar as weighed', () => {
    const weighed = aWeighedJar(book, { cream: 47.04, oil: 1.96, stocks: { 'active-neat': 1 } });
    expect(predictPh(book, weighed)).toEqual(predictPh(book, jar));
  });
});

describe('prediction', () => {
  it('brackets the root outwards in whole hundredths', () => {
    const book = bookWith(straight(400, 100_000));
    const found = predictPh(book, aPlannedJar(book, { 'active-neat': 10_000 }));
    // 0.99 × 4000 × (x − 6) + 0.01 × 100 000 × (x − 4) = 0 → x = (23 760 + 4000) / 4960 = 5.59677…
    expect(found).toMatchObject({ kind: 'within', minPhX100: 559, maxPhX100: 560 });
    expect(found.kind === 'within' && found.lowest).toBeCloseTo(27_760 / 4960, 9);
  });

  it('is exact at a point of the table, at its ends and at a whole hundredth between', () => {
    for (const zero of [300, 510, 600, 900]) {
      const book = bookWith(undefined, { rest: { base: aBase({ acidity: straight(zero, 4000) }) } });
      expect(predictPh(book, aPlannedJar(book))).toEqual({
        kind: 'within',
        lowest: zero / 100,
        highest: zero / 100,
        minPhX100: zero,
        maxPhX100: zero,
      });
    }
  });

  it('keeps both ends where needs lie flat at zero', () => {
    const flat = anAcidityTable(-9, -8, -7, -6, 0, 0, 0, 4, 5, 6, 7, 8, 9);
    const book = bookWith(undefined, { rest: { base: aBase({ acidity: flat }) } });
    const jar = aPlannedJar(book);
    const jarPh = predictedJarPh(book, jar);
    expect(predictPh(book, jar)).toMatchObject({ kind: 'within', lowest: 5, highest: 6, minPhX100: 500, maxPhX100: 600 });
    expect(shownPhX100(jarPh)).toBe(550);
    const bounds = phBounds(jarPh);
    expect(bounds.kind === 'known' && [bounds.lowest, bounds.highest]).toEqual([5 - 0.3, 6 + 0.3]);
  });

  it('says on which side of the table the jar lies', () => {
    const kindAt = (zero: number) => {
      const book = bookWith(undefined, { rest: { base: aBase({ acidity: straight(zero, 4000) }) } });
      const jar = aPlannedJar(book);
      const jarPh = predictedJarPh(book, jar);
      return [predictPh(book, jar).kind, shownPhX100(jarPh), phBounds(jarPh)];
    };
    const outside = (atPhX100: number) => ({
      kind: 'unknown',
      findings: [{ code: 'ph-outside-table', ruleId: 'acidity', facts: { atPhX100 } }],
    });
    expect(kindAt(250)).toEqual(['below-table', null, outside(300)]);
    expect(kindAt(950)).toEqual(['above-table', null, outside(900)]);
  });
});

describe('ends of a window', () => {
  const book = bookWith(straight(600, 0), { rest: { base: aBase({ acidity: straight(600, 4000) }) } });
  const jar = aPlannedJar(book);
  const jarPh = predictedJarPh(book, jar); // 6.00 ± 0.30, nothing added

  it('hold up to the error of the prediction and not beyond', () => {
    expect([lowerEnd(jarPh, 570), lowerEnd(jarPh, 571)]).toEqual(['held', 'broken']);
    expect([upperEnd(jarPh, 630), upperEnd(jarPh, 629)]).toEqual(['held', 'broken']);
    expect([
      mayLieOutside(jarPh, 570, 630),
      mayLieOutside(jarPh, 571, null),
      mayLieOutside(jarPh, null, 629),
      mayLieOutside(jarPh, null, null),
    ]).toEqual([false, true, true, false]);
  });

  it('ask for more where an addition’s own need is uncertain', () => {
    const added = predictedJarPh(book, aPlannedJar(book, { 'active-neat': 50_000 })); // floor 2000 × 5 % = 100 against 3800 per pH: 0.0263
    expect([lowerEnd(added, 567), lowerEnd(added, 568)]).toEqual(['held', 'broken']);
  });

  it('beyond the table are judged at its end, or not at all', () => {
    // 6.00 surely is above any end below the table and below any end above it.
    expect([lowerEnd(jarPh, 0), upperEnd(jarPh, 1400)]).toEqual(['held', 'held']);
    expect([lowerEnd(jarPh, 900), upperEnd(jarPh, 300)]).toEqual(['broken', 'broken']);
    const acid = bookWith(undefined, { rest: { base: aBase({ acidity: straight(250, 4000) }) } });
    const below = predictedJarPh(acid, aPlannedJar(acid));
    expect([lowerEnd(below, 200), lowerEnd(below, 300), upperEnd(below, 330), upperEnd(below, 300)]).toEqual([
      'unknown',
      'broken',
      'held',
      'unknown',
    ]);
    const alkaline = bookWith(undefined, { rest: { base: aBase({ acidity: straight(950, 4000) }) } });
    const above = predictedJarPh(alkaline, aPlannedJar(alkaline));
    expect([upperEnd(above, 1000), upperEnd(above, 900), lowerEnd(above, 890), lowerEnd(above, 900)]).toEqual([
      'unknown',
      'broken',
      'unknown',
      'unknown',
    ]);
    expect(mayLieOutside(below, 200, null)).toBe(true);
    // Asked exactly at an end of the table, the table answers.
    expect([lowerEnd(below, 270), upperEnd(above, 930), lowerEnd(above, 870)]).toEqual(['broken', 'broken', 'held']);
  });

  it('of a jar at the very end of the table stay open beyond it: the needs may lie flat there', () => {
    const jarAt = (zero: number) => {
      const opened = bookWith(undefined, { rest: { base: aBase({ acidity: straight(zero, 4000) }) } });
      return predictedJarPh(opened, aPlannedJar(opened));
    };
    expect([lowerEnd(jarAt(900), 890), lowerEnd(jarAt(850), 890)]).toEqual(['unknown', 'broken']);
    expect([upperEnd(jarAt(300), 310), upperEnd(jarAt(350), 310)]).toEqual(['unknown', 'broken']);
  });

  it('of a measured jar compare the reading itself', () => {
    const read = measuredJarPh(phX100(560), 5);
    expect([lowerEnd(read, 555), lowerEnd(read, 556), upperEnd(read, 565), upperEnd(read, 564)]).toEqual([
      'held',
      'broken',
      'held',
      'broken',
    ]);
    expect([shownPhX100(read), phBounds(read)]).toEqual([560, { kind: 'known', lowest: 5.55, highest: 5.6499999999999995 }]);
  });
});

describe('check of the pH', () => {
  const check = (book: ReturnType<typeof aBook>, shares: Readonly<Record<string, number>>) => {
    const jar = aPlannedJar(book, shares);
    return checkPh(book, jar, predictedJarPh(book, jar));
  };
  const windowed = (
    acidity: AcidityTable | undefined,
    windows: { phFresh?: ReturnType<typeof aWindow>; phShelf?: ReturnType<typeof aWindow> },
  ) =>
    aBook({
      substances: [aSubstance('active'), aSubstance('blue')],
      materials: [aMaterial('active', { acidity, classes: ['vitamin'], ...windows }), aMaterial('blue', { phFresh: aWindow(600, 900) })],
      rest: { base: aBase({ acidity: straight(600, 4000), ph: aWindow(330, 750) }) },
    });

  it('passes inside every window', () => {
    expect(
      check(windowed(straight(600, 0), { phFresh: aWindow(400, 750), phShelf: aWindow(500, 700) }), { 'active-neat': 10_000 }),
    ).toEqual([]);
  });

  it('takes the narrowest of fresh and shelf windows, of additions only', () => {
    const book = windowed(straight(600, 0), { phFresh: aWindow(400, 750), phShelf: aWindow(580, 620) });
    expect(check(book, { 'active-neat': 10_000 })).toEqual([
      { code: 'ph-too-low', ruleId: 'active', facts: { windowOf: 'active', minPhX100: 580, predictedPhX100: 600 } },
      { code: 'ph-too-high', ruleId: 'active', facts: { windowOf: 'active', maxPhX100: 620, predictedPhX100: 600 } },
    ]);
    expect(check(book, {})).toEqual([]);
  });

  it('names the base where a material’s window ends just there too', () => {
    const book = aBook({
      substances: [aSubstance('active')],
      materials: [aMaterial('active', { phFresh: aWindow(580, 620) })],
      rest: { base: aBase({ acidity: straight(600, 4000), ph: aWindow(580, 620) }) },
    });
    expect(check(book, { 'active-neat': 100 }).map((found) => found.ruleId)).toEqual(['base', 'base']);
  });

  it('names two windows that do not meet, and no pH', () => {
    expect(check(windowed(straight(600, 0), { phShelf: aWindow(380, 500) }), { 'active-neat': 10_000, 'blue-neat': 1000 })).toEqual([
      { code: 'ph-windows-apart', ruleId: 'blue', facts: { lowerOf: 'blue', upperOf: 'active', minPhX100: 600, maxPhX100: 500 } },
    ]);
  });

  it('meets windows that touch in one point, though the errors then break both ends', () => {
    const codes = check(windowed(straight(600, 0), { phShelf: aWindow(380, 600) }), { 'active-neat': 10_000, 'blue-neat': 1000 }).map(
      (found) => found.code,
    );
    expect(codes).toEqual(['ph-too-low', 'ph-too-high']);
  });

  it('is undecided where a table is missing', () => {
    expect(check(windowed(undefined, {}), { 'active-neat': 10_000 })).toEqual([
      { code: 'acidity-missing', ruleId: 'active-neat', facts: { stockId: 'active-neat' } },
    ]);
  });

  it('is undecided where a jar lies outside the tables and a window end does too', () => {
    const book = aBook({
      rest: { base: aBase({ acidity: straight(280, 4000), ph: aWindow(250, 750) }), house: aHouse({ phErrorX100: 30 }) },
    });
    expect(check(book, {})).toEqual([{ code: 'ph-outside-table', ruleId: 'acidity', facts: { atPhX100: 280 } }]);
    const alkaline = aBook({ rest: { base: aBase({ acidity: straight(940, 4000), ph: aWindow(330, 1000) }) } });
    expect(check(alkaline, {})).toEqual([{ code: 'ph-outside-table', ruleId: 'acidity', facts: { atPhX100: 970 } }]);
  });

  it('judges a measured jar by its reading', () => {
    const book = windowed(straight(600, 0), { phShelf: aWindow(500, 700) });
    const jar = aPlannedJar(book, { 'active-neat': 10_000 });
    expect(checkPh(book, jar, measuredJarPh(phX100(500), 0))).toEqual([]);
    expect(checkPh(book, jar, measuredJarPh(phX100(499), 0))).toEqual([
      { code: 'ph-too-low', ruleId: 'active', facts: { windowOf: 'active', minPhX100: 500, predictedPhX100: 499 } },
    ]);
  });
});
