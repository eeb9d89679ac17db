// French of the questionnaire, the cautions and the label: written anew, not word for word; narrow no-break spaces before high marks.

const LABEL = {
  'label.product': 'Masque à l’argile à rincer',
  'label.directions': 'Étaler en couche fine sur une peau propre. Laisser poser 10 minutes. Rincer à l’eau tiède.',
};

const MASK = {
  'part.mask': 'Votre masque',
  'concern.oil': 'Moins de brillance',
  'concern.dry': 'Moins sèche, moins tendue',
  'concern.dull': 'Plus lumineuse',
  'concern.rough': 'Plus douce',
  'concern.pore': 'Pores plus nets',
  'concern.calm': 'Sensation de calme',

  'question.who': 'Le masque est-il pour vous ?',
  'question.who.why': 'Les questions qui suivent portent sur la personne qui le portera.',
  'option.who-me': 'Oui, pour moi',
  'option.who-else': 'Non, pour quelqu’un d’autre',
  'option.who-else.hint': 'Nous choisirons parmi nos masques les plus doux, et aucun acide',

  'question.age': 'Quel âge a la personne qui utilisera le masque ?',
  'question.age.why': 'Certains masques sont réservés aux adultes.',
  'option.age-18': '18 ans ou plus',
  'option.age-16': '16 ou 17 ans',
  'option.age-under-16': 'Moins de 16 ans',
  'option.age-skip': 'Je préfère ne pas répondre',
  'option.age-skip.hint': 'Il nous faut cette réponse pour vous montrer un masque',

  'question.where': 'Où allez-vous appliquer le masque ?',
  'question.where.why': 'Ne le mettez pas sur les lèvres ni près des yeux.',
  'option.where-face': 'Visage',
  'option.where-neck': 'Cou',
  'option.where-chest': 'Poitrine ou dos',
  'option.where-else': 'Ailleurs',

  'question.wish': 'Qu’attendez-vous de votre masque ?',
  'option.wish-oil': 'Une peau qui brille moins',
  'option.wish-dry': 'Une peau moins sèche ou moins tendue',
  'option.wish-dull': 'Une peau qui paraît plus lumineuse',
  'option.wish-rough': 'Une peau plus douce au toucher',
  'option.wish-pore': 'Des pores qui paraissent plus nets',
  'option.wish-calm': 'Une sensation de calme',
  'option.wish-any': 'Juste un masque agréable',
};

const SKIN = {
  'part.skin': 'Votre peau',
  'question.feel': 'Comment sentez-vous votre peau 2 heures après l’avoir lavée ?',
  'option.feel-tight': 'Tendue ou sèche partout',
  'option.feel-shiny': 'Brillante partout',
  'option.feel-mixed': 'Brillante par endroits seulement',
  'option.feel-right': 'Ni sèche ni brillante',
  'option.feel-unsure': 'Je ne sais pas',

  'question.sting': 'Votre peau pique-t-elle, démange-t-elle ou rougit-elle quand vous essayez quelque chose de nouveau ?',
  'question.sting.why': 'Nous pourrons laisser de côté ce qui pique souvent.',
  'option.sting-often': 'Souvent',
  'option.sting-sometimes': 'Parfois',
  'option.sting-never': 'Rarement ou jamais',
  'option.sting-unsure': 'Je ne sais pas',
  'option.sting-skip': 'Je préfère ne pas répondre',
  'option.sting-skip.hint': 'Nous choisirons parmi nos masques les plus doux',

  'question.today': 'Regardez la peau là où ira le masque. Voyez-vous l’une de ces choses aujourd’hui ?',
  'question.today.why': 'Un masque peut piquer sur une peau à vif. Certaines marques sont à montrer à un médecin.',
  'option.today-cut': 'Une coupure, une éraflure ou une peau à vif',
  'option.today-sunburn': 'Un coup de soleil',
  'option.today-rash': 'Des rougeurs, des cloques, des plaques humides ou avec des croûtes',
  'option.today-lumps': 'Des bosses sensibles, chaudes ou gonflées',
  'option.today-mole': 'Un grain de beauté ou une marque, nouveau ou qui a changé',
  'option.today-none': 'Rien de tout cela',
  'option.today-skip': 'Je préfère ne pas répondre',
  'option.today-skip.hint': 'Nous choisirons parmi nos masques les plus doux',

  'question.recent': 'Ces 7 derniers jours, avez-vous eu ou utilisé l’une de ces choses à cet endroit ?',
  'question.recent.why': 'La peau peut piquer davantage pendant quelques jours.',
  'option.recent-peel': 'Un peeling, un laser ou de fines aiguilles',
  'option.recent-wax': 'Une épilation ou un rasage',
  'option.recent-vitamin-a': 'Une crème à la vitamine A, comme le rétinol',
  'option.recent-acid': 'Un produit dont le nom contient « acide »',
  'option.recent-none': 'Rien de tout cela',
  'option.recent-skip': 'Je ne sais pas, ou je préfère ne pas répondre',
  'option.recent-skip.hint': 'Par prudence, nous laisserons de côté les acides et le parfum',

  'question.doctor': 'La peau à cet endroit est-elle suivie par un médecin ou une infirmière ?',
  'question.doctor.why': 'Dites oui aussi si vous prenez un médicament pour la peau.',
  'option.doctor-yes': 'Oui',
  'option.doctor-no': 'Non',
  'option.doctor-unsure': 'Je ne sais pas',
  'option.doctor-unsure.hint': 'Nous choisirons parmi nos masques les plus doux',
  'option.doctor-skip': 'Je préfère ne pas répondre',
  'option.doctor-skip.hint': 'Nous choisirons parmi nos masques les plus doux',
};

const CARE = {
  'part.careful': 'Par prudence',
  'question.react': 'Réagissez-vous à l’une de ces choses ?',
  'question.react.why': 'Nous pourrons les laisser de côté.',
  'option.react-aspirin': 'Aspirine ou acide salicylique',
  'option.react-perfume': 'Parfum, ou huiles de plantes à l’odeur forte',
  'option.react-daisy': 'Pâquerette, camomille ou ambroisie',
  'option.react-nuts': 'Noix ou graines',
  'option.react-bee': 'Miel, cire d’abeille ou propolis',
  'option.react-milk-oats': 'Lait, avoine ou blé',
  'option.react-other': 'Autre chose, aussi dans une crème ou une lingette',
  'option.react-none': 'Rien de tout cela',
  'option.react-skip': 'Je ne sais pas, ou je préfère ne pas répondre',
  'option.react-skip.hint': 'Par prudence, nous laisserons tout cela de côté',

  'question.pregnant': 'Êtes-vous enceinte, pourriez-vous l’être, ou allaitez-vous ?',
  'question.pregnant.why': 'Vous pouvez passer. Dans ce cas, nous laissons de côté les mêmes choses que pour un oui.',
  'option.pregnant-yes': 'Oui',
  'option.pregnant-no': 'Non',
  'option.pregnant-skip': 'Je préfère ne pas répondre',
  'option.pregnant-skip.hint': 'Nous laissons de côté les mêmes choses que pour un oui',

  'question.sun': 'Votre peau verra-t-elle beaucoup de soleil dans les 7 jours à venir ?',
  'question.sun.why': 'Pensez à la plage, au travail dehors, au ski ou aux cabines UV.',
  'option.sun-yes': 'Oui',
  'option.sun-no': 'Non',
  'option.sun-unsure': 'Je ne sais pas',
  'option.sun-unsure.hint': 'Nous laissons de côté les mêmes choses que pour un oui',

  'question.scent': 'Souhaitez-vous un parfum ?',
  'option.scent-none': 'Aucun parfum',
  'option.scent-light': 'Un parfum léger me va',
  'option.scent-any': 'Cela m’est égal',
};

/** A translation to read: on labels of the US only the English words count. */
const SUN_US =
  'Alerte coup de soleil : ce produit contient un acide alpha-hydroxylé (AHA) qui peut augmenter la sensibilité de votre peau au soleil, et surtout le risque de coup de soleil. Utilisez une crème solaire, portez des vêtements couvrants et limitez l’exposition au soleil pendant l’utilisation de ce produit et la semaine qui suit.';

const CAUTION = {
  'caution.eyes':
    'Évitez les yeux. En cas de contact, rincez à grande eau. Si cela fait encore mal, demandez une aide médicale. Retirez d’abord vos lentilles.',
  'caution.eyes.label': 'Éviter les yeux.',
  'caution.broken-skin': 'Ne l’appliquez pas sur une peau coupée, à vif ou brûlée. Attendez que la peau soit de nouveau intacte.',
  'caution.broken-skin.label': 'Pas sur une peau abîmée ou à vif.',
  'caution.time': 'Laissez poser 10 minutes. Ne le laissez pas sécher jusqu’à ce qu’il craque. Rincez à l’eau tiède. Une fois par semaine au plus.',
  'caution.time.label': 'Une fois par semaine au plus.',
  'caution.children': 'Gardez-le hors de portée des enfants. Il ne convient pas avant 16 ans.',
  'caution.children.label': 'Hors de portée des enfants.',
  'caution.try-first':
    'Essayez-en d’abord un peu. Posez une touche fine au creux du coude, laissez 10 minutes, puis rincez. Faites-le deux fois par jour pendant 7 jours. Si la peau rougit, démange ou gonfle, n’utilisez pas le masque.',
  'caution.try-first.label': 'Essayer d’abord un peu.',
  'caution.sting': 'Un léger picotement est courant avec les acides. Si cela pique ou brûle, rincez tout de suite. Ne l’utilisez plus.',
  'caution.sting.label': 'Arrêter si cela pique.',
  'caution.sun':
    'Ce masque contient un acide de fruit. Votre peau peut brûler plus vite au soleil. Mettez de la crème solaire et couvrez-vous. Faites-le les jours où vous utilisez le masque et les 7 jours suivants.',
  'caution.sun.label': 'Se protéger du soleil ce jour et 7 jours après.',
  'caution.sun-us': SUN_US,
  'caution.sun-us.label': SUN_US,
  'caution.salicylic':
    'Ce masque contient de l’acide salicylique. Si vous réagissez à l’aspirine, ne l’utilisez pas. Notre équipe peut vous en montrer un qui n’en a pas.',
  'caution.salicylic.label': 'Pas si l’aspirine vous fait réagir.',
  'caution.oats': 'Ce masque contient de l’avoine. Si vous réagissez à l’avoine ou au blé, ne l’utilisez pas.',
  'caution.oats.label': 'Contient de l’avoine.',
  'caution.towels': 'Ce masque a une couleur intense. Il peut tacher les serviettes claires. Rincez bien.',
  'caution.towels.label': 'Peut tacher les serviettes claires.',
  'caution.pregnant':
    'Pour vous, pendant la grossesse ou l’allaitement. Nous avons laissé de côté l’acide salicylique, la vitamine A et les huiles de plantes fortes. C’est par prudence. En cas de doute, demandez à votre sage-femme ou à un pharmacien. Ils peuvent lire la liste complète avec vous.',
  'caution.ask-pharmacist': 'Demandez à un pharmacien avant d’utiliser le masque. Il peut lire la liste complète avec vous.',
  'caution.also-made-oats':
    'Nous ne mettons pas d’avoine dans ce masque. Nous en utilisons sur le même plan de travail et lavons ensuite nos outils. Une trace peut rester.',
  'caution.also-made-daisy':
    'Nous ne mettons pas de plantes de la famille de la pâquerette dans ce masque. Nous en utilisons sur le même plan de travail et lavons ensuite nos outils. Une trace peut rester.',
  'caution.also-made-salicylic':
    'Nous ne mettons pas d’acide salicylique dans ce masque. Nous en utilisons sur le même plan de travail et lavons ensuite nos outils. Une trace peut rester.',
  'caution.staff-dust':
    'Ces poudres font une poussière fine. Mettez masque et lunettes, et allumez l’aspiration. Abaissez la cuillère avant de la vider. Refermez aussitôt. Essuyez avec un chiffon humide. Ne balayez et ne soufflez jamais la poussière.',
  'caution.staff-acid':
    'Ce flacon contient un acide fort. Portez gants et lunettes. Ajoutez-le lentement, en tout dernier. En cas de contact avec l’œil, rincez 15 minutes et demandez de l’aide.',
  'caution.staff-acid-clay': 'Acide et argile : mélangez bien et mesurez le pH après 5 minutes.',
};

export const TEXTS_FR: Readonly<Record<string, string>> = { ...LABEL, ...MASK, ...SKIN, ...CARE, ...CAUTION };
