'use client';
// The checks of the day on a page of their own, so that they can be done before the first order comes.
import type { ReactNode } from 'react';
import { ButtonLink } from '#app/_ui/controls/button.tsx';
import { BenchFrame } from '#app/_ui/frames/bench-frame.tsx';
import type { BenchDoing } from '#lib/contracts/bench-view.ts';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import { FitnessForms } from './fitness-step.tsx';

export function FitnessDesk(
  props: Pick<Extract<BenchDoing, { kind: 'fitness' }>, 'scales' | 'meter'> & { readonly place: string; readonly who: string },
): ReactNode {
  const { t } = benchText();
  return (
    <BenchFrame
      word={t('bench')}
      place={props.place}
      skip={t('skip-work')}
      end={props.who}
      actions={<ButtonLink href="/bench">{t('to-queue')}</ButtonLink>}
    >
      <div className={styles.work}>
        <h1 className="type-title">{t('fitness-page-title')}</h1>
        <FitnessForms doing={props} onChecked={() => window.location.reload()} />
      </div>
    </BenchFrame>
  );
}
