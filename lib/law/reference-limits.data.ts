// Rows that the editor of limits offers for a face mask. They decide nothing: the rulebook's own rows do.
// "verified": the figure was read in the text or an official copy of it; "from-memory": look it up before release. State: Regulation (EU) 2026/78.
import type { MarketId, ProductKind } from '../rulebook/language.ts';
import type { FactorPpm, SharePpm } from '../units/share.ts';
import { factorPpm, sharePpm, WHOLE_PPM } from '../units/share.ts';
import type { LocalDay } from '../units/time.ts';
import { localDay } from '../units/time.ts';
import { equivalentFactor } from './equivalent-factor.ts';
import { EQUIVALENT_ROWS } from './factors.data.ts';

interface ReferenceOrigin {
  readonly id: string;
  readonly marketId: MarketId;
  readonly source: string;
  readonly status: 'verified' | 'from-memory';
  /** What the row leaves to the assessor. */
  readonly note?: string;
}

export interface ReferenceLimit extends ReferenceOrigin {
  readonly kind: 'substance';
  readonly substances: readonly { readonly name: string; readonly factorPpm: FactorPpm }[];
  readonly productKinds: readonly ProductKind[];
  /** 0 = not permitted. */
  readonly maxPpm: SharePpm;
  readonly expressedAs: string;
  readonly fromDay?: LocalDay;
  /** The warning that the entry demands, in English. */
  readonly warning?: string;
}

export interface ReferenceColourant extends ReferenceOrigin {
  readonly kind: 'colourant';
  readonly name: string;
  readonly colourIndex: string;
  readonly conditions: string;
}

const BOTH: readonly ProductKind[] = ['rinse-off', 'leave-on'];
const RINSE: readonly ProductKind[] = ['rinse-off'];
const LEAVE: readonly ProductKind[] = ['leave-on'];

/** A name as such; salts and esters take their factor from the table of equivalents. */
const asSuch = (...names: readonly string[]) => names.map((name) => ({ name, factorPpm: factorPpm(WHOLE_PPM) }));
const converted = (...names: readonly string[]) =>
  EQUIVALENT_ROWS.filter((one) => names.includes(one.name)).map(({ name, factorPpm: factor }) => ({ name, factorPpm: factor }));
/** Parabens are limited as 4-hydroxybenzoic acid, 138.122 g/mol. */
const paraben = (name: string, molarMassMgPerMol: number) => ({ name, factorPpm: equivalentFactor(138_122, molarMassMgPerMol) });

type Rest = Partial<Pick<ReferenceLimit, 'fromDay' | 'warning' | 'note'>>;
type Row = readonly [
  entry: string,
  substances: ReferenceLimit['substances'],
  kinds: readonly ProductKind[],
  max: number,
  as: string,
  status: ReferenceOrigin['status'],
  rest?: Rest,
];

const eu = ([entry, substances, productKinds, max, expressedAs, status, rest = {}]: Row): ReferenceLimit => ({
  id: `eu-${entry.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-')}-${productKinds.length === 2 ? 'all' : productKinds.join('-')}`,
  kind: 'substance',
  marketId: 'EU',
  source: `Regulation (EC) No 1223/2009, Annex ${entry}`,
  status,
  substances,
  productKinds,
  maxPpm: sharePpm(max),
  expressedAs,
  ...rest,
});

const UNDER_3 = { warning: 'Not to be used for children under 3 years of age' } as const;
const FROM_2025_02 = { fromDay: localDay('2025-02-01') } as const;
const FACE_CREAM = { ...FROM_2025_02, note: 'The entry names face cream; the safety assessor says whether it binds a mask.' } as const;

const preservatives: readonly ReferenceLimit[] = [
  eu(['V/1', [...asSuch('BENZOIC ACID'), ...converted('SODIUM BENZOATE')], RINSE, 25_000, 'as acid', 'verified']),
  eu(['V/1', [...asSuch('BENZOIC ACID'), ...converted('SODIUM BENZOATE')], LEAVE, 5000, 'as acid', 'verified']),
  eu(['V/1a', converted('POTASSIUM BENZOATE'), BOTH, 5000, 'as acid', 'verified']),
  eu(['V/2', asSuch('PROPIONIC ACID'), BOTH, 20_000, 'as acid', 'verified']),
  eu([
    'V/3',
    [...asSuch('SALICYLIC ACID'), ...converted('SODIUM SALICYLATE')],
    BOTH,
    5000,
    'as acid',
    'verified',
    { ...UNDER_3, note: 'As preservative; for other uses see III/98.' },
  ]),
  eu(['V/4', [...asSuch('SORBIC ACID'), ...converted('POTASSIUM SORBATE')], BOTH, 6000, 'as acid', 'verified']),
  eu(['V/13', [...asSuch('DEHYDROACETIC ACID'), ...converted('SODIUM DEHYDROACETATE')], BOTH, 6000, 'as acid', 'from-memory']),
  eu(['V/29', asSuch('PHENOXYETHANOL'), BOTH, 10_000, 'as such', 'from-memory']),
  eu(['V/34', asSuch('BENZYL ALCOHOL'), BOTH, 10_000, 'as such', 'from-memory']),
  eu(['V/50', asSuch('CHLORPHENESIN'), BOTH, 3000, 'as such', 'from-memory']),
  eu(['V/57', asSuch('METHYLISOTHIAZOLINONE'), RINSE, 15, 'as such', 'from-memory', { note: 'Never together with V/39.' }]),
  eu(['V/57', asSuch('METHYLISOTHIAZOLINONE'), LEAVE, 0, 'as such', 'from-memory']),
  eu([
    'V/39',
    asSuch('METHYLCHLOROISOTHIAZOLINONE'),
    RINSE,
    15,
    'as the 3:1 mixture',
    'from-memory',
    { note: 'Count both parts of the mixture; never together with V/57.' },
  ]),
  eu(['V/39', asSuch('METHYLCHLOROISOTHIAZOLINONE'), LEAVE, 0, 'as the 3:1 mixture', 'from-memory']),
  eu(['V/12 methyl', [paraben('METHYLPARABEN', 152_149)], BOTH, 4000, 'as acid', 'from-memory']),
  eu(['V/12 ethyl', [paraben('ETHYLPARABEN', 166_176)], BOTH, 4000, 'as acid', 'from-memory']),
  eu(['V/12a', [paraben('PROPYLPARABEN', 180_203), paraben('BUTYLPARABEN', 194_230)], BOTH, 1400, 'as acid, sum', 'from-memory']),
  eu([
    'V/12 and 12a',
    [
      paraben('METHYLPARABEN', 152_149),
      paraben('ETHYLPARABEN', 166_176),
      paraben('PROPYLPARABEN', 180_203),
      paraben('BUTYLPARABEN', 194_230),
    ],
    BOTH,
    8000,
    'as acid, sum',
    'from-memory',
  ]),
  eu([
    'V/54',
    asSuch('BENZALKONIUM CHLORIDE'),
    BOTH,
    1000,
    'as benzalkonium chloride',
    'from-memory',
    { note: 'Cationic: clays adsorb it.' },
  ]),
  eu(['V/42', asSuch('CHLORHEXIDINE'), BOTH, 3000, 'as chlorhexidine', 'from-memory', { note: 'Cationic: clays adsorb it.' }]),
];

const restricted: readonly ReferenceLimit[] = [
  eu(['III/24', converted('ZINC PCA', 'ZINC ACETATE', 'ZINC CHLORIDE', 'ZINC GLUCONATE'), BOTH, 10_000, 'as zinc', 'verified']),
  eu([
    'III/98',
    [...asSuch('SALICYLIC ACID'), ...converted('SODIUM SALICYLATE')],
    BOTH,
    20_000,
    'as acid',
    'verified',
    { ...UNDER_3, note: 'Counts any use of salicylic acid.' },
  ]),
  eu([
    'III/12',
    asSuch('HYDROGEN PEROXIDE'),
    BOTH,
    40_000,
    'as hydrogen peroxide',
    'verified',
    {
      warning: 'Contains hydrogen peroxide. Avoid contact with eyes. Rinse immediately if product comes into contact with them.',
    },
  ]),
  eu(['III/4', asSuch('AMMONIA'), BOTH, 60_000, 'as ammonia', 'verified', { note: 'Above 2 % the label says "Contains ammonia".' }]),
  eu([
    'III/57',
    converted('STRONTIUM CHLORIDE'),
    BOTH,
    21_000,
    'as strontium',
    'verified',
    { warning: 'Contains strontium chloride. Frequent use by children is not advisable.' },
  ]),
  eu(['III/325', asSuch('BHT'), BOTH, 8000, 'as such', 'verified']),
  eu(['III/22', asSuch('RESORCINOL'), BOTH, 0, 'as such', 'verified']),
  eu(['III/14', asSuch('HYDROQUINONE'), BOTH, 0, 'as such', 'verified']),
  eu(['III/373', asSuch('GENISTEIN'), BOTH, 70, 'as such', 'verified', FROM_2025_02]),
  eu(['III/374', asSuch('DAIDZEIN'), BOTH, 200, 'as such', 'verified', FROM_2025_02]),
  eu(['III/375', asSuch('KOJIC ACID'), BOTH, 10_000, 'as such', 'verified', FROM_2025_02]),
  eu([
    'III/376',
    [...asSuch('RETINOL'), ...converted('RETINYL PALMITATE', 'RETINYL ACETATE')],
    BOTH,
    3000,
    'as retinol equivalent',
    'verified',
    {
      fromDay: localDay('2025-11-01'),
      warning: 'Contains Vitamin A. Consider your daily intake before use',
    },
  ]),
  eu(['III/377', asSuch('ALPHA-ARBUTIN'), BOTH, 20_000, 'as such', 'verified', FACE_CREAM]),
  eu(['III/378', asSuch('ARBUTIN'), BOTH, 70_000, 'as such', 'verified', FACE_CREAM]),
  eu(['III/380', asSuch('HEXYL SALICYLATE'), RINSE, 5000, 'as such', 'verified', { ...UNDER_3, fromDay: localDay('2026-05-01') }]),
  eu(['III/380', asSuch('HEXYL SALICYLATE'), LEAVE, 3000, 'as such', 'verified', { ...UNDER_3, fromDay: localDay('2026-05-01') }]),
  eu(['III/324', asSuch('METHYL SALICYLATE'), BOTH, 600, 'as such', 'verified', { note: 'Not for children under 6 years.' }]),
  eu(['III/154', asSuch('MYROXYLON PEREIRAE OIL'), BOTH, 4000, 'as such', 'verified']),
  eu(['III/157', asSuch('ROSE KETONES'), BOTH, 200, 'as such', 'verified']),
  eu(['III/73', asSuch('ISOEUGENOL'), BOTH, 200, 'as such', 'verified']),
  eu(['III/72', asSuch('HYDROXYCITRONELLAL'), BOTH, 10_000, 'as such', 'verified']),
  eu(['III/89', asSuch('METHYL 2-OCTYNOATE'), BOTH, 100, 'as such', 'verified']),
];

type ColourRow = readonly [colourIndex: string, name: string, conditions: string, status: ReferenceOrigin['status']];

const euColour = ([colourIndex, name, conditions, status]: ColourRow): ReferenceColourant => ({
  id: `eu-ci-${colourIndex.replace(':', '-')}`,
  kind: 'colourant',
  marketId: 'EU',
  source: `Regulation (EC) No 1223/2009, Annex IV, CI ${colourIndex}`,
  status,
  name,
  colourIndex,
  conditions,
});

const euColourants: readonly ReferenceColourant[] = (
  [
    ['77004', 'ALUMINUM SILICATE', 'all products', 'from-memory'],
    ['77007', 'ULTRAMARINES', 'all products', 'verified'],
    ['77015', 'ALUMINUM SILICATE COLOURED BY FERRIC OXIDE', 'all products', 'from-memory'],
    ['77120', 'BARIUM SULFATE', 'all products', 'from-memory'],
    ['77163', 'BISMUTH OXYCHLORIDE', 'all products', 'from-memory'],
    ['77220', 'CALCIUM CARBONATE', 'all products', 'from-memory'],
    ['77231', 'CALCIUM SULFATE', 'all products', 'from-memory'],
    ['77266', 'CARBON BLACK', 'purity above 97 %; PAH at most 500 ppb', 'verified'],
    ['77267', 'CHARCOAL, BONE', 'all products', 'from-memory'],
    ['77268:1', 'VEGETABLE CARBON', 'purity as E 153', 'from-memory'],
    ['77288', 'CHROMIUM OXIDE GREENS', 'free from chromate ion', 'verified'],
    ['77289', 'CHROMIUM HYDROXIDE GREEN', 'free from chromate ion', 'from-memory'],
    ['77489', 'IRON OXIDES', 'ferrous oxide', 'from-memory'],
    ['77491', 'IRON OXIDES', 'purity as E 172', 'from-memory'],
    ['77492', 'IRON OXIDES', 'purity as E 172', 'from-memory'],
    ['77499', 'IRON OXIDES', 'purity as E 172', 'from-memory'],
    ['77510', 'FERRIC FERROCYANIDE', 'free from cyanide ions', 'from-memory'],
    ['77713', 'MAGNESIUM CARBONATE', 'all products', 'from-memory'],
    ['77742', 'MANGANESE VIOLET', 'all products', 'from-memory'],
    ['77745', 'MANGANESE PHOSPHATE', 'all products', 'from-memory'],
    ['77891', 'TITANIUM DIOXIDE', 'purity as E 171; powders with fine particles only as III/321', 'from-memory'],
    ['77947', 'ZINC OXIDE', 'not where the lungs may be exposed', 'verified'],
  ] as const
).map(euColour);

type UsRow = readonly [section: string, name: string, colourIndex: string, status: ReferenceOrigin['status']];

/** Sections of 21 CFR that permit external use at good manufacturing practice; clays and charcoal have none. */
const usColour = ([section, name, colourIndex, status]: UsRow): ReferenceColourant => ({
  id: `us-${section.replace('.', '-')}-${colourIndex}`,
  kind: 'colourant',
  marketId: 'US',
  source: `21 CFR ${section}`,
  status,
  name,
  colourIndex,
  conditions: 'externally applied cosmetics, good manufacturing practice',
});

const usColourants: readonly ReferenceColourant[] = (
  [
    ['73.2162', 'BISMUTH OXYCHLORIDE', '77163', 'verified'],
    ['73.2250', 'IRON OXIDES', '77491', 'from-memory'],
    ['73.2250', 'IRON OXIDES', '77492', 'from-memory'],
    ['73.2250', 'IRON OXIDES', '77499', 'from-memory'],
    ['73.2299', 'FERRIC FERROCYANIDE', '77510', 'verified'],
    ['73.2326', 'CHROMIUM HYDROXIDE GREEN', '77289', 'verified'],
    ['73.2327', 'CHROMIUM OXIDE GREENS', '77288', 'verified'],
    ['73.2496', 'MICA', '77019', 'from-memory'],
    ['73.2575', 'TITANIUM DIOXIDE', '77891', 'from-memory'],
    ['73.2725', 'ULTRAMARINES', '77007', 'verified'],
    ['73.2775', 'MANGANESE VIOLET', '77742', 'from-memory'],
    ['73.2991', 'ZINC OXIDE', '77947', 'from-memory'],
  ] as const
).map(usColour);

export const REFERENCE_LIMITS: readonly ReferenceLimit[] = [...preservatives, ...restricted];
export const REFERENCE_COLOURANTS: readonly ReferenceColourant[] = [...euColourants, ...usColourants];
