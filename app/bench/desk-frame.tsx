'use client';
// The frame around every step of a jar: rail, header, what went wrong, and the row of actions with the one to do now at its end.
import type { ReactNode } from 'react';
import { useEffect } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { BenchFrame } from '#app/_ui/frames/bench-frame.tsx';
import { StepRail } from '#app/_ui/frames/step-rail.tsx';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import { railSteps } from './rail-steps.ts';
import { SignInAgain } from './reply-words.tsx';
import type { Desk } from './use-desk.ts';

export interface StepProps {
  readonly desk: Desk;
  readonly who: string;
  readonly onPause: () => void;
  readonly onWrong: () => void;
}

export function DeskFrame(
  props: StepProps & { readonly actions: ReactNode; readonly children: ReactNode; readonly bare?: boolean },
): ReactNode {
  const { desk, who, onPause, onWrong, actions, children, bare } = props;
  const { t } = benchText();
  const { view, note } = desk;
  const at = view.steps.findIndex((step) => step.state === 'current');
  useEffect(() => {
    if (at >= 0) document.querySelector('[aria-current="step"]')?.scrollIntoView({ block: 'nearest' });
  }, [at]);
  return (
    <BenchFrame
      word={t('bench')}
      place={view.shopName}
      code={view.shortCode}
      skip={t('skip-work')}
      end={who}
      alert={note !== null && <Notice tone="stop" title={note} {...(desk.isSignedOut && { end: <SignInAgain /> })} />}
      {...(!bare && { rail: <StepRail label={t('steps')} doneWord={t('done')} steps={railSteps(view.steps)} /> })}
      actions={
        <>
          {!bare && <Button onClick={onPause}>{t('stop-jar')}</Button>}
          {!bare && <Button onClick={onWrong}>{t('went-wrong')}</Button>}
          {actions}
        </>
      }
    >
      <div className={styles.work}>{children}</div>
    </BenchFrame>
  );
}

/** A step that is a heading, a sentence and what belongs to it. */
export function StepBody(props: { readonly title: ReactNode; readonly note?: ReactNode; readonly children?: ReactNode }): ReactNode {
  return (
    <>
      <h1 className="type-title">{props.title}</h1>
      {props.note && <p className="type-measure">{props.note}</p>}
      {props.children}
    </>
  );
}
