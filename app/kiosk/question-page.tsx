'use client';
import type { FormEvent, MouseEvent, ReactNode } from 'react';
import { useId } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { ChoiceOr, ChoiceRow, ChoiceRows } from '#app/_ui/controls/choice-row.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { PartMark, Spine } from '#app/_ui/drawing/spine.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import type { KioskOption, KioskQuestion } from '#lib/answers/kiosk-questions.ts';
import { askedQuestions, chosenIds } from '#lib/answers/visit-answers.ts';
import styles from './kiosk.module.css';
import { KioskBar } from './kiosk-bar.tsx';
import type { KioskPageProps } from './kiosk-props.ts';
import type { KioskText } from './kiosk-text.ts';
import { PageHeading } from './page-heading.tsx';

/** One question. Choosing never moves on; only Continue does, and it is always there to be pressed. */
export function QuestionPage(props: KioskPageProps & { readonly questionId: string }): ReactNode {
  const { show, visit, dispatch, text, onMore, questionId } = props;
  const { t } = text;
  const id = `ask-${useId()}`;
  const asked = askedQuestions(visit);
  const index = asked.findIndex((one) => one.id === questionId);
  const question = asked[index];
  if (!question) return null;
  const parts = [...new Set(asked.map((one) => one.part))];
  const place = { no: index + 1, count: asked.length };
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    dispatch({ kind: 'continue' });
  };
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('question-place', place)}
      spine={<Spine total={asked.length} answered={index} asking />}
      form={{
        id,
        labelledBy: `${id}-question`,
        describedBy: question.why === null ? `${id}-how` : `${id}-why ${id}-how`,
        onSubmit: submit,
      }}
      shown={
        <>
          <span className={`${styles.part} type-label`}>
            <PartMark part={parts.indexOf(question.part) + 1} parts={parts.length} />
            {t('part-line', { no: parts.indexOf(question.part) + 1, count: parts.length, part: question.part })}
          </span>
          <PageHeading
            id={`${id}-question`}
            text={text}
            title={t('question-title', { ...place, question: question.text })}
            isMistaken={visit.mistake !== null}
          >
            {question.text}
          </PageHeading>
          {question.why !== null && (
            <span id={`${id}-why`} className="type-second">
              {question.why}
            </span>
          )}
        </>
      }
      bar={
        <KioskBar text={text} onMore={onMore}>
          <Button kind="primary" iconEnd="arrow-end" data-main="" type="submit" form={id}>
            {t('continue')}
          </Button>
        </KioskBar>
      }
    >
      <div role="alert" className={styles.mistake}>
        {visit.mistake !== null && <MistakeNotice question={question} mistake={visit.mistake} firstId={`${id}-0`} text={text} />}
      </div>
      <p id={`${id}-how`} className="type-label">
        {howMany(question, text)}
      </p>
      <Options
        id={id}
        question={question}
        chosen={chosenIds(visit, questionId)}
        orWord={t('or')}
        onChoose={(optionId) => dispatch({ kind: 'choose', questionId, optionId })}
      />
    </KioskFrame>
  );
}

/** What to do, with the way there. */
function MistakeNotice(props: {
  readonly question: KioskQuestion;
  readonly mistake: NonNullable<KioskPageProps['visit']['mistake']>;
  readonly firstId: string;
  readonly text: KioskText;
}): ReactNode {
  const { question, mistake, firstId, text } = props;
  const go = (event: MouseEvent): void => {
    event.preventDefault();
    document.getElementById(firstId)?.focus();
  };
  return (
    <Notice
      tone="care"
      title={text.t(`mistake-${mistake}`, { count: question.mostCount })}
      end={
        <a href={`#${firstId}`} onClick={go}>
          {text.t('mistake-go')}
        </a>
      }
    />
  );
}

function howMany({ choose, mostCount, options }: KioskQuestion, { t }: KioskText): string {
  if (choose === 'one') return t('choose-one');
  return mostCount >= options.filter((option) => !option.exclusive).length ? t('choose-many') : t('choose-few', { count: mostCount });
}

interface OptionsProps {
  readonly id: string;
  readonly question: KioskQuestion;
  readonly chosen: readonly string[];
  readonly orWord: string;
  readonly onChoose: (optionId: string) => void;
}

/** Answers that rule out the rest stand after "or". */
function Options({ id, question, chosen, orWord, onChoose }: OptionsProps): ReactNode {
  const isMany = question.choose === 'many';
  const row = (option: KioskOption): ReactNode => (
    <ChoiceRow
      key={option.id}
      id={`${id}-${question.options.indexOf(option)}`}
      type={isMany ? 'checkbox' : 'radio'}
      name={question.id}
      value={option.id}
      label={option.text}
      note={option.hint}
      checked={chosen.includes(option.id)}
      onChange={() => onChoose(option.id)}
    />
  );
  const alone = question.options.filter((option) => isMany && option.exclusive);
  return (
    <ChoiceRows>
      {question.options.filter((option) => !alone.includes(option)).map(row)}
      {alone.length > 0 && <ChoiceOr word={orWord} />}
      {alone.map(row)}
    </ChoiceRows>
  );
}
