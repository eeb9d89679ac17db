'use client';
// Two people lift: the one who is signed in, and a second one under a name of their own.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { liftStop } from '#app/_client/stops.ts';
import { Button, ButtonLink } from '#app/_ui/controls/button.tsx';
import { TextAreaField, TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import styles from '../office.module.css';
import { stopsText } from './stops-text.ts';

export function LiftForm({ stopId, what, why }: { readonly stopId: string; readonly what: string; readonly why: string }): ReactNode {
  const { t } = stopsText();
  const [mistakes, setMistakes] = useState<{ readonly reason?: string; readonly second?: string }>({});
  const [failure, setFailure] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const text = (name: string): string => String(form.get(name) ?? '');
    const second = { code: text('code').trim(), password: text('password') };
    const wrong = {
      ...(text('reason').trim() === '' && { reason: t('reason-missing') }),
      ...((second.code === '' || second.password === '') && { second: t('second-missing') }),
    };
    setMistakes(wrong);
    setFailure(null);
    if (Object.keys(wrong).length > 0 || isBusy) return;
    setBusy(true);
    const reply = await liftStop({ stopId, reason: text('reason'), second });
    setBusy(false);
    if (reply.kind === 'unreachable') return setFailure(t('unreachable'));
    if (reply.kind === 'problem') return setFailure(t('problem', { title: reply.problem.title, detail: reply.problem.detail }));
    if (!reply.body.ok) return setFailure(t(`refusal-${reply.body.refusal.kind}`));
    window.location.assign('/office/stops');
  };

  return (
    <form className={styles.form} onSubmit={(event) => void submit(event)} noValidate autoComplete="off">
      <h2 className="type-heading">{t('lift-title')}</h2>
      <p>{t('lift-note', { what, reason: why })}</p>
      <div role="alert">{failure !== null && <Notice tone="stop" title={failure} />}</div>
      <TextAreaField id="reason" name="reason" label={t('lift-reason')} rows={3} maxLength={300} {...errorOf(mistakes.reason)} />
      <h3 className="type-strong">{t('second-heading')}</h3>
      <p className="type-second">{t('second-note')}</p>
      <TextField
        id="code"
        name="code"
        label={t('second-code')}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        {...errorOf(mistakes.second)}
      />
      <TextField id="password" name="password" type="password" label={t('second-password')} autoComplete="off" />
      <div className={styles.actions}>
        <Button kind="primary" type="submit" notReady={isBusy}>
          {t('lift-now')}
        </Button>
        <ButtonLink href="/office/stops" kind="quiet">
          {t('cancel')}
        </ButtonLink>
      </div>
    </form>
  );
}

const errorOf = (error: string | undefined): { error?: string } => (error === undefined ? {} : { error });
