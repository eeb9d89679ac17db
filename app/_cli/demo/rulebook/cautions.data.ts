// What is owed to whom and where, and what happens at a bench where something avoided is handled open. Limit rows and judgements name some.

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

/** Told at the kiosk and nowhere else: what follows from an answer never stands on a jar. */
const told = (id: string, more: Record<string, unknown>) => caution(id, { places: ['kiosk'], labelTextId: undefined, ...more });
const staff = (id: string, more: Record<string, unknown> = {}) =>
  caution(id, { places: ['card', 'bench'], audience: 'staff', labelTextId: undefined, ...more });

const ALWAYS = [{ kind: 'always' }];
const tagged = (tag: string) => [{ kind: 'tag', tag }];
const classed = (materialClass: string) => [{ kind: 'class', materialClass }];

const EVERY_MASK = [
  caution('eyes', { triggers: ALWAYS, source: 'GHS P305+P351+P338 in plain words, from memory' }),
  caution('broken-skin', { triggers: ALWAYS, source: 'MotherToBaby: broken skin takes up more' }),
  caution('time', { triggers: ALWAYS, source: "the formulator's own instruction, invented" }),
  caution('children', { triggers: ALWAYS, source: 'house policy: not under 16' }),
];

const OF_WHAT_IS_IN_IT = [
  caution('try-first', {
    triggers: tagged('acid'),
    source: 'American Academy of Dermatology, testing of skin care products, 2021: twice a day for 7 to 10 days',
  }),
  caution('sting', { triggers: tagged('acid'), source: 'FDA, reported reactions to alpha hydroxy acids' }),
  caution('sun', { mustTick: true, triggers: tagged('aha'), source: 'FDA guidance on alpha hydroxy acids, January 2005, in plain words' }),
  caution('sun-us', { places: ['label'], source: 'FDA guidance "Labeling for Cosmetics Containing Alpha Hydroxy Acids", January 2005' }),
  caution('salicylic', {
    mustTick: true,
    triggers: tagged('salicylate'),
    source: 'Regulation (EC) No 1223/2009, Annex III/98, and public medicine leaflets on aspirin, from memory',
  }),
  caution('oats', { triggers: tagged('oat'), source: 'house policy: what people react to is named' }),
  caution('towels', { triggers: classed('iron'), source: "the formulator's own test, invented" }),
];

const OF_THE_PERSON = [
  told('pregnant', { source: 'MotherToBaby, topical acne treatments; extra care, no known harm' }),
  told('ask-pharmacist', { source: 'house policy' }),
  told('also-made-oats', { source: 'house policy: shared tools, cleaned between jars' }),
  told('also-made-daisy', { source: 'house policy: shared tools, cleaned between jars' }),
  told('also-made-salicylic', { source: 'house policy: shared tools, cleaned between jars' }),
];

const OF_THE_WORK = [
  staff('staff-dust', { triggers: classed('clay'), source: 'HSE EH44, Dust in the workplace' }),
  staff('staff-acid', { triggers: classed('acid'), source: 'safety data sheets; GHS P280, P305+P351+P338, from memory' }),
  staff('staff-acid-clay'),
];

export const CAUTIONS = [...EVERY_MASK, ...OF_WHAT_IS_IN_IT, ...OF_THE_PERSON, ...OF_THE_WORK];

/** Words that an authority gives: not put more plainly, whatever the reading grade. */
export const FIXED_BY_LAW: readonly string[] = ['caution.sun-us', 'caution.sun-us.label'];

const LEFT_OUT_FOR_ITS_EFFECT = ['acid', 'aha', 'photosensitiser', 'exfoliant'];
const MADE_BESIDE: Readonly<Record<string, string>> = {
  salicylate: 'also-made-salicylic',
  oat: 'also-made-oats',
  gluten: 'also-made-oats',
  asteraceae: 'also-made-daisy',
};

/** A tag without a row sends the customer to the staff. */
export const CROSS_CONTACTS = [
  ...LEFT_OUT_FOR_ITS_EFFECT.map((tag) => ({
    tag,
    policy: { kind: 'none', reason: 'Left out for what it does, not as an allergen; tools are wiped and washed between jars' },
  })),
  ...Object.entries(MADE_BESIDE).map(([tag, cautionId]) => ({ tag, policy: { kind: 'caution', cautionId } })),
];
