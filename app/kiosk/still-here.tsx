'use client';
// Asks whether anybody is still there, and wipes when nobody is (WCAG 2.2.1: a warning, a simple action to go on, no limit to that).
import type { ReactNode } from 'react';
import { useEffect, useRef, useState } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import type { KioskText } from './kiosk-text.ts';

/** Seconds in which a person may answer. */
const WARN_S = 60;
/** Seconds left at which a reader hears of it; every second would drown the page. */
const SAID_AT_S: readonly number[] = [60, 30, 10];

export interface StillHereProps {
  /** Seconds without a touch or key before we ask; null: nothing to wipe. */
  readonly idleS: number | null;
  readonly onWipe: () => void;
  /** Nothing but the code is left to clear. */
  readonly isCode: boolean;
  readonly text: KioskText;
}

export function StillHere({ idleS, onWipe, isCode, text: { t } }: StillHereProps): ReactNode {
  const [passedS, setPassedS] = useState(0);
  const wipeButton = useRef<HTMLDivElement>(null);

  useEffect(() => {
    setPassedS(0);
    if (idleS === null) return undefined;
    const tick = setInterval(() => setPassedS((seconds) => seconds + 1), 1_000);
    const onSign = (event: Event): void => {
      // Whoever presses "wipe" means it.
      if (event.target instanceof Node && wipeButton.current?.contains(event.target)) return;
      setPassedS(0);
    };
    for (const sign of ['pointerdown', 'keydown'] as const) window.addEventListener(sign, onSign, true);
    return () => {
      clearInterval(tick);
      for (const sign of ['pointerdown', 'keydown'] as const) window.removeEventListener(sign, onSign, true);
    };
  }, [idleS]);

  const isAsking = idleS !== null && passedS >= idleS;
  const leftS = idleS === null ? WARN_S : Math.max(0, idleS + WARN_S - passedS);
  useEffect(() => {
    if (isAsking && leftS === 0) onWipe();
  }, [isAsking, leftS, onWipe]);

  const words = t(isCode ? 'still-here-code' : 'still-here-text', { count: leftS });
  return (
    <Dialog
      open={isAsking}
      alert
      cover
      title={t('still-here-title')}
      onClose={() => setPassedS(0)}
      actions={
        <>
          <Button kind="primary" autoFocus onClick={() => setPassedS(0)}>
            {t('still-here')}
          </Button>
          <div ref={wipeButton}>
            <Button onClick={onWipe}>{t(isCode ? 'clear-now' : 'wipe-now')}</Button>
          </div>
        </>
      }
    >
      <p aria-hidden="true">{words}</p>
      <p role="status" className="for-readers">
        {isAsking && SAID_AT_S.includes(leftS) ? words : ''}
      </p>
    </Dialog>
  );
}
