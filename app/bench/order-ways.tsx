'use client';
// Ways out of an order: back to the queue, into other hands, off its hold, or closed. Each asks why, and the server decides.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { closeOrder, giveBack, resume, takeOver } from '#app/_client/bench-acts.ts';
import { Button, ButtonLink } from '#app/_ui/controls/button.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import type { BenchWaysKey } from '#app/_ui/text/bench-ways/en.ts';
import type { BenchDoing } from '#lib/contracts/bench-view.ts';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import type { StepProps } from './desk-frame.tsx';
import { DeskFrame, StepBody } from './desk-frame.tsx';
import { findingWords } from './finding-words.ts';
import type { Desk } from './use-desk.ts';
import { waysText } from './ways-text.ts';

const LEAST_WORDS_LENGTH = 3;

type WayName = 'give-back' | 'take-over' | 'close' | 'off-hold' | 'unfetched';

const CALLS = { 'give-back': giveBack, 'take-over': takeOver, close: closeOrder, 'off-hold': resume, unfetched: closeOrder } as const;

/** One way with its reason. */
export function ReasonedWay(props: { readonly desk: Desk; readonly way: WayName; readonly onDone?: () => void }): ReactNode {
  const { desk, way, onDone } = props;
  const { t } = waysText();
  const [isBlank, setBlank] = useState(false);
  const isEnd = way === 'close' || way === 'unfetched';
  const submit = (event: FormEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const reason = String(new FormData(event.currentTarget).get('why')).trim();
    setBlank(reason.length < LEAST_WORDS_LENGTH);
    if (reason.length < LEAST_WORDS_LENGTH) return;
    onDone?.();
    void desk.act((requestKey) => CALLS[way]({ requestKey, orderId: desk.view.orderId, reason }));
  };
  return (
    <form className={styles.way} onSubmit={submit} noValidate>
      <h2 className="type-heading">{t(`${way}-title` satisfies BenchWaysKey)}</h2>
      <p className="type-small type-second">{t(`${way}-note` satisfies BenchWaysKey)}</p>
      <TextField
        id={`why-${way}`}
        name="why"
        label={benchText().t('discard-reason')}
        hint={t(`${way}-hint` satisfies BenchWaysKey)}
        error={isBlank ? benchText().t('reason-missing') : undefined}
        autoComplete="off"
        maxLength={500}
      />
      <Button kind={isEnd ? 'destructive' : 'primary'} type="submit" wide>
        {t(`${way}-do` satisfies BenchWaysKey)}
      </Button>
    </form>
  );
}

/** From any step before a jar is bound, and for a jar that nobody fetches. */
export function OrderWaysDialog(props: {
  readonly desk: Desk;
  readonly ways: readonly WayName[];
  readonly onClose: () => void;
}): ReactNode {
  const { desk, ways, onClose } = props;
  const { t } = waysText();
  return (
    <Dialog open size={ways.length > 1 ? 'wide' : 'narrow'} title={t('ways-title', { code: desk.view.shortCode })} onClose={onClose}>
      <div className={ways.length > 1 ? styles.ways : styles.stack}>
        {ways.map((way) => (
          <ReasonedWay key={way} desk={desk} way={way} onDone={onClose} />
        ))}
      </div>
      <Button wide onClick={onClose}>
        {benchText().t('go-back')}
      </Button>
    </Dialog>
  );
}

/** Somebody else has it: it goes on in these hands, or back to the queue while no jar is bound. */
export function OtherHands(props: StepProps): ReactNode {
  const { t } = waysText();
  const { view } = props.desk;
  const isBound = view.jarCode !== null;
  return (
    <DeskFrame {...props} bare actions={<ButtonLink href="/bench">{benchText().t('to-queue')}</ButtonLink>}>
      <StepBody
        title={t('not-mine-title', { who: view.by ?? '' })}
        note={t(isBound ? 'not-mine-note' : 'not-mine-free-note', { who: view.by ?? '' })}
      />
      <div className={styles.ways}>
        <ReasonedWay desk={props.desk} way="take-over" />
        {!isBound && <ReasonedWay desk={props.desk} way="give-back" />}
      </div>
    </DeskFrame>
  );
}

/** Why it was held, what keeps it there today, and the two ways on. */
export function HeldOrderStep(props: StepProps & { readonly doing: Extract<BenchDoing, { kind: 'held' }> }): ReactNode {
  const { desk, doing } = props;
  const { t } = waysText();
  const isFree = doing.findings.length === 0;
  return (
    <DeskFrame {...props} bare actions={<ButtonLink href="/bench">{benchText().t('to-queue')}</ButtonLink>}>
      <StepBody title={t('held-title')} note={t('held-why', { why: doing.reason })}>
        <p className="type-measure">{t(isFree ? 'held-free' : 'held-stands')}</p>
        <ul>
          {doing.findings.map((code) => (
            <li key={code}>{findingWords(code)}</li>
          ))}
        </ul>
      </StepBody>
      <div className={styles.ways}>
        {isFree && <ReasonedWay desk={desk} way="off-hold" />}
        <ReasonedWay desk={desk} way="close" />
      </div>
    </DeskFrame>
  );
}
