// The thirteen questions and what their answers do. Effects are data; the careful answer is always offered, and saying nothing never widens.

const option = (id: string, effects: readonly Record<string, unknown>[] = [], more: Record<string, unknown> = {}) => ({
  id,
  textId: `option.${id}`,
  exclusive: false,
  isSkip: false,
  effects,
  skipsQuestionIds: [],
  ...more,
});

const wish = (concernId: string, weightCount: number) => ({ kind: 'wish', concernId, weightCount });
const exclude = (...tags: readonly string[]) => ({ kind: 'exclude', tags });
const cap = (capId: string) => ({ kind: 'cap', capId });
const caution = (cautionId: string, mustTick: boolean) => ({ kind: 'caution', cautionId, mustTick });
const area = (areaId: string) => ({ kind: 'area', areaId });
const outcome = (name: string) => ({ kind: 'outcome', outcome: name });
const MILDEST = { kind: 'mildest' };

const hint = (id: string) => ({ hintTextId: `option.${id}.hint` });
/** "I would rather not say", with a second line that says what it does. */
const unsaid = (id: string, effects: readonly Record<string, unknown>[], more: Record<string, unknown> = {}) =>
  option(id, effects, { isSkip: true, ...hint(id), ...more });

const SCENT = ['fragrance', 'essential-oil'];
/** Asking about scent changes nothing once scent is out. */
const SCENT_IS_OUT = { skipsQuestionIds: ['scent'] };
const ALONE = { exclusive: true };

/** The cap stands beside the tags: what counts towards it and carries no tag stays low for whoever reacts often, too. */
const STINGS_OFTEN = [MILDEST, exclude('acid', 'retinoid', 'enzyme', ...SCENT), cap('acid-low'), caution('try-first', true)];
const STINGS_SOMETIMES = [cap('acid-low'), caution('try-first', true)];

const ROUGHENED = exclude('acid', 'retinoid', 'enzyme', 'exfoliant');
const REACTIONS: Readonly<Record<string, readonly string[]>> = {
  aspirin: ['salicylate'],
  perfume: SCENT,
  daisy: ['asteraceae'],
  nuts: ['nut', 'seed-oil'],
  bee: ['bee'],
  'milk-oats': ['milk', 'oat', 'gluten'],
};
const reacts = (id: string, more: Record<string, unknown> = {}) => option(`react-${id}`, [exclude(...(REACTIONS[id] ?? []))], more);

const PREGNANT = exclude('salicylate', 'retinoid', 'essential-oil');
const MUCH_SUN = [exclude('aha', 'photosensitiser', 'retinoid')];

const question = (id: string, part: string, more: Record<string, unknown>) => ({
  id,
  partTextId: `part.${part}`,
  textId: `question.${id}`,
  choose: 'one',
  mostCount: 1,
  ...more,
});
const why = (id: string) => ({ whyTextId: `question.${id}.why` });

export const CONCERNS = ['oil', 'dry', 'dull', 'rough', 'pore', 'calm'].map((id) => ({ id, textId: `concern.${id}` }));

export const PERSON_CAPS = [
  { id: 'acid-low', materialClass: 'acid', maxPpm: 10_000 },
  { id: 'adsorbent-low', materialClass: 'adsorbent', maxPpm: 3_000 },
  { id: 'swelling-clay-low', materialClass: 'swelling-clay', maxPpm: 5_000 },
];

const ABOUT_THE_MASK = [
  question('who', 'mask', {
    ...why('who'),
    options: [option('who-me'), option('who-else', [MILDEST, exclude('acid'), caution('try-first', true)], hint('who-else'))],
  }),
  question('age', 'mask', {
    ...why('age'),
    options: [
      option('age-18'),
      option('age-16', [exclude('acid', 'retinoid')]),
      option('age-under-16', [outcome('age')]),
      unsaid('age-skip', [outcome('age')]),
    ],
  }),
  question('where', 'mask', {
    ...why('where'),
    choose: 'many',
    mostCount: 4,
    options: [
      option('where-face', [area('face')]),
      option('where-neck', [area('neck')]),
      option('where-chest', [area('chest-or-back')]),
      option('where-else', [outcome('staff')]),
    ],
  }),
  question('wish', 'mask', {
    choose: 'many',
    mostCount: 2,
    options: [...CONCERNS.map(({ id }) => option(`wish-${id}`, [wish(id, 3)])), option('wish-any', CONCERNS.map(({ id }) => wish(id, 1)), ALONE)],
  }),
];

const ABOUT_THE_SKIN = [
  question('feel', 'skin', {
    options: [
      option('feel-tight', [wish('dry', 2), cap('adsorbent-low'), cap('swelling-clay-low')]),
      option('feel-shiny', [wish('oil', 2)]),
      option('feel-mixed', [wish('oil', 1)]),
      option('feel-right'),
      option('feel-unsure'),
    ],
  }),
  question('sting', 'skin', {
    ...why('sting'),
    options: [
      option('sting-often', STINGS_OFTEN, SCENT_IS_OUT),
      option('sting-sometimes', STINGS_SOMETIMES),
      option('sting-never'),
      option('sting-unsure', STINGS_SOMETIMES),
      unsaid('sting-skip', STINGS_OFTEN, SCENT_IS_OUT),
    ],
  }),
  question('today', 'skin', {
    ...why('today'),
    choose: 'many',
    mostCount: 5,
    options: [
      option('today-cut', [outcome('wait')]),
      option('today-sunburn', [outcome('wait')]),
      option('today-rash', [outcome('professional')]),
      option('today-lumps', [outcome('professional')]),
      option('today-mole', [outcome('mole')]),
      option('today-none', [], ALONE),
      unsaid('today-skip', [MILDEST, caution('broken-skin', true)], ALONE),
    ],
  }),
  question('recent', 'skin', {
    ...why('recent'),
    choose: 'many',
    mostCount: 4,
    options: [
      option('recent-peel', [outcome('wait')]),
      option('recent-wax', [ROUGHENED, exclude('fragrance')]),
      option('recent-vitamin-a', [ROUGHENED]),
      option('recent-acid', [ROUGHENED]),
      option('recent-none', [], ALONE),
      unsaid('recent-skip', [ROUGHENED, exclude('fragrance')], ALONE),
    ],
  }),
  question('doctor', 'skin', {
    ...why('doctor'),
    options: [
      option('doctor-yes', [outcome('professional')]),
      option('doctor-no'),
      option('doctor-unsure', [MILDEST, caution('ask-pharmacist', false)], hint('doctor-unsure')),
      unsaid('doctor-skip', [MILDEST, caution('ask-pharmacist', false)]),
    ],
  }),
];

const TO_BE_CAREFUL = [
  question('react', 'careful', {
    ...why('react'),
    choose: 'many',
    mostCount: 7,
    options: [
      reacts('aspirin'),
      reacts('perfume', SCENT_IS_OUT),
      reacts('daisy'),
      reacts('nuts'),
      reacts('bee'),
      reacts('milk-oats'),
      option('react-other', [outcome('staff')]),
      option('react-none', [], ALONE),
      unsaid('react-skip', [exclude(...Object.values(REACTIONS).flat())], { ...ALONE, ...SCENT_IS_OUT }),
    ],
  }),
  question('pregnant', 'careful', {
    ...why('pregnant'),
    options: [option('pregnant-yes', [PREGNANT, caution('pregnant', false)]), option('pregnant-no'), unsaid('pregnant-skip', [PREGNANT])],
  }),
  question('sun', 'careful', {
    ...why('sun'),
    options: [option('sun-yes', MUCH_SUN), option('sun-no'), option('sun-unsure', MUCH_SUN, hint('sun-unsure'))],
  }),
  question('scent', 'careful', {
    options: [option('scent-none', [exclude(...SCENT)]), option('scent-light'), option('scent-any')],
  }),
];

export const QUESTIONS = [...ABOUT_THE_MASK, ...ABOUT_THE_SKIN, ...TO_BE_CAREFUL];
