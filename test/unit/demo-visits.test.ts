// Whole visits to the demonstration: the careful ones still end with a mask, and every way to end without one can be reached.
import { describe, expect, it } from 'vitest';
import { demoRulebook } from '#app/_cli/demo/rulebook/demo-rulebook.ts';
import type { Person } from '#lib/answers/person.ts';
import { readAnswers } from '#lib/answers/read-answers.ts';
import { invariant } from '#lib/base/invariant.ts';
import { openBook } from '#lib/rulebook/book.ts';
import { OUTCOMES } from '#lib/rulebook/questionnaire.ts';
import { mayBeOffered } from '#lib/variants/may-be-offered.ts';
import { permittedVariants } from '#lib/variants/permitted.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import { TEST_DAY } from '#test/support/a-demo-book.ts';

const rulebook = demoRulebook(TEST_DAY);
const book = openBook(rulebook);
const permitted = permittedVariants(book, TEST_DAY);

/** The shortest way through, where nothing is left out. */
const EASY = {
  who: 'who-me',
  age: 'age-18',
  where: 'where-face',
  wish: 'wish-any',
  feel: 'feel-right',
  sting: 'sting-never',
  today: 'today-none',
  recent: 'recent-none',
  doctor: 'doctor-no',
  react: 'react-none',
  pregnant: 'pregnant-no',
  sun: 'sun-no',
  scent: 'scent-any',
};
type Said = Readonly<Partial<Record<keyof typeof EASY, string>>>;

/** Answers what differs; questions that it makes needless are not asked. */
function visitOf(said: Said): Person {
  const chosen: Readonly<Record<string, string>> = { ...EASY, ...said };
  const picked = rulebook.questions.flatMap(({ options }) => options.filter(({ id }) => Object.values(chosen).includes(id)));
  const needless = new Set(picked.flatMap(({ skipsQuestionIds }) => skipsQuestionIds));
  const answers = rulebook.questions.flatMap(({ id }) => (needless.has(id) ? [] : [{ questionId: id, optionIds: [chosen[id] ?? ''] }]));
  const read = readAnswers(rulebook, answers);
  invariant(read.ok, JSON.stringify(read.ok ? null : read.refusal));
  return read.value;
}

function getsMask(person: Person): boolean {
  const isOffered = mayBeOffered(book, person, new Set());
  return permitted.some(
    ({ variant }) => isOffered(variant) && judgeVariant(book, variant, { day: TEST_DAY, person }).verdict.kind === 'permitted',
  );
}

const CAREFUL: Readonly<Record<string, Said>> = {
  'whoever has nothing to tell': {},
  'whoever buys for somebody else': { who: 'who-else' },
  'somebody of 16': { age: 'age-16' },
  'whoever uses it on chest or back': { where: 'where-chest' },
  'tight skin': { feel: 'feel-tight' },
  'skin that often stings': { sting: 'sting-often' },
  'whoever is pregnant': { pregnant: 'pregnant-yes' },
  'whoever will be in the sun': { sun: 'sun-yes' },
  'whoever wants no scent': { scent: 'scent-none' },
  'whoever says nothing but their age': {
    feel: 'feel-unsure',
    sting: 'sting-skip',
    today: 'today-skip',
    recent: 'recent-skip',
    doctor: 'doctor-skip',
    react: 'react-skip',
    pregnant: 'pregnant-skip',
    sun: 'sun-unsure',
  },
  ...Object.fromEntries(
    ['aspirin', 'perfume', 'daisy', 'nuts', 'bee', 'milk-oats'].map((id) => [`whoever reacts: ${id}`, { react: `react-${id}` }]),
  ),
};

it('there are thirteen questions', () => {
  expect(rulebook.questions.map(({ id }) => id)).toEqual(Object.keys(EASY));
});

describe('a mask is left for', () => {
  it.each(Object.entries(CAREFUL))('%s', (_who, said) => {
    const person = visitOf(said);
    expect(person.outcomes).toEqual([]);
    expect(getsMask(person)).toBe(true);
  });
});

describe('a visit without masks', () => {
  const ends: readonly (readonly [string, Said])[] = [
    ['mole', { today: 'today-mole', doctor: 'doctor-yes' }],
    ['professional', { doctor: 'doctor-yes', recent: 'recent-peel' }],
    ['age', { age: 'age-under-16', today: 'today-cut' }],
    ['wait', { recent: 'recent-peel', react: 'react-other' }],
    ['staff', { react: 'react-other' }],
  ];

  it.each(ends)('ends with %s before anything milder', (outcome, said) => {
    expect(visitOf(said).outcomes[0]).toBe(outcome);
  });

  it('can end in every way that follows from an answer; "none" follows from the masks', () => {
    const found = new Set(
      rulebook.questions.flatMap(({ options }) =>
        options.flatMap(({ effects }) => effects.map((one) => (one.kind === 'outcome' ? one.outcome : ''))),
      ),
    );
    expect(OUTCOMES.filter((outcome) => !found.has(outcome))).toEqual(['none']);
  });
});

describe('what is told', () => {
  it('who is pregnant is told so; who would rather not say has the same left out and is told nothing', () => {
    const [yes, unsaid] = [visitOf({ pregnant: 'pregnant-yes' }), visitOf({ pregnant: 'pregnant-skip' })];
    expect(yes.cautions).toEqual([{ cautionId: 'pregnant', mustTick: false }]);
    expect(unsaid.cautions).toEqual([]);
    expect([...unsaid.excluded.keys()]).toEqual([...yes.excluded.keys()]);
  });

  it('nothing that follows from an answer alone stands on a jar', () => {
    const triggered = (id: string): boolean => (book.cautions.get(id)?.triggers.length ?? 0) > 0;
    const personal = rulebook.questions.flatMap(({ options }) =>
      options.flatMap(({ effects }) =>
        effects.flatMap((one) => (one.kind === 'caution' && !triggered(one.cautionId) ? [one.cautionId] : [])),
      ),
    );
    expect([...new Set(personal)].sort()).toEqual(['ask-pharmacist', 'pregnant']);
    for (const id of personal) expect(book.cautions.get(id)?.places).toEqual(['kiosk']);
  });
});
