'use client';
import type { ReactNode } from 'react';
import { useState } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { kioskText } from './kiosk-text.ts';
import styles from './kiosk.module.css';

const SIZES = ['usual', '150', '200'] as const;

/** Text size and a fresh start. The size is the only thing that a visit leaves on the page, and it goes with the page. */
export function MoreDialog({ open, onClose, onWipe }: { readonly open: boolean; readonly onClose: () => void; readonly onWipe: () => void }): ReactNode {
  const { t } = kioskText();
  const [size, setSize] = useState<(typeof SIZES)[number]>('usual');
  const [isAsking, setAsking] = useState(false);
  const resize = (to: (typeof SIZES)[number]): void => {
    setSize(to);
    document.documentElement.dataset.text = to;
  };
  const close = (): void => {
    setAsking(false);
    onClose();
  };
  return (
    <Dialog
      open={open}
      title={t(isAsking ? 'start-again-title' : 'more-title')}
      onClose={close}
      actions={
        isAsking ? (
          <>
            <Button kind="primary" wide onClick={onWipe}>
              {t('wipe-and-start')}
            </Button>
            <Button wide onClick={close}>
              {t('go-on')}
            </Button>
          </>
        ) : (
          <>
            <Button wide onClick={() => setAsking(true)}>
              {t('start-again')}
            </Button>
            <Button wide kind="primary" onClick={close}>
              {t('close')}
            </Button>
          </>
        )
      }
    >
      {!isAsking && (
        <fieldset className={styles.sizes}>
          <legend className="type-label">{t('text-size')}</legend>
          {SIZES.map((each) => (
            <Button key={each} aria-pressed={size === each} onClick={() => resize(each)}>
              {t(`text-${each}`)}
            </Button>
          ))}
        </fieldset>
      )}
    </Dialog>
  );
}
