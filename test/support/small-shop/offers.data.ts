// What the demonstration shop offers. Shades are named after landscape; benefits are invented and rise ever more slowly with the level.

const parts = (shares: Record<string, number>) => Object.entries(shares).map(([materialId, sharePpm]) => ({ materialId, sharePpm }));
const lab = (lX100: number, aX100: number, bX100: number) => ({ lX100, aX100, bX100 });

export const SHADES = [
  {
    id: 'chalk-down',
    code: 'CHALK',
    name: { en: 'Chalk Down' },
    parts: parts({ kaolin: 18_000, 'titanium-dioxide': 2_000 }),
    colour: { wet: lab(9050, 40, 420), dry: lab(9420, 20, 310), family: 'white', nameTextId: 'colour.chalk-down', origin: 'measured' },
    claims: { goodTextId: 'good.chalk-down', goodBasis: 'look-and-feel', lessGoodTextId: 'less-good.chalk-down' },
    priceMinor: 0,
  },
  {
    id: 'fern-bank',
    code: 'FERN',
    name: { en: 'Fern Bank' },
    parts: parts({ kaolin: 15_000, illite: 4_000, 'chromium-oxide-green': 1_000 }),
    colour: { wet: lab(6230, -1120, 1480), dry: lab(7280, -860, 1250), family: 'green', nameTextId: 'colour.fern-bank', origin: 'measured' },
    claims: { goodTextId: 'good.fern-bank', goodBasis: 'known-for-ingredient', lessGoodTextId: 'less-good.fern-bank' },
    priceMinor: 100,
  },
  {
    id: 'rust-seam',
    code: 'RUST',
    name: { en: 'Rust Seam' },
    parts: parts({ kaolin: 16_000, illite: 3_000, 'iron-oxide-red': 1_000 }),
    colour: { wet: lab(4780, 2650, 2720), dry: lab(6240, 2180, 2350), family: 'red-brown', nameTextId: 'colour.rust-seam', origin: 'measured' },
    claims: { goodTextId: 'good.rust-seam', goodBasis: 'look-and-feel', lessGoodTextId: 'less-good.rust-seam' },
    priceMinor: 100,
  },
];

const level = (levelPpm: number, priceMinor: number, benefits: Record<string, number>, permitted = true) => ({
  levelPpm,
  permitted,
  priceMinor,
  benefits: Object.entries(benefits).map(([concernId, benefitMilli]) => ({ concernId, benefitMilli })),
});

export const ACTIVES = [
  {
    id: 'niacinamide',
    claims: { goodTextId: 'good.niacinamide', goodBasis: 'known-for-ingredient', lessGoodTextId: 'less-good.niacinamide' },
    code: 'NIA',
    name: { en: 'Niacinamide' },
    materialId: 'niacinamide',
    strengthPpm: 1_000_000,
    role: 'active',
    tauPpm: 50_000,
    levels: [level(10_000, 100, { oil: 500, dull: 400, pore: 400 }), level(20_000, 200, { oil: 800, dull: 650, pore: 700 })],
  },
  {
    id: 'panthenol',
    claims: { goodTextId: 'good.panthenol', goodBasis: 'known-for-ingredient', lessGoodTextId: 'less-good.panthenol' },
    code: 'PAN',
    name: { en: 'Panthenol' },
    materialId: 'panthenol',
    strengthPpm: 1_000_000,
    role: 'active',
    levels: [level(3_000, 50, { dry: 350, calm: 350 }), level(7_500, 100, { dry: 700, calm: 700 }), level(15_000, 150, { dry: 900, calm: 850 })],
  },
  {
    id: 'lactic-acid',
    claims: { goodTextId: 'good.lactic-acid', goodBasis: 'known-for-ingredient', lessGoodTextId: 'less-good.lactic-acid' },
    code: 'LAC',
    name: { en: 'Lactic acid' },
    materialId: 'lactic-acid-50',
    strengthPpm: 500_000,
    role: 'active',
    levels: [level(5_000, 150, { rough: 600, dull: 500, pore: 300 }), level(10_000, 200, { rough: 900, dull: 800, pore: 450 })],
  },
  {
    id: 'citrate-buffer',
    code: 'CBF',
    name: { en: 'Citrate buffer' },
    materialId: 'citrate-buffer-20',
    strengthPpm: 200_000,
    role: 'adjuster',
    levels: [level(1_000, 0, {}), level(2_000, 0, {})],
  },
];

export const JAR_SIZES = [
  { id: 'jar-50', code: '50G', netUg: 50_000_000, overageUg: 2_000_000, vesselId: 'beaker-150', labelSizeId: 'label-90x50', priceMinor: 1400 },
];
export const VESSELS = [{ id: 'beaker-150', code: 'B150', capacityUl: 150_000, lossUg: 1_000_000 }];
export const LABEL_SIZES = [{ id: 'label-90x50', widthUm: 90_000, heightUm: 50_000, fits: ['jar-50'], ingredientsCharCount: 520, cautionsCharCount: 330 }];
export const SCALE_PROFILES = [
  {
    id: 'bench-centigram',
    code: 'CG-600',
    stepUg: 10_000,
    repeatabilityUg: 3_000,
    capacityUg: 600_000_000,
    zeroToleranceUg: 10_000,
    checkWeights: [
      { massUg: 1_000_000, toleranceUg: 20_000 },
      { massUg: 50_000_000, toleranceUg: 20_000 },
    ],
  },
];
