// Sizes, vessels, labels and scales of the demonstration shop.

export const JAR_SIZES = [
  { id: 'jar-50', code: '50G', netUg: 50_000_000, overageUg: 2_000_000, vesselId: 'beaker-150', labelSizeId: 'label-90x50', priceMinor: 1_400 },
  { id: 'jar-30', code: '30G', netUg: 30_000_000, overageUg: 2_000_000, vesselId: 'beaker-150', labelSizeId: 'label-70x45', priceMinor: 1_000 },
  { id: 'jar-100', code: '100G', netUg: 100_000_000, overageUg: 3_000_000, vesselId: 'beaker-250', labelSizeId: 'label-110x60', priceMinor: 2_300 },
];
export const VESSELS = [
  { id: 'beaker-150', code: 'B150', capacityUl: 150_000, lossUg: 1_000_000 },
  { id: 'beaker-250', code: 'B250', capacityUl: 250_000, lossUg: 1_500_000 },
];
export const LABEL_SIZES = [
  { id: 'label-90x50', widthUm: 90_000, heightUm: 50_000, fits: ['jar-50'], ingredientsCharCount: 640, cautionsCharCount: 520 },
  { id: 'label-70x45', widthUm: 70_000, heightUm: 45_000, fits: ['jar-30'], ingredientsCharCount: 560, cautionsCharCount: 480 },
  { id: 'label-110x60', widthUm: 110_000, heightUm: 60_000, fits: ['jar-100'], ingredientsCharCount: 800, cautionsCharCount: 700 },
];
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
  {
    id: 'bench-milligram',
    code: 'MG-200',
    stepUg: 1_000,
    repeatabilityUg: 500,
    capacityUg: 200_000_000,
    zeroToleranceUg: 2_000,
    checkWeights: [
      { massUg: 500_000, toleranceUg: 2_000 },
      { massUg: 20_000_000, toleranceUg: 3_000 },
    ],
  },
];
