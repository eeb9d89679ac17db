// Whoever would rather not say is offered nothing that an honest answer, or any combination of ticked ones, would have kept from them.
// By exact counts of A and of A with B over everything that two books permit, and by the effects themselves.
import { describe, expect, it } from 'vitest';
import { demoRulebook } from '#app/_cli/demo/rulebook/demo-rulebook.ts';
import type { Person } from '#lib/answers/person.ts';
import { readAnswers } from '#lib/answers/read-answers.ts';
import { invariant } from '#lib/base/invariant.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Option, Question } from '#lib/rulebook/questionnaire.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { permittedVariants } from '#lib/variants/permitted.ts';
import { judgeVariant } from '#lib/verdict/judge.ts';
import { aDemoRulebook, TEST_DAY } from '#test/support/a-demo-book.ts';
import { offeredSets } from '#test/support/offered-sets.ts';

const endsVisit = ({ effects }: Option): boolean => effects.some(({ kind }) => kind === 'outcome');

/** Every answer that can be given to a question and still leads to masks. */
function answersTo({ options, choose, mostCount }: Question): readonly (readonly Option[])[] {
  const open = options.filter((option) => !endsVisit(option));
  if (choose === 'one') return open.map((option) => [option]);
  const together = open.filter(({ exclusive }) => !exclusive);
  const sets: Option[][] = [[]];
  for (const option of together) sets.push(...sets.map((one) => [...one, option]));
  return [
    ...sets.filter((one) => one.length > 0 && one.length <= mostCount),
    ...open.filter(({ exclusive }) => exclusive).map((one) => [one]),
  ];
}

function personOf(rulebook: Rulebook, question: Question, options: readonly Option[]): Person {
  const read = readAnswers({ ...rulebook, questions: [question] }, [{ questionId: question.id, optionIds: options.map(({ id }) => id) }]);
  invariant(read.ok, `an answer to ${question.id} was refused`);
  return read.value;
}

function neverHere({ id }: Question): never {
  throw new Error(`${id} cannot be left unsaid`);
}

/** One person of whom all of this is true. */
const joined = (people: readonly Person[]): Person => ({
  wishes: new Map(),
  excluded: new Map(people.flatMap((person) => [...person.excluded])),
  capIds: new Map(people.flatMap((person) => [...person.capIds])),
  mildest: people.flatMap((person) => person.mildest),
  areaFactorPpm: people.map((person) => person.areaFactorPpm).find((factor) => factor !== null) ?? null,
  cautions: [],
  outcomes: [],
});

/** What a person's answers keep from them; a larger area counts as one more. */
const keptFrom = (person: Person): readonly string[] => [
  ...[...person.excluded.keys()].map((tag) => `no ${tag}`),
  ...[...person.capIds.keys()].map((capId) => `cap ${capId}`),
  ...(person.mildest.length > 0 ? ['mildest'] : []),
  ...(person.areaFactorPpm === null ? [] : [`area ${person.areaFactorPpm}`]),
];

const skipOf = (question: Question): Option | undefined => question.options.find((option) => option.isSkip && !endsVisit(option));
const nameOf = (options: readonly Option[]): string => options.map(({ id }) => id).join(' + ');

/** Every so manieth of a list. */
const someOf = <T>(all: readonly T[], most: number): readonly T[] => all.filter((_, index) => index % Math.ceil(all.length / most) === 0);

describe.each([
  ['the small shop', aDemoRulebook()],
  ['the demonstration', demoRulebook(TEST_DAY)],
])('%s', (_name, rulebook) => {
  const withSkip = rulebook.questions.filter((question) => skipOf(question) !== undefined);
  const book = openBook(rulebook);
  const sets = offeredSets(book, TEST_DAY);

  it('counts whom a mask may be offered to as the verdict does', () => {
    const people = rulebook.questions.flatMap((question) =>
      question.options.filter((option) => !endsVisit(option)).map((option) => personOf(rulebook, question, [option])),
    );
    expect(people.length).toBeGreaterThan(10);
    for (const variant of someOf(permittedVariants(book, TEST_DAY), 12).map((one) => one.variant))
      for (const person of people) {
        const isPermitted = judgeVariant(book, variant, { day: TEST_DAY, person }).verdict.kind === 'permitted';
        expect(sets.countAlso([variant], person)).toBe(isPermitted ? 1 : 0);
      }
  });

  it('has questions that can be left unsaid, and masks to count', () => {
    expect(withSkip.length).toBeGreaterThan(1);
    const [question] = withSkip;
    const nothing = question?.options.find(({ effects }) => effects.length === 0);
    invariant(question && nothing, 'an answer that asks for nothing');
    expect(sets.to(personOf(rulebook, question, [nothing])).length).toBe(sets.count);
  });

  it.each(withSkip.map((question) => [question.id, question] as const))(
    '%s: the masks left are among those of every other answer',
    (_id, question) => {
      const skip = skipOf(question);
      invariant(skip, question.id);
      const left = sets.to(personOf(rulebook, question, [skip]));
      expect(left.length).toBeGreaterThan(0);
      expect(left.length).toBeLessThan(sets.count);
      const wider = answersTo(question).filter((answer) => sets.countAlso(left, personOf(rulebook, question, answer)) !== left.length);
      expect(wider.map(nameOf)).toEqual([]);
    },
  );

  it('whoever leaves everything unsaid has some masks, and no more than whoever leaves one thing unsaid', () => {
    const unsaid = withSkip.flatMap((question) => skipOf(question) ?? []);
    const all = sets.to(joined(withSkip.flatMap((question) => personOf(rulebook, question, [skipOf(question) ?? neverHere(question)]))));
    expect(unsaid.length).toBe(withSkip.length);
    expect(all.length).toBeGreaterThan(0);
    for (const question of withSkip) {
      const one = personOf(rulebook, question, [skipOf(question) ?? neverHere(question)]);
      expect(sets.countAlso(all, one)).toBe(all.length);
    }
  });

  it('an answer makes a question needless only when it already keeps all that any answer to it would', () => {
    const needless = rulebook.questions.flatMap((question) =>
      question.options.flatMap((option) => option.skipsQuestionIds.map((skippedId) => ({ question, option, skippedId }))),
    );
    const wider = needless.filter(({ question, option, skippedId }) => {
      const kept = new Set(keptFrom(personOf(rulebook, question, [option])));
      const skipped = rulebook.questions.find(({ id }) => id === skippedId);
      return skipped?.options.some(
        (one) => endsVisit(one) || keptFrom(personOf(rulebook, skipped, [one])).some((other) => !kept.has(other)),
      );
    });
    expect(wider.map(({ option, skippedId }) => `${option.id} skips ${skippedId}`)).toEqual([]);
  });
});

describe('whatever the demonstration makes', () => {
  const rulebook = demoRulebook(TEST_DAY);
  const withSkip = rulebook.questions.filter((question) => skipOf(question) !== undefined);

  it('all of health can be left unsaid', () => {
    expect(withSkip.map(({ id }) => id)).toEqual(['sting', 'today', 'recent', 'doctor', 'react', 'pregnant']);
  });

  it.each(withSkip.map((question) => [question.id, question] as const))(
    '%s: saying nothing keeps at least as much as any other answer',
    (_id, question) => {
      const skip = skipOf(question);
      invariant(skip, question.id);
      const unsaid = new Set(keptFrom(personOf(rulebook, question, [skip])));
      const wider = answersTo(question).filter((answer) =>
        keptFrom(personOf(rulebook, question, answer)).some((kept) => !unsaid.has(kept)),
      );
      expect(wider.map(nameOf)).toEqual([]);
    },
  );
});
