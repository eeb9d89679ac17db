// Ingredient lists: Regulation (EC) No 1223/2009, Article 19(1)(g) (from memory) and 21 CFR 701.3(a) (verified) and (f) (from memory).
// Allergens: Regulation (EU) 2023/1545, "exceeds" 0.001 % or 0.01 % (verified). The jars are worked by hand apart from this program.
import { describe, expect, it } from 'vitest';
import { ALLERGEN_NAMES } from '#lib/law/allergen-names.data.ts';
import { allergensOwed } from '#lib/law/allergens.ts';
import { labelIngredients } from '#lib/law/label-order.ts';
import { sharePpm, WHOLE_PPM } from '#lib/units/share.ts';
import { aBase } from '#test/support/a-base.ts';
import { aBook, aPlannedJar } from '#test/support/a-jar.ts';
import { aMaterial, aPowder, aStock, aSubstance, parts, substancesOf } from '#test/support/a-material.ts';

const EU = { id: 'EU', productKind: 'rinse-off' } as const;
const EU_LEAVE = { id: 'EU', productKind: 'leave-on' } as const;
const US = { id: 'US', productKind: 'rinse-off' } as const;

const pigment = (id: string, colourIndex: string) => ({
  substance: aSubstance(id, { labelNames: { EU: `CI ${colourIndex}`, US: 'IRON OXIDES' }, colourIndex }),
  material: aPowder(id, { kind: 'pigment', colours: true, classes: ['iron'] }),
});
const red = pigment('red', '77491');
const yellow = pigment('yellow', '77492');
const black = pigment('black', '77499');

/** AQUA 70, GLYCERIN 6, CAPRYLIC/CAPRIC TRIGLYCERIDE 4, CETEARYL ALCOHOL 4, the rest one other thing: per cent of the base. */
const base = aBase({
  parts: parts({ water: 700_000, glycerin: 60_000, triglyceride: 40_000, cetearyl: 40_000, rest: 160_000 }),
  wettingOilPpm: sharePpm(40_000),
  wettingOilParts: parts({ triglyceride: WHOLE_PPM }),
});
const book = aBook({
  substances: [
    aSubstance('glycerin'),
    aSubstance('triglyceride', { labelNames: { EU: 'CAPRYLIC/CAPRIC TRIGLYCERIDE', US: 'CAPRYLIC/CAPRIC TRIGLYCERIDE' } }),
    aSubstance('cetearyl', { labelNames: { EU: 'CETEARYL ALCOHOL', US: 'CETEARYL ALCOHOL' } }),
    aSubstance('rest', { labelNames: { EU: 'REST', US: 'REST' } }),
    aSubstance('panthenol'),
    aSubstance('fine-titanium', { labelNames: { EU: 'CI 77891', US: 'TITANIUM DIOXIDE' }, colourIndex: '77891', nano: true }),
    aSubstance('linalool'),
    red.substance,
    yellow.substance,
    black.substance,
  ],
  materials: [
    aMaterial('glycerin'),
    aMaterial('triglyceride', { kind: 'oil' }),
    aMaterial('cetearyl'),
    aMaterial('rest'),
    aMaterial('panthenol'),
    aPowder('fine-titanium', { kind: 'pigment', colours: true }),
    red.material,
    yellow.material,
    black.material,
    aMaterial('oil-of-lavender', {
      substances: substancesOf({ rest: WHOLE_PPM }),
      allergens: [{ name: 'LINALOOL', sharePpm: sharePpm(300_000) }],
    }),
    aMaterial('linalool'),
  ],
  stocks: [aStock('panthenol'), aStock('panthenol', { id: 'panthenol-in-clay', parts: parts({ panthenol: 200_000, kaolin: 800_000 }) })],
  rest: { base },
});

const names = (market: typeof EU | typeof US | typeof EU_LEAVE, shares: Readonly<Record<string, number>>): readonly string[] =>
  labelIngredients(book, aPlannedJar(book, shares), market).map((one) => one.name);

describe('order of ingredients', () => {
  const shares = { 'kaolin-neat': 30_000, 'niacinamide-neat': 14_000, 'panthenol-neat': 4000, 'red-neat': 2000 };

  it('worked example: descending, equal shares by name, the colourant last although it is not the least', () => {
    expect(names(EU, shares)).toEqual([
      'AQUA',
      'REST',
      'GLYCERIN',
      'CAPRYLIC/CAPRIC TRIGLYCERIDE',
      'CETEARYL ALCOHOL',
      'KAOLIN',
      'NIACINAMIDE',
      'PANTHENOL',
      'CI 77491',
    ]);
  });

  it('worked example: 66.5 % water, 5.7 % glycerin, 3.8 % and 3.8 %', () => {
    const shown = new Map(labelIngredients(book, aPlannedJar(book, shares), EU).map((one) => [one.name, one.shownPpm]));
    expect(['AQUA', 'GLYCERIN', 'CAPRYLIC/CAPRIC TRIGLYCERIDE', 'CETEARYL ALCOHOL', 'PANTHENOL'].map((name) => shown.get(name))).toEqual([
      665_000, 57_000, 38_000, 38_000, 4000,
    ]);
  });

  it('sums an ingredient over everything that brings it before ordering', () => {
    const shown = labelIngredients(book, aPlannedJar(book, { 'kaolin-neat': 10_000, 'panthenol-in-clay': 20_000 }), EU);
    expect(shown.find((one) => one.name === 'KAOLIN')?.shownPpm).toBe(26_000);
  });

  it.each([
    [9999, 'free', 'free'],
    [10_000, 'ordered', 'free'],
    [10_001, 'ordered', 'ordered'],
  ])('%d ppm: %s in the EU, %s in the US', (ppm, eu, us) => {
    const groupIn = (market: typeof EU | typeof US) =>
      labelIngredients(book, aPlannedJar(book, { 'panthenol-neat': ppm }), market).find((one) => one.name === 'PANTHENOL')?.group;
    expect([groupIn(EU), groupIn(US)]).toEqual([eu, us]);
  });

  it('orders colourants by CI number in the EU; the US has one name for all iron oxides, and WATER', () => {
    const iron = { 'black-neat': 3000, 'yellow-neat': 1000, 'red-neat': 500 };
    expect(names(EU, iron).slice(-3)).toEqual(['CI 77491', 'CI 77492', 'CI 77499']);
    expect(names(US, iron).slice(-2)).toEqual(['CETEARYL ALCOHOL', 'IRON OXIDES']);
    expect(names(US, iron)[0]).toBe('WATER');
  });

  it('marks nano in the EU only', () => {
    const nano = (market: typeof EU | typeof US) =>
      labelIngredients(book, aPlannedJar(book, { 'fine-titanium-neat': 1000 }), market)
        .filter((one) => one.nano)
        .map((one) => one.name);
    expect([nano(EU), nano(US)]).toEqual([['CI 77891'], []]);
  });

  it('orders CI numbers by value, then suffix, then name; equal shares of a nano and another form stand side by side', () => {
    const coloured = (id: string, colourIndex: string | undefined, name: string, nano = false) => ({
      substance: aSubstance(id, { labelNames: { EU: name, US: name }, nano, ...(colourIndex === undefined ? {} : { colourIndex }) }),
      material: aPowder(id, { kind: 'pigment', colours: true }),
    });
    const powders = [
      coloured('e', '77491', 'CI 77491'),
      coloured('d', '77268:2', 'CI 77268:2'),
      coloured('c', '77268:1', 'CI 77268:1'),
      coloured('b', '77266', 'CI 77266 B'),
      coloured('a', '77266', 'CI 77266 A'),
      coloured('n', undefined, 'SILICA', true),
      coloured('m', undefined, 'SILICA'),
    ];
    const opened = aBook({ substances: powders.map((one) => one.substance), materials: powders.map((one) => one.material) });
    const jar = aPlannedJar(
      opened,
      Object.fromEntries(powders.map((one, index) => [`${one.material.id}-neat`, index < 5 ? 100 * (index + 1) : 1000])),
    );
    const list = labelIngredients(opened, jar, EU).slice(3);
    expect(list.map((one) => (one.nano ? `${one.name} (nano)` : one.name))).toEqual([
      'SILICA',
      'SILICA (nano)',
      'CI 77266 A',
      'CI 77266 B',
      'CI 77268:1',
      'CI 77268:2',
      'CI 77491',
    ]);
  });

  it('leaves out what the jar does not hold', () => {
    expect(names(EU, {})).not.toContain('KAOLIN');
    expect(names(EU, { 'kaolin-neat': 0 })).not.toContain('KAOLIN');
  });
});

describe('fragrance allergens', () => {
  const owed = (market: typeof EU | typeof US | typeof EU_LEAVE, ppm: number) =>
    allergensOwed(book, aPlannedJar(book, { 'oil-of-lavender-neat': ppm }), market).map((one) => one.name);

  it.each([
    // 30 % linalool in the oil: 0.060 %, 0.006 %, exactly 0.0100 %, just above, and 0.001 % for leave-on.
    [2000, true, true],
    [200, false, true],
    [333, false, true],
    [334, true, true],
    [33, false, false],
    [34, false, true],
  ])('%d ppm of oil: owed when taken off %s, when left on %s', (ppm, rinse, leave) => {
    expect([owed(EU, ppm).length === 1, owed(EU_LEAVE, ppm).length === 1]).toEqual([rinse, leave]);
  });

  it('is owed above the threshold, not at it', () => {
    const exact = aBook({
      materials: [
        aMaterial('scent', {
          substances: substancesOf({ niacinamide: WHOLE_PPM }),
          allergens: [{ name: 'LINALOOL', sharePpm: sharePpm(10_000) }],
        }),
      ],
    });
    const at = (ppm: number) => allergensOwed(exact, aPlannedJar(exact, { 'scent-neat': ppm }), EU).length;
    expect([at(10_000), at(10_001)]).toEqual([0, 1]);
  });

  it('lists the most first, equal ones by name, and sums what several materials bring', () => {
    const scents = aBook({
      materials: [
        aMaterial('first', {
          substances: substancesOf({ niacinamide: WHOLE_PPM }),
          allergens: [
            { name: 'LINALOOL', sharePpm: sharePpm(100_000) },
            { name: 'CITRAL', sharePpm: sharePpm(100_000) },
            { name: 'GERANIOL', sharePpm: sharePpm(60_000) },
          ],
        }),
        aMaterial('second', {
          substances: substancesOf({ niacinamide: WHOLE_PPM }),
          allergens: [{ name: 'GERANIOL', sharePpm: sharePpm(60_000) }],
        }),
      ],
    });
    const found = allergensOwed(scents, aPlannedJar(scents, { 'first-neat': 2000, 'second-neat': 2000 }), EU);
    expect(found.map((one) => one.name)).toEqual(['GERANIOL', 'CITRAL', 'LINALOOL']);
  });

  it('stands in the list by its share, once: not again beside an ingredient of the same name', () => {
    expect(names(EU, { 'oil-of-lavender-neat': 2000, 'panthenol-neat': 500 }).slice(-3)).toEqual([
      'CETEARYL ALCOHOL',
      'LINALOOL',
      'PANTHENOL',
    ]);
    expect(names(EU, { 'oil-of-lavender-neat': 2000, 'linalool-neat': 500 }).filter((name) => name === 'LINALOOL')).toHaveLength(1);
  });

  it('is no US duty', () => {
    expect(owed(US, 2000)).toEqual([]);
  });

  it('offers the 80 entries of Annex III that carry a threshold, each once', () => {
    expect(ALLERGEN_NAMES).toHaveLength(80);
    expect(new Set(ALLERGEN_NAMES.map((one) => one.entry)).size).toBe(80);
    expect(new Set(ALLERGEN_NAMES.map((one) => one.name)).size).toBe(80);
  });
});
