'use client';
// One visit, from the first touch to the code. Answers stay in this component's state; the history holds a page's number and nothing else.
import type { ReactNode } from 'react';
import { useCallback, useEffect, useReducer, useRef, useState } from 'react';
import { findMasks, isServerBack, placeOrder } from '#app/_client/kiosk.ts';
import type { KioskShow } from '#lib/answers/kiosk-questions.ts';
import { answersOf } from '#lib/answers/visit.ts';
import type { KioskAction, KioskState, Step } from './kiosk-state.ts';
import { kioskReducer, startState, stepBefore } from './kiosk-state.ts';
import { KioskStep } from './kiosk-step.tsx';
import { MoreDialog } from './more-dialog.tsx';
import { StillHere } from './still-here.tsx';

const RETRY_MS = 5_000;

/** A fresh document: the browser's own caches then hold no answer either. */
export const wipe = (): void => window.location.replace('/kiosk');

export function KioskVisit({ show }: { readonly show: KioskShow }): ReactNode {
  const { questions } = show;
  const [state, dispatch] = useReducer(kioskReducer(questions), undefined, () => startState(''));
  const [isMoreOpen, setMoreOpen] = useState(false);
  const now = useRef(state);
  now.current = state;
  const goBack = useCallback((): void => {
    const before = stepBefore(questions, now.current);
    if (before) dispatch({ kind: 'go', step: before });
  }, [questions]);

  useBrowserBack(state.step, goBack);
  useServerBack(show, state, dispatch);

  return (
    <>
      <KioskStep
        show={show}
        state={state}
        dispatch={dispatch}
        onBack={goBack}
        onMore={() => setMoreOpen(true)}
        onFind={() => void find(show, now.current, dispatch)}
        onOrder={() => void order(show, now.current, dispatch)}
      />
      <MoreDialog open={isMoreOpen} onClose={() => setMoreOpen(false)} onWipe={wipe} />
      <StillHere step={state.step.kind} onWipe={wipe} />
    </>
  );
}

type Dispatch = (action: KioskAction) => void;

/** Asks for masks with all answers at once. */
async function find(show: KioskShow, state: KioskState, dispatch: Dispatch): Promise<void> {
  dispatch({ kind: 'busy' });
  const { editionHash, jarSizeId, questions } = show;
  const reply = await findMasks({ editionHash, jarSizeId, answers: answersOf(questions, state.visit).map((answer) => ({ ...answer, optionIds: [...answer.optionIds] })) });
  if (reply.kind === 'unreachable') return dispatch({ kind: 'go', step: { kind: 'offline', from: 'check' } });
  if (reply.kind === 'problem') return dispatch({ kind: 'go', step: { kind: 'problem', detail: reply.problem.faultId ?? reply.problem.title } });
  const { body } = reply;
  if (!body.ok) return dispatch({ kind: 'go', step: body.refusal.kind === 'edition-moved' ? { kind: 'pulled' } : { kind: 'problem', detail: body.refusal.kind } });
  if (body.kind === 'outcome') return dispatch({ kind: 'go', step: { kind: 'outcome', outcome: body.outcome } });
  dispatch({ kind: 'found', masks: body.masks, noActiveFits: body.noActiveFits });
}

/** Sends the order; sent twice with the same key it is stored once. */
async function order(show: KioskShow, state: KioskState, dispatch: Dispatch): Promise<void> {
  if (state.chosenToken === null || state.isBusy) return;
  dispatch({ kind: 'busy' });
  const { editionHash, jarSizeId, questions } = show;
  const reply = await placeOrder({
    requestKey: state.requestKey,
    editionHash,
    jarSizeId,
    token: state.chosenToken,
    answers: answersOf(questions, state.visit).map((answer) => ({ ...answer, optionIds: [...answer.optionIds] })),
    tickedCautionIds: [...state.ticked],
    hasReadDirections: state.hasReadDirections,
  });
  if (reply.kind === 'unreachable') return dispatch({ kind: 'go', step: { kind: 'offline', from: 'cautions' } });
  if (reply.kind === 'problem') return dispatch({ kind: 'go', step: { kind: 'problem', detail: reply.problem.faultId ?? reply.problem.title } });
  const { body } = reply;
  if (body.ok) return dispatch({ kind: 'go', step: { kind: 'code', code: body.code, priceMinor: body.priceMinor } });
  const isPulled = body.refusal.kind === 'edition-moved' || body.refusal.kind === 'no-longer-permitted';
  dispatch({ kind: 'go', step: isPulled ? { kind: 'pulled' } : { kind: 'problem', detail: body.refusal.kind } });
}

/** The browser's Back acts like ours: every step forward leaves a bare entry behind. */
function useBrowserBack(step: Step, goBack: () => void): void {
  const depth = useRef(0);
  useEffect(() => {
    const onPop = (): void => goBack();
    window.addEventListener('popstate', onPop);
    return () => window.removeEventListener('popstate', onPop);
  }, [goBack]);
  useEffect(() => {
    if (step.kind === 'start') return;
    depth.current += 1;
    window.history.pushState({ page: depth.current }, '');
  }, [step]);
}

/** While the server is away it is asked every few seconds; then the visit goes on by itself with the same answers and the same key. */
function useServerBack(show: KioskShow, state: KioskState, dispatch: Dispatch): void {
  const latest = useRef(state);
  latest.current = state;
  const from = state.step.kind === 'offline' ? state.step.from : null;
  useEffect(() => {
    if (from === null) return undefined;
    const timer = setInterval(() => {
      void isServerBack().then((isBack) => {
        if (!isBack) return;
        void (from === 'check' ? find(show, latest.current, dispatch) : order(show, latest.current, dispatch));
      });
    }, RETRY_MS);
    return () => clearInterval(timer);
  }, [from, show, dispatch]);
}
