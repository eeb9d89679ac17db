// Substances of the demonstration. Names are INCI names; solubilities and molar data are handbook figures, exposure figures are invented.

const substance = (id: string, eu: string, more: Record<string, unknown> = {}, us = eu) => ({
  id,
  labelNames: { EU: eu, US: us },
  nano: false,
  exposureDemanded: false,
  ...more,
});

const INVENTED = 'invented for the demonstration';
const exposure = (systemicPodUgPerKgDay: number, dermalAbsorptionPpm = 500_000) => ({
  exposureDemanded: true,
  exposure: { systemicPodUgPerKgDay, dermalAbsorptionPpm, source: INVENTED },
});

export const SUBSTANCES = [
  substance('water', 'AQUA', { isWater: true }, 'WATER'),
  substance('glycerin', 'GLYCERIN'),
  substance('caprylic-capric-triglyceride', 'CAPRYLIC/CAPRIC TRIGLYCERIDE'),
  substance('cetearyl-alcohol', 'CETEARYL ALCOHOL'),
  substance('ceteareth-20', 'CETEARETH-20'),
  substance('pentylene-glycol', 'PENTYLENE GLYCOL'),
  substance('phenoxyethanol', 'PHENOXYETHANOL', exposure(82_000, 800_000)),
  substance('ethylhexylglycerin', 'ETHYLHEXYLGLYCERIN'),
  substance('xanthan-gum', 'XANTHAN GUM'),
  substance('citric-acid', 'CITRIC ACID'),
  substance('sodium-citrate', 'SODIUM CITRATE'),
  substance('kaolin', 'KAOLIN'),
  substance('illite', 'ILLITE'),
  substance('titanium-dioxide', 'CI 77891', { colourIndex: '77891' }, 'TITANIUM DIOXIDE'),
  substance('iron-oxide-red', 'CI 77491', { colourIndex: '77491' }, 'IRON OXIDES'),
  substance('chromium-oxide-green', 'CI 77288', { colourIndex: '77288' }, 'CHROMIUM OXIDE GREENS'),
  substance('niacinamide', 'NIACINAMIDE', exposure(100_000)),
  substance('panthenol', 'PANTHENOL', exposure(200_000)),
  substance('lactic-acid', 'LACTIC ACID', { acid: { pkaX1000: 3860 }, ...exposure(100_000) }),
  substance('sodium-hydroxide', 'SODIUM HYDROXIDE'),
];
