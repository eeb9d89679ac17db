'use client';
// One jar at the bench. The server says where it stands; this page only shows the step and sends what was done.
import type { FormEvent, ReactNode } from 'react';
import { useEffect, useRef, useState } from 'react';
import { claim } from '#app/_client/bench-acts.ts';
import { Button, ButtonLink } from '#app/_ui/controls/button.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { assertNever } from '#lib/base/invariant.ts';
import type { BenchView } from '#lib/contracts/bench-view.ts';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import { EyeStep, HandStep, TemperatureStep } from './check-steps.tsx';
import type { StepProps } from './desk-frame.tsx';
import { DeskFrame, StepBody } from './desk-frame.tsx';
import { EndedStep, FillStep, HeldStep, ReadyStep, ReleaseStep } from './finish-steps.tsx';
import { FitnessForms } from './fitness-step.tsx';
import { MendStep } from './mend-step.tsx';
import { PhStep } from './ph-step.tsx';
import { BindStep, ConfirmStep, MarkPage } from './prepare-steps.tsx';
import { useDesk } from './use-desk.ts';
import { WeighStep } from './weigh-step.tsx';
import { WrongDialog } from './wrong-dialog.tsx';

const LOOK_EVERY_MS = 4_000;
/** Signs at the end of a jar's code that are enough to tell it from the others of a day. */
const TAIL_LENGTH = 5;

export function JarDesk({ initial, who }: { readonly initial: BenchView; readonly who: string }): ReactNode {
  const desk = useDesk(initial);
  const { view } = desk;
  const [isPaused, setPaused] = useState(false);
  const [isWrongOpen, setWrongOpen] = useState(false);
  // A page that was opened anew asks which jar is there; one that bound the jar itself has seen it.
  const [knownJar, setKnownJar] = useState<string | null>(null);
  useRefresh(desk.refresh);
  useHeadingFocus(stepKey(view));
  const props = { desk, who, onPause: () => setPaused(true), onWrong: () => setWrongOpen(true) };

  if (view.stage === 'claimed' || view.stage === 'mixing') {
    if (!view.isMine) return <NotMine {...props} />;
    if (view.jarCode !== null && view.jarCode !== knownJar) {
      const seen = (): void => setKnownJar(view.jarCode);
      return hasWeighed(view) ? (
        <ResumePage {...props} jarCode={view.jarCode} onRight={seen} />
      ) : (
        <MarkPage {...props} jarCode={view.jarCode} onMarked={seen} />
      );
    }
    if (isPaused)
      return (
        <PausedPage
          {...props}
          onGoOn={() => {
            setPaused(false);
            setKnownJar(null);
          }}
        />
      );
  }
  return (
    <>
      <Step {...props} />
      {isWrongOpen && view.stage !== 'discarded' && <WrongDialog desk={desk} onClose={() => setWrongOpen(false)} />}
    </>
  );
}

const hasWeighed = (view: BenchView): boolean =>
  view.doing.kind === 'mend' || view.steps.some((step) => step.kind === 'weigh' && step.state === 'done');

/** What the page is about: a new one puts the focus on its heading. */
function stepKey({ doing, stage, batchUg }: BenchView): string {
  return doing.kind === 'weigh' ? `weigh-${doing.lineNo}-${doing.weighingNo}-${batchUg}` : `${stage}-${doing.kind}`;
}

/** A stop or a new edition is seen within seconds. */
function useRefresh(refresh: () => Promise<void>): void {
  useEffect(() => {
    const timer = setInterval(() => void refresh(), LOOK_EVERY_MS);
    return () => clearInterval(timer);
  }, [refresh]);
}

function useHeadingFocus(key: string): void {
  const before = useRef(key);
  useEffect(() => {
    if (before.current === key) return;
    before.current = key;
    const heading = document.querySelector<HTMLElement>('main h1');
    heading?.setAttribute('tabindex', '-1');
    heading?.focus();
  }, [key]);
}

function Step(props: StepProps): ReactNode {
  const { desk } = props;
  const { t } = benchText();
  const { doing, stops, stage } = desk.view;
  if (stops.length > 0 && (stage === 'claimed' || stage === 'mixing')) return <Stopped {...props} />;
  switch (doing.kind) {
    case 'claim':
      return <ClaimStep {...props} />;
    case 'fitness':
      return (
        <DeskFrame {...props} actions={<ButtonLink href="/bench">{t('to-queue')}</ButtonLink>}>
          <StepBody title={t('fitness-title')}>
            <FitnessForms doing={doing} onChecked={() => void desk.refresh()} />
          </StepBody>
        </DeskFrame>
      );
    case 'clearance':
    case 'protection':
      return <ConfirmStep key={doing.kind} {...props} doing={doing} />;
    case 'bind-jar':
      return <BindStep {...props} doing={doing} />;
    case 'weigh':
      return <WeighStep key={stepKey(desk.view)} {...props} doing={doing} />;
    case 'mend':
      return <MendStep {...props} doing={doing} />;
    case 'paste':
    case 'dissolve':
      return <HandStep {...props} doing={doing} />;
    case 'temperature':
      return <TemperatureStep {...props} doing={doing} />;
    case 'draw-down':
    case 'inspect':
      return <EyeStep {...props} doing={doing} />;
    case 'ph':
      return <PhStep {...props} doing={doing} />;
    case 'fill':
      return <FillStep {...props} doing={doing} />;
    case 'release':
      return <ReleaseStep {...props} doing={doing} />;
    case 'ready':
      return <ReadyStep {...props} doing={doing} />;
    case 'jar-held':
      return <HeldStep {...props} doing={doing} />;
    case 'held':
    case 'ended':
      return <EndedStep {...props} doing={doing} />;
    default:
      return assertNever(doing);
  }
}

function ClaimStep(props: StepProps): ReactNode {
  const { t, target } = benchText();
  const { view, act } = props.desk;
  return (
    <DeskFrame
      {...props}
      bare
      actions={
        <>
          <ButtonLink href="/bench">{t('to-queue')}</ButtonLink>
          <Button kind="primary" iconEnd="arrow-end" onClick={() => void act((requestKey) => claim({ requestKey, orderId: view.orderId }))}>
            {t('queue-take')}
          </Button>
        </>
      }
    >
      <StepBody title={t('claim-title', { code: view.shortCode, name: view.name })} note={t('grams', { mass: target(view.netUg) })} />
    </DeskFrame>
  );
}

function Stopped(props: StepProps): ReactNode {
  const { t } = benchText();
  return (
    <DeskFrame {...props} actions={<ButtonLink href="/bench">{t('to-queue')}</ButtonLink>}>
      <h1 className="type-title">{t('stopped-title')}</h1>
      <Notice tone="stop" role="alert" title={t('stopped-note', { reasons: props.desk.view.stops.join('; ') })} />
    </DeskFrame>
  );
}

function NotMine(props: StepProps): ReactNode {
  const { t } = benchText();
  return (
    <DeskFrame {...props} bare actions={<ButtonLink href="/bench">{t('to-queue')}</ButtonLink>}>
      <StepBody title={t('not-mine-title', { who: props.desk.view.by ?? '' })} note={t('not-mine-note')} />
    </DeskFrame>
  );
}

/** Nothing of the recipe stays on the screen. */
function PausedPage(props: StepProps & { readonly onGoOn: () => void }): ReactNode {
  const { t } = benchText();
  return (
    <DeskFrame
      {...props}
      bare
      actions={
        <Button kind="primary" onClick={props.onGoOn}>
          {t('go-on')}
        </Button>
      }
    >
      <StepBody title={t('paused-title', { code: props.desk.view.shortCode })} note={t('paused-note')} />
    </DeskFrame>
  );
}

/** Two jars of the same colour look alike; the code does not. */
function ResumePage(props: StepProps & { readonly jarCode: string; readonly onRight: () => void }): ReactNode {
  const { jarCode, onRight } = props;
  const { t } = benchText();
  const [isOther, setOther] = useState(false);
  const submit = (event: FormEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const typed = String(new FormData(event.currentTarget).get('jar')).replace(/[\s-]/g, '').toUpperCase();
    const isRight = typed.length >= TAIL_LENGTH && jarCode.endsWith(typed);
    setOther(!isRight);
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
            error={isOther ? t('resume-other', { tail: jarCode.slice(-TAIL_LENGTH) }) : undefined}
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
