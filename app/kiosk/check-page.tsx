'use client';
import type { ReactNode } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { RuledList } from '#app/_ui/controls/section-head.tsx';
import { Spine } from '#app/_ui/drawing/spine.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { askedQuestions, chosenIds, firstOpen, mistakeIn } from '#lib/answers/visit-answers.ts';
import styles from './kiosk.module.css';
import { KioskBar } from './kiosk-bar.tsx';
import type { KioskPageProps } from './kiosk-props.ts';
import { PageHeading } from './page-heading.tsx';

/** All answers at a glance, each a touch away; answers that went are named, never dropped in silence. */
export function CheckPage({ show, visit, dispatch, text, onMore }: KioskPageProps): ReactNode {
  const { t } = text;
  const asked = askedQuestions(visit);
  const isWhole = firstOpen(visit) === null;
  const dropped = show.questions.filter((question) => visit.droppedIds.includes(question.id)).map((question) => question.text);
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('check-place')}
      titleSize="results"
      flow="list"
      spine={
        <Spine total={asked.length} answered={asked.filter((question) => mistakeIn(question, visit) === null).length} asking={false} />
      }
      shown={
        <>
          <PageHeading text={text}>{t('check-title')}</PageHeading>
          <span className="type-second">{t('check-note')}</span>
        </>
      }
      bar={
        <KioskBar text={text} onMore={onMore}>
          <Button kind="primary" iconEnd="arrow-end" data-main="" onClick={() => dispatch({ kind: 'continue' })}>
            {t(isWhole ? 'show-masks' : 'continue')}
          </Button>
        </KioskBar>
      }
    >
      {visit.hasListChanged && (
        <Notice tone="care" role="status" title={t('check-changed')}>
          {t('check-changed-note')}
        </Notice>
      )}
      {dropped.length > 0 && <Notice tone="care" role="status" title={t('check-dropped', { questions: dropped.join(' ') })} />}
      <RuledList
        top
        rows={asked.map((question) => {
          const ids = chosenIds(visit, question.id);
          const answers = question.options.filter((option) => ids.includes(option.id)).map((option) => option.text);
          return {
            id: question.id,
            title: (
              <>
                <span className={`${styles.asked} type-small type-second`}>{question.text}</span>
                <span className={styles.given}>{answers.length > 0 ? answers.join('. ') : t('check-open')}</span>
              </>
            ),
            action: (
              <Button
                size="small"
                aria-label={t(answers.length > 0 ? 'change-question' : 'answer-question', { question: question.text })}
                onClick={() => dispatch({ kind: 'change', questionId: question.id })}
              >
                {t(answers.length > 0 ? 'change' : 'answer')}
              </Button>
            ),
          };
        })}
      />
    </KioskFrame>
  );
}
