// One visit at the kiosk as a pure reducer: answers, pages and ticks live in this one value, in the browser's memory, and nowhere else.
// A page is named by its place on the trail, so that the browser's history needs to hold a number and never an answer.
import { assertNever } from '../base/invariant.ts';
import type { Answered, AnswerMistake, Questionnaire } from './visit-answers.ts';
import { askedQuestions, chosenIds, firstOpen, isKnown, mistakeIn, outcomesOf, withTick } from './visit-answers.ts';

export type VisitPage =
  | { readonly kind: 'question'; readonly questionId: string }
  | { readonly kind: 'start' | 'check' | 'outcome' | 'results' | 'why-not' | 'cautions' | 'code' };

/** What keeps Continue from going on. */
export type Mistake = AnswerMistake | 'choose-mask';

/** `Found` is what the server found for the answers, `Receipt` what an order got; the reducer only keeps them. */
export interface Visit<Found, Receipt> extends Answered {
  /** Pages in the order in which they were reached; `at` is the one shown. */
  readonly trail: readonly VisitPage[];
  readonly at: number;
  readonly mistake: Mistake | null;
  /** From the first look at all answers on, Continue leads back there. */
  readonly hasChecked: boolean;
  /** Questions whose answers went because an earlier answer or the list changed; said on the check page. */
  readonly droppedIds: readonly string[];
  readonly hasListChanged: boolean;
  readonly found: Found | null;
  readonly chosenToken: string | null;
  readonly tickedIds: readonly string[];
  readonly hasReadAll: boolean;
  readonly receipt: Receipt | null;
}

export type VisitAction<Found, Receipt> =
  | { readonly kind: 'start' | 'continue' | 'check-answers' | 'see-why-not' | 'look-again' | 'wipe' }
  | { readonly kind: 'choose'; readonly questionId: string; readonly optionId: string }
  | { readonly kind: 'change'; readonly questionId: string }
  | { readonly kind: 'show'; readonly at: number }
  | { readonly kind: 'adopt'; readonly questionnaire: Questionnaire }
  /** The same questions in another language: answers stay, masks are named anew. */
  | { readonly kind: 'speak'; readonly questionnaire: Questionnaire }
  | { readonly kind: 'found'; readonly found: Found }
  | { readonly kind: 'choose-mask'; readonly token: string }
  /** One of the others: it joins those that were found, and its cautions come next. */
  | { readonly kind: 'take-other'; readonly found: Found; readonly token: string }
  | { readonly kind: 'tick'; readonly cautionId: string; readonly isOn: boolean }
  | { readonly kind: 'read-all'; readonly isOn: boolean }
  | { readonly kind: 'ordered'; readonly receipt: Receipt };

/** Nothing found, chosen or ticked: where a visit stands after any answer has changed. */
const NOTHING_FOUND = { found: null, chosenToken: null, tickedIds: [], hasReadAll: false } as const;

export const newVisit = <Found, Receipt>(questionnaire: Questionnaire): Visit<Found, Receipt> => ({
  questionnaire,
  answers: [],
  trail: [{ kind: 'start' }],
  at: 0,
  mistake: null,
  hasChecked: false,
  droppedIds: [],
  hasListChanged: false,
  ...NOTHING_FOUND,
  receipt: null,
});

export function reduceVisit<Found, Receipt>(visit: Visit<Found, Receipt>, action: VisitAction<Found, Receipt>): Visit<Found, Receipt> {
  switch (action.kind) {
    case 'start':
      return pushed(newVisit<Found, Receipt>(visit.questionnaire), firstPage(visit));
    case 'choose':
      return settled({ ...visit, answers: withTick(visit, action.questionId, action.optionId) });
    case 'continue':
      return continued(visit);
    case 'change':
      return pushed(visit, { kind: 'question', questionId: action.questionId });
    case 'check-answers':
      return pushed({ ...visit, hasChecked: true }, { kind: 'check' });
    case 'see-why-not':
      return pushed(visit, { kind: 'why-not' });
    case 'show':
      return visit.receipt ? visit : { ...visit, at: Math.max(0, Math.min(action.at, visit.trail.length - 1)), mistake: null };
    case 'adopt':
      return adopted(visit, action.questionnaire);
    case 'speak':
      return { ...visit, ...NOTHING_FOUND, questionnaire: action.questionnaire };
    case 'found':
      return { ...visit, chosenToken: null, tickedIds: [], hasReadAll: false, found: action.found };
    case 'look-again':
      return pushed<Found, Receipt>({ ...visit, ...NOTHING_FOUND }, { kind: 'results' });
    case 'choose-mask':
      return { ...visit, chosenToken: action.token, tickedIds: [], hasReadAll: false, mistake: null };
    case 'take-other':
      return pushed({ ...visit, found: action.found, chosenToken: action.token, tickedIds: [], hasReadAll: false }, { kind: 'cautions' });
    case 'tick':
      return { ...visit, tickedIds: toggled(visit.tickedIds, action.cautionId, action.isOn) };
    case 'read-all':
      return { ...visit, hasReadAll: action.isOn };
    case 'ordered':
      // The answers have done their work: from here on only the receipt is there.
      return { ...pushed(visit, { kind: 'code' }), ...NOTHING_FOUND, answers: [], droppedIds: [], receipt: action.receipt };
    case 'wipe':
      return newVisit(visit.questionnaire);
    default:
      return assertNever(action);
  }
}

/** The page to show: one on the trail that no longer makes sense gives way to the nearest that does. */
export function pageOf<Found, Receipt>(visit: Visit<Found, Receipt>): VisitPage {
  if (visit.receipt) return { kind: 'code' };
  const page: VisitPage = visit.trail[visit.at] ?? { kind: 'start' };
  switch (page.kind) {
    case 'question':
      return askedQuestions(visit).some((question) => question.id === page.questionId) ? page : { kind: 'check' };
    case 'outcome':
      return outcomesOf(visit).length > 0 ? page : { kind: 'check' };
    case 'results':
      return foundPage(visit);
    case 'why-not':
      return visit.found === null ? foundPage(visit) : page;
    case 'cautions':
      return visit.chosenToken === null ? foundPage(visit) : page;
    case 'start':
    case 'check':
    case 'code':
      return page;
    default:
      return assertNever(page);
  }
}

/** Masks are shown for whole sets of answers only, and never beside an outcome. */
function foundPage<Found, Receipt>(visit: Visit<Found, Receipt>): VisitPage {
  if (outcomesOf(visit).length > 0) return { kind: 'outcome' };
  return firstOpen(visit) === null ? { kind: 'results' } : { kind: 'check' };
}

/** Drops answers to questions that are no longer asked, and everything that was found for the answers before. */
function settled<Found, Receipt>(visit: Visit<Found, Receipt>): Visit<Found, Receipt> {
  const asked = new Set(askedQuestions(visit).map((question) => question.id));
  const dropped = visit.answers.filter((answer) => !asked.has(answer.questionId)).map((answer) => answer.questionId);
  const isAnsweredAnew = (id: string): boolean => chosenIds(visit, id).length > 0 && asked.has(id);
  return {
    ...visit,
    ...NOTHING_FOUND,
    mistake: null,
    answers: visit.answers.filter((answer) => asked.has(answer.questionId)),
    droppedIds: [...new Set([...visit.droppedIds.filter((id) => !isAnsweredAnew(id)), ...dropped])],
  };
}

function continued<Found, Receipt>(visit: Visit<Found, Receipt>): Visit<Found, Receipt> {
  const page = pageOf(visit);
  switch (page.kind) {
    case 'question': {
      const question = askedQuestions(visit).find((one) => one.id === page.questionId);
      const mistake = question ? mistakeIn(question, visit) : null;
      return mistake ? { ...visit, mistake } : pageReached(visit, pageAfter(visit, page.questionId));
    }
    case 'check':
      return pageReached({ ...visit, droppedIds: [], hasListChanged: false }, pageAfterCheck(visit));
    case 'results':
    case 'why-not':
      return visit.chosenToken === null ? { ...visit, mistake: 'choose-mask' } : pageReached(visit, { kind: 'cautions' });
    case 'start':
    case 'outcome':
    case 'cautions':
    case 'code':
      return visit;
    default:
      return assertNever(page);
  }
}

const firstPage = ({ questionnaire }: Pick<Answered, 'questionnaire'>): VisitPage => {
  const [first] = questionnaire.questions;
  return first ? { kind: 'question', questionId: first.id } : { kind: 'check' };
};

/** After a question: an outcome at once; then the next question, or, once all were seen, the first still open; then all answers. */
function pageAfter(visit: Visit<unknown, unknown>, questionId: string): VisitPage {
  if (outcomesOf(visit).length > 0) return { kind: 'outcome' };
  const asked = askedQuestions(visit);
  const next = visit.hasChecked ? firstOpen(visit) : asked[asked.findIndex((question) => question.id === questionId) + 1];
  return next ? { kind: 'question', questionId: next.id } : { kind: 'check' };
}

function pageAfterCheck(visit: Visit<unknown, unknown>): VisitPage {
  const open = firstOpen(visit);
  if (outcomesOf(visit).length > 0 || open === null) return foundPage(visit);
  return { kind: 'question', questionId: open.id };
}

const pageReached = <Found, Receipt>(visit: Visit<Found, Receipt>, page: VisitPage): Visit<Found, Receipt> =>
  pushed({ ...visit, hasChecked: visit.hasChecked || page.kind === 'check' }, page);

/** A new page ends the trail: what lay ahead of the page before is forgotten, as in a browser. */
const pushed = <Found, Receipt>(visit: Visit<Found, Receipt>, page: VisitPage): Visit<Found, Receipt> => ({
  ...visit,
  trail: [...visit.trail.slice(0, visit.at + 1), page],
  at: visit.at + 1,
  mistake: null,
});

/** A new edition came into force: answers that it still knows are kept, and all of them are shown again. */
function adopted<Found, Receipt>(visit: Visit<Found, Receipt>, questionnaire: Questionnaire): Visit<Found, Receipt> {
  const stays = new Set(questionnaire.questions.map((question) => question.id));
  const kept = visit.answers.filter((answer) => isKnown(questionnaire, answer));
  const lostIds = visit.answers
    .filter((answer) => !kept.includes(answer) && stays.has(answer.questionId))
    .map((answer) => answer.questionId);
  const moved = { ...visit, questionnaire, answers: kept, hasListChanged: true, droppedIds: [...visit.droppedIds, ...lostIds] };
  return pageReached(settled(moved), { kind: 'check' });
}

const toggled = (ids: readonly string[], id: string, isOn: boolean): readonly string[] =>
  isOn ? [...ids.filter((one) => one !== id), id] : ids.filter((one) => one !== id);
