'use client';
import type { ReactNode } from 'react';
import { useEffect, useState } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { kioskText } from './kiosk-text.ts';

/** Seconds without a touch before we ask, and seconds to answer. */
const IDLE_S = { question: 90, other: 180 } as const;
const WARN_S = 60;

/** Asks whether anybody is still there, and wipes when nobody is. Any touch or key says yes; there is no limit to that. */
export function StillHere({ step, onWipe }: { readonly step: string; readonly onWipe: () => void }): ReactNode {
  const { t } = kioskText();
  const [idleS, setIdleS] = useState(0);
  const isWatching = step !== 'start';
  const limitS = step === 'question' || step === 'check' ? IDLE_S.question : IDLE_S.other;

  useEffect(() => {
    setIdleS(0);
    if (!isWatching) return undefined;
    const tick = setInterval(() => setIdleS((seconds) => seconds + 1), 1000);
    const touched = (): void => setIdleS(0);
    for (const event of ['pointerdown', 'keydown'] as const) window.addEventListener(event, touched);
    return () => {
      clearInterval(tick);
      for (const event of ['pointerdown', 'keydown'] as const) window.removeEventListener(event, touched);
    };
  }, [isWatching, limitS]);

  useEffect(() => {
    if (idleS >= limitS + WARN_S) onWipe();
  }, [idleS, limitS, onWipe]);

  return (
    <Dialog
      open={isWatching && idleS >= limitS}
      alert
      cover
      title={t('still-here-title')}
      onClose={() => setIdleS(0)}
      actions={
        <>
          <Button kind="primary" wide autoFocus onClick={() => setIdleS(0)}>
            {t('still-here')}
          </Button>
          <Button wide onClick={onWipe}>
            {t('wipe-now')}
          </Button>
        </>
      }
    >
      <p>{t('still-here-text', { count: Math.max(0, limitS + WARN_S - idleS) })}</p>
    </Dialog>
  );
}
