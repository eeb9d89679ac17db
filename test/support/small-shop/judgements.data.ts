// The formulator's judgements in the demonstration. Class judgements carry the load; reasons are common practice unless a source is named.
import type { Dates } from './dates.ts';

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
];

export const judgementData = (dates: Dates) => {
  const grounds = (reason: string, source: string) => ({ reason, source, by: 'formulator', on: dates.judgedOn });
  return {
    classJudgements: CLASS_TABLE.map(([firstClass, secondClass, verdict, reason, source]) => ({
      id: `${firstClass}-with-${secondClass}`,
      firstClass,
      secondClass,
      verdict,
      ...(verdict === 'caution' ? { cautionId: 'staff-acid-clay' } : {}),
      ...grounds(reason, source),
    })),
    pairJudgements: [
      {
        id: 'lactic-illite',
        firstMaterialId: 'lactic-acid-50',
        secondMaterialId: 'illite',
        verdict: 'limit',
        limit: { maxFirstPpm: 20_000, maxSumPpm: 25_000 },
        ...grounds('Illite takes up acid: above this the pH rises out of the window within a month', INVENTED),
      },
    ],
    classRules: [
      {
        id: 'vitamin-outside-ph-4-to-8',
        first: { materialClass: 'vitamin', abovePpm: 5_000 },
        unlessPhWithin: { minPhX100: 400, maxPhX100: 800 },
        then: { kind: 'refuse' },
        ...grounds('Niacinamide and panthenol hydrolyse in strong acid or alkali', PRACTICE),
      },
    ],
    evidence: [
      { id: 'stability-r2', kind: 'stability', on: dates.testedOn, result: 'passed: 12 weeks at 40 °C, base and three shades (invented)' },
      { id: 'challenge-r2', kind: 'challenge', on: dates.testedOn, result: 'criterion A at 0.80 % phenoxyethanol with 3 % powder (invented)' },
      { id: 'assessment-r2', kind: 'assessment', on: dates.testedOn, result: 'safety report for the range (invented)' },
    ],
    scopes: [
      {
        id: 'range-1',
        kind: 'approve',
        shadeIds: ['chalk-down', 'fern-bank', 'rust-seam'],
        actives: [
          { activeId: 'niacinamide', levelPpm: 20_000 },
          { activeId: 'panthenol', levelPpm: 15_000 },
          { activeId: 'lactic-acid', levelPpm: 10_000 },
          { activeId: 'citrate-buffer', levelPpm: 2_000 },
        ],
        mostActivesCount: 2,
        evidenceIds: ['stability-r2', 'challenge-r2'],
        reason: 'Bracketed by the test jars of the range',
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
  };
};
