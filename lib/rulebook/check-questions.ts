// Questions can be answered in one way that means something, and every answer does what it says.
import type { DocumentPath } from '../base/document-fault.ts';
import type { Book } from './book.ts';
import type { Effect, Question } from './questionnaire.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

export function* checkQuestions(book: Book): Faults {
  const { questions, concerns, crossContacts, materials } = book.rulebook;
  for (const [index, question] of questions.entries()) {
    yield* choiceFaults(['questions', index], question);
    yield* optionFaults(['questions', index, 'options'], book, index);
  }
  const wished = new Set(questions.flatMap((one) => one.options.flatMap((option) => option.effects.map((effect) => wishOf(effect)))));
  for (const [index, { id }] of concerns.entries()) {
    if (!wished.has(id)) yield fault(['concerns', index], 'concern-never-wished', { concernId: id });
  }
  const tags = new Set(materials.flatMap((material) => material.tags));
  for (const [index, { tag, policy }] of crossContacts.entries()) {
    if (!tags.has(tag)) yield fault(['crossContacts', index, 'tag'], 'rule-idle', { absent: tag });
    if (policy.kind === 'caution') yield* forCustomers(['crossContacts', index, 'policy', 'cautionId'], book, policy.cautionId);
  }
}

const wishOf = (effect: Effect): string | null => (effect.kind === 'wish' ? effect.concernId : null);

function* choiceFaults(path: DocumentPath, { choose, mostCount, options }: Question): Faults {
  if (options.length === 0) yield fault([...path, 'options'], 'empty-list', { what: 'answer' });
  if (choose === 'one' && mostCount !== 1) yield fault([...path, 'mostCount'], 'one-answer-only', { foundCount: mostCount });
  if (choose === 'many' && mostCount < 1)
    yield fault([...path, 'mostCount'], 'out-of-range', { found: mostCount, least: 1, most: options.length });
  if (choose === 'many' && options.length > 0 && mostCount > options.length) {
    yield fault([...path, 'mostCount'], 'most-over-options', { mostCount, optionsCount: options.length });
  }
  const skips = options.map((option, index) => ({ option, index })).filter(({ option }) => option.isSkip);
  for (const { option, index } of skips) {
    if (choose === 'many' && !option.exclusive) yield fault([...path, 'options', index, 'exclusive'], 'skip-not-exclusive', {});
  }
  for (const { index } of skips.slice(1)) yield fault([...path, 'options', index, 'isSkip'], 'several-skips', {});
}

function* optionFaults(path: DocumentPath, book: Book, questionIndex: number): Faults {
  const { questions } = book.rulebook;
  const notLater = new Set(questions.slice(0, questionIndex + 1).map((question) => question.id));
  for (const [index, option] of (questions[questionIndex]?.options ?? []).entries()) {
    for (const [at, questionId] of option.skipsQuestionIds.entries()) {
      if (notLater.has(questionId)) yield fault([...path, index, 'skipsQuestionIds', at], 'skips-backwards', { questionId });
    }
    for (const [at, effect] of option.effects.entries()) yield* effectFaults([...path, index, 'effects', at], book, effect);
  }
}

function* effectFaults(path: DocumentPath, book: Book, effect: Effect): Faults {
  if (effect.kind === 'wish' && effect.weightCount < 1)
    yield fault([...path, 'weightCount'], 'out-of-range', { found: effect.weightCount, least: 1, most: 1_000_000 });
  if (effect.kind === 'exclude' && effect.tags.length === 0) yield fault([...path, 'tags'], 'effect-empty', {});
  if (effect.kind === 'caution') yield* forCustomers([...path, 'cautionId'], book, effect.cautionId);
}

function* forCustomers(path: DocumentPath, book: Book, cautionId: string): Faults {
  if (book.cautions.get(cautionId)?.audience === 'staff') yield fault(path, 'caution-wrong-audience', { cautionId, audience: 'customers' });
}
