'use client';
// One person, at once, with a reason.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { placeStop } from '#app/_client/stops.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { SelectField, TextAreaField } from '#app/_ui/controls/field.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import styles from '../office.module.css';
import { stopsText } from './stops-text.ts';

const KINDS = ['lot', 'shade', 'active', 'material', 'stock', 'pair'] as const;
type Kind = (typeof KINDS)[number];

interface Named {
  readonly id: string;
  readonly name: string;
}

interface Mistakes {
  readonly which?: string;
  readonly reason?: string;
}

export function StopForm({ subjects }: { readonly subjects: Readonly<Record<Exclude<Kind, 'pair'>, readonly Named[]>> }): ReactNode {
  const { t } = stopsText();
  const [kind, setKind] = useState<Kind>('lot');
  const [mistakes, setMistakes] = useState<Mistakes>({});
  const [failure, setFailure] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);
  const options = (things: readonly Named[]) => [
    { value: '', label: t('choose') },
    ...things.map(({ id, name }) => ({ value: id, label: name })),
  ];

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const text = (name: string): string => String(form.get(name) ?? '').trim();
    const ids = kind === 'pair' ? [text('first'), text('second')] : [text('which')];
    const wrong: Mistakes = {
      ...(ids.includes('') && { which: t('which-missing') }),
      ...(ids.length === 2 && ids[0] !== '' && ids[0] === ids[1] && { which: t('pair-same') }),
      ...(text('reason') === '' && { reason: t('reason-missing') }),
    };
    setMistakes(wrong);
    setFailure(null);
    if (Object.keys(wrong).length > 0 || isBusy) return;
    setBusy(true);
    const reply = await placeStop({ subjectKind: kind, subjectId: ids.join('|'), reason: text('reason') });
    setBusy(false);
    if (reply.kind === 'unreachable') return setFailure(t('unreachable'));
    if (reply.kind === 'problem') return setFailure(t('problem', { title: reply.problem.title, detail: reply.problem.detail }));
    if (!reply.body.ok) return setFailure(t(`refusal-${reply.body.refusal.kind}`));
    window.location.assign(`/office/stops?waiting=${reply.body.waitingCodes.join(',')}`);
  };

  return (
    <form className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
      <h2 className="type-heading">{t('place-title')}</h2>
      <div role="alert">{failure !== null && <Notice tone="stop" title={failure} />}</div>
      <SelectField
        id="kind"
        name="kind"
        label={t('kind')}
        value={kind}
        onChange={(event) => {
          setKind(KINDS.find((one) => one === event.target.value) ?? 'lot');
          setMistakes({});
        }}
        options={KINDS.map((value) => ({ value, label: t(`kind-${value}`) }))}
      />
      {kind === 'pair' ? (
        <>
          <SelectField id="first" name="first" label={t('which-first')} options={options(subjects.material)} {...errorOf(mistakes.which)} />
          <SelectField id="second" name="second" label={t('which-second')} options={options(subjects.material)} />
        </>
      ) : (
        <SelectField key={kind} id="which" name="which" label={t('which')} options={options(subjects[kind])} {...errorOf(mistakes.which)} />
      )}
      <TextAreaField
        id="reason"
        name="reason"
        label={t('reason')}
        hint={t('reason-hint')}
        rows={3}
        maxLength={300}
        {...errorOf(mistakes.reason)}
      />
      <div className={styles.actions}>
        <Button kind="primary" type="submit" notReady={isBusy}>
          {t('place')}
        </Button>
      </div>
    </form>
  );
}

const errorOf = (error: string | undefined): { error?: string } => (error === undefined ? {} : { error });
