'use client';
// Setting a jar aside: the decision is about the jar in the hand, so its code is read from it.
import type { FormEvent, ReactNode } from 'react';
import { release } from '#app/_client/bench-acts.ts';
import { Button } from '#app/_ui/controls/button.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import type { Desk } from './use-desk.ts';

export function HoldDialog({ desk, onClose }: { readonly desk: Desk; readonly onClose: () => void }): ReactNode {
  const { t } = benchText();
  const submit = (event: FormEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const jarCode = String(new FormData(event.currentTarget).get('hold-code'));
    onClose();
    void desk.act((requestKey) => release({ requestKey, orderId: desk.view.orderId, jarCode }));
  };
  return (
    <Dialog open title={t('hold-title')} onClose={onClose}>
      <p>{t('hold-note')}</p>
      <form className={styles.stack} onSubmit={submit} noValidate>
        <TextField
          id="hold-code"
          name="hold-code"
          label={t('release-code')}
          icon="scan"
          autoFocus
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          dir="ltr"
        />
        <Button kind="primary" type="submit" wide>
          {t('ph-hold')}
        </Button>
        <Button wide onClick={onClose}>
          {t('go-back')}
        </Button>
      </form>
    </Dialog>
  );
}
