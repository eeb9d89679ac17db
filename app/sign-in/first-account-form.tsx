'use client';
import type { FormEvent, ReactNode } from 'react';
import { useEffect, useState } from 'react';
import { openFirstAccount, signIn } from '#app/_client/sign-in.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { SelectField, TextField } from '#app/_ui/controls/field.tsx';
import { createText } from '#app/_ui/text/create-text.ts';
import { en } from '#app/_ui/text/sign-in/en.ts';
import { FormError } from './form-error.tsx';
import styles from './sign-in.module.css';

const FIELDS = ['shop.name', 'shop.shopCode', 'shop.zone', 'name', 'code', 'password'] as const;
type FieldName = (typeof FIELDS)[number];
type Errors = Partial<Record<FieldName, string>>;

export function FirstAccountForm({ zones }: { readonly zones: readonly string[] }): ReactNode {
  const { t } = createText('en', { en });
  const [error, setError] = useState<string | null>(null);
  const [errors, setErrors] = useState<Errors>({});
  const [zone, setZone] = useState('UTC');
  // The browser's own zone is the best guess; only it knows, so it comes after the first paint.
  useEffect(() => setZone(Intl.DateTimeFormat().resolvedOptions().timeZone), []);

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const text = (name: FieldName): string => String(form.get(name) ?? '');
    const account = { code: text('code'), name: text('name'), password: text('password') };
    const reply = await openFirstAccount({
      ...account,
      shop: { shopCode: text('shop.shopCode').toUpperCase(), name: text('shop.name'), zone: text('shop.zone') },
    });
    if (reply.kind === 'unreachable') return setError(t('unreachable'));
    if (reply.kind === 'problem') {
      const { title, detail, fields } = reply.problem;
      setErrors(Object.fromEntries(fields.map(({ path, message }) => [path, message])));
      return setError(t('problem', { title, detail }));
    }
    if (!reply.body.ok) return setError(t(reply.body.refusal.kind));
    await signIn({ code: account.code, password: account.password, stationId: null });
    window.location.assign('/office');
  };

  const field = (name: FieldName): { id: string; name: string; error?: string } => ({
    id: name,
    name,
    ...(errors[name] !== undefined && { error: errors[name] }),
  });
  return (
    <form className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
      <FormError text={error} />
      <TextField {...field('shop.name')} label={t('shop-name')} />
      <TextField {...field('shop.shopCode')} label={t('shop-code')} hint={t('shop-code-hint')} maxLength={2} width="short" />
      <SelectField
        {...field('shop.zone')}
        label={t('zone')}
        value={zone}
        onChange={(event) => setZone(event.currentTarget.value)}
        options={zones.map((each) => ({ value: each, label: each }))}
      />
      <TextField {...field('name')} label={t('full-name')} autoComplete="name" />
      <TextField
        {...field('code')}
        label={t('name')}
        hint={t('name-hint')}
        autoComplete="username"
        autoCapitalize="none"
        spellCheck={false}
      />
      <TextField {...field('password')} type="password" label={t('password')} hint={t('new-password-hint')} autoComplete="new-password" />
      <Button kind="primary" type="submit" wide>
        {t('set-up')}
      </Button>
    </form>
  );
}
