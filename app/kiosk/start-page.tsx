'use client';
import type { ReactNode } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { Disclosure } from '#app/_ui/controls/disclosure.tsx';
import { GroundSection } from '#app/_ui/drawing/ground-section.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import type { StepProps } from './kiosk-step.tsx';
import { kioskText } from './kiosk-text.ts';
import styles from './kiosk.module.css';

export function StartPage({ show, dispatch, onMore }: StepProps): ReactNode {
  const { t } = kioskText();
  return (
    <KioskFrame
      brand={show.shopName}
      place={show.notice === '' ? t('tagline') : show.notice}
      picture={<GroundSection />}
      shown={
        <>
          <h1 className="type-display">{t('start-title')}</h1>
          <p className="type-second">{t('start-note', { count: show.questions.length })}</p>
        </>
      }
    >
      <Button kind="primary" size="large" iconEnd="arrow-end" spread wide onClick={() => dispatch({ kind: 'go', step: { kind: 'question', no: 0 } })}>
        {t('start')}
      </Button>
      <Disclosure summary={t('privacy')}>{t('privacy-text')}</Disclosure>
      <div className={styles.links}>
        <Button kind="quiet" size="small" icon="text-size" onClick={onMore}>
          {t('text-size')}
        </Button>
      </div>
    </KioskFrame>
  );
}
