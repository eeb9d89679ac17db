// A native dialog: the browser keeps focus inside, Escape closes it, the page behind is inert.
'use client';
import type { ReactNode } from 'react';
import { useEffect, useId, useRef } from 'react';
import { classNames } from '../class-names.ts';
import styles from './dialog.module.css';

export interface DialogProps {
  readonly open: boolean;
  /** Names what happened. */
  readonly title: ReactNode;
  readonly mark?: ReactNode;
  readonly children: ReactNode;
  /** Buttons, the best way out first, "Go back" last. */
  readonly actions?: ReactNode;
  /** Called on Escape and when the browser closes it. */
  readonly onClose: () => void;
  readonly alert?: boolean;
  /** Hides the page behind it altogether, where the next person must not read it. */
  readonly cover?: boolean;
  readonly size?: 'narrow' | 'wide';
}

export function Dialog({ open, title, mark, children, actions, onClose, alert, cover, size = 'narrow' }: DialogProps): ReactNode {
  const box = useRef<HTMLDialogElement>(null);
  const titleId = `dialog-${useId()}`;
  useEffect(() => {
    const dialog = box.current;
    if (!dialog || dialog.open === open) return;
    if (open) dialog.showModal();
    else dialog.close();
  }, [open]);
  return (
    <dialog
      ref={box}
      role={alert ? 'alertdialog' : undefined}
      aria-labelledby={titleId}
      className={classNames(styles.dialog, 'type-body', styles[size], cover && styles.cover)}
      onClose={onClose}
    >
      <h2 id={titleId} className={classNames(styles.title, 'type-heading')}>
        {mark}
        <span>{title}</span>
      </h2>
      <div className={styles.body}>{children}</div>
      {actions && <div className={styles.actions}>{actions}</div>}
    </dialog>
  );
}
