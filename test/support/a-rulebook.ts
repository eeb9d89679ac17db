// The smallest rulebook that is complete and sound: two shades, one active at two levels, one market, one size.
// A test bends the one place it is about and leaves the rest dull.
import type { LimitRow, Market } from '#lib/rulebook/limit.ts';
import type { Material, MaterialClass } from '#lib/rulebook/material.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { densityMgPerMl, mgPer100g, unitsPerPpm } from '#lib/units/material-property.ts';
import { factorPpm, sharePpm, WHOLE_PPM } from '#lib/units/share.ts';
import { aBase, aHouse } from './a-base.ts';
import { aClassJudgement, anEvidence, aScope } from './a-judgement.ts';
import { aMaterial, anAcidityTable, aPowder, aStock, aSubstance, aWindow, parts } from './a-material.ts';
import { aCaution, anOption, aQuestion, aStaffCaution } from './a-questionnaire.ts';
import { aJarSize, aLabelSize, aLevel, anActive, aScaleProfile, aShade, aVessel } from './an-offer.ts';

const materials = (): readonly Material[] => [
  aMaterial('water', { kind: 'liquid', classes: ['water'], densityMgPerMl: densityMgPerMl(998), origin: 'mineral' }),
  aMaterial('oil', { kind: 'oil', classes: ['emollient'], densityMgPerMl: densityMgPerMl(950), origin: 'plant' }),
  aMaterial('phenoxyethanol', { kind: 'liquid', classes: ['preservative'], densityMgPerMl: densityMgPerMl(1105) }),
  aPowder('kaolin', {
    acidity: anAcidityTable(-15_000, -10_000, -5000, 0, 5000, 8000, 11_000, 12_000, 13_000, 14_000, 15_000, 16_000, 17_000),
  }),
  aPowder('iron-oxide', {
    kind: 'pigment',
    classes: ['iron'],
    colours: true,
    densityMgPerMl: densityMgPerMl(5200),
    oilAbsorptionMgPer100g: mgPer100g(30_000),
  }),
  aMaterial('niacinamide', {
    classes: ['vitamin'],
    phFresh: aWindow(400, 750),
    phShelf: aWindow(500, 700),
    irritancyUnitsPerPpm: unitsPerPpm(1),
    acidity: anAcidityTable(-9_000_000, -4_500_000, -1_771_000, -640_000, -220_000, -70_000, -23_000, -7000, -2000, 0, 0, 0, 0),
  }),
];

/** Every class of an addition is fine with every class of the book. */
const classJudgements = () => {
  const added: readonly MaterialClass[] = ['clay', 'iron', 'vitamin'];
  const inBase: readonly MaterialClass[] = ['water', 'emollient', 'preservative'];
  const withBase = added.flatMap((first) => inBase.map((second) => aClassJudgement(first, second)));
  return [...withBase, aClassJudgement('clay', 'iron'), aClassJudgement('clay', 'vitamin'), aClassJudgement('iron', 'vitamin')];
};

const limits = (): readonly LimitRow[] => [
  {
    id: 'eu-phenoxyethanol',
    kind: 'substance',
    marketId: 'EU',
    source: 'Regulation (EC) No 1223/2009, Annex V, entry 29',
    status: 'from-memory',
    productKinds: ['rinse-off', 'leave-on'],
    substances: [{ substanceId: 'phenoxyethanol', factorPpm: factorPpm(WHOLE_PPM) }],
    maxPpm: sharePpm(10_000),
    expressedAs: 'as such',
  },
  {
    id: 'eu-iron-oxide',
    kind: 'colourant',
    marketId: 'EU',
    source: 'Regulation (EC) No 1223/2009, Annex IV',
    status: 'from-memory',
    substanceId: 'iron-oxide',
    conditions: 'all products',
  },
];

const market = (): Market => ({
  id: 'EU',
  productKind: 'rinse-off',
  colourantsListed: 'pigments',
  responsiblePerson: { name: 'Test House', address: '1 Test Lane, Testtown', contact: 'care@example.test' },
});

const questions = () => [
  aQuestion('wish', [
    anOption('less-shine', { effects: [{ kind: 'wish', concernId: 'shine', weightCount: 3 }] }),
    anOption('just-a-mask', { effects: [{ kind: 'wish', concernId: 'shine', weightCount: 1 }] }),
  ]),
  aQuestion(
    'avoid',
    [
      anOption('nuts', { effects: [{ kind: 'exclude', tags: ['nut', 'seed-oil'] }] }),
      anOption('none', { exclusive: true }),
      anOption('skip', {
        exclusive: true,
        isSkip: true,
        effects: [
          { kind: 'exclude', tags: ['nut', 'seed-oil'] },
          { kind: 'mildest' },
          { kind: 'caution', cautionId: 'test', mustTick: true },
        ],
      }),
    ],
    { choose: 'many', mostCount: 2 },
  ),
];

const cautions = () => [aCaution('eyes'), aCaution('test', { mustTick: true, triggers: [] }), aStaffCaution('dust')];

const TEXT_IDS = [
  'concern.shine',
  'part.mask',
  'question.wish',
  'question.avoid',
  'option.less-shine',
  'option.just-a-mask',
  'option.nuts',
  'option.none',
  'option.skip',
  'colour-pale',
  'good-plain',
  'less-good-plain',
  'caution.eyes',
  'caution.eyes.label',
  'caution.test',
  'caution.test.label',
  'label.product',
  'label.directions',
  'caution.dust',
] as const;

/** The texts of the book in one language, each telling its own id. */
export const textsOf = (ids: readonly string[] = TEXT_IDS): Readonly<Record<string, string>> =>
  Object.fromEntries(ids.map((id) => [id, `Text of ${id}.`]));

/** A complete, sound rulebook; each key of `overrides` replaces that whole section. */
export function aRulebook(overrides: Partial<Rulebook> = {}): Rulebook {
  return {
    schemaVersion: 1,
    code: 'TEST-BOOK',
    title: 'Rulebook for tests',
    notice: 'All data is invented.',
    currency: 'EUR',
    languages: ['en'],
    base: aBase(),
    house: aHouse(),
    substances: [
      aSubstance('water', { labelNames: { EU: 'AQUA', US: 'WATER' }, isWater: true }),
      aSubstance('oil'),
      aSubstance('phenoxyethanol'),
      aSubstance('kaolin'),
      aSubstance('iron-oxide', { labelNames: { EU: 'CI 77491', US: 'IRON OXIDES' }, colourIndex: '77491' }),
      aSubstance('niacinamide'),
    ],
    materials: materials(),
    stocks: [
      aStock('kaolin', { addedTo: 'paste', staffCautionIds: ['dust'] }),
      aStock('niacinamide'),
      aStock('rust', { id: 'rust-blend', parts: parts({ kaolin: 950_000, 'iron-oxide': 50_000 }), addedTo: 'paste', isBlend: true }),
    ],
    shades: [aShade('chalk', { kaolin: 20_000 }), aShade('rust', { kaolin: 19_000, 'iron-oxide': 1000 })],
    actives: [anActive('niacinamide', [aLevel(10_000, { shine: 400 }), aLevel(20_000, { shine: 700 })])],
    pairJudgements: [],
    classJudgements: classJudgements(),
    classRules: [],
    evidence: [anEvidence('stability-1', 'stability'), anEvidence('challenge-1', 'challenge')],
    scopes: [aScope(['chalk', 'rust'], { niacinamide: 20_000 })],
    limits: limits(),
    markets: [market()],
    concerns: [{ id: 'shine', textId: 'concern.shine' }],
    questions: questions(),
    personCaps: [],
    crossContacts: [],
    cautions: cautions(),
    jarSizes: [aJarSize()],
    vessels: [aVessel()],
    labelSizes: [aLabelSize()],
    scaleProfiles: [aScaleProfile()],
    texts: { en: textsOf() },
    ...overrides,
  };
}
