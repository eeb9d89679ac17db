'use client';
// One thing that was done about a complaint.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { recordComplaintStep } from '#app/_client/complaints.ts';
import { Button, ButtonLink } from '#app/_ui/controls/button.tsx';
import { SelectField, TextAreaField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import styles from '../office.module.css';
import { complaintsText } from './complaints-text.ts';

const STEPS = [
  'answered',
  'jar-returned',
  'sample-kept',
  'told-responsible-person',
  'told-authority',
  'reclassified-serious',
  'closed',
] as const;

export function StepForm({ complaintId, jarCode }: { readonly complaintId: string; readonly jarCode: string }): ReactNode {
  const { t } = complaintsText();
  const [failure, setFailure] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const kind = STEPS.find((one) => one === form.get('kind'));
    if (isBusy || !kind) return;
    setFailure(null);
    setBusy(true);
    const reply = await recordComplaintStep({ complaintId, kind, note: String(form.get('note') ?? '').trim() });
    setBusy(false);
    if (reply.kind === 'unreachable') return setFailure(t('unreachable'));
    if (reply.kind === 'problem') return setFailure(t('problem', { title: reply.problem.title, detail: reply.problem.detail }));
    if (!reply.body.ok) return setFailure(t(`refusal-${reply.body.refusal.kind}`));
    window.location.assign('/office/complaints?filed=1');
  };

  return (
    <form className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
      <h2 className="type-heading">{t('step-title', { jar: jarCode })}</h2>
      <div role="alert">{failure !== null && <Notice tone="stop" title={failure} />}</div>
      <SelectField id="kind" name="kind" label={t('step-kind')} options={STEPS.map((value) => ({ value, label: t(`step-${value}`) }))} />
      <TextAreaField id="note" name="note" label={t('note')} rows={3} maxLength={500} />
      <div className={styles.actions}>
        <Button kind="primary" type="submit" notReady={isBusy}>
          {t('save')}
        </Button>
        <ButtonLink href="/office/complaints">{t('file-title')}</ButtonLink>
      </div>
    </form>
  );
}
