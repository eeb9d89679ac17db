// Why there is nothing to print.
import type { ReactNode } from 'react';
import { ButtonLink } from '#app/_ui/controls/button.tsx';
import { BenchFrame } from '#app/_ui/frames/bench-frame.tsx';
import { printText } from './print-text.ts';

export function NoSheet({ why }: { readonly why: string }): ReactNode {
  const { t } = printText();
  return (
    <BenchFrame
      word={t('bench')}
      place={t('no-sheet')}
      skip={t('skip-why')}
      actions={
        <ButtonLink kind="primary" href="/bench">
          {t('to-bench')}
        </ButtonLink>
      }
    >
      <h1 className="type-title">{why}</h1>
    </BenchFrame>
  );
}
