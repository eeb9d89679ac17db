'use client';
// What is seen and felt on the mix: paste, grains, temperature, draw-down, look.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { check, confirm } from '#app/_client/bench-acts.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { Swatch } from '#app/_ui/drawing/swatch.tsx';
import type { BenchDoing } from '#lib/contracts/bench-view.ts';
import styles from './bench.module.css';
import { benchText, spokenName } from './bench-text.ts';
import type { StepProps } from './desk-frame.tsx';
import { DeskFrame, StepBody } from './desk-frame.tsx';
import { wholeOf } from './read-decimal.ts';

type Of<K extends BenchDoing['kind']> = StepProps & { readonly doing: Extract<BenchDoing, { kind: K }> };

export function HandStep(props: Of<'paste' | 'dissolve'>): ReactNode {
  const { desk, doing } = props;
  const { t } = benchText();
  const send = (): void => void desk.act((requestKey) => confirm({ requestKey, orderId: desk.view.orderId, step: { kind: doing.kind } }));
  const words =
    doing.kind === 'paste'
      ? { title: t(doing.isSecond ? 'paste-second-title' : 'paste-title'), note: t('paste-note') }
      : { title: t('dissolve-title'), note: t('dissolve-note', { names: doing.lines.map(spokenName).join(', ') }) };
  return (
    <DeskFrame
      {...props}
      actions={
        <Button kind="primary" onClick={send}>
          {t(`${doing.kind}-do`)}
        </Button>
      }
    >
      <StepBody {...words} />
    </DeskFrame>
  );
}

export function TemperatureStep(props: Of<'temperature'>): ReactNode {
  const { desk, doing } = props;
  const { t } = benchText();
  const [text, setText] = useState('');
  const [mistake, setMistake] = useState<string | null>(null);
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    const temperatureC = wholeOf(text);
    setMistake(temperatureMistake(temperatureC, doing.atMostC));
    if (temperatureC === null) return;
    void desk.act((requestKey) => check({ requestKey, orderId: desk.view.orderId, check: { kind: 'temperature', temperatureC } }));
  };
  return (
    <DeskFrame
      {...props}
      actions={
        <Button kind="primary" type="submit" form="temperature-form">
          {t('temperature-do')}
        </Button>
      }
    >
      <StepBody title={t('temperature-title')} note={t('temperature-note', { celsius: doing.atMostC })}>
        <form id="temperature-form" className={styles.narrow} onSubmit={submit} noValidate>
          <TextField
            id="temperature"
            label={t('temperature-field')}
            error={mistake ?? undefined}
            value={text}
            onChange={(event) => setText(event.target.value)}
            inputMode="numeric"
            autoComplete="off"
            unit="°C"
            align="end"
            dir="ltr"
          />
        </form>
      </StepBody>
    </DeskFrame>
  );
}

function temperatureMistake(temperatureC: number | null, atMostC: number): string | null {
  const { t } = benchText();
  if (temperatureC === null) return t('temperature-mistake');
  return temperatureC > atMostC ? t('temperature-hot', { celsius: atMostC }) : null;
}

export function EyeStep(props: Of<'draw-down' | 'inspect'>): ReactNode {
  const { desk, doing } = props;
  const { t } = benchText();
  const kind = doing.kind === 'inspect' ? 'look' : 'draw-down';
  const send = (hasPassed: boolean): void =>
    void desk.act((requestKey) => check({ requestKey, orderId: desk.view.orderId, check: { kind, hasPassed, note: '' } }));
  return (
    <DeskFrame
      {...props}
      actions={
        <Button kind="primary" onClick={() => send(true)}>
          {t('check-pass')}
        </Button>
      }
    >
      <StepBody title={t(`${kind}-title`)} note={doing.kind === 'inspect' ? t('look-note', { colour: doing.colour }) : t('draw-down-note')}>
        {doing.kind === 'inspect' && (
          <div className={styles.swatch}>
            <Swatch wet={[doing.wetHex]} dry={[doing.dryHex]} wetWord={t('wet')} dryWord={t('dry')} size="large" />
          </div>
        )}
        <span>
          <Button size="small" onClick={() => send(false)}>
            {t('check-fail')}
          </Button>
        </span>
        {doing.hasFailed && <Notice tone="care" title={t('check-failed')} />}
      </StepBody>
    </DeskFrame>
  );
}
