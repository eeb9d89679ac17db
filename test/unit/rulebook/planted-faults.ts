// One small change to the dull rulebook for each fault that the soundness check knows, with every place where it must be found.
import type { DocumentPath } from '#lib/base/document-fault.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { sharePpm } from '#lib/units/share.ts';
import { localDay } from '#lib/units/time.ts';
import { aClassJudgement, aClassRule, anEvidence, aPairJudgement, aScope } from '#test/support/a-judgement.ts';
import { aMaterial, aStock, aSubstance, noAcidity, parts, substancesOf } from '#test/support/a-material.ts';
import { aCaution, anOption, aQuestion, aStaffCaution } from '#test/support/a-questionnaire.ts';
import { aRulebook } from '#test/support/a-rulebook.ts';
import { aLevel, anActive, aShade } from '#test/support/an-offer.ts';
import { bend } from '#test/support/bend.ts';

export interface Planted {
  readonly name: string;
  readonly book: Rulebook;
  /** "path: code" of every fault, in the order of the check. */
  readonly faults: readonly string[];
}

const dull = aRulebook();

/** Bends one place of the dull book. */
const at = (name: string, path: DocumentPath, value: unknown, ...faults: readonly string[]): Planted => ({
  name,
  book: bend(dull, path, value),
  faults,
});

/** Adds entries to the lists of the dull book. */
function withMore(name: string, more: Partial<Rulebook>, ...faults: readonly string[]): Planted {
  const longer = Object.entries(more).map(([key, added]) => {
    const there = dull[key as keyof Rulebook];
    return [key, Array.isArray(there) && Array.isArray(added) ? [...there, ...added] : added] as const;
  });
  return { name, book: { ...dull, ...Object.fromEntries(longer) }, faults };
}

const limited = { verdict: 'limit', limit: { maxSumPpm: sharePpm(30_000) } } as const;

export const LISTS: readonly Planted[] = [
  withMore('an id twice', { substances: [aSubstance('oil')] }, 'substances.6.id: duplicate-id'),
  at('an option id twice', ['questions', 1, 'options', 2, 'id'], 'none', 'questions.1.options.2.id: duplicate-id'),
  at('a code twice, in other capitals', ['shades', 1, 'code'], 'chalk', 'shades.1.code: duplicate-code'),
  withMore(
    'one id for two kinds of rule',
    { classRules: [aClassRule('clay', 'vitamin', { id: 'scope-1', then: { kind: 'caution', cautionId: 'eyes' } })] },
    'scopes.0.id: duplicate-rule-id',
  ),
  at('a class twice', ['materials', 3, 'classes'], ['clay', 'clay'], 'materials.3.classes.1: repeated-entry'),
  at('a shade twice in a scope', ['scopes', 0, 'shadeIds', 2], 'rust', 'scopes.0.shadeIds.2: repeated-entry'),
  at('no scale', ['scaleProfiles'], [], 'scaleProfiles: empty-list'),
  at('no language', ['languages'], [], 'languages: empty-list'),
  at('a language twice', ['languages'], ['en', 'en'], 'languages.1: repeated-entry'),
  at('an unknown vessel', ['jarSizes', 0, 'vesselId'], 'bucket', 'jarSizes.0.vesselId: unknown-reference'),
  at(
    'an unknown substance under a limit',
    ['limits', 0, 'substances', 0, 'substanceId'],
    'lead',
    'limits.0.substances.0.substanceId: unknown-reference',
  ),
];

export const SUMS: readonly Planted[] = [
  at('a base that is 1 ppm short', ['base', 'parts', 0, 'sharePpm'], 930_999, 'base.parts: sum-not-whole'),
  at(
    'a material that is too much',
    ['materials', 5, 'substances', 1],
    { substanceId: 'water', sharePpm: 1 },
    'materials.5.substances: sum-not-whole',
  ),
  at('a stock that is short', ['stocks', 1, 'parts', 0, 'sharePpm'], 500_000, 'stocks.1.parts: sum-not-whole'),
  at('a wetting oil that is short', ['base', 'wettingOilParts', 0, 'sharePpm'], 999_999, 'base.wettingOilParts: sum-not-whole'),
  at('a part of nothing', ['base', 'parts', 3], { materialId: 'niacinamide', sharePpm: 0 }, 'base.parts.3.sharePpm: zero-share'),
  at('a level of nothing', ['actives', 0, 'levels', 0, 'levelPpm'], 0, 'actives.0.levels.0.levelPpm: zero-share'),
];

export const CHEMISTRY: readonly Planted[] = [
  at(
    'a window upside down',
    ['materials', 5, 'phFresh'],
    { minPhX100: 750, maxPhX100: 400 },
    'materials.5.phFresh: window-reversed',
    'actives.0.materialId: window-too-narrow',
  ),
  at(
    'a window of no width in a judgement',
    ['classJudgements', 0],
    { ...aClassJudgement('clay', 'water'), verdict: 'limit', limit: { minPhX100: 500, maxPhX100: 500 } },
    'classJudgements.0.limit: window-reversed',
  ),
  at(
    'a window one hundredth too narrow',
    ['materials', 5, 'phShelf'],
    { minPhX100: 521, maxPhX100: 600 },
    'actives.0.materialId: window-too-narrow',
  ),
  at(
    'a preservative whose window hardly meets the base',
    ['base', 'preservation', 'preservatives', 0, 'ph', 'maxPhX100'],
    400,
    'base.preservation.preservatives.0.ph: window-too-narrow',
  ),
  at(
    'a table of 12',
    ['materials', 4, 'acidity', 'umolPerKg'],
    noAcidity().umolPerKg.slice(1),
    'materials.4.acidity.umolPerKg: acidity-length',
  ),
  at('a need that falls', ['base', 'acidity', 'umolPerKg', 9], 1639, 'base.acidity.umolPerKg.9: acidity-falls'),
  at(
    'an addition without a table',
    ['materials', 3, 'acidity'],
    undefined,
    'stocks.0.parts.0: acidity-missing',
    'stocks.2.parts.0: acidity-missing',
  ),
  at('a base whose own pH is not surely within its window', ['base', 'ph', 'minPhX100'], 571, 'base.ph: base-ph-outside-window'),
];

export const MATERIALS: readonly Planted[] = [
  at(
    'a powder without oil absorption',
    ['materials', 3, 'oilAbsorptionMgPer100g'],
    undefined,
    'materials.3.oilAbsorptionMgPer100g: oil-absorption-missing',
  ),
  at('a pigment without a number', ['substances', 4, 'colourIndex'], undefined, 'materials.4.substances: colour-index-missing'),
  at('an active of an AHA that avoiders of acids would miss', ['materials', 5, 'tags'], ['aha'], 'materials.5.tags: tag-missing'),
  at('a margin demanded without a figure', ['substances', 5, 'exposureDemanded'], true, 'substances.5.exposure: exposure-missing'),
  {
    name: 'a solubility without any water to dissolve in',
    book: bend(bend(dull, ['substances', 0, 'isWater'], undefined), ['substances', 5, 'solubility'], { neutralMgPer100g: 50_000 }),
    faults: ['substances: no-water-substance'],
  },
  at(
    'an unpreserved stock of unknown life',
    ['stocks', 1, 'preservation'],
    'unpreserved-aqueous',
    'stocks.1.madeHereHours: unpreserved-life-missing',
  ),
  withMore(
    'an unpreserved stock that lives two days',
    {
      stocks: [
        aStock('niacinamide', {
          id: 'wet',
          parts: parts({ niacinamide: 500_000, water: 500_000 }),
          preservation: 'unpreserved-aqueous',
          madeHereHours: 48,
        }),
      ],
    },
    'stocks.3.madeHereHours: unpreserved-life',
  ),
  withMore(
    'a solution made at the bench for a month',
    {
      stocks: [
        aStock('niacinamide', {
          id: 'wet',
          parts: parts({ niacinamide: 500_000, water: 500_000 }),
          preservation: 'preserved',
          madeHereHours: 720,
        }),
      ],
    },
    'stocks.3.madeHereHours: made-here-long',
  ),
  withMore(
    'a dry stock with water',
    { stocks: [aStock('niacinamide', { id: 'wet', parts: parts({ niacinamide: 500_000, water: 500_000 }) })] },
    'stocks.3.preservation: dry-stock-wet',
  ),
  at('a powder added last', ['stocks', 0, 'addedTo'], 'last', 'stocks.0.addedTo: powder-not-in-paste'),
  at('a neat stock that needs heat', ['stocks', 1, 'needsHeat'], true, 'stocks.1.needsHeat: heat-not-premix'),
  withMore(
    'a blend of one',
    { stocks: [aStock('kaolin', { id: 'k2', code: 'K2', addedTo: 'paste', isBlend: true })] },
    'stocks.3.parts: blend-single',
  ),
  withMore(
    'a blend with oil, for no shade',
    {
      stocks: [
        aStock('kaolin', {
          id: 'k2',
          addedTo: 'paste',
          isBlend: true,
          preservation: 'low-water-activity',
          parts: parts({ kaolin: 900_000, oil: 100_000 }),
        }),
      ],
    },
    'stocks.3.parts: blend-not-dry',
    'stocks.3.parts: blend-no-shade',
  ),
  {
    name: 'a blend that is 1 ppm off its shade: the pigment is then left without a stock',
    book: bend(dull, ['stocks', 2, 'parts'], parts({ kaolin: 949_999, 'iron-oxide': 50_001 })),
    faults: ['stocks.2.parts: blend-no-shade', 'shades.1.parts.1.materialId: no-stock'],
  },
  at(
    'a caution for customers at the bench',
    ['stocks', 0, 'staffCautionIds'],
    ['dust', 'eyes'],
    'stocks.0.staffCautionIds.1: caution-wrong-audience',
  ),
];

export const BASE: readonly Planted[] = [
  at('more wetting oil than the base has oil', ['base', 'wettingOilPpm'], 60_001, 'base.wettingOilParts.0: wetting-oil-outside-base'),
  at(
    'a wetting oil that is water',
    ['base', 'wettingOilParts', 0, 'materialId'],
    'water',
    'base.wettingOilParts.0.materialId: wetting-oil-not-oil',
  ),
  at('a ceiling under the allowance', ['base', 'ceilingPpm'], 49_999, 'base.ceilingPpm: ceiling-under-allowance'),
  at('a base that nothing proves', ['base', 'evidenceIds'], [], 'base.evidenceIds: no-evidence'),
  at('a base that is too ionic', ['materials', 1, 'ionicUnitsPerPpm'], 2, 'base.caps.ionicUnits: base-over-cap'),
  {
    name: 'a base with free acid over its cap: half of 6 % at its pKa',
    book: bend(bend(dull, ['substances', 1, 'acid'], { pkaX1000: 5700 }), ['base', 'caps', 'freeAcidPpm'], 29_999),
    faults: ['base.caps.freeAcidPpm: base-over-cap'],
  },
  at('a base that could never be gentle', ['materials', 2, 'irritancyUnitsPerPpm'], 2, 'house.gentleIrritancyUnits: base-over-gentle'),
  withMore(
    'a base over a personal cap',
    { personCaps: [{ id: 'low', materialClass: 'emollient', maxPpm: sharePpm(59_999) }] },
    'personCaps.0.maxPpm: base-over-person-cap',
  ),
  at(
    'a base that holds what an answer excludes',
    ['materials', 1, 'tags'],
    ['nut'],
    'questions.1.options.0.effects.0.tags: base-holds-excluded',
    'questions.1.options.2.effects.0.tags: base-holds-excluded',
  ),
  at('a base over a legal limit', ['limits', 0, 'maxPpm'], 8999, 'base.parts: base-over-limit'),
  {
    name: 'a base over a limit that is still to come',
    book: bend(bend(dull, ['limits', 0, 'maxPpm'], 8999), ['limits', 0, 'fromDay'], '2027-03-01'),
    faults: ['base.parts: base-over-coming-limit'],
  },
  withMore(
    'a base over a pair limit',
    {
      pairJudgements: [
        aPairJudgement('oil', 'phenoxyethanol', { verdict: 'limit', limit: { maxSumPpm: sharePpm(68_999), maxSecondPpm: sharePpm(9000) } }),
      ],
    },
    'pairJudgements.0.limit.maxSumPpm: base-over-pair-limit',
  ),
  withMore('a base that breaks a class rule', { classRules: [aClassRule('water', 'preservative')] }, 'classRules.0: base-breaks-rule'),
  withMore(
    'a base that breaks a class rule outside a pH',
    { classRules: [aClassRule('water', 'preservative', { unlessPhWithin: bend(dull, ['base', 'ph', 'maxPhX100'], 620).base.ph })] },
    'classRules.0: base-breaks-rule',
  ),
  withMore(
    '“never” inside the base',
    { pairJudgements: [aPairJudgement('water', 'oil', { verdict: 'never' })] },
    'pairJudgements.0.verdict: base-pair-never',
  ),
  withMore(
    'classes that may never meet but stand in the base',
    { classJudgements: [aClassJudgement('water', 'emollient', { verdict: 'never' })] },
    'classJudgements.12: base-class-never',
  ),
  at(
    'a challenge test that is none',
    ['base', 'preservation', 'evidenceId'],
    'stability-1',
    'base.preservation.evidenceId: evidence-wrong-kind',
  ),
  at(
    'a preservative diluted under its proof',
    ['base', 'preservation', 'preservatives', 0, 'provenMinPpm'],
    8551,
    'base.preservation.preservatives.0.provenMinPpm: preservative-diluted',
  ),
  at('an area under the whole', ['house', 'exposure', 'areas', 0, 'factorPpm'], 999_999, 'house.exposure.areas.0.factorPpm: out-of-range'),
  at('a tolerance of the whole', ['house', 'bands', 'creamPpm'], 1_000_000, 'house.bands.creamPpm: out-of-range'),
  at('ranking steps of nothing', ['house', 'ranking', 'priceStepMinor'], 0, 'house.ranking.priceStepMinor: out-of-range'),
  at('a preservation without preservative', ['base', 'preservation', 'preservatives'], [], 'base.preservation.preservatives: empty-list'),
];

const acid = anActive('lactic', [aLevel(10_000)], { role: 'adjuster' });
const lactic = {
  substances: [aSubstance('lactic')],
  materials: [aMaterial('lactic', { substances: substancesOf({ lactic: 500_000, water: 500_000 }), kind: 'solution', classes: ['inert'] })],
  stocks: [aStock('lactic', { preservation: 'preserved' })],
};

export const OFFERS: readonly Planted[] = [
  at(
    'a shade of five',
    ['shades', 0, 'parts'],
    parts({ kaolin: 10_000, 'iron-oxide': 1000, niacinamide: 1000, water: 1000, oil: 1000 }),
    'shades.0.parts: shade-too-many-parts',
    'shades.0.parts.1.materialId: no-stock',
    'shades.0.parts.2.materialId: shade-not-powder',
    'shades.0.parts.3.materialId: shade-not-powder',
    'shades.0.parts.3.materialId: no-stock',
    'shades.0.parts.4.materialId: shade-not-powder',
    'shades.0.parts.4.materialId: no-stock',
  ),
  at('a shade beyond the allowance', ['shades', 0, 'parts', 0, 'sharePpm'], 50_001, 'shades.0.parts: over-allowance'),
  at(
    'an active without a stock',
    ['stocks', 1, 'parts', 0, 'materialId'],
    'water',
    'stocks.1.preservation: dry-stock-wet',
    'actives.0.materialId: no-stock',
  ),
  at(
    'a level that is no whole ppm of its stock',
    ['actives', 0, 'strengthPpm'],
    700_000,
    'actives.0.levels.0.levelPpm: share-not-whole',
    'actives.0.levels.1.levelPpm: share-not-whole',
  ),
  at(
    'levels out of order',
    ['actives', 0, 'levels', 1, 'levelPpm'],
    10_000,
    'actives.0.levels.1.levelPpm: levels-not-ascending',
    'scopes.0.actives.0.levelPpm: unknown-level',
  ),
  at(
    'a benefit beyond full',
    ['actives', 0, 'levels', 1, 'benefits', 0, 'benefitMilli'],
    1001,
    'actives.0.levels.1.benefits.0.benefitMilli: benefit-over-whole',
    'actives.0.levels.1.benefits: benefit-not-concave',
  ),
  at(
    'benefits that grow faster',
    ['actives', 0, 'levels', 1, 'benefits', 0, 'benefitMilli'],
    801,
    'actives.0.levels.1.benefits: benefit-not-concave',
  ),
  at(
    'a benefit that begins at the second level',
    ['actives', 0, 'levels', 0, 'benefits'],
    [],
    'actives.0.levels.1.benefits: benefit-not-concave',
  ),
  withMore(
    'an adjuster with a benefit',
    {
      ...lactic,
      actives: [{ ...acid, levels: [aLevel(10_000, { shine: 10 })] }],
      scopes: [aScope(['chalk'], { lactic: 10_000 }, { id: 'scope-2' })],
    },
    'actives.1.levels.0.benefits.0: adjuster-benefit',
  ),
  at('an active that nothing is said of', ['actives', 0, 'claims'], undefined, 'actives.0.claims: claims-missing'),
  withMore('a shade that no scope approves', { shades: [aShade('plain', { kaolin: 5000 })] }, 'shades.2: shade-not-approved'),
  at('a scope that ends below a level', ['scopes', 0, 'actives', 0, 'levelPpm'], 10_000, 'actives.0.levels.1: active-not-approved'),
  at('a jar for nothing', ['jarSizes', 0, 'priceMinor'], 0, 'jarSizes.0.priceMinor: price-zero'),
];

/** 2 % niacinamide under a limit of its own: the usual tolerance of 10 % is narrowed to 5 % near the limit. */
const limitOn = (substanceId: string, maxPpm: number) => {
  const [row] = dull.limits;
  return row?.kind === 'substance'
    ? [{ ...row, id: 'house-limit', maxPpm: sharePpm(maxPpm), substances: row.substances.map((one) => ({ ...one, substanceId })) }]
    : [];
};

export const LAW: readonly Planted[] = [
  withMore(
    'a level that passes only without its tolerance',
    { limits: limitOn('niacinamide', 20_999) },
    'actives.0.levels.1.levelPpm: over-legal-limit',
  ),
  withMore('a level that touches its limit with its tolerance', { limits: limitOn('niacinamide', 21_000) }),
  withMore('a shade powder over a limit', { limits: limitOn('iron-oxide', 900) }, 'shades.1.parts: over-legal-limit'),
  withMore(
    'a level over a limit to come',
    { limits: limitOn('niacinamide', 20_000).map((row) => ({ ...row, fromDay: localDay('2027-03-01') })) },
    'actives.0.levels.1.levelPpm: over-coming-limit',
  ),
  withMore('a limit that is over', { limits: limitOn('niacinamide', 1).map((row) => ({ ...row, untilDay: localDay('2026-11-25') })) }),
  at(
    'dates the wrong way round',
    ['limits', 1],
    { ...dull.limits[1], fromDay: '2026-02-01', untilDay: '2026-02-01' },
    'limits.1.untilDay: dates-reversed',
  ),
  at('a limit for no product', ['limits', 0, 'productKinds'], [], 'limits.0.productKinds: limit-without-kinds'),
  at('a factor of nothing', ['limits', 0, 'substances', 0, 'factorPpm'], 0, 'limits.0.substances.0.factorPpm: out-of-range'),
  at(
    'a restricted substance that another market is silent on',
    ['markets', 1],
    { ...dull.markets[0], id: 'US' },
    'markets.1: no-limit-row',
    'markets.1: colourant-not-listed',
  ),
  at('a pigment that nobody permits', ['limits', 1, 'substanceId'], 'kaolin', 'markets.0: colourant-not-listed'),
  at(
    'nobody who answers',
    ['markets', 0, 'responsiblePerson', 'address'],
    ' ',
    'markets.0.responsiblePerson.address: responsible-person-blank',
  ),
];

export const JUDGEMENTS: readonly Planted[] = [
  withMore('a material and itself', { pairJudgements: [aPairJudgement('oil', 'oil')] }, 'pairJudgements.0: pair-with-itself'),
  withMore(
    'one pair twice, turned round',
    { pairJudgements: [aPairJudgement('oil', 'kaolin'), aPairJudgement('kaolin', 'oil')] },
    'pairJudgements.1: duplicate-pair',
  ),
  withMore('two classes twice', { classJudgements: [aClassJudgement('water', 'clay')] }, 'classJudgements.12: duplicate-pair'),
  withMore(
    'a limit without a bound',
    { pairJudgements: [aPairJudgement('kaolin', 'oil', { verdict: 'limit', limit: {} })] },
    'pairJudgements.0.limit: limit-missing',
  ),
  withMore(
    'a limit that nobody reads',
    { pairJudgements: [aPairJudgement('kaolin', 'oil', { ...limited, verdict: 'fine' })] },
    'pairJudgements.0.limit: limit-on-other-verdict',
  ),
  withMore(
    'a caution without a caution',
    { pairJudgements: [aPairJudgement('kaolin', 'oil', { verdict: 'caution' })] },
    'pairJudgements.0.cautionId: caution-missing',
  ),
  withMore(
    'a caution that nobody speaks',
    { pairJudgements: [aPairJudgement('kaolin', 'oil', { cautionId: 'eyes' })] },
    'pairJudgements.0.cautionId: caution-unspoken',
  ),
  {
    name: 'a pair that is looser than its classes',
    book: {
      ...bend(dull, ['classJudgements', 10], aClassJudgement('clay', 'vitamin', { verdict: 'never' })),
      pairJudgements: [aPairJudgement('niacinamide', 'kaolin')],
    },
    faults: ['pairJudgements.0.overridesClassJudgementId: looser-than-class'],
  },
  {
    name: 'a pair whose limit is wider than that of its classes, which name it the other way round',
    book: {
      ...bend(
        dull,
        ['classJudgements', 10],
        aClassJudgement('clay', 'vitamin', { verdict: 'limit', limit: { maxFirstPpm: sharePpm(20_000) } }),
      ),
      pairJudgements: [
        aPairJudgement('niacinamide', 'kaolin', {
          verdict: 'limit',
          limit: { maxFirstPpm: sharePpm(20_000), maxSecondPpm: sharePpm(20_001) },
        }),
      ],
    },
    faults: ['pairJudgements.0.overridesClassJudgementId: looser-than-class'],
  },
  {
    name: 'an override that nothing proves',
    book: {
      ...bend(dull, ['classJudgements', 10], aClassJudgement('clay', 'vitamin', { verdict: 'never' })),
      pairJudgements: [aPairJudgement('niacinamide', 'kaolin', { overridesClassJudgementId: 'class-clay-vitamin' })],
    },
    faults: ['pairJudgements.0.evidenceId: override-without-evidence'],
  },
  withMore(
    'an override of classes that do not name the pair',
    { pairJudgements: [aPairJudgement('kaolin', 'oil', { overridesClassJudgementId: 'class-iron-vitamin', evidenceId: 'stability-1' })] },
    'pairJudgements.0.overridesClassJudgementId: override-idle',
  ),
  withMore(
    'a rule about what nobody has',
    { classRules: [aClassRule('retinoid', 'vitamin')] },
    'classRules.0.first.materialClass: rule-idle',
  ),
  at(
    'a scope without shades',
    ['scopes', 0, 'shadeIds'],
    [],
    'scopes.0.shadeIds: scope-no-shades',
    'shades.0: shade-not-approved',
    'shades.1: shade-not-approved',
  ),
  withMore(
    'a scope that refuses everything',
    { scopes: [aScope([], {}, { id: 'scope-2', kind: 'refuse' })] },
    'scopes.1: scope-refuses-all',
  ),
  at('a level that the active has not', ['scopes', 0, 'actives', 0, 'levelPpm'], 30_000, 'scopes.0.actives.0.levelPpm: unknown-level'),
  at('a scope for more actives than the base takes', ['scopes', 0, 'mostActivesCount'], 4, 'scopes.0.mostActivesCount: scope-most-actives'),
  at('a scope that nothing proves', ['scopes', 0, 'evidenceIds'], [], 'scopes.0.evidenceIds: no-evidence'),
  withMore('an evidence with the id of another', { evidence: [anEvidence('challenge-1', 'patch')] }, 'evidence.2.id: duplicate-id'),
];

export const SHOP: readonly Planted[] = [
  at('two answers where one is asked', ['questions', 0, 'mostCount'], 2, 'questions.0.mostCount: one-answer-only'),
  at('more answers than there are', ['questions', 1, 'mostCount'], 4, 'questions.1.mostCount: most-over-options'),
  at('a question without answers', ['questions', 1, 'options'], [], 'questions.1.options: empty-list', 'cautions.1: caution-idle'),
  at('a skip beside others', ['questions', 1, 'options', 2, 'exclusive'], false, 'questions.1.options.2.exclusive: skip-not-exclusive'),
  at('two ways to skip', ['questions', 1, 'options', 1, 'isSkip'], true, 'questions.1.options.2.isSkip: several-skips'),
  at(
    'a question that skips itself',
    ['questions', 0, 'options', 0, 'skipsQuestionIds'],
    ['avoid', 'wish'],
    'questions.0.options.0.skipsQuestionIds.1: skips-backwards',
  ),
  at(
    'an exclusion of nothing',
    ['questions', 1, 'options', 0, 'effects', 0, 'tags'],
    [],
    'questions.1.options.0.effects.0.tags: effect-empty',
  ),
  at(
    'a wish of no weight',
    ['questions', 0, 'options', 0, 'effects', 0, 'weightCount'],
    0,
    'questions.0.options.0.effects.0.weightCount: out-of-range',
  ),
  withMore(
    'a concern that nobody can wish for',
    { concerns: [{ id: 'glow', textId: 'concern.shine' }] },
    'concerns.1: concern-never-wished',
  ),
  at(
    'a caution for staff in an answer',
    ['questions', 1, 'options', 2, 'effects', 2, 'cautionId'],
    'dust',
    'questions.1.options.2.effects.2.cautionId: caution-wrong-audience',
    'cautions.1: caution-idle',
  ),
  withMore(
    'cross-contact with what nobody has',
    { crossContacts: [{ tag: 'bee', policy: { kind: 'ask-staff' } }] },
    'crossContacts.0.tag: rule-idle',
  ),
  at('a caution shown nowhere', ['cautions', 0, 'places'], [], 'cautions.0.places: caution-no-place'),
  at(
    'a caution on the label without a short form',
    ['cautions', 0, 'labelTextId'],
    undefined,
    'cautions.0.labelTextId: caution-no-label-text',
  ),
  at('a tick that staff owe', ['cautions', 2, 'mustTick'], true, 'cautions.2.mustTick: must-tick-staff'),
  at('a tick where nobody can tick', ['cautions', 1, 'places'], ['card'], 'cautions.1.places: must-tick-not-at-kiosk'),
  at('staff at the kiosk', ['cautions', 2, 'places'], ['bench', 'kiosk'], 'cautions.2.places: caution-wrong-place'),
  withMore('a caution that nothing owes', { cautions: [aStaffCaution('dust', { id: 'idle' })] }, 'cautions.3: caution-idle'),
  withMore(
    'a caution for a tag that nobody has',
    { cautions: [aCaution('eyes', { id: 'bees', triggers: [{ kind: 'tag', tag: 'bee' }] })] },
    'cautions.3.triggers.0: rule-idle',
  ),
  at('a currency by its sign', ['currency'], '€', 'currency: currency-code'),
  at('a text that is blank', ['texts', 'en', 'caution.eyes'], ' ', 'texts.en.caution.eyes: missing-text'),
  at('no directions for any label', ['texts', 'en', 'label.directions'], '', 'texts.en.label.directions: missing-text'),
  withMore(
    'a text that stands in the prototype of every object',
    {
      concerns: [{ id: 'glow', textId: 'toString' }],
      questions: [
        aQuestion('wish', [anOption('none', { effects: [{ kind: 'wish', concernId: 'glow', weightCount: 1 }] })], { id: 'more' }),
      ],
    },
    'texts.en.toString: missing-text',
  ),
  at('a shade without a name', ['shades', 0, 'name'], {}, 'shades.0.name.en: missing-name'),
  {
    name: 'a second language on sale: names and texts are owed, staff can read English',
    book: {
      ...bend(
        bend(dull, ['languages', 1], 'fr'),
        ['texts', 'fr'],
        Object.fromEntries(Object.entries(dull.texts.en ?? {}).filter(([id]) => id !== 'caution.test')),
      ),
      actives: dull.actives.map((one) => ({ ...one, name: { en: 'a', fr: 'b' } })),
      materials: dull.materials.map((one) => ({ ...one, name: { en: 'a', fr: 'b' } })),
      stocks: dull.stocks.map((one, index) => (index === 1 ? one : { ...one, name: { en: 'a', fr: 'b' } })),
      shades: dull.shades.map((one, index) => (index === 1 ? one : { ...one, name: { en: 'a', fr: 'b' } })),
    },
    faults: ['texts.fr.caution.test: missing-text', 'shades.1.name.fr: missing-name', 'stocks.1.name.fr: missing-staff-name'],
  },
  at('an overage that the vessel swallows', ['vessels', 0, 'lossUg'], 2_000_001, 'jarSizes.0.overageUg: overage-under-loss'),
  at('a vessel that is too small', ['vessels', 0, 'capacityUl'], 51_485, 'jarSizes.0.vesselId: vessel-too-small'),
  at('a vessel that just holds the batch', ['vessels', 0, 'capacityUl'], 51_486),
  at('a label for another jar', ['labelSizes', 0, 'fits'], [], 'jarSizes.0.labelSizeId: label-not-for-size'),
  at(
    'a check weight beyond the scale',
    ['scaleProfiles', 0, 'capacityUg'],
    199_999_999,
    'scaleProfiles.0.checkWeights.1.massUg: check-weight-over-capacity',
  ),
  at('one check weight', ['scaleProfiles', 0, 'checkWeights', 1], undefined, 'scaleProfiles.0.checkWeights: too-few-check-weights'),
  at('a scale without steps', ['scaleProfiles', 0, 'stepUg'], 0, 'scaleProfiles.0.stepUg: out-of-range'),
];
