'use client';
// Everything that makes a visit easier, and a fresh start. What is set here goes with the document.
import type { ReactNode } from 'react';
import { useEffect, useState } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import type { Lang } from '#lib/rulebook/language.ts';
import styles from './kiosk.module.css';
import type { TextSize } from './kiosk-props.ts';
import type { KioskText } from './kiosk-text.ts';
import { LanguageChoice } from './language-choice.tsx';

const SIZES: readonly TextSize[] = ['100', '150', '200'];

export interface MoreDialogProps {
  readonly open: boolean;
  readonly canStartAgain: boolean;
  readonly text: KioskText;
  readonly languages: readonly Lang[];
  readonly onLanguage: (lang: Lang) => void;
  readonly textSize: TextSize;
  readonly onTextSize: (size: TextSize) => void;
  readonly hasMoreTime: boolean;
  readonly onMoreTime: () => void;
  readonly onClose: () => void;
  readonly onWipe: () => void;
}

export function MoreDialog(props: MoreDialogProps): ReactNode {
  const { open, canStartAgain, text, textSize, onTextSize, hasMoreTime, onMoreTime, onClose, onWipe } = props;
  const { t } = text;
  const [isAsking, setAsking] = useState(false);
  useEffect(() => {
    if (!open) setAsking(false);
  }, [open]);
  useEffect(() => {
    if (textSize === '100') delete document.documentElement.dataset.text;
    else document.documentElement.dataset.text = textSize;
  }, [textSize]);
  // A dialog that gives way to the other one closes too, and must not take the other with it.
  const closeMore = (): void => (isAsking ? undefined : onClose());
  return (
    <>
      <Dialog
        open={open && !isAsking}
        title={t('more-title')}
        onClose={closeMore}
        actions={
          <>
            <Button kind="primary" onClick={onClose}>
              {t('close')}
            </Button>
            {canStartAgain && <Button onClick={() => setAsking(true)}>{t('start-again')}</Button>}
          </>
        }
      >
        <LanguageChoice languages={props.languages} text={text} onLanguage={props.onLanguage} />
        <p className="type-label">{t('text-size')}</p>
        <div className={styles.sizes}>
          {SIZES.map((size) => (
            <Button key={size} aria-pressed={textSize === size} onClick={() => onTextSize(size)}>
              {t(`text-${size}`)}
            </Button>
          ))}
        </div>
        <div className={styles.settings}>
          <Button aria-pressed={hasMoreTime} onClick={onMoreTime}>
            {t(hasMoreTime ? 'more-time-on' : 'more-time')}
          </Button>
          <RootSwitch name="reach" value="low" label={t('move-lower')} />
          <RootSwitch name="motion" value="less" label={t('less-movement')} />
        </div>
      </Dialog>
      <Dialog
        open={open && isAsking}
        title={t('start-again-title')}
        onClose={onClose}
        actions={
          <>
            <Button kind="primary" onClick={onWipe}>
              {t('wipe-and-start')}
            </Button>
            <Button onClick={onClose}>{t('go-on')}</Button>
          </>
        }
      >
        <p>{t('start-again-text')}</p>
      </Dialog>
    </>
  );
}

/** Sets or clears a mark on the root element, which the look knows. */
function RootSwitch({
  name,
  value,
  label,
}: {
  readonly name: 'reach' | 'motion';
  readonly value: string;
  readonly label: string;
}): ReactNode {
  const [isOn, setOn] = useState(false);
  useEffect(() => {
    const { dataset } = document.documentElement;
    if (isOn) dataset[name] = value;
    else delete dataset[name];
  }, [isOn, name, value]);
  return (
    <Button aria-pressed={isOn} onClick={() => setOn(!isOn)}>
      {label}
    </Button>
  );
}
