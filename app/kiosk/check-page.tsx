'use client';
import type { ReactNode } from 'react';
import { Bar } from '#app/_ui/controls/bar.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import { RuledList } from '#app/_ui/controls/section-head.tsx';
import { Spine } from '#app/_ui/drawing/spine.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import { askedQuestions, mistakeIn } from '#lib/answers/visit.ts';
import type { StepProps } from './kiosk-step.tsx';
import { PageHeading } from './kiosk-step.tsx';
import { kioskText } from './kiosk-text.ts';

export function CheckPage({ show, state, dispatch, onBack, onMore, onFind }: StepProps): ReactNode {
  const { t } = kioskText();
  const asked = askedQuestions(show.questions, state.visit);
  const open = asked.findIndex((question) => mistakeIn(question, state.visit) !== null);
  const goOn = (): void => (open < 0 ? onFind() : dispatch({ kind: 'go', step: { kind: 'question', no: open } }));
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('check-place')}
      flow="list"
      spine={<Spine total={asked.length} answered={asked.length} asking={false} />}
      shown={
        <>
          <PageHeading>{t('check-title')}</PageHeading>
          <p className="type-second">{t('check-note')}</p>
        </>
      }
      bar={
        <Bar>
          <Button icon="arrow-start" onClick={onBack}>
            {t('back')}
          </Button>
          <Button kind="primary" iconEnd="arrow-end" data-main="" onClick={state.isBusy ? undefined : goOn} aria-busy={state.isBusy}>
            {t(state.isBusy ? 'finding' : 'find-masks')}
          </Button>
          <Button icon="menu" onClick={onMore}>
            {t('more')}
          </Button>
        </Bar>
      }
    >
      <RuledList
        top
        rows={asked.map((question, no) => ({
          id: question.id,
          title: question.text,
          note: question.options.filter((option) => (state.visit.chosen[question.id] ?? []).includes(option.id)).map((option) => option.text).join(' · '),
          action: (
            <Button size="small" aria-label={t('change-question', { question: question.text })} onClick={() => dispatch({ kind: 'go', step: { kind: 'question', no } })}>
              {t('change')}
            </Button>
          ),
        }))}
      />
    </KioskFrame>
  );
}
