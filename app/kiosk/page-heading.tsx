'use client';
// The one heading of a page. It takes the focus when its page appears, so that a reader starts there, and names the document.
import type { ReactNode } from 'react';
import { useEffect, useRef } from 'react';
import type { KioskText } from './kiosk-text.ts';

export interface PageHeadingProps {
  readonly id?: string;
  readonly text: KioskText;
  readonly children: string;
  /** What the document is called; the heading itself where nothing is said. */
  readonly title?: string;
  readonly isMistaken?: boolean;
}

export function PageHeading({ id, text, children, title = children, isMistaken = false }: PageHeadingProps): ReactNode {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  useEffect(() => {
    document.title = text.t(isMistaken ? 'error-title' : 'page-title', { title });
  }, [text, title, isMistaken]);
  return (
    <h1 ref={heading} id={id} tabIndex={-1} className="type-title">
      {children}
    </h1>
  );
}
