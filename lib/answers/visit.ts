// One visit's answers in the browser, as a pure reducer. They live in this value and nowhere else.
import type { KioskQuestion } from './kiosk-questions.ts';
import type { Answer } from './read-answers.ts';

export interface Visit {
  readonly chosen: Readonly<Record<string, readonly string[]>>;
}

export const NEW_VISIT: Visit = { chosen: {} };

/** Ticks or unticks an option. "None of these" clears the rest, and any other clears it; one of one replaces. */
export function choose(questions: readonly KioskQuestion[], visit: Visit, questionId: string, optionId: string): Visit {
  const question = questions.find((one) => one.id === questionId);
  const option = question?.options.find((one) => one.id === optionId);
  if (!question || !option) return visit;
  const before = visit.chosen[questionId] ?? [];
  const isAlone = question.choose === 'one' || option.exclusive;
  const exclusive = new Set(question.options.filter((one) => one.exclusive).map((one) => one.id));
  const after = before.includes(optionId) && question.choose === 'many' ? before.filter((id) => id !== optionId) : isAlone ? [optionId] : [...before.filter((id) => !exclusive.has(id)), optionId];
  return { chosen: { ...visit.chosen, [questionId]: after } };
}

/** Questions that this visit still asks, in order: those that no answer makes needless. */
export function askedQuestions(questions: readonly KioskQuestion[], visit: Visit): readonly KioskQuestion[] {
  const needless = new Set(
    questions.flatMap((question) => question.options.filter((option) => (visit.chosen[question.id] ?? []).includes(option.id)).flatMap((option) => option.skips)),
  );
  return questions.filter((question) => !needless.has(question.id));
}

export type AnswerMistake = 'choose-one' | 'choose-fewer' | null;

/** What keeps a question from being answered. */
export function mistakeIn(question: KioskQuestion, visit: Visit): AnswerMistake {
  const count = (visit.chosen[question.id] ?? []).length;
  if (count === 0) return 'choose-one';
  return question.choose === 'many' && count > question.mostCount ? 'choose-fewer' : null;
}

/** The answers to send: only those of questions still asked. */
export const answersOf = (questions: readonly KioskQuestion[], visit: Visit): readonly Answer[] =>
  askedQuestions(questions, visit).flatMap((question) => {
    const optionIds = visit.chosen[question.id] ?? [];
    return optionIds.length > 0 ? [{ questionId: question.id, optionIds }] : [];
  });
