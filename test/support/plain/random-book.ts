// Small random rulebooks: everything that a check reads is drawn, and figures sit close to limits so that both answers are common.
import fc from 'fast-check';
import type { ClassRule, JudgementVerdict, PairJudgement, Scope } from '#lib/rulebook/judgement.ts';
import type { LimitRow } from '#lib/rulebook/limit.ts';
import type { AcidityTable, Material, MaterialClass, Stock } from '#lib/rulebook/material.ts';
import type { Active } from '#lib/rulebook/offer.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { acidityUmolPerKg, phX100 } from '#lib/units/chemistry.ts';
import { loadUnits, mgPer100g, unitsPerPpm } from '#lib/units/material-property.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { factorPpm, sharePpm, WHOLE_PPM } from '#lib/units/share.ts';
import { localDay } from '#lib/units/time.ts';
import { aBase, aHouse } from '../a-base.ts';
import { aClassJudgement, aClassRule, aPairJudgement, aScope } from '../a-judgement.ts';
import { aMaterial, aPowder, aStock, aSubstance, aWindow, noAcidity, parts } from '../a-material.ts';
import { aRulebook } from '../a-rulebook.ts';
import { aLevel, anActive, aShade } from '../an-offer.ts';

const CLASSES: readonly MaterialClass[] = ['clay', 'iron', 'vitamin', 'acid', 'electrolyte', 'humectant'];
const BASE_CLASSES: readonly MaterialClass[] = ['water', 'emollient', 'preservative'];
const POWDERS = ['kaolin', 'illite', 'iron-oxide'] as const;
const ACTIVES = ['niacinamide', 'lactic', 'glycerin', 'buffer'] as const;
const LEVELS = [2_500, 5_000, 10_000, 20_000] as const;

const int = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });
const one = <T>(...items: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...items);
const maybe = <T>(drawn: fc.Arbitrary<T>, freq = 2): fc.Arbitrary<T | undefined> => fc.option(drawn, { nil: undefined, freq });

/** Mostly what lets a jar pass, now and then what may refuse it: checks that all refuse everything would agree on nothing. */
const seldom = <T, L>(loose: L, drawn: fc.Arbitrary<T>, oneIn = 6): fc.Arbitrary<T | L> =>
  fc.oneof({ weight: oneIn - 1, arbitrary: fc.constant(loose) }, { weight: 1, arbitrary: drawn });

/** A rising table that crosses zero somewhere between pH 3 and 9. */
const table = (steepMost: number): fc.Arbitrary<AcidityTable> =>
  fc
    .record({ steps: fc.array(int(0, steepMost), { minLength: 12, maxLength: 12 }), crossing: int(0, 12), sink: int(0, steepMost) })
    .map(({ steps, crossing, sink }) => {
      const rising = Array.from({ length: 13 }, (_, index) => steps.slice(0, index).reduce((sum, step) => sum + step, 0));
      const shift = (rising[crossing] ?? 0) + sink;
      return { origin: 'measured', umolPerKg: rising.map((value) => acidityUmolPerKg(value - shift)) };
    });

const narrow = fc.tuple(int(30, 62), int(4, 40)).map(([min, wide]) => aWindow(min * 10, Math.min(900, (min + wide) * 10)));
const window = seldom(aWindow(310, 890), narrow, 5);

const powder = (id: string): fc.Arbitrary<Material> =>
  fc
    .record({
      classes: fc.subarray([...CLASSES], { minLength: 1, maxLength: 2 }),
      oil: int(15, 90),
      acidity: seldom(noAcidity(), maybe(table(30_000), 8), 3),
      ph: maybe(window),
      pigment: seldom(false, fc.boolean()),
    })
    .map(({ classes, oil, acidity, ph, pigment }) =>
      aPowder(id, {
        kind: pigment || id === 'iron-oxide' ? 'pigment' : 'insoluble-powder',
        colours: pigment,
        classes: id === 'illite' ? [...classes, 'swelling-clay'] : classes,
        oilAbsorptionMgPer100g: mgPer100g(oil * 1000),
        acidity,
        phFresh: ph,
      }),
    );

const additive = (id: string): fc.Arbitrary<Material> =>
  fc
    .record({
      classes: fc.subarray([...CLASSES], { minLength: 1, maxLength: 2 }),
      acidity: seldom(noAcidity(), maybe(table(300_000), 8), 2),
      fresh: maybe(window, 3),
      shelf: maybe(window, 3),
      irritancy: seldom(0, int(0, 3), 3),
      ionic: seldom(0, int(0, 4), 3),
      tags: fc.subarray(['acid', 'aha', 'nut'] as const),
    })
    .map(({ classes, acidity, fresh, shelf, irritancy, ionic, tags }) =>
      aMaterial(id, {
        classes,
        acidity,
        phFresh: fresh,
        phShelf: shelf,
        irritancyUnitsPerPpm: unitsPerPpm(irritancy),
        ionicUnitsPerPpm: unitsPerPpm(ionic),
        tags: [...tags],
        kind: id === 'glycerin' ? 'liquid' : 'soluble-powder',
      }),
    );

/** Neat, or diluted, or both; carriers are kaolin for powders and water or glycerin for the rest. */
const stocksOf = (id: string, carrier: string, addedTo: Stock['addedTo']): fc.Arbitrary<readonly Stock[]> =>
  fc
    .record({
      form: one('neat', 'neat', 'neat', 'neat', 'premix', 'premix', 'both'),
      strength: one(200_000, 250_000, 500_000, 750_000),
      acidity: seldom(undefined, table(300_000), 8),
    })
    .map(({ form, strength, acidity }) => [
      ...(form === 'premix' ? [] : [aStock(id, { addedTo })]),
      ...(form === 'neat'
        ? []
        : [aStock(id, { id: `${id}-premix`, addedTo, parts: parts({ [id]: strength, [carrier]: WHOLE_PPM - strength }), acidity })]),
    ]);

const blend = fc
  .boolean()
  .map((has): readonly Stock[] =>
    has
      ? [aStock('kaolin', { id: 'rust-blend', isBlend: true, addedTo: 'paste', parts: parts({ kaolin: 950_000, 'iron-oxide': 50_000 }) })]
      : [],
  );

const active = (id: string): fc.Arbitrary<Active> =>
  fc
    .record({
      levels: fc.subarray([...LEVELS], { minLength: 1, maxLength: 2 }),
      strength: one(WHOLE_PPM, 500_000),
      permitted: seldom(true, fc.boolean()),
      benefits: fc.record({ shine: int(0, 900), calm: int(0, 900) }),
      price: int(0, 5),
    })
    .map(({ levels, strength, permitted, benefits, price }) =>
      anActive(
        id,
        levels.map((level, index) =>
          aLevel(level, id === 'buffer' ? {} : { shine: Math.min(1000, benefits.shine * (index + 1)), calm: benefits.calm }, {
            permitted: permitted || index === 0,
            priceMinor: moneyMinor(price * 50),
          }),
        ),
        { strengthPpm: sharePpm(strength), role: id === 'buffer' ? 'adjuster' : 'active' },
      ),
    );

const materialIds = [...POWDERS, ...ACTIVES, 'water', 'oil', 'phenoxyethanol'];
const pair: fc.Arbitrary<PairJudgement> = fc
  .record({
    ids: fc.shuffledSubarray(materialIds, { minLength: 2, maxLength: 2 }),
    verdict: one<JudgementVerdict>('never', 'limit', 'limit', 'limit', 'limit', 'caution', 'fine', 'fine', 'fine'),
    max: int(5, 40),
    which: one('maxSumPpm', 'maxFirstPpm', 'maxSecondPpm'),
    ph: maybe(int(35, 60), 3),
  })
  .map(({ ids, verdict, max, which, ph }) =>
    aPairJudgement(ids[0] ?? '', ids[1] ?? '', {
      verdict,
      ...(verdict === 'caution' && { cautionId: 'eyes' }),
      ...(verdict === 'limit' && { limit: { [which]: sharePpm(max * 1000), ...(ph !== undefined && { minPhX100: phX100(ph * 10) }) } }),
    }),
  );

/** Nearly every pair of classes is judged, mostly fine. */
const classJudgements = fc
  .array(
    fc.oneof(
      { weight: 300, arbitrary: fc.constant('fine') },
      { weight: 8, arbitrary: fc.constant('caution') },
      { weight: 1, arbitrary: fc.constant('never') },
      { weight: 1, arbitrary: fc.constant('not') },
    ),
    { minLength: 64, maxLength: 64 },
  )
  .map((verdicts) =>
    [...CLASSES, ...BASE_CLASSES].flatMap((first, i, all) =>
      all.slice(i).map((second, j) => ({ first, second, verdict: verdicts[(i * 7 + j) % 64] ?? 'fine' })),
    ),
  )
  .map((rows) =>
    rows.flatMap(({ first, second, verdict }) =>
      verdict === 'not'
        ? []
        : [aClassJudgement(first, second, { verdict: verdict as 'fine', ...(verdict === 'caution' && { cautionId: 'eyes' }) })],
    ),
  );

const classRule: fc.Arbitrary<ClassRule> = fc
  .record({ first: one(...CLASSES), second: maybe(one(...CLASSES), 3), above: int(0, 30), window: maybe(narrow, 3) })
  .map(({ first, second, above, window: within }) => ({
    ...aClassRule(first, first),
    id: `rule-${first}-${second ?? 'alone'}`,
    first: { materialClass: first, abovePpm: sharePpm(above * 1000) },
    second: second && { materialClass: second, abovePpm: sharePpm(0) },
    unlessPhWithin: within,
  }));

const scopes: fc.Arbitrary<readonly Scope[]> = fc
  .record({
    most: seldom(2, int(0, 2), 3),
    caps: fc.array(one(5_000, 20_000, 20_000, 20_000), { minLength: 4, maxLength: 4 }),
    refuse: maybe(fc.tuple(one('pale', 'rust'), one(...ACTIVES), one(5_000, 10_000)), 3),
  })
  .map(({ most, caps, refuse }) => [
    aScope(['pale', 'rust'], Object.fromEntries(ACTIVES.map((id, index) => [id, caps[index] ?? 5_000])), { mostActivesCount: most }),
    ...(refuse ? [aScope([refuse[0]], { [refuse[1]]: refuse[2] }, { id: 'no', kind: 'refuse' })] : []),
  ]);

const limits: fc.Arbitrary<readonly LimitRow[]> = fc
  .array(
    fc.record({
      ids: fc.subarray(['niacinamide', 'lactic', 'phenoxyethanol', 'glycerin'], { minLength: 1, maxLength: 2 }),
      max: int(8, 60),
      factor: one(WHOLE_PPM, 847_464),
      from: one('2026-01-01', '2027-01-01'),
    }),
    { maxLength: 3 },
  )
  .map((rows) => [
    { id: 'iron', kind: 'colourant', marketId: 'EU', source: 's', status: 'house', substanceId: 'iron-oxide', conditions: 'none' },
    { id: 'kaolin', kind: 'colourant', marketId: 'EU', source: 's', status: 'house', substanceId: 'kaolin', conditions: 'none' },
    ...rows.map(
      ({ ids, max, factor, from }, index): LimitRow => ({
        id: `limit-${index}`,
        kind: 'substance',
        marketId: 'EU',
        source: 's',
        status: 'house',
        productKinds: ['rinse-off'],
        substances: ids.map((substanceId) => ({ substanceId, factorPpm: factorPpm(factor) })),
        maxPpm: sharePpm(max * 1000),
        expressedAs: 'as such',
        fromDay: localDay(from),
      }),
    ),
  ]);

/** A rulebook of two shades, three actives and an adjuster. */
export const randomBook: fc.Arbitrary<Rulebook> = fc
  .record({
    powders: fc.tuple(...POWDERS.map(powder)),
    additives: fc.tuple(...ACTIVES.map(additive)),
    stocks: fc.tuple(
      stocksOf('kaolin', 'oil', 'paste'),
      stocksOf('illite', 'kaolin', 'paste'),
      stocksOf('iron-oxide', 'kaolin', 'paste'),
      stocksOf('niacinamide', 'water', 'last'),
      stocksOf('lactic', 'glycerin', 'last'),
      stocksOf('glycerin', 'water', 'last'),
      stocksOf('buffer', 'water', 'last'),
      blend,
    ),
    actives: fc.tuple(...ACTIVES.map(active)),
    pairs: fc.uniqueArray(pair, { maxLength: 2, selector: (judged) => [judged.firstMaterialId, judged.secondMaterialId].sort().join('|') }),
    classJudgements,
    rules: fc.uniqueArray(classRule, { maxLength: 1, selector: (rule) => rule.id }),
    scopes,
    limits,
    base: fc.record({
      acidity: table(4_000),
      ph: window,
      allowance: int(25, 60),
      powder: seldom(60, int(15, 40), 4),
      pigment: seldom(60, int(0, 4), 4),
      ionic: seldom(500, int(20, 120), 4),
      irritancy: seldom(500, int(10, 60), 4),
      acid: seldom(60, int(1, 20), 3),
      proven: seldom(80, int(80, 90), 3),
      tested: seldom(60, int(15, 40), 4),
      swelling: seldom(60, int(3, 8), 4),
    }),
    sol: fc.record({
      mg: seldom(9_000, int(200, 4_000), 3),
      pka: maybe(int(30, 50), 3),
      acidPka: maybe(int(30, 50), 2),
      weak: seldom(undefined, fc.tuple(int(35, 75), int(1, 60)), 4),
    }),
    exposure: fc.record({ pod: seldom(500_000, int(500, 60_000), 3), demanded: seldom(false, fc.boolean(), 3), known: fc.boolean() }),
    spare: seldom(10, int(10, 25), 3),
  })
  .map((drawn) => assemble(drawn));

type Drawn = {
  readonly powders: readonly Material[];
  readonly additives: readonly Material[];
  readonly stocks: readonly (readonly Stock[])[];
  readonly actives: readonly Active[];
  readonly pairs: readonly PairJudgement[];
  readonly classJudgements: Rulebook['classJudgements'];
  readonly rules: readonly ClassRule[];
  readonly scopes: readonly Scope[];
  readonly limits: readonly LimitRow[];
  readonly base: {
    readonly acidity: AcidityTable;
    readonly ph: Material['phFresh'];
    readonly allowance: number;
    readonly powder: number;
    readonly pigment: number;
    readonly ionic: number;
    readonly irritancy: number;
    readonly acid: number;
    readonly proven: number;
    readonly tested: number;
    readonly swelling: number;
  };
  readonly sol: {
    readonly mg: number;
    readonly pka: number | undefined;
    readonly acidPka: number | undefined;
    readonly weak: [number, number] | undefined;
  };
  readonly exposure: { readonly pod: number; readonly demanded: boolean; readonly known: boolean };
  readonly spare: number;
};

function assemble({ powders, additives, stocks, actives, pairs, rules, base, sol, exposure, spare, ...rest }: Drawn): Rulebook {
  const plain = aRulebook();
  const own = plain.materials.filter((material) => ['water', 'oil', 'phenoxyethanol'].includes(material.id));
  const weakAcid = sol.weak && { apparentPkaX1000: sol.weak[0] * 100, minUndissociatedPpm: sharePpm(sol.weak[1] * 100) };
  const podUg = { systemicPodUgPerKgDay: exposure.pod, dermalAbsorptionPpm: sharePpm(500_000), source: 's' };
  return {
    ...plain,
    ...rest,
    materials: [...own, ...powders, ...additives],
    substances: [
      ...['water', 'oil', 'kaolin', 'illite', 'iron-oxide', 'glycerin', 'buffer'].map((id) => aSubstance(id, { isWater: id === 'water' })),
      aSubstance('phenoxyethanol'),
      aSubstance('niacinamide', { exposureDemanded: exposure.demanded, ...(exposure.known && { exposure: podUg }) }),
      aSubstance('lactic', {
        solubility: { neutralMgPer100g: mgPer100g(sol.mg), ...(sol.pka !== undefined && { pkaX1000: sol.pka * 100 }) },
        ...(sol.acidPka !== undefined && { acid: { pkaX1000: sol.acidPka * 100 } }),
      }),
    ],
    stocks: stocks.flat(),
    shades: [
      aShade('pale', { kaolin: 15_000, illite: 4_000 }),
      aShade(
        'rust',
        { kaolin: 19_000, 'iron-oxide': 1_000 },
        { colour: { ...aShade('x', {}).colour, family: 'red' }, priceMinor: moneyMinor(150) },
      ),
    ],
    actives,
    pairJudgements: pairs,
    classRules: rules,
    base: aBase({
      acidity: base.acidity,
      ...(base.ph && { ph: base.ph }),
      allowancePpm: sharePpm(base.allowance * 1000),
      ceilingPpm: sharePpm(base.allowance * 1000 + 6_000),
      mostActivesCount: 2,
      caps: {
        powderPpm: sharePpm(base.powder * 1000),
        swellingClayPpm: sharePpm(base.swelling * 1000),
        pigmentPpm: sharePpm(base.pigment * 1000 + 500),
        ionicUnits: loadUnits(base.ionic * 1000),
        irritancyUnits: loadUnits(base.irritancy * 1000),
        freeAcidPpm: sharePpm(base.acid * 1000),
      },
      preservation: {
        preservatives: [
          {
            substanceId: 'phenoxyethanol',
            provenMinPpm: sharePpm(base.proven * 100),
            ph: aWindow(320, 880),
            ...(weakAcid && { weakAcid }),
          },
        ],
        testedPowderPpm: sharePpm(base.tested * 1000),
        testedSwellingClayPpm: sharePpm(base.swelling * 1000 + (base.tested < 60 ? -2_000 : 0)),
        evidenceId: 'challenge-1',
      },
    }),
    house: aHouse({ wettingSparePpm: factorPpm(spare * 100_000) }),
  };
}
