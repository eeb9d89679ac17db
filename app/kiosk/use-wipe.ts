'use client';
// Wiping: the answers go at once, then the whole document, so that no cache of the browser can bring them back. Without a server there is
// no fresh document to be had; the empty one stays until there is.
import { useCallback, useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { readHealth } from '#app/_client/kiosk-health.ts';

const RETRY_MS = 5_000;
const LIST_CHECK_MS = 60_000;

const freshDocument = (): void => window.location.replace(window.location.pathname + window.location.search);

export interface Wiping {
  /** Whether the visit stands at its start with nothing in it. */
  readonly isEmpty: boolean;
  readonly editionNo: number;
  /** Drops the state of the visit, synchronously. */
  readonly drop: () => void;
}

export function useWipe({ isEmpty, editionNo, drop }: Wiping): () => void {
  const [isDue, setDue] = useState(false);

  const wipe = useCallback(() => {
    flushSync(drop);
    delete document.documentElement.dataset.text;
    setDue(true);
  }, [drop]);

  // A fresh document while nobody is there: after a wipe as soon as it can be had, and when another edition has come into force.
  useEffect(() => {
    if (!isEmpty) return undefined;
    const look = async (): Promise<void> => {
      const health = await readHealth();
      if (health && (isDue || health.editionNo !== editionNo)) freshDocument();
    };
    if (isDue) void look();
    const timer = setInterval(() => void look(), isDue ? RETRY_MS : LIST_CHECK_MS);
    return () => clearInterval(timer);
  }, [isEmpty, isDue, editionNo]);

  // A page that is put aside whole, and may be shown again, is put aside empty.
  useEffect(() => {
    const onHide = (): void => flushSync(drop);
    const onShow = (event: PageTransitionEvent): void => {
      if (event.persisted) freshDocument();
    };
    window.addEventListener('pagehide', onHide);
    window.addEventListener('pageshow', onShow);
    return () => {
      window.removeEventListener('pagehide', onHide);
      window.removeEventListener('pageshow', onShow);
    };
  }, [drop]);

  return wipe;
}
