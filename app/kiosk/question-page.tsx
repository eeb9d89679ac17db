'use client';
import type { FormEvent, ReactNode } from 'react';
import { useEffect, useId } from 'react';
import { Bar } from '#app/_ui/controls/bar.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import { ChoiceOr, ChoiceRow, ChoiceRows } from '#app/_ui/controls/choice-row.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { PartMark, Spine } from '#app/_ui/drawing/spine.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import type { KioskOption, KioskQuestion } from '#lib/answers/kiosk-questions.ts';
import { askedQuestions } from '#lib/answers/visit.ts';
import type { StepProps } from './kiosk-step.tsx';
import { PageHeading } from './kiosk-step.tsx';
import { kioskText } from './kiosk-text.ts';
import styles from './kiosk.module.css';

export function QuestionPage({ show, state, dispatch, onBack, onMore, no }: StepProps & { readonly no: number }): ReactNode {
  const { t } = kioskText();
  const formId = useId();
  const asked = askedQuestions(show.questions, state.visit);
  const question = asked[no];
  const { mistake } = state;
  useEffect(() => {
    if (!question) return;
    const place = `${t('question-place', { no: no + 1, count: asked.length })}: ${question.text}`;
    document.title = mistake ? t('error-title', { title: place }) : place;
  }, [asked.length, mistake, no, question, t]);
  if (!question) return null;

  const submit = (event: FormEvent): void => {
    event.preventDefault();
    dispatch({ kind: 'continue' });
  };
  const parts = [...new Set(asked.map((one) => one.part))];
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('question-place', { no: no + 1, count: asked.length })}
      spine={<Spine total={asked.length} answered={no} asking />}
      shown={
        <>
          <p className={`${styles.part} type-label`}>
            <PartMark part={parts.indexOf(question.part) + 1} parts={parts.length} />
            {question.part}
          </p>
          <PageHeading>{question.text}</PageHeading>
          {question.why && <p className="type-second">{question.why}</p>}
        </>
      }
      bar={
        <Bar>
          <Button icon="arrow-start" onClick={onBack}>
            {t('back')}
          </Button>
          <Button kind="primary" iconEnd="arrow-end" data-main="" type="submit" form={formId}>
            {t('continue')}
          </Button>
          <Button icon="menu" onClick={onMore}>
            {t('more')}
          </Button>
        </Bar>
      }
    >
      <form id={formId} onSubmit={submit} noValidate className={styles.list}>
        <div role="alert" className={styles.mistake}>
          {mistake && <Notice tone="care" title={t(`mistake-${mistake}`, { count: question.mostCount })} />}
        </div>
        <fieldset className={styles.list}>
          <legend className="type-label">{hintOf(question, t)}</legend>
          <Options question={question} chosen={state.visit.chosen[question.id] ?? []} orWord={t('or')} onChoose={(optionId) => dispatch({ kind: 'choose', questionId: question.id, optionId })} />
        </fieldset>
      </form>
    </KioskFrame>
  );
}

function hintOf(question: KioskQuestion, t: ReturnType<typeof kioskText>['t']): string {
  if (question.choose === 'one') return t('choose-one');
  return question.mostCount >= question.options.filter((option) => !option.exclusive).length ? t('choose-many') : t('choose-few', { count: question.mostCount });
}

function Options(props: { readonly question: KioskQuestion; readonly chosen: readonly string[]; readonly orWord: string; readonly onChoose: (optionId: string) => void }): ReactNode {
  const { question, chosen, orWord, onChoose } = props;
  const row = (option: KioskOption): ReactNode => (
    <ChoiceRow
      key={option.id}
      type={question.choose === 'one' ? 'radio' : 'checkbox'}
      name={question.id}
      value={option.id}
      label={option.text}
      {...(option.hint !== null && { note: option.hint })}
      checked={chosen.includes(option.id)}
      onChange={() => onChoose(option.id)}
    />
  );
  const usual = question.options.filter((option) => !option.exclusive || question.choose === 'one');
  const alone = question.options.filter((option) => option.exclusive && question.choose === 'many');
  return (
    <ChoiceRows>
      {usual.map(row)}
      {alone.length > 0 && <ChoiceOr word={orWord} />}
      {alone.map(row)}
    </ChoiceRows>
  );
}
