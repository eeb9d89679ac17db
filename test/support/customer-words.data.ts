// Words that no customer's text may use: a cosmetic promises no cure, claims no approval, runs nothing down and raises no alarm.

/** Matched from a word's first letter: "stem" with any ending, "whole" only as it stands. */
export const BANNED = {
  en: {
    stem: [
      'treat', 'heal', 'cure', 'curing', 'repair', 'therap', 'clinical', 'medical-grade', 'medical grade', 'anti-inflammat', 'antibacterial',
      'detox', 'toxin', 'purif', 'acne', 'eczema', 'rosacea', 'dermatit', 'dermatolog', 'psoria', 'diagnos', 'hypoallergenic', 'chemical-free',
      'free from', 'approved', 'proven', 'guarantee', 'problem skin', 'bad skin', 'flaw', 'anti-age', 'anti-aging', 'anti-ageing', 'danger',
      'unfortunately', 'miracle',
    ],
    whole: ['safe', 'safely', 'error', 'warning'],
  },
  fr: {
    stem: [
      'trait', 'guéri', 'soign', 'répar', 'thérap', 'cliniq', 'anti-inflammat', 'antibactér', 'détox', 'toxin', 'purifi', 'acné', 'eczéma',
      'rosacé', 'couperose', 'dermatit', 'dermatolog', 'psoria', 'diagnos', 'hypoallergén', 'sans produit chimique', 'sans danger',
      'sans risque', 'exempt', 'approuv', 'prouv', 'garanti', 'peau à problème', 'défaut', 'anti-âge', 'antirides', 'danger',
      'malheureusement', 'miracle', 'cicatris', 'inoffensi',
    ],
    whole: ['sûr', 'sûre', 'sûrs', 'sûres', 'erreur', 'attention', 'avertissement'],
  },
} as const satisfies Record<string, { readonly stem: readonly string[]; readonly whole: readonly string[] }>;

/** Names that stand on the list of ingredients: the law chooses them, so that their length is not held against a text. */
export const INGREDIENT_NAMES: readonly string[] = ['salicylic acid', 'vitamin A', 'retinol', 'propolis', 'aspirin'];
