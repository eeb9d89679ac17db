// The formulator's judgements in the demonstration. Class judgements carry the load; reasons are common practice unless a source is named.
import { ACTIVES } from './actives.data.ts';
import type { Dates } from './dates.ts';
import { SHADES } from './shades.data.ts';

const INVENTED = 'trial jars, invented for the demonstration';
const PRACTICE = 'common practice, no source';

/** first × second, verdict, reason. */
const CLASS_TABLE: readonly (readonly [string, string, string, string, string])[] = [
  ['inert', 'inert', 'fine', 'Neither reacts with the other at these levels', PRACTICE],
  ['inert', 'clay', 'fine', 'Wetted in oil first, clays stand with inert parts', PRACTICE],
  ['inert', 'iron', 'fine', 'Iron oxides are inert to water, acids and alkalis at use levels', PRACTICE],
  ['inert', 'vitamin', 'fine', 'No reaction seen in trial jars', INVENTED],
  ['inert', 'acid', 'fine', 'No reaction seen in trial jars', INVENTED],
  ['inert', 'electrolyte', 'fine', 'The thickener tolerates salts at these levels', INVENTED],
  ['inert', 'anionic-polymer', 'fine', 'Nothing here carries the opposite charge', PRACTICE],
  ['clay', 'clay', 'fine', 'Clays are blended all the time', PRACTICE],
  ['clay', 'iron', 'fine', 'The usual way to colour a clay', PRACTICE],
  ['clay', 'vitamin', 'fine', 'No loss seen over six months', INVENTED],
  ['clay', 'acid', 'caution', 'Clays take up some acid: the pH drifts up in the first days', INVENTED],
  ['clay', 'electrolyte', 'fine', 'No thinning seen', INVENTED],
  ['clay', 'anionic-polymer', 'fine', 'Both carry the same charge', PRACTICE],
  ['iron', 'vitamin', 'fine', 'No change of colour seen', INVENTED],
  ['iron', 'acid', 'fine', 'No change of colour seen at pH 4', INVENTED],
  ['iron', 'electrolyte', 'fine', 'No change seen', INVENTED],
  ['iron', 'anionic-polymer', 'fine', 'No change seen', INVENTED],
  ['vitamin', 'vitamin', 'fine', 'Often used together', PRACTICE],
  ['vitamin', 'acid', 'fine', 'The pH windows decide', PRACTICE],
  ['vitamin', 'electrolyte', 'fine', 'No change seen', INVENTED],
  ['vitamin', 'anionic-polymer', 'fine', 'No change seen', INVENTED],
  ['acid', 'electrolyte', 'fine', 'Buffers are made of them', PRACTICE],
  ['acid', 'anionic-polymer', 'fine', 'The gum holds down to pH 3.3', INVENTED],
  ['electrolyte', 'electrolyte', 'fine', 'Salts of the same buffer', PRACTICE],
  ['electrolyte', 'anionic-polymer', 'fine', 'The gum tolerates salts at these levels', INVENTED],
  ['iron', 'iron', 'fine', 'Iron oxides are blended all the time', PRACTICE],
  ['acid', 'acid', 'caution', 'Two acids add up: the caps on free acid and on irritancy decide', PRACTICE],
  ['anionic-polymer', 'anionic-polymer', 'fine', 'Both carry the same charge', PRACTICE],
  ['acid', 'acid-sensitive', 'never', 'Acids destroy ultramarines: the colour goes and it smells of rotten eggs', 'from memory'],
  ['acid', 'acid-consumer', 'never', 'Zinc oxide and carbonates eat the acid and the pH rises', 'textbook, from memory'],
  ['acid', 'carbonate', 'never', 'Gas forms in the jar', 'textbook, from memory'],
  ['acid', 'adsorbent', 'never', 'Charcoal takes the acid up', 'from memory'],
  ['adsorbent', 'polyphenol', 'never', 'Charcoal takes up what an extract brings at low dose', 'from memory'],
  ['adsorbent', 'iron', 'fine', 'The iron oxide gives the colour, the charcoal takes up oil', INVENTED],
  ['adsorbent', 'botanical', 'never', 'Charcoal takes up what an extract brings at low dose', 'from memory'],
  ['adsorbent', 'vitamin', 'limit', 'Charcoal takes up part of a vitamin; trial jars up to this level', INVENTED],
  ['iron', 'polyphenol', 'never', 'Tannins turn blue-black with iron', 'from memory'],
  ['acid', 'polyphenol', 'fine', 'The pH windows decide', PRACTICE],
  ...(['clay', 'inert', 'vitamin', 'electrolyte', 'anionic-polymer', 'iron', 'adsorbent', 'botanical', 'polyphenol'] as const).map(
    (other) => ['acid-sensitive', other, 'fine', 'Ultramarines fear acids only', PRACTICE] as const,
  ),
  ...(['inert', 'clay', 'electrolyte', 'anionic-polymer'] as const).map((other) => ['adsorbent', other, 'fine', 'No change seen in trial jars', INVENTED] as const),
  ...(['inert', 'clay', 'iron', 'vitamin', 'acid', 'electrolyte', 'anionic-polymer', 'botanical', 'polyphenol'] as const).map(
    (other) => ['botanical', other, 'fine', 'No change of colour or smell in trial jars', INVENTED] as const,
  ),
  ...(['inert', 'clay', 'vitamin', 'electrolyte', 'anionic-polymer', 'polyphenol'] as const).map(
    (other) => ['polyphenol', other, 'fine', 'Browns a little over six months, accepted', INVENTED] as const,
  ),
];

type Grounds = (reason: string, source: string) => { reason: string; source: string; by: string; on: Dates['judgedOn'] };

const pairJudgements = (grounds: Grounds) => [
  {
    id: 'lactic-illite',
    firstMaterialId: 'lactic-acid-50',
    secondMaterialId: 'illite',
    verdict: 'limit',
    limit: { maxFirstPpm: 20_000, maxSumPpm: 25_000 },
    ...grounds('Illite takes up acid: above this the pH rises out of the window within a month', INVENTED),
  },
  ...['iron-oxide-red', 'iron-oxide-yellow', 'iron-oxide-black'].map((iron) => ({
    id: `salicylic-${iron}`,
    firstMaterialId: 'salicylic-acid-20',
    secondMaterialId: iron,
    verdict: 'never',
    ...grounds('Salicylic acid turns violet with iron', 'from memory'),
  })),
  {
    id: 'zinc-tea',
    firstMaterialId: 'zinc-pca',
    secondMaterialId: 'camellia-sinensis-leaf-extract-10',
    verdict: 'never',
    ...grounds('Zinc and tannins fall out as grains', 'from memory'),
  },
  {
    id: 'panthenol-mandelic',
    firstMaterialId: 'panthenol',
    secondMaterialId: 'mandelic-acid-40',
    verdict: 'limit',
    limit: { maxFirstPpm: 7_500 },
    ...grounds('Above this the paste stays tacky on the skin beside the propanediol of the acid stock', INVENTED),
  },
  {
    id: 'zinc-hyaluronate',
    firstMaterialId: 'zinc-pca',
    secondMaterialId: 'sodium-hyaluronate-1',
    verdict: 'limit',
    limit: { maxSecondPpm: 10_000 },
    ...grounds('Zinc draws hyaluronate into strings; trial jars with half the gel stayed smooth', INVENTED),
  },
  {
    id: 'urea-tea',
    firstMaterialId: 'urea',
    secondMaterialId: 'camellia-sinensis-leaf-extract-10',
    verdict: 'limit',
    limit: { maxPhX100: 600 },
    ...grounds('Urea lets the pH rise in store, and tea browns as it rises: only where it starts well below six', 'from memory'),
  },
  {
    id: 'lactic-slate',
    firstMaterialId: 'lactic-acid-50',
    secondMaterialId: 'montmorillonite',
    verdict: 'limit',
    limit: { maxFirstPpm: 10_000, minPhX100: 380, maxPhX100: 520 },
    ...grounds('An exchanging clay takes up acid for weeks; trial jars held at half the level', INVENTED),
  },
  {
    id: 'mandelic-kaolin',
    firstMaterialId: 'mandelic-acid-40',
    secondMaterialId: 'kaolin',
    verdict: 'fine',
    overridesClassJudgementId: 'clay-with-acid',
    evidenceId: 'stability-r2',
    ...grounds('Kaolin takes up next to none of it: the pH stood for 12 weeks', INVENTED),
  },
];

const ACIDS = ['lactic-acid', 'mandelic-acid', 'salicylic-acid'];
const MINERAL_SHADES = SHADES.map(({ id }) => id).filter((id) => id !== 'tide-line');
const upToHighest = (actives: typeof ACTIVES) =>
  actives.map(({ id, levels }) => ({ activeId: id, levelPpm: Math.max(...levels.map(({ levelPpm }) => levelPpm)) }));

const approvals = (dates: Dates) => ({
      evidence: [
        { id: 'stability-r2', kind: 'stability', on: dates.testedOn, result: 'passed: 12 weeks at 40 °C, base and three shades (invented)' },
        { id: 'stability-tide', kind: 'stability', on: dates.testedOn, result: 'passed: 12 weeks at 25 °C, blue unchanged at pH 6.3 and above (invented)' },
        { id: 'stability-acids', kind: 'stability', on: dates.testedOn, result: 'passed: 12 weeks at 40 °C, each acid at its highest level in three shades (invented)' },
        { id: 'challenge-r2', kind: 'challenge', on: dates.testedOn, result: 'criterion A at 0.80 % phenoxyethanol with 3 % powder (invented)' },
        { id: 'patch-r2', kind: 'patch', on: dates.testedOn, result: 'passed: 50 people, 48 hours, base with each acid at its highest level (invented)' },
        { id: 'drawdown-r2', kind: 'drawdown', on: dates.testedOn, result: 'fourteen shades drawn down wet and dry (invented)' },
        { id: 'assessment-r2', kind: 'assessment', on: dates.testedOn, result: 'safety report for the range (invented)' },
      ],
      scopes: [
        {
          id: 'range-1',
          kind: 'approve',
          shadeIds: MINERAL_SHADES,
          actives: upToHighest(ACTIVES),
          mostActivesCount: 3,
          evidenceIds: ['stability-r2', 'stability-acids', 'challenge-r2', 'patch-r2', 'drawdown-r2'],
          reason: 'Bracketed by the test jars of the range',
          by: 'formulator',
          on: dates.judgedOn,
        },
        {
          id: 'range-blue',
          kind: 'approve',
          shadeIds: ['tide-line'],
          actives: upToHighest(ACTIVES.filter(({ id }) => !ACIDS.includes(id))),
          mostActivesCount: 2,
          evidenceIds: ['stability-tide', 'challenge-r2', 'drawdown-r2'],
          reason: 'Ultramarine was tested without acids, with up to two actives',
          by: 'formulator',
          on: dates.judgedOn,
        },
        {
          id: 'no-three-soothers-on-charcoal',
          kind: 'refuse',
          shadeIds: ['peat-cut'],
          actives: [{ activeId: 'bisabolol', levelPpm: 1_000 }, { activeId: 'allantoin', levelPpm: 1_000 }],
          mostActivesCount: 3,
          evidenceIds: ['stability-r2'],
          reason: 'Charcoal took up most of the bisabolol within four weeks',
          by: 'formulator',
          on: dates.judgedOn,
        },
        {
          id: 'no-full-acid-on-rust',
          kind: 'refuse',
          shadeIds: ['rust-seam'],
          actives: [{ activeId: 'lactic-acid', levelPpm: 10_000 }],
          mostActivesCount: 3,
          evidenceIds: ['stability-r2'],
          reason: 'The test jar turned darker at 1 % lactic acid',
          by: 'formulator',
          on: dates.judgedOn,
        },
      ],
});

export const judgementData = (dates: Dates) => {
  const grounds: Grounds = (reason, source) => ({ reason, source, by: 'formulator', on: dates.judgedOn });
  return {
    classJudgements: CLASS_TABLE.map(([firstClass, secondClass, verdict, reason, source]) => ({
      id: `${firstClass}-with-${secondClass}`,
      firstClass,
      secondClass,
      verdict,
      ...(verdict === 'limit' ? { limit: { maxFirstPpm: 5_000 } } : {}),
      ...(verdict === 'caution' ? { cautionId: 'staff-acid-clay' } : {}),
      ...grounds(reason, source),
    })),
    pairJudgements: pairJudgements(grounds),
    classRules: [
      {
        id: 'vitamin-outside-ph-4-to-8',
        first: { materialClass: 'vitamin', abovePpm: 5_000 },
        unlessPhWithin: { minPhX100: 400, maxPhX100: 800 },
        then: { kind: 'refuse' },
        ...grounds('Niacinamide and panthenol hydrolyse in strong acid or alkali', PRACTICE),
      },
    ],
    ...approvals(dates),
  };
};
