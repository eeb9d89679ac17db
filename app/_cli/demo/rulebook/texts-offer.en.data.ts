// English of shades and actives: how they look and feel, one good thing and one less good.

export const TEXTS_OFFER_EN: Readonly<Record<string, string>> = {
  'colour.chalk-down': 'Chalk white',
  'colour.fern-bank': 'Soft green',
  'colour.rust-seam': 'Rust brown',
  'good.chalk-down': 'Leaves hardly any colour behind.',
  'less-good.chalk-down': 'Can feel tight if you let it dry.',
  'good.fern-bank': 'Leaves a soft, matt look.',
  'less-good.fern-bank': 'Can feel tight if you let it dry.',
  'good.rust-seam': 'Spreads thin and even.',
  'less-good.rust-seam': 'May mark light towels.',
  'good.niacinamide': 'Skin looks less shiny and more even.',
  'less-good.niacinamide': 'Takes a few weeks to show.',
  'good.panthenol': 'Skin feels softer and less tight.',
  'less-good.panthenol': 'Can feel a little sticky.',
  'good.lactic-acid': 'Skin feels smoother and looks brighter.',
  'less-good.lactic-acid': 'May tingle. Needs care in the sun.',
};
