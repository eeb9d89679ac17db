'use client';
// The page for each step of a visit. Every page has one heading, which takes the focus when it appears.
import type { ReactNode } from 'react';
import { useEffect, useRef } from 'react';
import { Bar } from '#app/_ui/controls/bar.tsx';
import { Button } from '#app/_ui/controls/button.tsx';
import { EmptyScene } from '#app/_ui/drawing/empty-scene.tsx';
import { KioskFrame } from '#app/_ui/frames/kiosk-frame.tsx';
import type { KioskShow } from '#lib/answers/kiosk-questions.ts';
import { CautionsPage } from './cautions-page.tsx';
import { CheckPage } from './check-page.tsx';
import { CodePage } from './code-page.tsx';
import type { KioskAction, KioskState } from './kiosk-state.ts';
import { kioskText } from './kiosk-text.ts';
import { QuestionPage } from './question-page.tsx';
import { ResultsPage } from './results-page.tsx';
import { StartPage } from './start-page.tsx';

export interface StepProps {
  readonly show: KioskShow;
  readonly state: KioskState;
  readonly dispatch: (action: KioskAction) => void;
  readonly onBack: () => void;
  readonly onMore: () => void;
  readonly onFind: () => void;
  readonly onOrder: () => void;
}

export function KioskStep(props: StepProps): ReactNode {
  const { step } = props.state;
  switch (step.kind) {
    case 'start':
      return <StartPage {...props} />;
    case 'question':
      return <QuestionPage key={step.no} {...props} no={step.no} />;
    case 'check':
      return <CheckPage {...props} />;
    case 'results':
      return <ResultsPage {...props} />;
    case 'cautions':
      return <CautionsPage {...props} />;
    case 'code':
      return <CodePage {...props} code={step.code} priceMinor={step.priceMinor} />;
    case 'outcome':
    case 'offline':
    case 'pulled':
    case 'problem':
      return <OutcomePage {...props} />;
  }
}

/** A heading that takes the focus when its page appears, so that a reader starts there. */
export function PageHeading({ children, display }: { readonly children: ReactNode; readonly display?: boolean }): ReactNode {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <h1 ref={heading} tabIndex={-1} className={display ? 'type-display' : 'type-title'}>
      {children}
    </h1>
  );
}

/** Calm, in the frame of any other page: what happens now, what it need not mean, what can be done. */
function OutcomePage({ show, state, dispatch, onBack, onMore, onFind }: StepProps): ReactNode {
  const { t } = kioskText();
  const { step } = state;
  const words = wordsOf(step, t);
  const isPulled = step.kind === 'pulled';
  return (
    <KioskFrame
      brand={show.shopName}
      place={t('outcome-place')}
      titleSize="outcome"
      flow="follow"
      picture={<EmptyScene />}
      shown={
        <>
          <PageHeading>{words.title}</PageHeading>
          <p>{words.text}</p>
        </>
      }
      bar={
        <Bar>
          {isPulled ? (
            <Button kind="primary" data-main="" onClick={() => window.location.reload()}>
              {t('look-again')}
            </Button>
          ) : (
            <Button kind="primary" data-main="" onClick={() => window.location.replace('/kiosk')}>
              {t('done')}
            </Button>
          )}
          <Button icon="menu" onClick={onMore}>
            {t('more')}
          </Button>
        </Bar>
      }
    >
      {step.kind === 'outcome' && (
        <Button wide onClick={() => dispatch({ kind: 'go', step: { kind: 'check' } })}>
          {t('change-an-answer')}
        </Button>
      )}
      {step.kind === 'problem' && (
        <Button wide onClick={onBack}>
          {t('back')}
        </Button>
      )}
      {step.kind === 'offline' && step.from === 'check' && (
        <Button wide onClick={onFind}>
          {t('look-again')}
        </Button>
      )}
    </KioskFrame>
  );
}

function wordsOf(step: KioskState['step'], t: ReturnType<typeof kioskText>['t']): { readonly title: string; readonly text: string } {
  if (step.kind === 'outcome') return { title: t(`outcome-${step.outcome}`), text: t(`outcome-${step.outcome}-text`) };
  if (step.kind === 'offline') return { title: t('offline-title'), text: t('offline-text') };
  if (step.kind === 'pulled') return { title: t('pulled-title'), text: t('pulled-text') };
  return { title: t('problem-title'), text: t('problem-text', { detail: step.kind === 'problem' ? step.detail : '' }) };
}
