'use client';
// What somebody said about a jar, with the code from its label.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { fileComplaint } from '#app/_client/complaints.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { SelectField, TextAreaField, TextField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import styles from '../office.module.css';
import { complaintsText } from './complaints-text.ts';

const KINDS = ['reaction', 'look', 'smell', 'separation', 'packaging', 'other'] as const;
const SERIOUSNESS = ['not-serious', 'serious'] as const;

interface Mistakes {
  readonly jarCode?: string;
  readonly said?: string;
}

const errorOf = (error: string | undefined): { error?: string } => (error === undefined ? {} : { error });

export function ComplaintForm(): ReactNode {
  const { t } = complaintsText();
  const [mistakes, setMistakes] = useState<Mistakes>({});
  const [failure, setFailure] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const text = (name: string): string => String(form.get(name) ?? '').trim();
    const wrong: Mistakes = {
      ...(text('jarCode') === '' && { jarCode: t('jar-code-missing') }),
      ...(text('said') === '' && { said: t('said-missing') }),
    };
    setMistakes(wrong);
    setFailure(null);
    if (Object.keys(wrong).length > 0 || isBusy) return;
    setBusy(true);
    const reply = await fileComplaint({
      jarCode: text('jarCode'),
      kind: KINDS.find((one) => one === text('kind')) ?? 'other',
      seriousness: SERIOUSNESS.find((one) => one === text('seriousness')) ?? 'serious',
      said: text('said'),
      contact: text('contact'),
    });
    setBusy(false);
    if (reply.kind === 'unreachable') return setFailure(t('unreachable'));
    if (reply.kind === 'problem') return setFailure(t('problem', { title: reply.problem.title, detail: reply.problem.detail }));
    if (!reply.body.ok) return setMistakes({ jarCode: t(`refusal-${reply.body.refusal.kind}`) });
    window.location.assign('/office/complaints?filed=1');
  };

  return (
    <form className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
      <h2 className="type-heading">{t('file-title')}</h2>
      <div role="alert">{failure !== null && <Notice tone="stop" title={failure} />}</div>
      <TextField
        id="jarCode"
        name="jarCode"
        label={t('jar-code')}
        hint={t('jar-code-hint')}
        maxLength={40}
        autoComplete="off"
        {...errorOf(mistakes.jarCode)}
      />
      <SelectField id="kind" name="kind" label={t('kind')} options={KINDS.map((value) => ({ value, label: t(`kind-${value}`) }))} />
      <SelectField
        id="seriousness"
        name="seriousness"
        label={t('seriousness')}
        hint={t('seriousness-hint')}
        options={SERIOUSNESS.map((value) => ({ value, label: t(`serious-${value}`) }))}
      />
      <TextAreaField id="said" name="said" label={t('said')} rows={4} maxLength={2000} {...errorOf(mistakes.said)} />
      <TextField id="contact" name="contact" label={t('contact')} hint={t('contact-hint')} maxLength={200} autoComplete="off" />
      <div className={styles.actions}>
        <Button kind="primary" type="submit" notReady={isBusy}>
          {t('file')}
        </Button>
      </div>
    </form>
  );
}
