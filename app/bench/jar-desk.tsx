'use client';
// One jar at the bench. The server says where it stands; this page only shows the step and sends what was done.
import type { ReactNode } from 'react';
import { useEffect, useRef, useState } from 'react';
import { claim } from '#app/_client/bench-acts.ts';
import { Button, ButtonLink } from '#app/_ui/controls/button.tsx';
import { assertNever } from '#lib/base/invariant.ts';
import type { BenchView } from '#lib/contracts/bench-view.ts';
import { benchText } from './bench-text.ts';
import { EyeStep, HandStep, TemperatureStep } from './check-steps.tsx';
import type { StepProps } from './desk-frame.tsx';
import { DeskFrame, StepBody } from './desk-frame.tsx';
import { EndedStep, FillStep, ReadyStep, ReleaseStep } from './finish-steps.tsx';
import { FitnessForms } from './fitness-step.tsx';
import { HeldJarStep } from './held-jar-step.tsx';
import { PausedPage, ResumePage, Stopped } from './jar-gates.tsx';
import { MendStep } from './mend-step.tsx';
import { HeldOrderStep, OrderWaysDialog, OtherHands } from './order-ways.tsx';
import { PhStep } from './ph-step.tsx';
import { BindStep, ConfirmStep, MarkPage } from './prepare-steps.tsx';
import type { Desk } from './use-desk.ts';
import { stepKey, useDesk } from './use-desk.ts';
import { WeighStep } from './weigh-step.tsx';
import { WrongDialog } from './wrong-dialog.tsx';

const LOOK_EVERY_MS = 4_000;

export function JarDesk({ initial, who }: { readonly initial: BenchView; readonly who: string }): ReactNode {
  const desk = useDesk(initial);
  const { view } = desk;
  const [isPaused, setPaused] = useState(false);
  const [isWrongOpen, setWrongOpen] = useState(false);
  // A page that was opened anew asks which jar is there; one that bound the jar itself has seen it.
  const [knownJar, setKnownJar] = useState<string | null>(null);
  useRefresh(desk.watch);
  useHeadingFocus(stepKey(view));
  const props = { desk, who, onPause: () => setPaused(true), onWrong: () => setWrongOpen(true) };

  if (view.stage === 'claimed' || view.stage === 'mixing') {
    if (!view.isMine) return <OtherHands {...props} />;
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
      {isWrongOpen && WITH_WAYS_OUT.includes(view.stage) && (
        <div data-face="bench">
          <WaysOut desk={desk} onClose={() => setWrongOpen(false)} />
        </div>
      )}
    </>
  );
}

const WITH_WAYS_OUT: readonly BenchView['stage'][] = ['placed', 'claimed', 'mixing', 'ready'];

/** Until a jar is bound the order can simply be given back; from then on what lies in the jar has to go somewhere. */
function WaysOut({ desk, onClose }: { readonly desk: Desk; readonly onClose: () => void }): ReactNode {
  const { stage, jarCode } = desk.view;
  if (stage === 'ready') return <OrderWaysDialog desk={desk} ways={['unfetched']} onClose={onClose} />;
  if (stage === 'placed') return <OrderWaysDialog desk={desk} ways={['close']} onClose={onClose} />;
  if (jarCode === null) return <OrderWaysDialog desk={desk} ways={['give-back', 'close']} onClose={onClose} />;
  return <WrongDialog desk={desk} onClose={onClose} />;
}

const hasWeighed = (view: BenchView): boolean =>
  view.doing.kind === 'mend' || view.steps.some((step) => step.kind === 'weigh' && step.state === 'done');

/** A stop or a new edition is seen within seconds. */
function useRefresh(refresh: () => Promise<void>): void {
  useEffect(() => {
    const timer = setInterval(() => void refresh(), LOOK_EVERY_MS);
    return () => clearInterval(timer);
  }, [refresh]);
}

/** A new step puts the focus on its heading. */
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
      return <HeldJarStep {...props} doing={doing} />;
    case 'held':
      return <HeldOrderStep {...props} doing={doing} />;
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
          <Button onClick={props.onWrong}>{t('close-open')}</Button>
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
