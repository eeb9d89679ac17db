// Answers of the demonstration's questionnaire: what they add up to, and every way in which they can be wrong.
import { describe, expect, it } from 'vitest';
import type { Answer } from '#lib/answers/read-answers.ts';
import { readAnswers } from '#lib/answers/read-answers.ts';
import { aDemoRulebook } from '#test/support/a-demo-book.ts';

const rulebook = aDemoRulebook();
const answers = (given: Readonly<Record<string, readonly string[]>>): readonly Answer[] =>
  Object.entries(given).map(([questionId, optionIds]) => ({ questionId, optionIds }));
const PLAIN = { age: ['age-18'], wish: ['wish-oil'], sting: ['sting-never'], today: ['today-none'] };
const person = (change: Partial<Record<keyof typeof PLAIN, readonly string[]>> = {}) => {
  const read = readAnswers(rulebook, answers({ ...PLAIN, ...change }));
  if (!read.ok) throw new Error(JSON.stringify(read.refusal));
  return read.value;
};
const faults = (given: readonly Answer[]) => {
  const read = readAnswers(rulebook, given);
  return read.ok ? [] : read.refusal.map((fault) => `${fault.questionId}: ${fault.code}`);
};

describe('a person', () => {
  it('has the weights of all wishes together', () =>
    expect([...person({ wish: ['wish-oil', 'wish-dry'] }).wishes]).toEqual([
      ['oil', 3],
      ['dry', 3],
    ]));
  it('avoids what any answer excludes, and knows which answer it was', () => {
    expect(person({ sting: ['sting-often'] }).excluded.get('acid')).toEqual([{ questionId: 'sting', optionId: 'sting-often' }]);
    expect(person({ age: ['age-16'], sting: ['sting-often'] }).excluded.get('acid')).toHaveLength(2);
  });
  it('gets the gentle set, caps and cautions of the answers', () => {
    const careful = person({ sting: ['sting-skip'] });
    expect(careful.mildest).toHaveLength(1);
    expect(careful.cautions).toEqual([{ cautionId: 'try-first', mustTick: true }]);
    expect([...person({ sting: ['sting-unsure'] }).capIds.keys()]).toEqual(['acid-low']);
  });
  it('hears the worst outcome first', () =>
    expect(person({ age: ['age-under-16'], today: ['today-cut', 'today-mole'] }).outcomes).toEqual(['mole', 'age', 'wait']));
});

describe('wrong answers are all named', () => {
  it.each([
    ['a question nobody asked', answers({ ...PLAIN, weather: ['sunny'] }), ['weather: unknown-question']],
    ['an option that is not there', answers({ ...PLAIN, age: ['age-99'] }), ['age: unknown-option']],
    ['a question left open', answers({ age: ['age-18'], wish: ['wish-oil'], sting: ['sting-never'] }), ['today: not-answered']],
    ['an empty answer', answers({ ...PLAIN, sting: [] }), ['sting: not-answered']],
    ['two answers where one is asked', answers({ ...PLAIN, sting: ['sting-often', 'sting-never'] }), ['sting: too-many']],
    ['more wishes than asked', answers({ ...PLAIN, wish: ['wish-oil', 'wish-dry', 'wish-dull'] }), ['wish: too-many']],
    ['"none" together with another', answers({ ...PLAIN, today: ['today-none', 'today-cut'] }), ['today: exclusive-with-others']],
    ['the same option twice', answers({ ...PLAIN, wish: ['wish-oil', 'wish-oil'] }), ['wish: unknown-option']],
    ['the same question twice', [...answers(PLAIN), { questionId: 'age', optionIds: ['age-16'] }], ['age: answered-twice']],
  ])('%s', (_, given, expected) => expect(faults(given)).toEqual(expected));
});
