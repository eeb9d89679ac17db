'use client';
// A weight typed twice. The second time the first entry is nowhere on the page, so that it is read from the scale and not copied.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { Dialog } from '#app/_ui/controls/dialog.tsx';
import { GramsField } from '#app/_ui/controls/grams-field.tsx';
import { Keypad } from '#app/_ui/controls/keypad.tsx';
import { Notice } from '#app/_ui/controls/notice.tsx';
import { parseGrams } from '#app/_ui/text/parse-grams.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { massUg } from '#lib/units/mass.ts';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';

export interface ScaleReach {
  readonly stepUg: number;
  readonly capacityUg: number;
}

export interface TypedWeightProps {
  readonly label: string;
  readonly hint?: string;
  readonly scale: ScaleReach;
  /** Whether a first entry must be typed once more; one that is only a step on the way need not be. */
  readonly needsSecond?: (first: MassUg) => boolean;
  /** `again` is null where no second entry was asked for. */
  readonly onDone: (first: MassUg, again: MassUg | null) => void;
  readonly onClose: () => void;
}

export function TypedWeight({ label, hint, scale, needsSecond = () => true, onDone, onClose }: TypedWeightProps): ReactNode {
  const { t, decimalSign } = benchText();
  const [text, setText] = useState('');
  const [first, setFirst] = useState<MassUg | null>(null);
  const [isShown, setShown] = useState(false);
  const [hasDiffered, setDiffered] = useState(false);
  const reach = { stepUg: massUg(scale.stepUg), capacityUg: massUg(scale.capacityUg) };

  const submit = (event: FormEvent): void => {
    event.preventDefault();
    const typed = parseGrams(text, { decimalSign, ...reach });
    setShown(!typed.ok);
    if (typed.ok) take(typed.value);
  };
  const take = (value: MassUg): void => {
    setDiffered(first !== null && first !== value);
    if (first === value) onDone(first, value);
    else if (first === null && !needsSecond(value)) onDone(value, null);
    else {
      setFirst(first === null ? value : null);
      setText('');
    }
  };

  return (
    <Dialog open size="wide" title={t(first === null ? 'type-first-title' : 'type-second-title')} onClose={onClose}>
      <form className={styles.typed} onSubmit={submit}>
        <div className={styles.stack}>
          <GramsField
            key={first === null ? 'first' : 'second'}
            id="typed-weight"
            label={label}
            hint={first === null ? hint : t('type-second-note')}
            lang="en"
            {...reach}
            text={text}
            onText={(typed) => setText(typed)}
            showMistake={isShown}
            autoFocus
          />
          <div role="alert">{hasDiffered && <Notice tone="care" title={t('type-differ')} />}</div>
          <Button kind="primary" type="submit" wide>
            {t(first === null ? 'type-next' : 'type-compare')}
          </Button>
          <Button wide onClick={onClose}>
            {t('go-back')}
          </Button>
        </div>
        <Keypad
          label={t('type-keypad')}
          decimalSign={decimalSign}
          text={text}
          onText={setText}
          words={{ decimalSign: t('type-point'), deleteLast: t('type-delete') }}
        />
      </form>
    </Dialog>
  );
}
