'use client';
import type { ReactNode } from 'react';
import { useEffect, useRef } from 'react';
import { Notice } from '#app/_ui/controls/notice.tsx';

/** What is wrong with the form as a whole; it takes the focus when it appears. */
export function FormError({ text }: { readonly text: string | null }): ReactNode {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (text !== null) box.current?.focus();
  }, [text]);
  return (
    <div ref={box} tabIndex={-1} role="alert">
      {text !== null && <Notice tone="stop" title={text} />}
    </div>
  );
}
