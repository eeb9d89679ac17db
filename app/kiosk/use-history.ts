'use client';
// The browser's own Back and Forward move along the visit. An entry holds the number of a page and nothing else: never an answer, and no
// navigation of the router, which after a deployment would load the page anew and lose the answers.
import { useEffect } from 'react';

const pageIn = (state: unknown): number =>
  typeof state === 'object' && state !== null && 'page' in state && typeof state.page === 'number' ? state.page : 0;

export function useHistory(at: number, show: (at: number) => void): void {
  useEffect(() => {
    const onPop = (event: PopStateEvent): void => show(pageIn(event.state));
    window.addEventListener('popstate', onPop);
    return () => window.removeEventListener('popstate', onPop);
  }, [show]);

  useEffect(() => {
    const current = pageIn(window.history.state);
    if (at > current) window.history.pushState({ page: at }, '');
    else if (at < current) window.history.replaceState({ ...window.history.state, page: at }, '');
  }, [at]);
}

/** Our Back is the browser's: both then agree on where the visit stands. */
export const goBack = (): void => window.history.back();
