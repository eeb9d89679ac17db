'use client';
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { publish } from '#app/_client/office.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { TextAreaField, TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { instantIn } from '#lib/units/time.ts';
import styles from '../office.module.css';
import { officeText } from '../office-text.ts';
import type { Outcome } from './publish-refusal.ts';
import { refusalText, stopped } from './publish-refusal.ts';
import type { ToldChange } from './tell-changes.ts';

/** The signature: why, and the password once more. While one request is on its way no second one starts. */
export function SignForm(props: {
  readonly revisionNo: number;
  readonly nextNo: number;
  /** Whose clocks the time of an edition is read by. */
  readonly zone: string;
  readonly changes: readonly ToldChange[];
  /** Ids of the changes that are ticked. */
  readonly looked: readonly string[];
}): ReactNode {
  const { revisionNo, nextNo, zone, changes, looked } = props;
  const text = officeText();
  const { t } = text;
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const [isPending, setPending] = useState(false);
  const [forgotPassword, setForgotPassword] = useState(false);
  const [fromFault, setFromFault] = useState<'wrong' | 'past' | null>(null);

  const send = async (form: FormData, effectiveAtMs: number | null): Promise<Outcome> => {
    const reply = await publish({
      revisionNo,
      lookedAt: changes.filter((change) => looked.includes(change.id)).flatMap((change) => change.lookKeys),
      reason: String(form.get('reason')),
      effectiveAtMs,
      password: String(form.get('password')),
    });
    if (reply.kind === 'unreachable') return stopped(t('unreachable'));
    if (reply.kind === 'problem') {
      const { title, detail, fields } = reply.problem;
      return stopped(
        t('problem', { title, detail }),
        fields.map((field) => field.message),
      );
    }
    if (!reply.body.ok && reply.body.refusal.kind === 'effective-in-the-past') setFromFault('past');
    if (!reply.body.ok) return refusalText(reply.body.refusal, text, changes);
    return { tone: 'ok', title: t('publish-done', { no: reply.body.editionNo }), more: [] };
  };

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    if (isPending) return;
    const form = new FormData(event.currentTarget);
    const from = String(form.get('from'));
    const effectiveAtMs = from === '' ? null : instantIn(zone, from);
    const isWrong = (from !== '' && effectiveAtMs === null) || event.currentTarget.querySelector('#from:invalid') !== null;
    setFromFault(isWrong ? 'wrong' : null);
    setForgotPassword(form.get('password') === '');
    if (isWrong || form.get('password') === '') return;
    setPending(true);
    const done = await send(form, effectiveAtMs);
    setOutcome(done);
    // Once it is published the button stays shut until the page has changed.
    if (done.tone === 'ok') window.location.assign('/office/editions');
    else setPending(false);
  };

  return (
    <form className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
      <p>{t('publish-meaning')}</p>
      <div role="alert">
        {outcome && (
          <Notice tone={outcome.tone} title={outcome.title}>
            {outcome.more.length > 0 && (
              <ul>
                {outcome.more.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            )}
          </Notice>
        )}
      </div>
      <TextAreaField id="reason" name="reason" label={t('publish-reason')} hint={t('publish-reason-hint')} />
      <TextField
        id="from"
        name="from"
        type="datetime-local"
        label={t('publish-from')}
        hint={t('publish-from-hint', { zone })}
        width="short"
        {...(fromFault && { error: t(`publish-from-${fromFault}`) })}
      />
      <TextField
        id="password"
        name="password"
        type="password"
        label={t('publish-password')}
        autoComplete="current-password"
        width="short"
        {...(forgotPassword && { error: t('publish-password-missing') })}
      />
      <div className={styles.actions}>
        <Button kind="primary" type="submit" notReady={isPending}>
          {isPending ? t('publish-pending') : t('publish-now', { no: nextNo })}
        </Button>
      </div>
    </form>
  );
}
