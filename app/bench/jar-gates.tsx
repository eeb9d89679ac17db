'use client';
// What stands between a mixer and the step: a stop, a pause, and which jar is on the table.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { Button, ButtonLink } from '#app/_ui/controls/button.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import type { StepProps } from './desk-frame.tsx';
import { DeskFrame, StepBody } from './desk-frame.tsx';

/** Signs at the end of a jar's code that are enough to tell it from the others of a day. */
const TAIL_LENGTH = 5;

/** A bound jar is thrown away by "Something went wrong"; before that the order is given back or closed there. */
export function Stopped(props: StepProps): ReactNode {
  const { t } = benchText();
  return (
    <DeskFrame {...props} actions={<ButtonLink href="/bench">{t('to-queue')}</ButtonLink>}>
      <h1 className="type-title">{t('stopped-title')}</h1>
      <Notice tone="stop" role="alert" title={t('stopped-note', { reasons: props.desk.view.stops.join('; ') })} />
    </DeskFrame>
  );
}

/** Nothing of the recipe stays on the screen. */
export function PausedPage(props: StepProps & { readonly onGoOn: () => void }): ReactNode {
  const { t } = benchText();
  return (
    <DeskFrame
      {...props}
      bare
      actions={
        <>
          <ButtonLink href="/bench">{t('to-queue')}</ButtonLink>
          <Button kind="primary" onClick={props.onGoOn}>
            {t('go-on')}
          </Button>
        </>
      }
    >
      <StepBody title={t('paused-title', { code: props.desk.view.shortCode })} note={t('paused-note')} />
    </DeskFrame>
  );
}

/** Two jars of the same colour look alike; the code does not. */
export function ResumePage(props: StepProps & { readonly jarCode: string; readonly onRight: () => void }): ReactNode {
  const { jarCode, onRight } = props;
  const { t } = benchText();
  const [mistake, setMistake] = useState<'resume-empty' | 'resume-other' | null>(null);
  const submit = (event: FormEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const typed = String(new FormData(event.currentTarget).get('jar')).replace(/[\s-]/g, '').toUpperCase();
    const isRight = typed.length >= TAIL_LENGTH && jarCode.endsWith(typed);
    setMistake(isRight ? null : typed === '' ? 'resume-empty' : 'resume-other');
    if (isRight) onRight();
  };
  return (
    <DeskFrame
      {...props}
      bare
      actions={
        <>
          <ButtonLink href="/bench">{t('to-queue')}</ButtonLink>
          <Button kind="primary" type="submit" form="resume">
            {t('go-on')}
          </Button>
        </>
      }
    >
      <StepBody title={t('resume-title')} note={t('resume-note')}>
        <form id="resume" className={styles.narrow} onSubmit={submit} noValidate>
          <TextField
            id="jar"
            name="jar"
            label={t('resume-field')}
            error={mistake === null ? undefined : t(mistake)}
            icon="scan"
            autoComplete="off"
            autoCapitalize="characters"
            spellCheck={false}
            dir="ltr"
          />
        </form>
      </StepBody>
    </DeskFrame>
  );
}
