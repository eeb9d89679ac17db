// A green jar with everything a card can hold: a powder weighed as a premix whose carrier is netted, an oil paste, cream, and two additions.
// Invented for tests; the masses that come of it were worked out by hand.
import { planVariant } from '#lib/composition/plan-variant.ts';
import type { Base, HouseRules } from '#lib/rulebook/base.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Stock } from '#lib/rulebook/material.ts';
import type { JarSize, Vessel } from '#lib/rulebook/offer.ts';
import type { Plan } from '#lib/rulebook/variant.ts';
import { gramsToUg } from '#lib/units/mass.ts';
import { mgPer100g, temperatureC } from '#lib/units/material-property.ts';
import { factorPpm, sharePpm } from '#lib/units/share.ts';
import { localDay } from '#lib/units/time.ts';
import type { BenchLot } from '#lib/weighing/allocate-lots.ts';
import type { LineSource } from '#lib/weighing/bench-line.ts';
import { massLimits } from '#lib/weighing/mass-limits.ts';
import type { CardAsk } from '#lib/weighing/mixing-card.ts';
import { aBase, aHouse } from './a-base.ts';
import { aMaterial, aPowder, aStock, aSubstance, parts } from './a-material.ts';
import { aRulebook } from './a-rulebook.ts';
import { aJarSize, aLevel, anActive, aScaleProfile, aShade, aVessel } from './an-offer.ts';

export const FERN_DAY = localDay('2026-11-25');

export interface FernBends {
  readonly base?: Partial<Base>;
  readonly house?: Partial<HouseRules>;
  /** Bends every stock but keeps its id and parts. */
  readonly stock?: Partial<Stock>;
  readonly vessel?: Partial<Vessel>;
  readonly niacinamideTauPpm?: number;
}

const materials = () => [
  aPowder('illite', { oilAbsorptionMgPer100g: mgPer100g(40_000) }),
  aPowder('chromium-oxide', { kind: 'pigment', classes: ['inert'], colours: true, oilAbsorptionMgPer100g: mgPer100g(15_000) }),
  aMaterial('panthenol', { kind: 'liquid', maxTemperatureC: temperatureC(60) }),
];

const stocks = (bend: Partial<Stock>) =>
  [
    aStock('kaolin', { code: 'S-10', addedTo: 'paste', staffCautionIds: ['dust'] }),
    aStock('illite', { code: 'S-11', addedTo: 'paste', staffCautionIds: ['dust'] }),
    aStock('chromium-oxide', {
      id: 'chromium-20',
      code: 'S-12',
      name: { en: 'Chromium oxide 20 % in kaolin' },
      parts: parts({ 'chromium-oxide': 200_000, kaolin: 800_000 }),
      addedTo: 'paste',
      staffCautionIds: ['dust'],
    }),
    aStock('niacinamide', { code: 'S-20', lookAlikeName: 'NIACINamide' }),
    aStock('panthenol', {
      id: 'panthenol-75',
      code: 'S-21',
      name: { en: 'Panthenol 75 %' },
      parts: parts({ panthenol: 750_000, water: 250_000 }),
      inUseDays: 180,
    }),
  ].map((stock) => ({ ...stock, ...bend }));

/** Base cream : oil 96 : 4, one shade, two actives. */
export function fernBook({ base, house, stock = {}, vessel, niacinamideTauPpm = 50_000 }: FernBends = {}): Book {
  const dull = aRulebook();
  return openBook(
    aRulebook({
      base: aBase({ code: 'Base R2', ...base }),
      house: aHouse(house),
      substances: [...dull.substances, aSubstance('illite'), aSubstance('chromium-oxide'), aSubstance('panthenol')],
      materials: [...dull.materials, ...materials()],
      stocks: stocks(stock),
      shades: [aShade('fern', { kaolin: 19_000, illite: 5000, 'chromium-oxide': 1000 })],
      actives: [anActive('niacinamide', [aLevel(20_000)], { tauPpm: factorPpm(niacinamideTauPpm) }), anActive('panthenol', [aLevel(3000)])],
      vessels: [aVessel(vessel)],
    }),
  );
}

/** Kaolin 1.90 %, illite 0.50 %, chromium oxide 0.10 %, niacinamide 2.00 %, panthenol 0.30 %. */
export function fernPlan(book: Book): Plan {
  const actives = [
    { activeId: 'niacinamide', levelPpm: sharePpm(20_000) },
    { activeId: 'panthenol', levelPpm: sharePpm(3000) },
  ];
  const [plan] = planVariant(book, { shadeId: 'fern', actives }, null).plans;
  if (!plan) throw new Error('the fern jar has no plan');
  return plan;
}

/** One released lot of everything, with plenty in it. */
export function fernLots(book: Book): readonly BenchLot[] {
  const sources: readonly LineSource[] = [
    ...book.rulebook.stocks.map((stock) => ({ kind: 'stock', stockId: stock.id }) as const),
    { kind: 'cream' },
    { kind: 'wetting-oil' },
  ];
  return sources.map((source, index) => aLot(source, { code: `L${index + 1}` }));
}

export const aLot = (source: LineSource, overrides: Partial<BenchLot> = {}): BenchLot => ({
  id: `lot-${source.kind === 'stock' ? source.stockId : source.kind}`,
  code: 'L1',
  source,
  status: 'released',
  expiresOn: localDay('2027-10-31'),
  openedOn: localDay('2026-11-01'),
  leftUg: gramsToUg(1000),
  measuredPhX100: null,
  ...overrides,
});

/** The card's ask for 50 g + 2 g on one 0.01 g scale, all limits of the book in force. */
export function fernAsk(book: Book, overrides: Partial<CardAsk> = {}): CardAsk {
  const plan = overrides.plan ?? fernPlan(book);
  const jarSize: JarSize = aJarSize();
  return {
    book,
    plan,
    jarSize,
    scales: [aScaleProfile()],
    limits: massLimits({ book, plan, markets: book.rulebook.markets, day: FERN_DAY }),
    lots: fernLots(book),
    day: FERN_DAY,
    phDue: null,
    fullCleanAfterTags: [],
    warmestC: null,
    ...overrides,
  };
}
