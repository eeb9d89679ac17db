'use client';
// A sheet of fixed size. Text that does not fit blocks the print and says so: letters never shrink, and a cut line on a label is worse than none.
import type { ReactNode } from 'react';
import { useLayoutEffect, useRef, useState } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import styles from './fit-sheet.module.css';

export interface FitSheetProps {
  readonly size: 'card' | 'label';
  readonly words: { readonly print: string; readonly tooLong: string; readonly tooLongNote: string };
  readonly children: ReactNode;
}

export function FitSheet({ size, words, children }: FitSheetProps): ReactNode {
  const sheet = useRef<HTMLDivElement>(null);
  const [isTooLong, setTooLong] = useState(false);
  useLayoutEffect(() => {
    const measure = (): void => {
      const parts = [sheet.current, ...(sheet.current?.querySelectorAll<HTMLElement>('[data-fit]') ?? [])];
      setTooLong(
        parts.some((part) => part !== null && (part.scrollHeight > part.clientHeight + 1 || part.scrollWidth > part.clientWidth + 1)),
      );
    };
    measure();
    void document.fonts.ready.then(measure);
  }, []);
  return (
    <main className={styles.page} data-face="office" data-too-long={isTooLong ? '' : undefined}>
      <div className={styles.bar} data-screen-only="">
        {!isTooLong && (
          <Button kind="primary" icon="printer" onClick={() => window.print()}>
            {words.print}
          </Button>
        )}
      </div>
      {isTooLong && (
        <Notice tone="stop" role="alert" title={words.tooLong}>
          {words.tooLongNote}
        </Notice>
      )}
      <div ref={sheet} className={styles[size]} aria-hidden={isTooLong}>
        {children}
      </div>
    </main>
  );
}
