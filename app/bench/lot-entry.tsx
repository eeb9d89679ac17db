'use client';
// Before anything is poured: the code of the lot in hand, scanned or typed, checked by the shop. A wrong one stands beside the right one.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { lookAtLot } from '#app/_client/bench-looks.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import { LotChip } from '#app/_ui/weighing/lot-chip.tsx';
import type { BenchRefusalBody } from '#lib/contracts/bench-refusal.ts';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import { refusalWords } from './refusal-words.ts';
import { problemWords } from './reply-words.tsx';

type LotRefusal = Extract<BenchRefusalBody, { kind: 'lot' }>;

export interface LotEntryProps {
  readonly orderId: string;
  /** Null where any released lot of the stock will do. */
  readonly expected: string | null;
  readonly cautions: readonly string[];
  readonly onRight: (lotCode: string) => void;
}

export function LotEntry({ orderId, expected, cautions, onRight }: LotEntryProps): ReactNode {
  const { t } = benchText();
  const [mistake, setMistake] = useState<string | null>(null);
  const [wrong, setWrong] = useState<LotRefusal | null>(null);
  const asked = expected === null ? t('lot-note-any') : t('lot-note', { code: expected });
  const submit = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const lotCode = String(new FormData(event.currentTarget).get('lot')).trim();
    const found = await checkedLot(orderId, lotCode);
    setMistake(lotCode === '' ? t('lot-empty') : found.mistake);
    setWrong(found.wrong);
    if (lotCode !== '' && found.mistake === null) onRight(lotCode.toUpperCase());
  };
  return (
    <form className={styles.lot} onSubmit={(event) => void submit(event)} noValidate>
      <TextField
        id="lot"
        name="lot"
        label={t('lot-title')}
        hint={asked}
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
      {wrong && (
        <div className={styles.beside}>
          <LotChip tone="plain" before={t('lot-asked')} code={wrong.expectedCode ?? t('lot-any-short')} />
          <LotChip tone="stop" before={t('lot-shown')} code={wrong.shownCode} />
        </div>
      )}
      {!wrong && cautions.length > 0 && <p className={styles.beside}>{cautions.join(' ')}</p>}
    </form>
  );
}

interface Checked {
  readonly mistake: string | null;
  readonly wrong: LotRefusal | null;
}

async function checkedLot(orderId: string, lotCode: string): Promise<Checked> {
  const { t } = benchText();
  if (lotCode === '') return { mistake: null, wrong: null };
  const reply = await lookAtLot(orderId, lotCode);
  if (reply.kind === 'unreachable') return { mistake: t('unreachable'), wrong: null };
  if (reply.kind === 'problem') return { mistake: problemWords(reply.problem), wrong: null };
  if (reply.body.ok) return { mistake: null, wrong: null };
  const { refusal } = reply.body;
  return { mistake: refusalWords(refusal), wrong: refusal.kind === 'lot' ? refusal : null };
}
