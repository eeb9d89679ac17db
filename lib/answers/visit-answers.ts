// What the answers of a visit mean as far as the browser can tell: which questions are still asked, what is open, and where an answer
// ends the visit. Only texts, `ends` and `skips` are known here.
import type { Outcome } from '../rulebook/questionnaire.ts';
import type { KioskOption, KioskQuestion } from './kiosk-questions.ts';
import type { Answer } from './read-answers.ts';

/** The same for every visit under one edition. */
export interface Questionnaire {
  readonly questions: readonly KioskQuestion[];
  readonly outcomesWorstFirst: readonly Outcome[];
}

export interface Answered {
  readonly questionnaire: Questionnaire;
  /** One answer a question, each with at least one option. */
  readonly answers: readonly Answer[];
}

export type AnswerMistake = 'choose-one' | 'choose-fewer';

/** Questions that this visit still asks, in order: those that no answer makes needless. */
export function askedQuestions({ questionnaire, answers }: Answered): readonly KioskQuestion[] {
  const needless = new Set(chosenOptions(questionnaire, answers).flatMap((option) => option.skips));
  return questionnaire.questions.filter((question) => !needless.has(question.id));
}

/** The outcomes that the answers lead to, worst first; any of them ends the visit without masks. */
export function outcomesOf({ questionnaire, answers }: Answered): readonly Outcome[] {
  const ends = new Set(chosenOptions(questionnaire, answers).map((option) => option.ends));
  return questionnaire.outcomesWorstFirst.filter((outcome) => ends.has(outcome));
}

export const chosenIds = ({ answers }: Pick<Answered, 'answers'>, questionId: string): readonly string[] =>
  answers.find((answer) => answer.questionId === questionId)?.optionIds ?? [];

const chosenOptions = ({ questions }: Questionnaire, answers: readonly Answer[]): readonly KioskOption[] =>
  questions.flatMap((question) => question.options.filter((option) => chosenIds({ answers }, question.id).includes(option.id)));

/** What is wrong with the answer to a question, if anything. */
export function mistakeIn(question: KioskQuestion, visit: Pick<Answered, 'answers'>): AnswerMistake | null {
  const count = chosenIds(visit, question.id).length;
  if (count === 0) return 'choose-one';
  return count > (question.choose === 'one' ? 1 : question.mostCount) ? 'choose-fewer' : null;
}

/** The first question that still wants an answer. */
export const firstOpen = (visit: Answered): KioskQuestion | null =>
  askedQuestions(visit).find((question) => mistakeIn(question, visit) !== null) ?? null;

/** Answers after one tick. Where several may be ticked a second tick takes it back; "none of these" clears the rest, and any other clears it. */
export function withTick({ questionnaire, answers }: Answered, questionId: string, optionId: string): readonly Answer[] {
  const question = questionnaire.questions.find((one) => one.id === questionId);
  const option = question?.options.find((one) => one.id === optionId);
  if (!question || !option) return answers;
  const before = chosenIds({ answers }, questionId);
  const isTicked = question.choose === 'many' && before.includes(optionId);
  const exclusive = new Set(question.options.filter((one) => one.exclusive).map((one) => one.id));
  const joined = question.choose === 'one' || option.exclusive ? [optionId] : [...before.filter((id) => !exclusive.has(id)), optionId];
  const optionIds = isTicked ? before.filter((id) => id !== optionId) : joined;
  const others = answers.filter((answer) => answer.questionId !== questionId);
  return optionIds.length > 0 ? [...others, { questionId, optionIds }] : others;
}

/** Whether a questionnaire still knows the question and every option of an answer. */
export function isKnown({ questions }: Questionnaire, { questionId, optionIds }: Answer): boolean {
  const known = questions.find((question) => question.id === questionId)?.options.map((option) => option.id) ?? [];
  return optionIds.every((id) => known.includes(id));
}
