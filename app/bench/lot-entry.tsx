'use client';
// Before anything is poured: the code of the lot in hand, scanned or typed, checked by the shop.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { lookAtLot } from '#app/_client/bench-looks.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import { refusalWords } from './refusal-words.ts';

export function LotEntry(props: {
  readonly orderId: string;
  readonly expected: string | null;
  readonly onRight: (lotCode: string) => void;
}): ReactNode {
  const { orderId, expected, onRight } = props;
  const { t } = benchText();
  const [mistake, setMistake] = useState<string | null>(null);
  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const lotCode = String(new FormData(event.currentTarget).get('lot')).trim();
    if (lotCode === '') return setMistake(expected === null ? t('lot-note-any') : t('lot-note', { code: expected }));
    const reply = await lookAtLot(orderId, lotCode);
    if (reply.kind === 'unreachable') return setMistake(t('unreachable'));
    if (reply.kind === 'problem') return setMistake(t('problem', { title: reply.problem.title, detail: reply.problem.detail }));
    if (!reply.body.ok) return setMistake(refusalWords(reply.body.refusal));
    onRight(lotCode.toUpperCase());
  };
  return (
    <form className={styles.lot} onSubmit={(event) => void submit(event)} noValidate>
      <TextField
        id="lot"
        name="lot"
        label={t('lot-title')}
        hint={expected === null ? t('lot-note-any') : t('lot-note', { code: expected })}
        error={mistake ?? undefined}
        icon="scan"
        autoFocus
        autoComplete="off"
        autoCapitalize="characters"
        spellCheck={false}
        dir="ltr"
      />
      <Button kind="primary" type="submit">
        {t('lot-check')}
      </Button>
    </form>
  );
}
