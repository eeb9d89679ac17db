'use client';
// What to tell where a call got no answer of the bench itself: the shop's own field texts are for programs and are not repeated.
import type { ReactNode } from 'react';
import { ButtonLink } from '#app/_ui/controls/button.tsx';
import type { Problem } from '#lib/contracts/problem.ts';
import { benchText } from './bench-text.ts';

/** A fault is quoted by its id, so that its entry in the log is found. */
export function problemWords({ kind, title, detail, faultId }: Problem): string {
  const { t } = benchText();
  if (kind === 'signed-out') return t('signed-out');
  if (kind === 'wrong-role') return t('wrong-role');
  if (kind === 'bad-input') return t('bad-input');
  return t('problem', { title, detail: faultId ?? detail });
}

/** In a page of its own: what was typed here stays. */
export function SignInAgain(): ReactNode {
  const { t } = benchText();
  return (
    <ButtonLink size="small" href="/sign-in?next=/bench" target="_blank">
      {t('sign-in-again')}
    </ButtonLink>
  );
}
