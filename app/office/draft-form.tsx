'use client';
// What every edit of the draft shares: checking it in the form, sending it once, saying what came of it, and never losing what was typed.
import type { FormEvent, ReactNode } from 'react';
import { useRef, useState } from 'react';
import { changeDraft } from '#app/_client/office.ts';
import { Button, ButtonLink } from '#app/_ui/controls/button.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import type { ChangeDraftInput } from '#lib/contracts/draft.ts';
import type { Asked, Mistakes } from './form-fields.ts';
import styles from './office.module.css';
import { officeText } from './office-text.ts';

export function DraftForm(props: {
  readonly title: string;
  readonly revisionNo: number;
  readonly backTo: string;
  readonly saveWord: string;
  readonly ask: (form: FormData) => Asked;
  /** The fields; each shows its own mistake. */
  readonly children: (mistakes: Mistakes) => ReactNode;
}): ReactNode {
  const { title, revisionNo, backTo, saveWord, ask, children } = props;
  const { t } = officeText();
  const [mistakes, setMistakes] = useState<Mistakes>({});
  const [problem, setProblem] = useState<string | null>(null);
  const [isSaving, setSaving] = useState(false);
  // A second press may come before the button is drawn anew.
  const isSent = useRef(false);

  const send = async (change: ChangeDraftInput['change']): Promise<string | null> => {
    const reply = await changeDraft({ parentRevisionNo: revisionNo, change });
    if (reply.kind === 'unreachable') return t('unreachable');
    if (reply.kind === 'problem') return t('problem', { title: reply.problem.title, detail: reply.problem.detail });
    if (!reply.body.ok) return t(`refusal-${reply.body.refusal.kind}`);
    window.location.assign(`${backTo}?saved=${reply.body.revisionNo}`);
    return null;
  };

  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    if (isSent.current) return;
    const asked = ask(new FormData(event.currentTarget));
    if ('mistakes' in asked) {
      setMistakes(asked.mistakes);
      setProblem(t('mend-fields', { count: Object.keys(asked.mistakes).length }));
      return document.getElementById(Object.keys(asked.mistakes)[0] ?? '')?.focus();
    }
    isSent.current = true;
    setMistakes({});
    setProblem(null);
    setSaving(true);
    const said = await send(asked.change);
    if (said === null) return;
    isSent.current = false;
    setSaving(false);
    setProblem(said);
  };

  return (
    <form className={styles.form} onSubmit={(event) => void submit(event)} noValidate>
      <h2 className="type-heading">{title}</h2>
      <div role="alert">{problem !== null && <Notice tone="stop" title={problem} />}</div>
      {children(mistakes)}
      <div className={styles.actions}>
        <Button kind="primary" type="submit" notReady={isSaving}>
          {isSaving ? t('saving') : saveWord}
        </Button>
        <ButtonLink href={backTo} kind="quiet">
          {t('cancel')}
        </ButtonLink>
      </div>
    </form>
  );
}
