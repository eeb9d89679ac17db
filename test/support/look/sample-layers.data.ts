// Made-up recipes for the sheets.
import type { CoreLayer } from '#app/_ui/drawing/core-column.tsx';
import { earth } from '#app/_ui/drawing/earth.data.ts';

export const fernBank: readonly CoreLayer[] = [
  { name: 'Cream R2', hatch: 'cream', fill: earth.cream, sharePpm: 912_960, shareText: '91.3' },
  { name: 'Wetting oil', note: 'Base R2', hatch: 'oil', fill: earth.oil, sharePpm: 38_040, shareText: '3.8' },
  { name: 'Kaolin', note: 'Fern Bank', hatch: 'base-clay', fill: earth.kaolin, sharePpm: 15_000, shareText: '1.5' },
  { name: 'Illite, green', note: 'Fern Bank', hatch: 'tint-clay', fill: earth.illite, sharePpm: 5_000, shareText: '0.5' },
  {
    name: 'Chromium oxide 20 % in kaolin',
    note: 'Fern Bank, premix',
    hatch: 'mineral-colour',
    fill: earth.green,
    sharePpm: 5_000,
    shareText: '0.5',
  },
  { name: 'Niacinamide', note: 'Level 2 of 3', hatch: 'humectant', fill: earth.humectant, sharePpm: 20_000, shareText: '2' },
  { name: 'Panthenol 75 %', note: 'Level 1 of 3', hatch: 'botanical', fill: earth.vitamin, sharePpm: 4_000, shareText: '0.4' },
];

export const heatherMoor: readonly CoreLayer[] = [
  { name: 'Cream R2', hatch: 'cream', fill: earth.cream, sharePpm: 930_000 },
  { name: 'Wetting oil', hatch: 'oil', fill: earth.oil, sharePpm: 38_800 },
  { name: 'Kaolin', hatch: 'base-clay', fill: earth.kaolin, sharePpm: 18_500 },
  { name: 'Manganese violet blend', hatch: 'tint-clay', fill: earth.rose, sharePpm: 7_500 },
  { name: 'Panthenol 75 %', hatch: 'botanical', fill: earth.vitamin, sharePpm: 4_000 },
];

export const rustSeam: readonly CoreLayer[] = [
  { name: 'Cream R2', hatch: 'cream', fill: earth.cream, sharePpm: 920_000 },
  { name: 'Wetting oil', hatch: 'oil', fill: earth.oil, sharePpm: 38_400 },
  { name: 'Kaolin', hatch: 'base-clay', fill: earth.kaolin, sharePpm: 16_000 },
  { name: 'Illite, red', hatch: 'tint-clay', fill: earth.rust, sharePpm: 3_000 },
  { name: 'Iron oxide blend', hatch: 'mineral-colour', fill: earth.umber, sharePpm: 2_600 },
  { name: 'Niacinamide', hatch: 'humectant', fill: earth.humectant, sharePpm: 20_000 },
];

export const slateLedge: readonly CoreLayer[] = [
  { name: 'Cream R2', hatch: 'cream', fill: earth.cream, sharePpm: 935_000 },
  { name: 'Wetting oil', hatch: 'oil', fill: earth.oil, sharePpm: 38_900 },
  { name: 'Kaolin', hatch: 'base-clay', fill: earth.kaolin, sharePpm: 12_000 },
  { name: 'Montmorillonite', hatch: 'tint-clay', fill: earth.slate, sharePpm: 8_000 },
  { name: 'Lactic acid', hatch: 'acid', fill: earth.acid, sharePpm: 10_000 },
];

export const greenPremix: readonly CoreLayer[] = [
  { name: 'Kaolin', hatch: 'base-clay', fill: earth.kaolin, sharePpm: 800_000 },
  { name: 'Chromium oxide', hatch: 'mineral-colour', fill: earth.green, sharePpm: 200_000 },
];
