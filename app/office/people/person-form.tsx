'use client';
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { addPerson } from '#app/_client/office.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { SelectField, TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import styles from '../office.module.css';
import { officeText } from '../office-text.ts';

const ROLES = ['mixer', 'checker', 'formulator', 'manager'] as const;

export function PersonForm(): ReactNode {
  const { t } = officeText();
  const [outcome, setOutcome] = useState<{ readonly tone: 'ok' | 'stop'; readonly text: string } | null>(null);
  const [errors, setErrors] = useState<Readonly<Record<string, string>>>({});

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = event.currentTarget;
    const text = (name: string): string => String(new FormData(form).get(name) ?? '');
    const role = ROLES.find((one) => one === text('role')) ?? 'mixer';
    setErrors({});
    const reply = await addPerson({ name: text('name'), code: text('code'), role, password: text('password') });
    if (reply.kind === 'unreachable') return setOutcome({ tone: 'stop', text: t('unreachable') });
    if (reply.kind === 'problem') {
      setErrors(Object.fromEntries(reply.problem.fields.map(({ path, message }) => [path, message])));
      return setOutcome({ tone: 'stop', text: t('problem', { title: reply.problem.title, detail: reply.problem.detail }) });
    }
    if (!reply.body.ok) return setOutcome({ tone: 'stop', text: t('refusal-name-taken') });
    form.reset();
    setOutcome({ tone: 'ok', text: t('people-added') });
  };

  const field = (name: string): { id: string; name: string; error?: string } => ({
    id: name,
    name,
    ...(errors[name] !== undefined && { error: errors[name] }),
  });
  return (
    <form className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
      <h2 className="type-heading">{t('people-add')}</h2>
      <div role="alert">{outcome && <Notice tone={outcome.tone} title={outcome.text} />}</div>
      <TextField {...field('name')} label={t('people-name')} autoComplete="off" />
      <TextField {...field('code')} label={t('people-code')} autoComplete="off" autoCapitalize="none" spellCheck={false} />
      <SelectField {...field('role')} label={t('people-role')} options={ROLES.map((value) => ({ value, label: t(`role-${value}`) }))} />
      <TextField
        {...field('password')}
        type="password"
        label={t('people-password')}
        hint={t('people-password-hint')}
        autoComplete="new-password"
      />
      <Button kind="primary" type="submit">
        {t('people-save')}
      </Button>
    </form>
  );
}
