// A dull questionnaire for tests: one wish, one thing to avoid, and the cautions that they need.
import type { Caution, Option, Question } from '#lib/rulebook/questionnaire.ts';

/** An answer that does nothing. */
export const anOption = (id: string, overrides: Partial<Option> = {}): Option => ({
  id,
  textId: `option.${id}`,
  exclusive: false,
  isSkip: false,
  effects: [],
  skipsQuestionIds: [],
  ...overrides,
});

/** A question with one answer to choose. */
export const aQuestion = (id: string, options: readonly Option[], overrides: Partial<Question> = {}): Question => ({
  id,
  partTextId: 'part.mask',
  textId: `question.${id}`,
  choose: 'one',
  mostCount: 1,
  options,
  ...overrides,
});

/** A customer's caution, owed always, at the kiosk and on the label. */
export const aCaution = (id: string, overrides: Partial<Caution> = {}): Caution => ({
  id,
  places: ['kiosk', 'label'],
  audience: 'customer',
  mustTick: false,
  textId: `caution.${id}`,
  labelTextId: `caution.${id}.label`,
  triggers: [{ kind: 'always' }],
  source: 'house rule',
  ...overrides,
});

/** A caution for staff at the bench and on the mixing card, owed only where something names it. */
export const aStaffCaution = (id: string, overrides: Partial<Caution> = {}): Caution => ({
  id,
  places: ['bench', 'card'],
  audience: 'staff',
  mustTick: false,
  textId: `caution.${id}`,
  triggers: [],
  source: 'house rule',
  ...overrides,
});
