// Why there is nothing to print.
import type { ReactNode } from 'react';
import { ButtonLink } from '#app/_ui/controls/button.tsx';
import styles from './fit-sheet.module.css';
import { printText } from './print-text.ts';

export function NoSheet({ why }: { readonly why: string }): ReactNode {
  return (
    <main className={styles.page} data-face="office">
      <h1 className="type-title">{why}</h1>
      <ButtonLink href="/bench">{printText().t('to-bench')}</ButtonLink>
    </main>
  );
}
