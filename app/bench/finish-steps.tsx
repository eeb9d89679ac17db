'use client';
// The end of a jar at the bench: net weight, decision, label, handing over.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { check, collect, printLabel, release } from '#app/_client/bench-acts.ts';
import { Button, ButtonLink } from '#app/_ui/controls/button.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { TitleBlock } from '#app/_ui/controls/title-block.tsx';
import type { BenchDoing } from '#lib/contracts/bench-view.ts';
import { massUg } from '#lib/units/mass.ts';
import { localDay } from '#lib/units/time.ts';
import styles from './bench.module.css';
import { benchText, phDigits } from './bench-text.ts';
import type { StepProps } from './desk-frame.tsx';
import { DeskFrame, StepBody } from './desk-frame.tsx';
import { TypedWeight } from './typed-weight.tsx';

type Of<K extends BenchDoing['kind']> = StepProps & { readonly doing: Extract<BenchDoing, { kind: K }> };

export function FillStep(props: Of<'fill'>): ReactNode {
  const { desk, doing } = props;
  const { t, target, reading } = benchText();
  const [isTyping, setTyping] = useState(false);
  const stepUg = massUg(doing.scale.stepUg);
  const net = target(massUg(doing.netUg));
  return (
    <DeskFrame
      {...props}
      actions={
        <Button kind="primary" onClick={() => setTyping(true)}>
          {t('type-weight')}
        </Button>
      }
    >
      <StepBody title={t('fill-title')} note={t('fill-note', { gross: target(massUg(doing.netUg + doing.tareUg)), net })}>
        {doing.lastNetUg !== null && (
          <Notice tone="care" role="alert" title={t('fill-short', { held: reading(massUg(doing.lastNetUg), stepUg), net })} />
        )}
      </StepBody>
      {isTyping && (
        <TypedWeight
          label={t('fill-field')}
          scale={doing.scale}
          onClose={() => setTyping(false)}
          onDone={(first, again) => {
            setTyping(false);
            void desk.act((requestKey) =>
              check({ requestKey, orderId: desk.view.orderId, check: { kind: 'gross', grossUg: first, againUg: again ?? first } }),
            );
          }}
        />
      )}
    </DeskFrame>
  );
}

/** A code read from the thing in the hand. */
function CodeForm(props: {
  readonly id: string;
  readonly label: string;
  readonly hint?: string;
  readonly onCode: (code: string) => void;
}): ReactNode {
  const { t } = benchText();
  const [isMissing, setMissing] = useState(false);
  const submit = (event: FormEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const code = String(new FormData(event.currentTarget).get('code')).trim();
    setMissing(code === '');
    if (code !== '') props.onCode(code);
  };
  return (
    <form id={props.id} className={styles.narrow} onSubmit={submit} noValidate>
      <TextField
        id={`${props.id}-code`}
        name="code"
        label={props.label}
        hint={props.hint}
        error={isMissing ? t('resume-empty') : undefined}
        icon="scan"
        autoComplete="off"
        autoCapitalize="characters"
        spellCheck={false}
        dir="ltr"
      />
    </form>
  );
}

export function ReleaseStep(props: Of<'release'>): ReactNode {
  const { desk, doing } = props;
  const { t, reading } = benchText();
  const { view } = desk;
  return (
    <DeskFrame
      {...props}
      actions={
        <Button kind="primary" type="submit" form="release">
          {t('release-do')}
        </Button>
      }
    >
      <StepBody title={t('release-title')}>
        <TitleBlock
          cells={[
            { label: t('release-net'), value: reading(massUg(doing.netUg), massUg(10_000)) },
            { label: t('release-ph'), value: doing.phX100 === null ? t('release-ph-none') : phDigits(doing.phX100) },
            { label: t('release-edition'), value: String(view.editionNo) },
          ]}
        />
        <CodeForm
          id="release"
          label={t('release-code')}
          hint={t('release-note')}
          onCode={(jarCode) => void desk.act((requestKey) => release({ requestKey, orderId: view.orderId, jarCode }))}
        />
      </StepBody>
    </DeskFrame>
  );
}

export function ReadyStep(props: Of<'ready'>): ReactNode {
  const { desk, doing } = props;
  const { t, day } = benchText();
  const { view } = desk;
  const isPrinted = doing.labelPrintsCount > 0;
  const print = async (): Promise<void> => {
    if (await desk.act((requestKey) => printLabel({ requestKey, orderId: view.orderId })))
      window.open(`/bench/print/label/${view.orderId}`, '_blank', 'noopener');
  };
  return (
    <DeskFrame
      {...props}
      bare
      actions={
        <>
          <ButtonLink href="/bench">{t('to-queue')}</ButtonLink>
          <Button onClick={props.onWrong}>{t('not-fetched')}</Button>
          <Button icon="printer" kind={isPrinted ? 'plain' : 'primary'} onClick={() => void print()}>
            {t(isPrinted ? 'ready-print-again' : 'ready-print')}
          </Button>
          {isPrinted && (
            <Button kind="primary" type="submit" form="collect">
              {t('ready-do')}
            </Button>
          )}
        </>
      }
    >
      <StepBody title={t('ready-title')}>
        <TitleBlock
          cells={[
            { label: t('ready-order'), value: view.shortCode, code: true },
            { label: t('ready-mask'), value: view.name },
            { label: t('ready-until'), value: day(localDay(doing.useByDay)) },
            { label: t('ready-label'), value: t('ready-printed', { count: doing.labelPrintsCount }) },
          ]}
        />
        {isPrinted && (
          <CodeForm
            id="collect"
            label={t('ready-code')}
            hint={t('ready-code-hint')}
            onCode={(labelCode) => void desk.act((requestKey) => collect({ requestKey, orderId: view.orderId, labelCode }))}
          />
        )}
      </StepBody>
    </DeskFrame>
  );
}

export function EndedStep(props: Of<'ended'>): ReactNode {
  const { t } = benchText();
  const { stage, remadeAsOrderId, shortCode, name } = props.desk.view;
  return (
    <DeskFrame
      {...props}
      bare
      actions={
        <>
          <ButtonLink href="/bench">{t('to-queue')}</ButtonLink>
          {remadeAsOrderId !== null && (
            <ButtonLink kind="primary" href={`/bench/order/${remadeAsOrderId}`}>
              {t('remade-open')}
            </ButtonLink>
          )}
        </>
      }
    >
      <StepBody
        title={t(stage === 'collected' ? 'collected-title' : 'ended-title')}
        note={t(remadeAsOrderId !== null ? 'remade-note' : 'ended-note', { code: shortCode, name })}
      />
    </DeskFrame>
  );
}
