// Caps, solubility and preservation of a jar: each at its edge, exactly.
import { describe, expect, it } from 'vitest';
import { checkCaps, freeAcidPart, ionicLoad, irritancyLoad, pigmentPart, powderPart, swellingClayPart } from '#lib/chemistry/caps.ts';
import { measuredJarPh, predictedJarPh } from '#lib/chemistry/jar-ph.ts';
import { checkPreservation } from '#lib/chemistry/preservation.ts';
import { checkSolubility, solubilityAt, waterPart } from '#lib/chemistry/solubility.ts';
import { undissociatedShare } from '#lib/chemistry/undissociated.ts';
import type { Base } from '#lib/rulebook/base.ts';
import type { Solubility } from '#lib/rulebook/material.ts';
import { ph, phX100 } from '#lib/units/chemistry.ts';
import { loadUnits, mgPer100g, unitsPerPpm } from '#lib/units/material-property.ts';
import { partToPpm, sharePpm, WHOLE_PPM } from '#lib/units/share.ts';
import { aBase } from '#test/support/a-base.ts';
import { aBook, aPlannedJar } from '#test/support/a-jar.ts';
import { aMaterial, anAcidityTable, aPowder, aStock, aSubstance, aWindow, parts, substancesOf } from '#test/support/a-material.ts';

const at = (hundredths: number, error = 0) => measuredJarPh(phX100(hundredths), error);

describe('caps', () => {
  const book = (caps: Partial<Base['caps']> = {}, base: Partial<Base> = {}) =>
    aBook({
      substances: [aSubstance('bentonite'), aSubstance('salt'), aSubstance('lactic', { acid: { pkaX1000: 3860 } })],
      materials: [
        aPowder('bentonite', { classes: ['clay', 'swelling-clay'] }),
        aMaterial('salt', { ionicUnitsPerPpm: unitsPerPpm(7), irritancyUnitsPerPpm: unitsPerPpm(3) }),
        aMaterial('lactic', { classes: ['acid'] }),
      ],
      stocks: [
        aStock('bentonite'),
        aStock('salt'),
        aStock('lactic'),
        aStock('iron-oxide', { id: 'colour-in-clay', parts: parts({ 'iron-oxide': 100_000, kaolin: 900_000 }), addedTo: 'paste' }),
      ],
      rest: { base: aBase({ caps: { ...aBase().caps, ...caps }, ...base }) },
    });
  const codes = (opened: ReturnType<typeof book>, shares: Readonly<Record<string, number>>, jarPh = at(600)) =>
    checkCaps(opened, aPlannedJar(opened, shares), jarPh).map((found) => found.ruleId);

  it.each([
    ['powderPpm', { powderPpm: sharePpm(20_000) }, { 'kaolin-neat': 20_000 }, { 'kaolin-neat': 20_001 }],
    ['pigmentPpm', { pigmentPpm: sharePpm(1000) }, { 'colour-in-clay': 10_000 }, { 'colour-in-clay': 10_001 }],
    ['swellingClayPpm', { swellingClayPpm: sharePpm(8000) }, { 'bentonite-neat': 8000 }, { 'bentonite-neat': 8001 }],
    ['ionicUnits', { ionicUnits: loadUnits(70_000) }, { 'salt-neat': 10_000 }, { 'salt-neat': 10_001 }],
    ['irritancyUnits', { irritancyUnits: loadUnits(30_000) }, { 'salt-neat': 10_000 }, { 'salt-neat': 10_001 }],
  ] as const)('%s: at the cap passes, one ppm more does not', (cap, caps, passes, breaks) => {
    expect(codes(book(caps), passes)).toEqual([]);
    expect(codes(book(caps), breaks)).toEqual([cap]);
  });

  it('counts what the base itself brings', () => {
    // 1 % of swelling clay in the base is 0.98 % beside 2 % of additions.
    const clayBase = { parts: parts({ water: 921_000, oil: 60_000, phenoxyethanol: 9000, bentonite: 10_000 }) };
    const opened = book({ swellingClayPpm: sharePpm(9700) }, clayBase);
    const jar = aPlannedJar(opened, { 'niacinamide-neat': 20_000 });
    expect(partToPpm(swellingClayPart(opened, jar), jar.whole)).toBe(9800);
    expect(partToPpm(powderPart(opened, jar), jar.whole)).toBe(9800);
    expect(codes(opened, { 'niacinamide-neat': 20_000 })).toEqual(['swellingClayPpm']);
  });

  it('totals powders, pigments, ions and irritancy over blends', () => {
    const opened = book();
    const jar = aPlannedJar(opened, { 'colour-in-clay': 10_000, 'bentonite-neat': 5000, 'salt-neat': 1000 });
    const ppm = (found: ReturnType<typeof powderPart>) => partToPpm(found, jar.whole);
    expect([powderPart, pigmentPart, swellingClayPart, ionicLoad, irritancyLoad].map((total) => ppm(total(opened, jar)))).toEqual([
      15_000, 1000, 5000, 7000, 3000,
    ]);
  });

  it('free acid is the undissociated part at the lowest pH that the jar may have', () => {
    const opened = book({ freeAcidPpm: sharePpm(5000) });
    const jar = aPlannedJar(opened, { 'lactic-neat': 10_000 });
    expect(partToPpm(freeAcidPart(opened, jar, ph(3.86)), jar.whole)).toBe(5000);
    expect(codes(opened, { 'lactic-neat': 10_000 }, at(386))).toEqual([]);
    expect(codes(opened, { 'lactic-neat': 10_000 }, at(386, 1))).toEqual(['freeAcidPpm']);
    expect(codes(opened, { 'lactic-neat': 10_000 }, at(385))).toEqual(['freeAcidPpm']);
  });

  it('free acid is never understated by rounding', () => {
    const opened = book();
    const jar = aPlannedJar(opened, { 'lactic-neat': 10_000 });
    for (const at of [4.2, 5, 5.55, 6.1]) {
      const exact = 10_000 * undissociatedShare(ph(at), 3.86);
      const found = partToPpm(freeAcidPart(opened, jar, ph(at)), jar.whole);
      expect(found).toBeGreaterThanOrEqual(exact);
      expect(found).toBeLessThan(exact + 0.0101);
    }
  });

  it('needs no pH for acid that would pass even undissociated, else says what is missing', () => {
    const opened = aBook({
      substances: [aSubstance('lactic', { acid: { pkaX1000: 3860 } })],
      materials: [aMaterial('lactic', { classes: ['acid'], acidity: undefined })],
    });
    const codesOf = (share: number) => {
      const jar = aPlannedJar(opened, { 'lactic-neat': share });
      return checkCaps(opened, jar, predictedJarPh(opened, jar)).map((found) => found.code);
    };
    expect([codesOf(5000), codesOf(5001)]).toEqual([[], ['acidity-missing']]);
  });
});

describe('solubility', () => {
  const book = (solubility: Solubility) => aBook({ substances: [aSubstance('active', { solubility })], materials: [aMaterial('active')] });
  const codes = (opened: ReturnType<typeof book>, share: number, jarPh = at(600)) =>
    checkSolubility(opened, aPlannedJar(opened, { 'active-neat': share }), jarPh).map((found) => found.code);
  const neutral = { neutralMgPer100g: mgPer100g(500) };

  it('holds what its water dissolves and not 1 ppm more', () => {
    // x ≤ 0.005 × 0.931 × (1 − x): x = 4655 / 1.004655 = 4633.43 ppm.
    expect([codes(book(neutral), 4633), codes(book(neutral), 4634)]).toEqual([[], ['solubility-exceeded']]);
  });

  it('holds exactly what its water dissolves', () => {
    // 0.40 % beside 80 % of water at 0.5 g per 100 g.
    const codesAt = (active: number) => {
      const opened = aBook({
        substances: [aSubstance('active', { solubility: neutral })],
        materials: [aMaterial('active')],
        rest: { base: aBase({ parts: parts({ water: 800_000, oil: 200_000 - active, active }) }) },
      });
      return checkSolubility(opened, aPlannedJar(opened), at(600)).map((found) => found.code);
    };
    expect([codesAt(4000), codesAt(4001)]).toEqual([[], ['solubility-exceeded']]);
  });

  it('says how much was found and how much dissolves', () => {
    const opened = book(neutral);
    const jar = aPlannedJar(opened, { 'active-neat': 10_000 });
    expect(partToPpm(waterPart(opened, jar), jar.whole)).toBe(921_690);
    expect(checkSolubility(opened, jar, at(600))).toEqual([
      { code: 'solubility-exceeded', ruleId: 'active', facts: { substanceId: 'active', foundPpm: 10_000, maxPpm: 4608.45 } },
    ]);
  });

  it('is waived for what is meant to stay suspended, with evidence', () => {
    expect(codes(book({ ...neutral, suspendedEvidence: 'stability-1' }), 40_000)).toEqual([]);
  });

  it('rises with pH for a weak acid: S0 (1 + 10^(pH − pKa)), judged at the lowest pH', () => {
    const salicylic: Solubility = { neutralMgPer100g: mgPer100g(200), pkaX1000: 2970 };
    expect([2.97, 3.47, 3.97].map((value) => solubilityAt(salicylic, value))).toEqual([400, 832, 2200]);
    // 1 % needs about 1.09 g per 100 g of water: 0.2 × (1 + 10^(pH − 2.97)), reached at pH 3.62.
    expect([
      codes(book(salicylic), 10_000, at(362)),
      codes(book(salicylic), 10_000, at(361)),
      codes(book(salicylic), 10_000, at(362, 1)),
    ]).toEqual([[], ['solubility-exceeded'], ['solubility-exceeded']]);
    expect(solubilityAt(salicylic, 14)).toBe(10_000_000);
  });

  it('of a weak acid in a jar without a known pH is undecided', () => {
    const opened = aBook({
      substances: [aSubstance('active', { solubility: { neutralMgPer100g: mgPer100g(200), pkaX1000: 2970 } })],
      materials: [aMaterial('active', { acidity: undefined, classes: ['acid'] })],
    });
    const jar = aPlannedJar(opened, { 'active-neat': 10_000 });
    expect(checkSolubility(opened, jar, predictedJarPh(opened, jar)).map((found) => found.code)).toEqual(['acidity-missing']);
  });
});

describe('preservation', () => {
  const book = (preservation: Partial<Base['preservation']> = {}) =>
    aBook({
      substances: [aSubstance('bentonite')],
      materials: [aPowder('bentonite', { classes: ['clay', 'swelling-clay'] })],
      rest: { base: aBase({ preservation: { ...aBase().preservation, ...preservation } }) },
    });
  const findings = (opened: ReturnType<typeof book>, shares: Readonly<Record<string, number>>, jarPh = at(600)) =>
    checkPreservation(opened, aPlannedJar(opened, shares), jarPh);
  const one = (overrides: Partial<Base['preservation']['preservatives'][number]>) => ({
    preservatives: [{ substanceId: 'phenoxyethanol', provenMinPpm: sharePpm(0), ph: aWindow(300, 850), ...overrides }],
  });

  it('stands at the proven minimum and falls below it: 0.90 % in the base is 0.855 % beside 5 % of additions', () => {
    expect(findings(book(one({ provenMinPpm: sharePpm(8550) })), { 'kaolin-neat': 50_000 })).toEqual([]);
    expect(findings(book(one({ provenMinPpm: sharePpm(8551) })), { 'kaolin-neat': 50_000 })).toEqual([
      { code: 'preservative-too-low', ruleId: 'phenoxyethanol', facts: { substanceId: 'phenoxyethanol', foundPpm: 8550, minPpm: 8551 } },
    ]);
  });

  it('counts what additions bring of the preservative', () => {
    const opened = aBook({
      stocks: [
        aStock('niacinamide'),
        aStock('niacinamide', { id: 'preserved', parts: parts({ niacinamide: 500_000, water: 491_000, phenoxyethanol: 9000 }) }),
      ],
      rest: { base: aBase({ preservation: { ...aBase().preservation, ...one({ provenMinPpm: sharePpm(9000) }) } }) },
    });
    expect(findings(opened, { preserved: 50_000 })).toEqual([]);
    expect(findings(opened, { 'niacinamide-neat': 50_000 }).map((found) => found.code)).toEqual(['preservative-too-low']);
  });

  it('must stand inside its pH window with the error', () => {
    expect(findings(book(one({ ph: aWindow(570, 630) })), {}, at(600, 30))).toEqual([]);
    expect(findings(book(one({ ph: aWindow(300, 629) })), {}, at(600, 30)).map((found) => found.code)).toEqual(['preservative-ph']);
    expect(findings(book(one({ ph: aWindow(571, 850) })), {}, at(600, 30)).map((found) => found.code)).toEqual(['preservative-ph']);
  });

  it('of a weak acid counts only what is undissociated at the highest pH', () => {
    // Half of 9000 ppm at pH = pKa.
    const weak = (min: number) => book(one({ weakAcid: { apparentPkaX1000: 4200, minUndissociatedPpm: sharePpm(min) } }));
    expect(findings(weak(4500), {}, at(420))).toEqual([]);
    expect(findings(weak(4501), {}, at(420))).toEqual([
      {
        code: 'preservative-undissociated',
        ruleId: 'phenoxyethanol',
        facts: { substanceId: 'phenoxyethanol', foundPpm: 4500, minPpm: 4501 },
      },
    ]);
    expect(findings(weak(4500), {}, at(420, 1)).map((found) => found.code)).toEqual(['preservative-undissociated']);
  });

  it('is undecided, not broken, where the pH is not known', () => {
    const opened = aBook({
      substances: [aSubstance('active')],
      materials: [aMaterial('active', { acidity: undefined, classes: ['vitamin'] })],
      rest: {
        base: aBase({
          preservation: { ...aBase().preservation, ...one({ weakAcid: { apparentPkaX1000: 4200, minUndissociatedPpm: sharePpm(1) } }) },
        }),
      },
    });
    const jar = aPlannedJar(opened, { 'active-neat': 10_000 });
    expect(new Set(checkPreservation(opened, jar, predictedJarPh(opened, jar)).map((found) => found.code))).toEqual(
      new Set(['acidity-missing']),
    );
  });

  it('never overstates what is undissociated by rounding', () => {
    const found = findings(book(one({ weakAcid: { apparentPkaX1000: 4200, minUndissociatedPpm: sharePpm(9000) } })), {}, at(555));
    const exact = 9000 * undissociatedShare(ph(5.55), 4.2);
    expect(found).toMatchObject([{ code: 'preservative-undissociated' }]);
    const { foundPpm } = (found[0]?.facts ?? {}) as { readonly foundPpm: number };
    expect(foundPpm).toBeLessThanOrEqual(exact);
    expect(foundPpm).toBeGreaterThan(exact - 0.0091);
  });

  it('is undecided at a window end that the tables cannot reach', () => {
    const needless = (zero: number) =>
      aBook({
        rest: {
          base: aBase({
            acidity: anAcidityTable(...Array.from({ length: 13 }, (_, index) => (300 + 50 * index - zero) * 40)),
            preservation: { ...aBase().preservation, ...one({ ph: aWindow(zero === 900 ? 890 : 0, zero === 900 ? 1400 : 310) }) },
          }),
        },
      });
    const facts = (zero: number) => {
      const opened = needless(zero);
      const jar = aPlannedJar(opened);
      return checkPreservation(opened, jar, predictedJarPh(opened, jar)).map((found) => found.facts);
    };
    expect([facts(900), facts(300)]).toEqual([[{ atPhX100: 920 }], [{ atPhX100: 280 }]]);
  });

  it('holds as far as the challenge test went with powder and swelling clay', () => {
    const opened = book({ testedPowderPpm: sharePpm(20_000), testedSwellingClayPpm: sharePpm(5000) });
    expect(findings(opened, { 'kaolin-neat': 15_000, 'bentonite-neat': 5000 })).toEqual([]);
    expect(findings(opened, { 'kaolin-neat': 15_000, 'bentonite-neat': 5001 })).toEqual([
      { code: 'powder-beyond-challenge', ruleId: 'challenge-1', facts: { foundPpm: 20_001, maxPpm: 20_000 } },
      { code: 'swelling-clay-beyond-challenge', ruleId: 'challenge-1', facts: { foundPpm: 5001, maxPpm: 5000 } },
    ]);
  });
});

describe('a jar of mixed substances', () => {
  it('is asked substance by substance, however materials bring them', () => {
    const opened = aBook({
      substances: [aSubstance('active', { solubility: { neutralMgPer100g: mgPer100g(500) } })],
      materials: [
        aMaterial('one', { substances: substancesOf({ active: 500_000, water: 500_000 }) }),
        aMaterial('two', { substances: substancesOf({ active: WHOLE_PPM }) }),
      ],
    });
    const codes = (two: number) =>
      checkSolubility(opened, aPlannedJar(opened, { 'one-neat': 4000, 'two-neat': two }), at(600)).map((found) => found.code);
    // 0.2 % + x against 0.005 × (0.931 × (0.996 − x) + 0.002): x = 2636.0… ppm.
    expect([codes(2630), codes(2640)]).toEqual([[], ['solubility-exceeded']]);
  });
});
