'use client';
import type { ReactNode } from 'react';
import { useEffect, useState } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { GroundSection } from '#app/_ui/drawing/ground-section.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import styles from './kiosk.module.css';
import type { KioskPageProps } from './kiosk-props.ts';
import { LanguageChoice } from './language-choice.tsx';

/** People take about 15 seconds for a short question. */
const minutesFor = (count: number): number => Math.max(1, Math.round(count / 4));

/** What a passer-by sees: one way in, and what happens to answers, readable without starting. */
export function StartPage({ show, dispatch, text, onLanguage, onMore, hasMoreTime, onMoreTime }: KioskPageProps): ReactNode {
  const { t } = text;
  const [isPrivacyOpen, setPrivacyOpen] = useState(false);
  useEffect(() => {
    document.title = t('page-title', { title: t('start-title') });
  }, [t]);
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
      <Button kind="primary" size="large" iconEnd="arrow-end" spread wide onClick={() => dispatch({ kind: 'start' })}>
        <span className={styles.start}>
          {t('start')}
          <span className={styles.startNote}>{t('start-time', { minutes: minutesFor(show.questions.length) })}</span>
        </span>
      </Button>
      <LanguageChoice languages={show.wordings.map(({ lang }) => lang)} text={text} onLanguage={onLanguage} />
      <div className={styles.links}>
        <Button kind="quiet" size="small" icon="text-size" onClick={onMore}>
          {t('bigger-text')}
        </Button>
        <Button kind="quiet" size="small" icon="clock" aria-pressed={hasMoreTime} onClick={onMoreTime}>
          {t(hasMoreTime ? 'more-time-on' : 'more-time')}
        </Button>
        <Button kind="quiet" size="small" icon="lock" onClick={() => setPrivacyOpen(true)}>
          {t('privacy')}
        </Button>
      </div>
      <Dialog
        open={isPrivacyOpen}
        title={t('privacy-title')}
        onClose={() => setPrivacyOpen(false)}
        actions={
          <Button kind="primary" onClick={() => setPrivacyOpen(false)}>
            {t('close')}
          </Button>
        }
      >
        <p>{t('privacy-use')}</p>
        <p>{t('privacy-wipe')}</p>
        <p>{t('privacy-keep')}</p>
        <p>{t('privacy-health')}</p>
      </Dialog>
    </KioskFrame>
  );
}
