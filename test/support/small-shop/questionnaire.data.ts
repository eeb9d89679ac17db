// Four questions of the demonstration: age, wish, sting, sun. Effects are data; the careful answer is always offered.

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
const outcome = (name: string) => ({ kind: 'outcome', outcome: name });

export const CONCERNS = ['oil', 'dry', 'dull', 'rough', 'pore', 'calm'].map((id) => ({ id, textId: `concern.${id}` }));

export const QUESTIONS = [
  {
    id: 'age',
    partTextId: 'part.mask',
    textId: 'question.age',
    whyTextId: 'question.age.why',
    choose: 'one',
    mostCount: 1,
    options: [
      option('age-18'),
      option('age-16', [exclude('acid', 'retinoid')]),
      option('age-under-16', [outcome('age')]),
      option('age-skip', [outcome('age')], { isSkip: true, hintTextId: 'option.age-skip.hint' }),
    ],
  },
  {
    id: 'wish',
    partTextId: 'part.mask',
    textId: 'question.wish',
    choose: 'many',
    mostCount: 2,
    options: [
      option('wish-oil', [wish('oil', 3)]),
      option('wish-dry', [wish('dry', 3)]),
      option('wish-dull', [wish('dull', 3)]),
      option('wish-rough', [wish('rough', 3)]),
      option('wish-pore', [wish('pore', 3)]),
      option('wish-calm', [wish('calm', 3)]),
      option('wish-any', CONCERNS.map(({ id }) => wish(id, 1)), { exclusive: true }),
    ],
  },
  {
    id: 'sting',
    partTextId: 'part.skin',
    textId: 'question.sting',
    whyTextId: 'question.sting.why',
    choose: 'one',
    mostCount: 1,
    options: [
      option('sting-often', [{ kind: 'mildest' }, exclude('acid', 'retinoid', 'enzyme', 'fragrance', 'essential-oil'), { kind: 'caution', cautionId: 'try-first', mustTick: true }]),
      option('sting-sometimes', [{ kind: 'cap', capId: 'acid-low' }, { kind: 'caution', cautionId: 'try-first', mustTick: true }]),
      option('sting-never'),
      option('sting-unsure', [{ kind: 'cap', capId: 'acid-low' }, { kind: 'caution', cautionId: 'try-first', mustTick: true }]),
      option('sting-skip', [{ kind: 'mildest' }, exclude('acid', 'retinoid', 'enzyme', 'fragrance', 'essential-oil'), { kind: 'caution', cautionId: 'try-first', mustTick: true }], {
        isSkip: true,
        hintTextId: 'option.sting-skip.hint',
      }),
    ],
  },
  {
    id: 'today',
    partTextId: 'part.careful',
    textId: 'question.today',
    whyTextId: 'question.today.why',
    choose: 'many',
    mostCount: 5,
    options: [
      option('today-cut', [outcome('wait')]),
      option('today-sunburn', [outcome('wait')]),
      option('today-rash', [outcome('professional')]),
      option('today-mole', [outcome('mole')]),
      option('today-sun-soon', [exclude('aha', 'photosensitiser', 'retinoid')]),
      option('today-none', [], { exclusive: true }),
      option('today-skip', [{ kind: 'mildest' }, exclude('acid', 'aha', 'photosensitiser', 'retinoid'), { kind: 'caution', cautionId: 'broken-skin', mustTick: true }], {
        exclusive: true,
        isSkip: true,
        hintTextId: 'option.today-skip.hint',
      }),
    ],
  },
];

export const PERSON_CAPS = [{ id: 'acid-low', materialClass: 'acid', maxPpm: 10_000 }];

export const CROSS_CONTACTS = ['acid', 'aha', 'photosensitiser', 'exfoliant'].map((tag) => ({
  tag,
  policy: { kind: 'none', reason: 'Left out for what it does, not as an allergen; tools are wiped and washed between jars' },
}));

const caution = (id: string, more: Record<string, unknown>) => ({
  id,
  places: ['kiosk', 'label'],
  audience: 'customer',
  mustTick: false,
  textId: `caution.${id}`,
  labelTextId: `caution.${id}.label`,
  triggers: [],
  source: 'common practice, no source',
  ...more,
});

const staff = (id: string) => caution(id, { places: ['card', 'bench'], audience: 'staff', labelTextId: undefined });

export const CAUTIONS = [
  caution('eyes', { triggers: [{ kind: 'always' }], source: 'GHS P305+P351+P338 in plain words, from memory' }),
  caution('broken-skin', { triggers: [{ kind: 'always' }] }),
  caution('time', { triggers: [{ kind: 'always' }] }),
  caution('children', { triggers: [{ kind: 'always' }] }),
  caution('try-first', { triggers: [{ kind: 'tag', tag: 'acid' }], source: 'American Academy of Dermatology, testing of skin care products, 2021' }),
  caution('sting', { triggers: [{ kind: 'tag', tag: 'acid' }] }),
  caution('sun', { mustTick: true, source: 'FDA guidance on alpha hydroxy acids, January 2005, in plain words' }),
  caution('sun-us', { places: ['label'], source: 'FDA guidance "Labeling for Cosmetics Containing Alpha Hydroxy Acids", January 2005' }),
  caution('towels', { triggers: [{ kind: 'class', materialClass: 'iron' }] }),
  staff('staff-dust'),
  staff('staff-acid'),
  staff('staff-acid-clay'),
];
