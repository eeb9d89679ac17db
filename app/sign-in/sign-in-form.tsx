'use client';
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { signIn } from '#app/_client/sign-in.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { SelectField, TextField } from '#app/_ui/controls/field.tsx';
import { createText } from '#app/_ui/text/create-text.ts';
import type { SignInKey } from '#app/_ui/text/sign-in/en.ts';
import { en } from '#app/_ui/text/sign-in/en.ts';
import { FormError } from './form-error.tsx';
import { HOME } from './home.ts';
import styles from './sign-in.module.css';

interface Place {
  readonly id: string;
  readonly name: string;
}

export function SignInForm({ next, places }: { readonly next: string | null; readonly places: readonly Place[] }): ReactNode {
  const { t } = createText('en', { en });
  const [error, setError] = useState<{ readonly key: SignInKey; readonly values?: Record<string, string> } | null>(null);
  const [missing, setMissing] = useState<readonly ('code' | 'password')[]>([]);

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const stationId = String(form.get('station') ?? '');
    const empty = (['code', 'password'] as const).filter((name) => String(form.get(name)).trim() === '');
    setMissing(empty);
    setError(null);
    if (empty.length > 0) return event.currentTarget.querySelector<HTMLInputElement>(`#${empty[0]}`)?.focus();
    const reply = await signIn({
      code: String(form.get('code')).trim(),
      password: String(form.get('password')),
      stationId: stationId === '' ? null : stationId,
    });
    if (reply.kind === 'unreachable') return setError({ key: 'unreachable' });
    if (reply.kind === 'problem') return setError({ key: 'problem', values: { title: reply.problem.title, detail: reply.problem.detail } });
    if (!reply.body.ok) return setError({ key: reply.body.refusal.kind });
    window.location.assign(next ?? HOME[reply.body.role]);
  };

  return (
    <form className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
      <FormError text={error && t(error.key, error.values)} />
      <TextField
        id="code"
        name="code"
        label={t('name')}
        hint={t('name-hint')}
        {...(missing.includes('code') && { error: t('name-missing') })}
        autoComplete="username"
        autoCapitalize="none"
        spellCheck={false}
      />
      <TextField
        id="password"
        name="password"
        type="password"
        label={t('password')}
        {...(missing.includes('password') && { error: t('password-missing') })}
        autoComplete="current-password"
      />
      {places.length > 0 && (
        <SelectField
          id="station"
          name="station"
          label={t('station')}
          options={[{ value: '', label: t('station-none') }, ...places.map(({ id, name }) => ({ value: id, label: name }))]}
        />
      )}
      <Button kind="primary" type="submit" wide>
        {t('sign-in')}
      </Button>
    </form>
  );
}
