// Where a visit stands: one value, changed only here. It lives in the page's memory and dies with it.
import type { KioskQuestion } from '#lib/answers/kiosk-questions.ts';
import type { Visit } from '#lib/answers/visit.ts';
import { askedQuestions, choose, mistakeIn, NEW_VISIT } from '#lib/answers/visit.ts';
import type { MasksOutput, MaskView } from '#lib/contracts/kiosk.ts';

export type Outcome = Extract<MasksOutput, { kind: 'outcome' }>['outcome'];

export type Step =
  | { readonly kind: 'start' }
  | { readonly kind: 'question'; readonly no: number }
  | { readonly kind: 'check' }
  | { readonly kind: 'results' }
  | { readonly kind: 'cautions' }
  | { readonly kind: 'code'; readonly code: string; readonly priceMinor: number }
  | { readonly kind: 'outcome'; readonly outcome: Outcome }
  | { readonly kind: 'offline'; readonly from: 'check' | 'cautions' }
  | { readonly kind: 'pulled' }
  | { readonly kind: 'problem'; readonly detail: string };

export interface KioskState {
  readonly step: Step;
  readonly visit: Visit;
  readonly mistake: 'choose-one' | 'choose-fewer' | null;
  readonly isBusy: boolean;
  readonly masks: readonly MaskView[];
  readonly noActiveFits: boolean;
  readonly chosenToken: string | null;
  readonly ticked: readonly string[];
  readonly hasReadDirections: boolean;
  readonly requestKey: string;
}

export const startState = (requestKey: string): KioskState => ({
  step: { kind: 'start' },
  visit: NEW_VISIT,
  mistake: null,
  isBusy: false,
  masks: [],
  noActiveFits: false,
  chosenToken: null,
  ticked: [],
  hasReadDirections: false,
  requestKey,
});

export type KioskAction =
  | { readonly kind: 'choose'; readonly questionId: string; readonly optionId: string }
  | { readonly kind: 'continue' }
  | { readonly kind: 'go'; readonly step: Step }
  | { readonly kind: 'busy' }
  | { readonly kind: 'found'; readonly masks: readonly MaskView[]; readonly noActiveFits: boolean }
  | { readonly kind: 'pick'; readonly token: string; readonly requestKey: string }
  | { readonly kind: 'tick'; readonly cautionId: string; readonly isOn: boolean }
  | { readonly kind: 'read-directions'; readonly isOn: boolean };

export const kioskReducer =
  (questions: readonly KioskQuestion[]) =>
  (state: KioskState, action: KioskAction): KioskState => {
    switch (action.kind) {
      case 'choose':
        return { ...state, mistake: null, visit: choose(questions, state.visit, action.questionId, action.optionId) };
      case 'continue':
        return onward(questions, state);
      case 'go':
        return { ...state, step: action.step, mistake: null, isBusy: false };
      case 'busy':
        return { ...state, isBusy: true };
      case 'found':
        return { ...state, isBusy: false, step: { kind: 'results' }, masks: action.masks, noActiveFits: action.noActiveFits, chosenToken: null, ticked: [], hasReadDirections: false };
      case 'pick':
        return { ...state, chosenToken: action.token, requestKey: action.requestKey, ticked: [], hasReadDirections: false, mistake: null };
      case 'tick':
        return { ...state, ticked: action.isOn ? [...state.ticked, action.cautionId] : state.ticked.filter((id) => id !== action.cautionId) };
      case 'read-directions':
        return { ...state, hasReadDirections: action.isOn };
    }
  };

/** From a question to the next one still asked; the last leads to the check. An unanswered one stays and says so. */
function onward(questions: readonly KioskQuestion[], state: KioskState): KioskState {
  if (state.step.kind !== 'question') return state;
  const asked = askedQuestions(questions, state.visit);
  const question = asked[state.step.no];
  if (!question) return { ...state, step: { kind: 'check' } };
  const mistake = mistakeIn(question, state.visit);
  if (mistake) return { ...state, mistake };
  const next = state.step.no + 1;
  return { ...state, mistake: null, step: next < asked.length ? { kind: 'question', no: next } : { kind: 'check' } };
}

/** The step before, or null where Back leads nowhere. */
export function stepBefore(questions: readonly KioskQuestion[], state: KioskState): Step | null {
  const { step } = state;
  const last = askedQuestions(questions, state.visit).length - 1;
  if (step.kind === 'question') return step.no === 0 ? { kind: 'start' } : { kind: 'question', no: step.no - 1 };
  if (step.kind === 'check') return { kind: 'question', no: last };
  if (step.kind === 'results' || step.kind === 'outcome' || step.kind === 'problem') return { kind: 'check' };
  return step.kind === 'cautions' ? { kind: 'results' } : null;
}
