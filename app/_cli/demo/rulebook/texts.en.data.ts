// English of the questionnaire, the cautions and the label: short, present tense, no promise and no alarm.

const LABEL = {
  'label.product': 'Rinse-off clay mask',
  'label.directions': 'Spread a thin layer on clean skin. Leave on for 10 minutes. Rinse with warm water.',
};

const MASK = {
  'part.mask': 'Your mask',
  'concern.oil': 'Less shine',
  'concern.dry': 'Less dry or tight',
  'concern.dull': 'Looks brighter',
  'concern.rough': 'Feels smoother',
  'concern.pore': 'Pores look cleaner',
  'concern.calm': 'Feels calm',

  'question.who': 'Is the mask for you?',
  'question.who.why': 'The next questions are about the person who will wear it.',
  'option.who-me': 'Yes, for me',
  'option.who-else': 'No, for somebody else',
  'option.who-else.hint': 'We will choose only from our mildest masks, with no acids',

  'question.age': 'How old is the person who will use the mask?',
  'question.age.why': 'We ask because some masks are only for adults.',
  'option.age-18': '18 or over',
  'option.age-16': '16 or 17',
  'option.age-under-16': 'Under 16',
  'option.age-skip': 'I would rather not say',
  'option.age-skip.hint': 'We need to know this one to show you a mask',

  'question.where': 'Where will you use the mask?',
  'question.where.why': 'Do not use it on your lips or close to your eyes.',
  'option.where-face': 'Face',
  'option.where-neck': 'Neck',
  'option.where-chest': 'Chest or back',
  'option.where-else': 'Somewhere else',

  'question.wish': 'What would you like from your mask?',
  'option.wish-oil': 'Skin that looks less shiny',
  'option.wish-dry': 'Skin that feels less dry or tight',
  'option.wish-dull': 'Skin that looks brighter',
  'option.wish-rough': 'Skin that feels smoother',
  'option.wish-pore': 'Pores that look cleaner',
  'option.wish-calm': 'Skin that feels calm',
  'option.wish-any': 'I just want a nice mask',
};

const SKIN = {
  'part.skin': 'Your skin',
  'question.feel': 'How does your skin feel 2 hours after you wash it?',
  'option.feel-tight': 'Tight or dry all over',
  'option.feel-shiny': 'Shiny all over',
  'option.feel-mixed': 'Shiny in some places only',
  'option.feel-right': 'About right',
  'option.feel-unsure': 'I am not sure',

  'question.sting': 'Does your skin sting, itch or go red when you try something new?',
  'question.sting.why': 'We ask so that we can leave out things that often sting.',
  'option.sting-often': 'Often',
  'option.sting-sometimes': 'Sometimes',
  'option.sting-never': 'Rarely or never',
  'option.sting-unsure': 'I am not sure',
  'option.sting-skip': 'I would rather not say',
  'option.sting-skip.hint': 'We will choose only from our mildest masks',

  'question.today': 'Look at the skin where the mask will go. Do you see any of these today?',
  'question.today.why': 'A mask can sting on sore skin. Some marks are for a doctor to look at.',
  'option.today-cut': 'A cut, a scrape or raw skin',
  'option.today-sunburn': 'Sunburn',
  'option.today-rash': 'A rash, blisters, or wet or crusty patches',
  'option.today-lumps': 'Lumps that are sore, hot or swollen',
  'option.today-mole': 'A mole or mark that is new or has changed',
  'option.today-none': 'None of these',
  'option.today-skip': 'I would rather not say',
  'option.today-skip.hint': 'We will choose only from our mildest masks',

  'question.recent': 'In the last 7 days, have you had or used any of these there?',
  'question.recent.why': 'Skin can sting more for some days after these.',
  'option.recent-peel': 'A peel, a laser or fine needles',
  'option.recent-wax': 'Waxing, threading or shaving',
  'option.recent-vitamin-a': 'A cream with vitamin A, such as retinol',
  'option.recent-acid': 'Any product with an acid in its name',
  'option.recent-none': 'None of these',
  'option.recent-skip': 'I am not sure, or would rather not say',
  'option.recent-skip.hint': 'We will leave out acids and scent, to be careful',

  'question.doctor': 'Is a doctor or nurse looking after the skin there?',
  'question.doctor.why': 'Say yes if you take a medicine for your skin too.',
  'option.doctor-yes': 'Yes',
  'option.doctor-no': 'No',
  'option.doctor-unsure': 'I am not sure',
  'option.doctor-unsure.hint': 'We will choose only from our mildest masks',
  'option.doctor-skip': 'I would rather not say',
  'option.doctor-skip.hint': 'We will choose only from our mildest masks',
};

const CARE = {
  'part.careful': 'To be careful',
  'question.react': 'Do any of these make you react?',
  'question.react.why': 'We ask so that we can leave them out.',
  'option.react-aspirin': 'Aspirin or salicylic acid',
  'option.react-perfume': 'Perfume, or plant oils with a strong smell',
  'option.react-daisy': 'Daisy, chamomile or ragweed',
  'option.react-nuts': 'Nuts or seeds',
  'option.react-bee': 'Honey, beeswax or propolis',
  'option.react-milk-oats': 'Milk, oats or wheat',
  'option.react-other': 'Something else, such as in a cream or wipe',
  'option.react-none': 'None of these',
  'option.react-skip': 'I am not sure, or would rather not say',
  'option.react-skip.hint': 'We will leave out all of these, to be careful',

  'question.pregnant': 'Are you pregnant, or could you be, or do you breastfeed?',
  'question.pregnant.why': 'You can skip this. If you skip it, we leave out the same things as for yes.',
  'option.pregnant-yes': 'Yes',
  'option.pregnant-no': 'No',
  'option.pregnant-skip': 'I would rather not say',
  'option.pregnant-skip.hint': 'We leave out the same things as for yes',

  'question.sun': 'Will your skin get a lot of sun in the next 7 days?',
  'question.sun.why': 'Think of the beach, work outside, skiing or a sunbed.',
  'option.sun-yes': 'Yes',
  'option.sun-no': 'No',
  'option.sun-unsure': 'I am not sure',
  'option.sun-unsure.hint': 'We leave out the same things as for yes',

  'question.scent': 'Do you want a scent?',
  'option.scent-none': 'No scent',
  'option.scent-light': 'A light scent is fine',
  'option.scent-any': 'I do not mind',
};

/** FDA's own words. */
const SUN_US =
  "Sunburn Alert: This product contains an alpha hydroxy acid (AHA) that may increase your skin's sensitivity to the sun and particularly the possibility of sunburn. Use a sunscreen, wear protective clothing, and limit sun exposure while using this product and for a week afterwards.";

const CAUTION = {
  'caution.eyes':
    'Keep it out of your eyes. If some gets in, rinse with lots of clean water. If it still hurts, get medical help. Take out contact lenses first.',
  'caution.eyes.label': 'Not in eyes.',
  'caution.broken-skin': 'Do not use it on cut, sore or burnt skin. Wait until the skin is whole again.',
  'caution.broken-skin.label': 'Not on broken or sore skin.',
  'caution.time': 'Leave it on for 10 minutes. Do not let it dry until it cracks. Rinse with warm water. Use it once a week at most.',
  'caution.time.label': 'Once a week at most.',
  'caution.children': 'Keep it away from children. It is not for anyone under 16.',
  'caution.children.label': 'Keep from children.',
  'caution.try-first':
    'Try a little first. Put a thin dab inside your elbow, leave it 10 minutes, then rinse. Do this twice a day for 7 days. If the skin goes red, itches or swells, do not use the mask.',
  'caution.try-first.label': 'Try a little first.',
  'caution.sting': 'Some tingling is common with acids. If it stings or burns, rinse it off at once. Do not use it again.',
  'caution.sting.label': 'Stop if it stings.',
  'caution.sun':
    'This mask has a fruit acid in it. Your skin may burn more easily in the sun. Use sun cream and cover up. Do this on days you use the mask and for 7 days after.',
  'caution.sun.label': 'Sun care on days of use and for 7 days after.',
  'caution.sun-us': SUN_US,
  'caution.sun-us.label': SUN_US,
  'caution.salicylic':
    'This mask has salicylic acid in it. If aspirin makes you react, do not use it. Our staff can show you one that has none.',
  'caution.salicylic.label': 'Not if aspirin makes you react.',
  'caution.oats': 'This mask has oats in it. If oats or wheat make you react, do not use it.',
  'caution.oats.label': 'Has oats in it.',
  'caution.towels': 'This mask has a strong colour. It may mark light towels. Rinse well.',
  'caution.towels.label': 'May mark light towels.',
  'caution.pregnant':
    'For you while pregnant or breastfeeding. We left out salicylic acid, vitamin A and strong plant oils. We do this to be careful. Ask your midwife or pharmacist if you have any doubt. They can look at the full list with you.',
  'caution.ask-pharmacist': 'Ask a pharmacist before you use the mask. They can look at the full list with you.',
  'caution.also-made-oats': 'We do not put oats in this mask. We use oats at the same bench and clean our tools after. A trace may still get in.',
  'caution.also-made-daisy': 'We do not put plants like daisies in this mask. We use some at the same bench and clean our tools after. A trace may still get in.',
  'caution.also-made-salicylic':
    'We do not put salicylic acid in this mask. We use it at the same bench and clean our tools after. A trace may still get in.',
  'caution.staff-dust':
    'These powders make fine dust. Put on your mask and goggles, and switch on the extractor. Lower the scoop before you tip it. Put the lid back at once. Wipe up with a wet cloth. Never sweep or blow the dust.',
  'caution.staff-acid':
    'This bottle holds strong acid. Wear gloves and goggles. Add it slowly, last of all. If it gets in your eye, rinse for 15 minutes and get help.',
  'caution.staff-acid-clay': 'Acid with clay: mix well and measure the pH after 5 minutes.',
};

export const TEXTS_EN: Readonly<Record<string, string>> = { ...LABEL, ...MASK, ...SKIN, ...CARE, ...CAUTION };
