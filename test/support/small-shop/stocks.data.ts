// Forms in which the materials stand at the bench. Pigments come diluted in kaolin or blended, since a shop scale cannot weigh a hundredth of a gram of them.

const stock = ([id, code, en]: readonly [string, string, string], parts: Record<string, number>, more: Record<string, unknown>) => ({
  id,
  code,
  name: { en },
  parts: Object.entries(parts).map(([materialId, sharePpm]) => ({ materialId, sharePpm })),
  isBlend: false,
  needsHeat: false,
  preservation: 'dry',
  secondPerson: false,
  staffCautionIds: [],
  ...more,
});

const dusty = { addedTo: 'paste', staffCautionIds: ['staff-dust'] };

export const STOCKS = [
  stock(['kaolin-neat', 'KAO-N', 'Kaolin, white'], { kaolin: 1_000_000 }, { ...dusty, costMinorPerKg: 900 }),
  stock(['illite-neat', 'ILL-N', 'Illite, green'], { illite: 1_000_000 }, { ...dusty, costMinorPerKg: 1400 }),
  stock(['titanium-20', 'TIO-20', 'Titanium dioxide 20 % in kaolin'], { 'titanium-dioxide': 200_000, kaolin: 800_000 }, { ...dusty, costMinorPerKg: 1500, madeHereHours: 4320 }),
  stock(['iron-red-20', 'FER-20', 'Iron oxide red 20 % in kaolin'], { 'iron-oxide-red': 200_000, kaolin: 800_000 }, { ...dusty, costMinorPerKg: 1600, madeHereHours: 4320 }),
  stock(['fern-bank-blend', 'FRN-B', 'Fern Bank, dry blend'],
    { kaolin: 750_000, illite: 200_000, 'chromium-oxide-green': 50_000 },
    { ...dusty, isBlend: true, costMinorPerKg: 1700, madeHereHours: 4320 },
  ),
  stock(['niacinamide-neat', 'NIA-N', 'Niacinamide'], { niacinamide: 1_000_000 }, { addedTo: 'last', costMinorPerKg: 3800, lookAlikeName: 'NIACINamide' }),
  stock(['panthenol-75', 'PAN-75', 'Panthenol 75 %'],
    { panthenol: 750_000, water: 250_000 },
    { addedTo: 'last', preservation: 'low-water-activity', costMinorPerKg: 4200, inUseDays: 90 },
  ),
  stock(['lactic-acid-50-neat', 'LAC-50', 'Lactic acid 50 %'],
    { 'lactic-acid-50': 1_000_000 },
    { addedTo: 'last', preservation: 'low-water-activity', costMinorPerKg: 2600, inUseDays: 90, secondPerson: true, staffCautionIds: ['staff-acid'] },
  ),
  stock(['citrate-buffer-20-neat', 'CBF-20', 'Citrate buffer 20 %'],
    { 'citrate-buffer-20': 1_000_000 },
    { addedTo: 'last', preservation: 'preserved', costMinorPerKg: 1200, inUseDays: 30 },
  ),
];
