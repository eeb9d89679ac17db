'use client';
// A held jar: why it is held, and the decision that two people sign. It is never handed over.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { decideHeldJar } from '#app/_client/bench-acts.ts';
import { Button, ButtonLink } from '#app/_ui/controls/button.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import type { BenchDoing } from '#lib/contracts/bench-view.ts';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import type { StepProps } from './desk-frame.tsx';
import { DeskFrame, StepBody } from './desk-frame.tsx';
import { findingWords } from './finding-words.ts';
import { SecondSignature } from './second-person.tsx';
import { waysText } from './ways-text.ts';

const LEAST_WORDS_LENGTH = 3;

interface Wish {
  readonly reason: string;
  readonly wantsAnother: boolean;
}

export function HeldJarStep(props: StepProps & { readonly doing: Extract<BenchDoing, { kind: 'jar-held' }> }): ReactNode {
  const { desk, doing } = props;
  const { t } = waysText();
  const [wish, setWish] = useState<Wish | null>(null);
  const { orderId } = desk.view;
  return (
    <DeskFrame {...props} bare actions={<ButtonLink href="/bench">{benchText().t('to-queue')}</ButtonLink>}>
      <StepBody title={t('jar-held-title')} note={t('jar-held-note')}>
        <ul>
          {doing.findings.map((code) => (
            <li key={code}>{findingWords(code)}</li>
          ))}
        </ul>
      </StepBody>
      <DecisionForm onWish={setWish} />
      {wish && (
        <div data-face="bench">
          <Dialog open title={t('held-jar-sign')} onClose={() => setWish(null)}>
            <SecondSignature
              isBusy={desk.isBusy}
              note={t('held-jar-sign-note')}
              onSign={(second) => {
                setWish(null);
                void desk.act((requestKey) => decideHeldJar({ requestKey, orderId, ...wish, second: { ...second } }));
              }}
            />
            <Button wide onClick={() => setWish(null)}>
              {benchText().t('go-back')}
            </Button>
          </Dialog>
        </div>
      )}
    </DeskFrame>
  );
}

/** The reason, and two buttons: with another jar in its place, or without. */
function DecisionForm({ onWish }: { readonly onWish: (wish: Wish) => void }): ReactNode {
  const { t } = waysText();
  const [isBlank, setBlank] = useState(false);
  const submit = (event: FormEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const pressed = (event.nativeEvent as SubmitEvent).submitter;
    const reason = String(new FormData(event.currentTarget).get('why')).trim();
    setBlank(reason.length < LEAST_WORDS_LENGTH);
    if (reason.length >= LEAST_WORDS_LENGTH) onWish({ reason, wantsAnother: pressed?.id === 'make-another' });
  };
  return (
    <form className={styles.way} onSubmit={submit} noValidate>
      <h2 className="type-heading">{t('held-jar-decide')}</h2>
      <TextField
        id="why-held-jar"
        name="why"
        label={benchText().t('discard-reason')}
        hint={benchText().t('discard-reason-hint')}
        error={isBlank ? benchText().t('reason-missing') : undefined}
        autoComplete="off"
        maxLength={500}
      />
      <Button id="make-another" kind="primary" icon="person" type="submit" wide>
        {t('held-jar-another')}
      </Button>
      <Button id="make-none" kind="destructive" icon="person" type="submit" wide>
        {t('held-jar-none')}
      </Button>
    </form>
  );
}
