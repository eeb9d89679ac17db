'use client';
import type { ReactNode } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { createText } from '#app/_ui/text/create-text.ts';
import { en } from '#app/_ui/text/front-door/en.ts';
import styles from './front-door.module.css';

/** A page that broke: a number to quote, and nothing of the fault itself. */
export default function Broken({
  error,
  reset,
}: {
  readonly error: Error & { readonly digest?: string };
  readonly reset: () => void;
}): ReactNode {
  const { t } = createText('en', { en });
  return (
    <main data-face="office" className={styles.page}>
      <div className={styles.sheet}>
        <h1 className="type-title">{t('broken')}</h1>
        <p>{t('broken-text', { digest: error.digest ?? '0' })}</p>
        <Button kind="primary" onClick={reset}>
          {t('try-again')}
        </Button>
      </div>
    </main>
  );
}
