// French of shades and actives, id by id as in English.

export const TEXTS_OFFER_FR: Readonly<Record<string, string>> = {
  'colour.chalk-down': 'Blanc craie',
  'colour.fern-bank': 'Vert doux',
  'colour.rust-seam': 'Brun rouille',
  'good.chalk-down': 'Ne laisse presque pas de couleur.',
  'less-good.chalk-down': 'Peut tirer si vous le laissez sécher.',
  'good.fern-bank': 'Laisse un aspect doux et mat.',
  'less-good.fern-bank': 'Peut tirer si vous le laissez sécher.',
  'good.rust-seam': 'S’étale fin et régulier.',
  'less-good.rust-seam': 'Peut tacher les serviettes claires.',
  'good.niacinamide': 'La peau paraît moins brillante et plus unie.',
  'less-good.niacinamide': 'Il faut quelques semaines pour le voir.',
  'good.panthenol': 'La peau est plus douce et tire moins.',
  'less-good.panthenol': 'Peut coller un peu.',
  'good.lactic-acid': 'La peau est plus douce et paraît plus lumineuse.',
  'less-good.lactic-acid': 'Peut picoter. Demande de la prudence au soleil.',
};
