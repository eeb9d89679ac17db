// Requests for reasons that no plain mask of the demonstration meets: what only a foreign client asks for, what a sound rulebook does not
// hold until a draft changes it, and what bench or shelf bring.
import type { ExampleRequest } from '#app/office/examples/example-table.ts';
import type { FindingCode } from '#lib/base/finding.ts';

interface Rare {
  readonly because: readonly string[];
  readonly request: ExampleRequest;
}

const FERN = 'fern-bank|niacinamide@20000+panthenol@3000';
const CHALK = 'chalk-down|panthenol@3000';

/** Chalk Down without its blend: kaolin by itself and titanium dioxide from a premix that is thinned with it. */
const unblended = { path: ['stocks', 'chalk-down-blend'] };
const titaniumPremix = (...parts: readonly (readonly [string, number])[]) => ({
  path: ['stocks', 'titanium-20', 'parts'],
  value: parts.map(([materialId, sharePpm]) => ({ materialId, sharePpm })),
});

export const RARE: Readonly<Partial<Record<FindingCode, Rare>>> = {
  'unknown-shade': { because: ['asked for by a name that is not in the rules'], request: { variant: 'no-such-shade|' } },
  'unknown-active': { because: ['asked for by a name that is not in the rules'], request: { variant: 'chalk-down|no-such-active@1000' } },
  'unknown-level': { because: ['asked for at a level that nobody entered'], request: { variant: 'chalk-down|niacinamide@12345' } },
  'too-many-actives': {
    because: ['four actives where the base takes three'],
    request: { variant: 'chalk-down|allantoin@1000+betaine@10000+niacinamide@10000+panthenol@3000' },
  },
  'repeated-part': {
    because: ['the same active at two levels'],
    request: { variant: 'chalk-down|niacinamide@10000+niacinamide@20000' },
  },
  'no-stock': {
    because: ['a draft takes the only stock of ectoin away'],
    request: { variant: 'chalk-down|ectoin@5000', changes: [{ path: ['stocks', 'ectoin-neat'] }] },
  },
  'stock-share-not-whole': {
    because: ['a draft thins panthenol to 70 %, of which 0.30 % is no whole number of grains'],
    request: {
      variant: CHALK,
      changes: [{ path: ['stocks', 'panthenol-75', 'parts'], value: [{ materialId: 'panthenol', sharePpm: 700_000 }, { materialId: 'water', sharePpm: 300_000 }] }],
    },
  },
  'netting-below-zero': {
    because: ['a draft takes the blend away and thins the premix so far that it brings more kaolin than the shade wants'],
    request: { variant: CHALK, changes: [unblended, titaniumPremix(['titanium-dioxide', 50_000], ['kaolin', 950_000])] },
  },
  'netting-not-whole': {
    because: ['a draft takes the blend away and mixes the premix so that its kaolin is no whole number of grains'],
    request: { variant: CHALK, changes: [unblended, titaniumPremix(['titanium-dioxide', 200_000], ['kaolin', 799_999], ['illite', 1])] },
  },
  'not-approved': {
    because: ['a draft takes every approval away'],
    request: { variant: CHALK, changes: [{ path: ['scopes'], value: [] }] },
  },
  'pair-not-judged': {
    because: ['a draft takes every judgement of classes away'],
    request: { variant: CHALK, changes: [{ path: ['classJudgements'], value: [] }] },
  },
  'ph-outside-table': {
    because: ['a draft makes the base so alkaline, and its range so wide, that the answer lies above everything that was titrated'],
    request: {
      variant: 'chalk-down|',
      changes: [
        { path: ['base', 'acidity', 'umolPerKg'], value: Array.from({ length: 13 }, () => -90_000) },
        { path: ['base', 'ph'], value: { minPhX100: 330, maxPhX100: 1_000 } },
        { path: ['materials', 'kaolin', 'phFresh'], value: { minPhX100: 300, maxPhX100: 1_000 } },
      ],
    },
  },
  'acidity-missing': {
    because: ['a draft takes the acidity of illite away'],
    request: { variant: 'fern-bank|', changes: [{ path: ['materials', 'illite', 'acidity'] }] },
  },
  'exposure-no-figure': {
    because: ['a draft takes the safety figures of panthenol away'],
    request: { variant: CHALK, changes: [{ path: ['substances', 'panthenol', 'exposure'] }] },
  },
  'preservative-ph': {
    because: ['a draft proves the preservative from pH 6.50 upward only'],
    request: { variant: CHALK, changes: [{ path: ['base', 'preservation', 'preservatives', '0', 'ph'], value: { minPhX100: 650, maxPhX100: 850 } }] },
  },
  'preservative-undissociated': {
    because: ['a draft asks for more of an acid preservative than stays active at this pH'],
    request: {
      variant: CHALK,
      changes: [
        { path: ['base', 'preservation', 'preservatives', '0', 'weakAcid'], value: { apparentPkaX1000: 4_200, minUndissociatedPpm: 2_000 } },
      ],
    },
  },
  'preservative-too-low': {
    because: ['a draft counts the preservative as proven from 0.88 % upward only'],
    request: { variant: CHALK, changes: [{ path: ['base', 'preservation', 'preservatives', '0', 'provenMinPpm'], value: 8_800 }] },
  },
  'swelling-clay-beyond-challenge': {
    because: ['a draft counts the challenge test as covering 0.5 % of swelling clay only'],
    request: { variant: 'slate-ledge|', changes: [{ path: ['base', 'preservation', 'testedSwellingClayPpm'], value: 5_000 }] },
  },
  'law-colourant': {
    because: ['a draft counts charcoal as what gives the colour; the US lists none'],
    request: { variant: 'peat-cut|', changes: [{ path: ['materials', 'charcoal-powder', 'colours'], value: true }] },
  },
  'over-capacity': { because: ['the only scale bears 20 g'], request: { variant: FERN, bench: 'small' } },
  'vessel-too-small': {
    because: ['a draft gives this jar a beaker of 40 ml'],
    request: { variant: FERN, changes: [{ path: ['vessels', 'beaker-150', 'capacityUl'], value: 40_000 }] },
  },
  'label-too-long': {
    because: ['a draft chooses a label that holds 120 letters of ingredients'],
    request: { variant: FERN, changes: [{ path: ['labelSizes', 'label-90x50', 'ingredientsCharCount'], value: 120 }] },
  },
  'no-scale': { because: ['no scale stands on the bench'], request: { variant: FERN, bench: 'none' } },
  'no-lot': { because: ['the shelf has no niacinamide'], request: { variant: FERN, shelf: { kind: 'without', stockId: 'niacinamide-neat' } } },
  'lot-life-short': { because: ['every lot ends in ten days'], request: { variant: FERN, shelf: { kind: 'lives', days: 10 } } },
  stopped: { because: ['the shade is on stop'], request: { variant: FERN, shelf: { kind: 'stopped', shadeId: 'fern-bank' } } },
  'base-lot-ph': { because: ['the only lot of cream came in at pH 8.90'], request: { variant: FERN, shelf: { kind: 'cream-at', phX100: 890 } } },
  'cross-contact': {
    because: ['somebody reacts to oats and milk', 'a draft sends everybody who avoids oats to the staff'],
    request: { variant: CHALK, says: { react: ['react-milk-oats'] }, changes: [{ path: ['crossContacts'], value: [] }] },
  },
};
