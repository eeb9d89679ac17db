// Legal limits and markets of the demonstration. An aid: local law and a qualified safety assessor decide.
import type { Dates } from './dates.ts';

const EU = { marketId: 'EU', status: 'from-memory', source: 'Regulation (EC) No 1223/2009' };
const US = { marketId: 'US', status: 'from-memory', source: '21 CFR Part 73' };

const substance = (id: string, { maxPpm, substanceId }: { maxPpm: number; substanceId: string }, origin: Record<string, unknown>, more: Record<string, unknown> = {}) => ({
  id,
  kind: 'substance',
  productKinds: ['rinse-off', 'leave-on'],
  substances: [{ substanceId, factorPpm: 1_000_000 }],
  maxPpm,
  expressedAs: 'as supplied',
  ...origin,
  ...more,
});

const colourant = (id: string, origin: Record<string, unknown>, substanceId: string, conditions: string) => ({ id, kind: 'colourant', substanceId, conditions, ...origin });

export const LIMITS = [
  substance('eu-v-29-phenoxyethanol', { maxPpm: 10_000, substanceId: 'phenoxyethanol' }, { ...EU, source: `${EU.source}, Annex V/29` }),
  substance('eu-aha-lactic', { maxPpm: 25_000, substanceId: 'lactic-acid' }, { ...EU, source: 'SCCNFP/0370/00, position paper on alpha-hydroxy acids (opinion, not law)' }, {
    expressedAs: 'as acid',
    cautionId: 'sun',
  }),
  substance('us-cir-aha-lactic', { maxPpm: 100_000, substanceId: 'lactic-acid' }, { ...US, source: 'Cosmetic Ingredient Review 1998, reaffirmed 2017', status: 'verified' }, {
    expressedAs: 'as acid',
    cautionId: 'sun-us',
  }),
  colourant('eu-iv-77891', { ...EU, source: `${EU.source}, Annex IV` }, 'titanium-dioxide', 'purity of E 171'),
  colourant('eu-iv-77491', { ...EU, source: `${EU.source}, Annex IV` }, 'iron-oxide-red', 'purity of E 172'),
  colourant('eu-iv-77288', { ...EU, source: `${EU.source}, Annex IV`, status: 'verified' }, 'chromium-oxide-green', 'free from chromate ion'),
  colourant('us-73-2575', { ...US, source: '21 CFR 73.2575' }, 'titanium-dioxide', 'good manufacturing practice'),
  colourant('us-73-2250', { ...US, source: '21 CFR 73.2250' }, 'iron-oxide-red', 'As up to 3, Pb up to 10, Hg up to 3 ppm'),
  colourant('us-73-2327', { ...US, source: '21 CFR 73.2327', status: 'verified' }, 'chromium-oxide-green', 'not on lips; external use'),
  colourant('eu-iv-77492', { ...EU, source: `${EU.source}, Annex IV` }, 'iron-oxide-yellow', 'purity of E 172'),
  colourant('us-73-2250-yellow', { ...US, source: '21 CFR 73.2250' }, 'iron-oxide-yellow', 'As up to 3, Pb up to 10, Hg up to 3 ppm'),
  colourant('eu-iv-77499', { ...EU, source: `${EU.source}, Annex IV` }, 'iron-oxide-black', 'purity of E 172'),
  colourant('us-73-2250-black', { ...US, source: '21 CFR 73.2250' }, 'iron-oxide-black', 'As up to 3, Pb up to 10, Hg up to 3 ppm'),
  colourant('eu-iv-77007', { ...EU, source: `${EU.source}, Annex IV`, status: 'verified' }, 'ultramarines', 'good manufacturing practice; all products'),
  colourant('us-73-2725', { ...US, source: '21 CFR 73.2725', status: 'verified' }, 'ultramarines', 'not on lips; As up to 3, Pb up to 20, Hg up to 1 ppm'),
  colourant('eu-iv-77742', { ...EU, source: `${EU.source}, Annex IV` }, 'manganese-violet', 'good manufacturing practice'),
  colourant('us-73-2775', { ...US, source: '21 CFR 73.2775' }, 'manganese-violet', 'good manufacturing practice'),
  colourant('eu-iv-77947', { ...EU, source: `${EU.source}, Annex IV/144`, status: 'verified' }, 'zinc-oxide', 'not where lungs may be exposed'),
  colourant('us-73-2991', { ...US, source: '21 CFR 73.2991' }, 'zinc-oxide', 'good manufacturing practice'),
  colourant('eu-iv-77220', { ...EU, source: `${EU.source}, Annex IV` }, 'calcium-carbonate', 'good manufacturing practice'),
  colourant('us-73-2496', { ...US, source: '21 CFR 73.2496' }, 'mica', 'good manufacturing practice'),
  substance('eu-iii-98-salicylic', { maxPpm: 20_000, substanceId: 'salicylic-acid' }, { ...EU, source: `${EU.source}, Annex III/98`, status: 'verified' }, { expressedAs: 'as acid' }),
  {
    ...substance('eu-iii-24-zinc', { maxPpm: 10_000, substanceId: 'zinc-pca' }, { ...EU, source: `${EU.source}, Annex III/24`, status: 'verified' }, { expressedAs: 'as zinc' }),
    substances: [{ substanceId: 'zinc-pca', factorPpm: 203_297 }],
  },
  {
    ...substance('house-aha-sum', { maxPpm: 12_000, substanceId: 'lactic-acid' }, { ...EU, source: 'safety report of the range: hydroxy acids together (invented)', status: 'house' }, { expressedAs: 'hydroxy acids as lactic acid' }),
    substances: [
      { substanceId: 'lactic-acid', factorPpm: 1_000_000 },
      { substanceId: 'mandelic-acid', factorPpm: 592_047 },
    ],
  },
  substance('us-cir-aha-mandelic', { maxPpm: 100_000, substanceId: 'mandelic-acid' }, { ...US, source: 'by likeness to the review of alpha hydroxy acids, from memory' }, {
    expressedAs: 'as acid',
    cautionId: 'sun-us',
  }),
];

export const marketData = (dates: Dates) =>
  (['EU', 'US'] as const).map((id) => ({
    id,
    productKind: 'rinse-off',
    colourantsListed: id === 'EU' ? 'pigments' : 'all-colouring',
    responsiblePerson: { name: 'Marlpit Lane (invented)', address: '1 Marlpit Lane, Exampleton', contact: 'care@marlpit.example' },
    safetyReport: { id: `safety-${id}-r2`, on: dates.testedOn, assessor: 'safety assessor (invented)', scope: 'Base R2, range 1' },
    notificationReference: `${id}-0000001 (invented)`,
    makerMandate: 'written mandate of the maker (invented)',
  }));
