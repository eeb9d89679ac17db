'use client';
import type { ReactNode } from 'react';
import { useState } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { Disclosure } from '#app/_ui/controls/disclosure.tsx';
import { EmptyScene } from '#app/_ui/drawing/empty-scene.tsx';
import { Spine } from '#app/_ui/drawing/spine.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { askedQuestions, chosenIds, outcomesOf } from '#lib/answers/visit-answers.ts';
import styles from './kiosk.module.css';
import { KioskBar } from './kiosk-bar.tsx';
import type { KioskPageProps, KioskVisitState } from './kiosk-props.ts';
import type { KioskText } from './kiosk-text.ts';
import { PageHeading } from './page-heading.tsx';

/** A visit that ends without masks: calm, in the frame of any other page. What it rests on is shown to whoever asks. */
export function OutcomePage({ show, visit, dispatch, text, onMore, onWipe }: KioskPageProps): ReactNode {
  const { t } = text;
  const [isStaffOpen, setStaffOpen] = useState(false);
  const [outcome = 'none', ...others] = outcomesHere(visit);
  const asked = askedQuestions(visit);
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('outcome-place')}
      titleSize="outcome"
      spine={<Spine total={asked.length} answered={visit.answers.length} asking={false} />}
      shown={
        <>
          <EmptyScene />
          <PageHeading text={text}>{t(`outcome-${outcome}`)}</PageHeading>
          <span>{t(outcome === 'age' && isUnsaid(visit) ? 'outcome-age-unsaid' : `outcome-${outcome}-text`)}</span>
          <span className="type-second">{t(`outcome-${outcome}-next`)}</span>
        </>
      }
      bar={
        <KioskBar text={text} onMore={onMore}>
          <Button kind="primary" data-main="" onClick={onWipe}>
            {t('done')}
          </Button>
        </KioskBar>
      }
    >
      {others.length > 0 && (
        <div className={styles.answers}>
          <p className="type-label">{t('outcome-others')}</p>
          {others.map((other) => (
            <p key={other}>{t(`outcome-${other}`)}.</p>
          ))}
        </div>
      )}
      {outcome !== 'none' && <Because visit={visit} text={text} />}
      <Button icon="undo" iconEnd="arrow-end" spread wide onClick={() => dispatch({ kind: 'check-answers' })}>
        {t('change-an-answer')}
      </Button>
      <Button icon="person" iconEnd="arrow-end" spread wide onClick={() => setStaffOpen(true)}>
        {t('talk-to-staff')}
      </Button>
      <Dialog
        open={isStaffOpen}
        title={t('talk-to-staff')}
        onClose={() => setStaffOpen(false)}
        actions={
          <Button kind="primary" onClick={() => setStaffOpen(false)}>
            {t('close')}
          </Button>
        }
      >
        <p>{t('staff-text')}</p>
      </Dialog>
    </KioskFrame>
  );
}

/** What the answers themselves end in, worst first; else what the server found. */
function outcomesHere(visit: KioskVisitState): ReturnType<typeof outcomesOf> {
  const own = outcomesOf(visit);
  if (own.length > 0) return own;
  return visit.found?.kind === 'outcome' ? [visit.found.outcome, ...visit.found.others] : [];
}

/** Each question whose answer ends the visit, with the options that do. */
const endingAnswers = (visit: KioskVisitState) =>
  askedQuestions(visit)
    .map((question) => ({
      question,
      options: question.options.filter((option) => option.ends !== null && chosenIds(visit, question.id).includes(option.id)),
    }))
    .filter(({ options }) => options.length > 0);

/** Whether the age was not told, which is no answer about the person. */
const isUnsaid = (visit: KioskVisitState): boolean =>
  endingAnswers(visit).some(({ options }) => options.some((option) => option.ends === 'age' && option.isSkip));

/** Others may read along: the answers behind an outcome are covered until somebody asks. */
function Because({ visit, text: { t } }: { readonly visit: KioskVisitState; readonly text: KioskText }): ReactNode {
  return (
    <Disclosure summary={t('show-why')}>
      <p>{t('outcome-because')}</p>
      {endingAnswers(visit).map(({ question, options }) => (
        <div key={question.id}>
          <p className="type-second">{question.text}</p>
          <ul className={styles.given}>
            {options.map((option) => (
              <li key={option.id}>{option.text}</li>
            ))}
          </ul>
        </div>
      ))}
    </Disclosure>
  );
}
