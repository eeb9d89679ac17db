// Answers → person. Adding up effects is order-free: wishes add, everything else joins, so no answer can loosen another.
import { compareText } from '../base/compare.ts';
import type { Result } from '../base/result.ts';
import { accept, refuse } from '../base/result.ts';
import type { AvoidTag } from '../rulebook/material.ts';
import type { Option, Question } from '../rulebook/questionnaire.ts';
import { OUTCOMES } from '../rulebook/questionnaire.ts';
import type { Rulebook } from '../rulebook/rulebook.ts';
import type { FactorPpm } from '../units/share.ts';
import type { Because, Person } from './person.ts';

export interface Answer {
  readonly questionId: string;
  readonly optionIds: readonly string[];
}

/** What is wrong with a set of answers; the path points into it. */
export interface AnswerFault {
  readonly questionId: string;
  readonly code:
    | 'unknown-question'
    | 'unknown-option'
    | 'answered-twice'
    | 'not-answered'
    | 'skipped-question'
    | 'too-many'
    | 'exclusive-with-others';
}

type Chosen = readonly { readonly question: Question; readonly option: Option }[];

/** The person that a full set of answers describes, or every fault in it. Every question that no answer skips must be answered. */
export function readAnswers(rulebook: Rulebook, answers: readonly Answer[]): Result<Person, readonly AnswerFault[]> {
  const faults = answerFaults(rulebook.questions, answers);
  if (faults.length > 0) return refuse(faults);
  return accept(personOf(rulebook, chosenOptions(rulebook.questions, answers)));
}

function chosenOptions(questions: readonly Question[], answers: readonly Answer[]): Chosen {
  return questions.flatMap((question) => {
    const optionIds = answers.find((answer) => answer.questionId === question.id)?.optionIds ?? [];
    return question.options.filter((option) => optionIds.includes(option.id)).map((option) => ({ question, option }));
  });
}

function answerFaults(questions: readonly Question[], answers: readonly Answer[]): readonly AnswerFault[] {
  const known = new Map(questions.map((question) => [question.id, question]));
  const skipped = new Set(chosenOptions(questions, answers).flatMap(({ option }) => option.skipsQuestionIds));
  const ofAnswers = answers.flatMap((answer, index): AnswerFault[] => {
    const question = known.get(answer.questionId);
    const fault = (code: AnswerFault['code']): AnswerFault[] => [{ questionId: answer.questionId, code }];
    if (!question) return fault('unknown-question');
    if (answers.findIndex((other) => other.questionId === answer.questionId) !== index) return fault('answered-twice');
    if (skipped.has(question.id)) return fault('skipped-question');
    return optionFaults(question, answer.optionIds).map((code) => ({ questionId: question.id, code }));
  });
  const answered = new Set(answers.map((answer) => answer.questionId));
  const open = questions.filter((question) => !answered.has(question.id) && !skipped.has(question.id));
  return [...ofAnswers, ...open.map((question): AnswerFault => ({ questionId: question.id, code: 'not-answered' }))];
}

function optionFaults(question: Question, optionIds: readonly string[]): readonly AnswerFault['code'][] {
  const options = question.options.filter((option) => optionIds.includes(option.id));
  if (options.length !== optionIds.length) return ['unknown-option'];
  if (options.length === 0) return ['not-answered'];
  if (options.length > (question.choose === 'one' ? 1 : question.mostCount)) return ['too-many'];
  if (options.length > 1 && options.some((option) => option.exclusive)) return ['exclusive-with-others'];
  return [];
}

function personOf(rulebook: Rulebook, chosen: Chosen): Person {
  const wishes = new Map<string, number>();
  const excluded = new Map<AvoidTag, readonly Because[]>();
  const capIds = new Map<string, readonly Because[]>();
  const mildest: Because[] = [];
  const cautions = new Map<string, boolean>();
  const outcomes = new Set<string>();
  const areas: FactorPpm[] = [];
  for (const { question, option } of chosen) {
    const because = { questionId: question.id, optionId: option.id };
    for (const effect of option.effects) {
      if (effect.kind === 'wish') wishes.set(effect.concernId, (wishes.get(effect.concernId) ?? 0) + effect.weightCount);
      if (effect.kind === 'exclude') for (const tag of effect.tags) excluded.set(tag, [...(excluded.get(tag) ?? []), because]);
      if (effect.kind === 'cap') capIds.set(effect.capId, [...(capIds.get(effect.capId) ?? []), because]);
      if (effect.kind === 'mildest') mildest.push(because);
      if (effect.kind === 'caution') cautions.set(effect.cautionId, (cautions.get(effect.cautionId) ?? false) || effect.mustTick);
      if (effect.kind === 'outcome') outcomes.add(effect.outcome);
      if (effect.kind === 'area')
        areas.push(...rulebook.house.exposure.areas.filter((area) => area.id === effect.areaId).map((area) => area.factorPpm));
    }
  }
  return {
    wishes,
    excluded,
    capIds,
    mildest,
    areaFactorPpm: areas.reduce<FactorPpm | null>((most, area) => (most === null || area > most ? area : most), null),
    cautions: [...cautions].map(([cautionId, mustTick]) => ({ cautionId, mustTick })).sort((a, b) => compareText(a.cautionId, b.cautionId)),
    outcomes: OUTCOMES.filter((outcome) => outcomes.has(outcome)),
  };
}
