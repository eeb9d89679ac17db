// Limits of Regulation (EC) No 1223/2009 on jars, through the rows that the editor offers. Annex V/1, V/3, V/4, III/24, III/98 and the dates of
// III/376 and III/380 verified; V/29 and V/57 from memory. The salts' levels are computed apart from this program (see the equivalents).
import { describe, expect, it } from 'vitest';
import { checkLaw, lawCautions } from '#lib/law/limits.ts';
import { REFERENCE_COLOURANTS, REFERENCE_LIMITS } from '#lib/law/reference-limits.data.ts';
import type { ProductKind } from '#lib/rulebook/language.ts';
import type { LimitRow, Market } from '#lib/rulebook/limit.ts';
import { localDay } from '#lib/units/time.ts';
import { aBook, aPlannedJar, aWeighedJar } from '#test/support/a-jar.ts';
import { aMaterial, aPowder, aStock, aSubstance, parts, substancesOf } from '#test/support/a-material.ts';

const idOf = (name: string): string => name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');

/** The offered EU rows as rows of a rulebook. */
const rows: readonly LimitRow[] = REFERENCE_LIMITS.map(({ substances, note: _note, warning, ...row }) => ({
  ...row,
  ...(warning === undefined ? {} : { cautionId: `owed-by-${row.id}` }),
  substances: substances.map(({ name, factorPpm }) => ({ substanceId: idOf(name), factorPpm })),
}));

const market = (productKind: ProductKind): Market => ({
  id: 'EU',
  productKind,
  colourantsListed: 'pigments',
  responsiblePerson: { name: 'Test House', address: '1 Test Lane, Testtown', contact: 'care@example.test' },
});

/** A book whose one more material is the named substance, neat and in a 1 % premix in water. */
const bookWith = (name: string, productKind: ProductKind) =>
  aBook({
    substances: [aSubstance(idOf(name))],
    materials: [aMaterial(idOf(name))],
    stocks: [aStock(idOf(name)), aStock(idOf(name), { id: 'weak', parts: parts({ [idOf(name)]: 10_000, water: 990_000 }) })],
    rest: { limits: rows, markets: [market(productKind)] },
  });

const day = localDay('2026-11-25');
const broken = (name: string, ppm: number, productKind: ProductKind, on = day): readonly string[] => {
  const book = bookWith(name, productKind);
  return checkLaw(book, aPlannedJar(book, { [`${idOf(name)}-neat`]: ppm }), on).map((found) => found.ruleId);
};

describe('limits on a jar', () => {
  it.each([
    ['SODIUM BENZOATE', 'leave-on', 5899, 'eu-v-1-leave-on'],
    ['SODIUM BENZOATE', 'rinse-off', 29_499, 'eu-v-1-rinse-off'],
    ['POTASSIUM SORBATE', 'rinse-off', 8038, 'eu-v-4-all'],
    ['SODIUM DEHYDROACETATE', 'leave-on', 6784, 'eu-v-13-all'],
    ['ZINC PCA', 'rinse-off', 49_189, 'eu-iii-24-all'],
    ['ZINC ACETATE', 'rinse-off', 28_062, 'eu-iii-24-all'],
    ['RETINYL PALMITATE', 'leave-on', 5496, 'eu-iii-376-all'],
    ['RETINYL ACETATE', 'rinse-off', 3440, 'eu-iii-376-all'],
    ['BENZYL ALCOHOL', 'rinse-off', 10_000, 'eu-v-34-all'],
    ['CHLORPHENESIN', 'leave-on', 3000, 'eu-v-50-all'],
    ['METHYLISOTHIAZOLINONE', 'rinse-off', 15, 'eu-v-57-rinse-off'],
    ['ALPHA-ARBUTIN', 'rinse-off', 20_000, 'eu-iii-377-all'],
    ['KOJIC ACID', 'rinse-off', 10_000, 'eu-iii-375-all'],
  ] as const)('%s, %s: %d ppm passes, one more does not', (name, kind, mostPpm, row) => {
    expect(broken(name, mostPpm, kind)).toEqual([]);
    expect(broken(name, mostPpm + 1, kind)).toEqual([row]);
  });

  it('forbids methylisothiazolinone that stays on, and hydroquinone, at any level', () => {
    expect(broken('METHYLISOTHIAZOLINONE', 1, 'leave-on')).toEqual(['eu-v-57-leave-on']);
    expect(broken('HYDROQUINONE', 1, 'rinse-off')).toEqual(['eu-iii-14-all']);
  });

  it('speaks from the day an entry applies on', () => {
    expect(broken('HEXYL SALICYLATE', 5001, 'rinse-off', localDay('2026-04-30'))).toEqual([]);
    expect(broken('HEXYL SALICYLATE', 5001, 'rinse-off', localDay('2026-05-01'))).toEqual(['eu-iii-380-rinse-off']);
    expect(broken('RETINYL PALMITATE', 6000, 'rinse-off', localDay('2025-10-31'))).toEqual([]);
    expect(broken('RETINYL PALMITATE', 6000, 'rinse-off', localDay('2025-11-01'))).toEqual(['eu-iii-376-all']);
  });

  it('owes the warning of an entry as soon as any of it is in the jar', () => {
    const book = bookWith('RETINYL PALMITATE', 'rinse-off');
    expect(lawCautions(book, aPlannedJar(book), day)).toEqual([]);
    expect(lawCautions(book, aPlannedJar(book, { weak: 100 }), day)).toEqual([
      { cautionId: 'owed-by-eu-iii-376-all', ruleId: 'eu-iii-376-all' },
    ]);
  });

  it('adds base and premix: 0.40 % and 0.25 % sodium benzoate are 0.551 % as acid, too much where it stays on', () => {
    // Worked apart from this program: 0.65 % × 122.122 / 144.103 = 0.5509 %.
    const book = aBook({
      substances: [aSubstance('sodium-benzoate')],
      materials: [aMaterial('sodium-benzoate')],
      stocks: [
        aStock('sodium-benzoate'),
        aStock('sodium-benzoate', { id: 'premix', parts: parts({ 'sodium-benzoate': 250_000, water: 750_000 }) }),
      ],
      rest: { limits: rows, markets: [market('leave-on')] },
    });
    const findings = checkLaw(book, aPlannedJar(book, { 'sodium-benzoate-neat': 4000, premix: 10_000 }), day);
    expect(findings.map((found) => found.ruleId)).toEqual(['eu-v-1-leave-on']);
    expect(findings[0]?.facts).toMatchObject({
      marketId: 'EU',
      substanceIds: 'sodium-benzoate',
      maxPpm: 5000,
      foundPpm: expect.closeTo(5508.5, 1),
    });
    const rinse = bookWith('SODIUM BENZOATE', 'rinse-off');
    expect(checkLaw(rinse, aPlannedJar(rinse, { 'sodium-benzoate-neat': 6500 }), day)).toEqual([]);
  });

  it('asks a weighed jar the same question', () => {
    const book = bookWith('SODIUM BENZOATE', 'leave-on');
    const weighed = (grams: number) => aWeighedJar(book, { cream: 48, oil: 2, stocks: { 'sodium-benzoate-neat': grams } });
    expect(checkLaw(book, weighed(0.29), day)).toEqual([]); // 0.29 / 50.29 = 0.577 % of salt
    expect(checkLaw(book, weighed(0.3), day).map((found) => found.ruleId)).toEqual(['eu-v-1-leave-on']); // 0.596 %
  });
});

describe('colourants', () => {
  const permissions: readonly LimitRow[] = REFERENCE_COLOURANTS.map(({ name: _name, note: _note, colourIndex, ...row }) => ({
    ...row,
    substanceId: `ci-${colourIndex}`,
  }));
  const pigment = (id: string) => aPowder(id, { kind: 'pigment', colours: true, classes: ['inert'] });
  const clay = aPowder('illite', { colours: true, classes: ['clay'] });
  const book = (marketId: 'EU' | 'US') =>
    aBook({
      substances: ['ci-77288', 'ci-77007', 'ci-77820', 'ci-77266', 'illite', 'charcoal-powder'].map((id) => aSubstance(id)),
      materials: [
        pigment('ci-77288'),
        pigment('ci-77007'),
        pigment('ci-77820'),
        pigment('ci-77266'),
        clay,
        aPowder('charcoal-powder', { colours: true, classes: ['adsorbent'] }),
      ],
      rest: {
        limits: permissions,
        markets: [{ ...market('rinse-off'), id: marketId, colourantsListed: marketId === 'EU' ? 'pigments' : 'all-colouring' }],
      },
    });
  const refused = (marketId: 'EU' | 'US', materialId: string): boolean => {
    const opened = book(marketId);
    return checkLaw(opened, aPlannedJar(opened, { [`${materialId}-neat`]: 1000 }), day).some((found) => found.code === 'law-colourant');
  };

  it.each([
    // EU Annex IV and 21 CFR 73.2327, 73.2725: verified. Silver: no longer for a mask since 1 May 2026, verified.
    ['ci-77288', false, false],
    ['ci-77007', false, false],
    ['ci-77820', true, true],
    // 21 CFR 74.2052 lists no mask use of high-purity carbon black; clays and charcoal are no listed colour additives: from memory.
    ['ci-77266', false, true],
    ['illite', false, true],
    ['charcoal-powder', false, true],
  ])('%s: refused in the EU %s, in the US %s', (materialId, eu, us) => {
    expect([refused('EU', materialId), refused('US', materialId)]).toEqual([eu, us]);
  });

  it('asks only what the jar holds', () => {
    const opened = book('US');
    expect(checkLaw(opened, aPlannedJar(opened, { 'illite-neat': 0 }), day)).toEqual([]);
  });

  it('asks every substance of a pigment, water apart', () => {
    const opened = aBook({
      substances: [aSubstance('ci-77288'), aSubstance('silane')],
      materials: [
        aPowder('treated', {
          kind: 'pigment',
          colours: true,
          substances: substancesOf({ 'ci-77288': 900_000, silane: 20_000, water: 80_000 }),
        }),
      ],
      rest: { limits: permissions, markets: [market('rinse-off')] },
    });
    expect(checkLaw(opened, aPlannedJar(opened, { 'treated-neat': 1000 }), day)).toEqual([
      { code: 'law-colourant', ruleId: 'EU', facts: { marketId: 'EU', substanceId: 'silane' } },
    ]);
  });
});
