'use client';
// What every edit of the draft shares: sending it, saying what came of it, and never losing what was typed.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { changeDraft } from '#app/_client/office.ts';
import { Button, ButtonLink } from '#app/_ui/controls/button.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import type { ChangeDraftInput } from '#lib/contracts/draft.ts';
import styles from './office.module.css';
import { officeText } from './office-text.ts';

type Outcome = { readonly tone: 'ok' | 'stop'; readonly text: string } | null;

export function DraftForm(props: {
  readonly title: string;
  readonly revisionNo: number;
  readonly backTo: string;
  readonly saveWord: string;
  /** What the form asks for; a text is a mistake to say instead of sending. */
  readonly change: (form: FormData) => ChangeDraftInput['change'] | string;
  readonly children: ReactNode;
}): ReactNode {
  const { title, revisionNo, backTo, saveWord, change, children } = props;
  const { t } = officeText();
  const [outcome, setOutcome] = useState<Outcome>(null);

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const asked = change(new FormData(event.currentTarget));
    if (typeof asked === 'string') return setOutcome({ tone: 'stop', text: asked });
    const reply = await changeDraft({ parentRevisionNo: revisionNo, change: asked });
    if (reply.kind === 'unreachable') return setOutcome({ tone: 'stop', text: t('unreachable') });
    if (reply.kind === 'problem') {
      const { title: what, detail, fields } = reply.problem;
      const [field] = fields;
      return setOutcome({
        tone: 'stop',
        text: field ? t('field-problem', { field: field.path, message: field.message }) : t('problem', { title: what, detail }),
      });
    }
    if (!reply.body.ok) return setOutcome({ tone: 'stop', text: t(`refusal-${reply.body.refusal.kind}`) });
    setOutcome({ tone: 'ok', text: t('saved', { no: reply.body.revisionNo }) });
    window.location.assign(backTo);
  };

  return (
    <form className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
      <h2 className="type-heading">{title}</h2>
      <div role="alert">{outcome && <Notice tone={outcome.tone} title={outcome.text} />}</div>
      {children}
      <div className={styles.actions}>
        <Button kind="primary" type="submit">
          {saveWord}
        </Button>
        <ButtonLink href={backTo} kind="quiet">
          {t('cancel')}
        </ButtonLink>
      </div>
    </form>
  );
}
