'use client';
// The second person's own page: blank but for what is weighed. They sign in, read lot and scale themselves, and the shop compares.
import type { FormEvent, ReactNode } from 'react';
import { useState } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { TextField } from '#app/_ui/controls/field.tsx';
import { GramsField } from '#app/_ui/controls/grams-field.tsx';
import { parseGrams } from '#app/_ui/text/parse-grams.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { massUg } from '#lib/units/mass.ts';
import styles from './bench.module.css';
import { benchText } from './bench-text.ts';
import type { ScaleReach } from './typed-weight.tsx';

export interface Signed {
  readonly code: string;
  readonly password: string;
}

export interface SignedReading extends Signed {
  readonly lotCode: string;
  readonly massUg: MassUg;
}

/** For a weighing: name, password, lot, weight. */
export function SecondReading(props: {
  readonly name: string;
  readonly scale: ScaleReach;
  readonly isBusy: boolean;
  readonly onSign: (signed: SignedReading) => void;
}): ReactNode {
  const { name, scale, isBusy, onSign } = props;
  const { t, decimalSign } = benchText();
  const [text, setText] = useState('');
  const [isShown, setShown] = useState(false);
  const reach = { stepUg: massUg(scale.stepUg), capacityUg: massUg(scale.capacityUg) };
  const submit = (event: FormEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const typed = parseGrams(text, { decimalSign, ...reach });
    setShown(!typed.ok);
    if (typed.ok && !isBusy) onSign({ ...signedOf(form), lotCode: String(form.get('second-lot')), massUg: typed.value });
  };
  return (
    <form className={styles.second} onSubmit={submit} noValidate autoComplete="off">
      <h1 className="type-title">{t('second-title')}</h1>
      <p>
        <span className="type-strong">{name}</span> {t('second-note')}
      </p>
      <SignFields />
      <div className={styles.two}>
        <TextField
          id="second-lot"
          name="second-lot"
          label={t('second-lot')}
          icon="scan"
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          dir="ltr"
        />
        <GramsField
          id="second-weight"
          label={t('second-weight')}
          lang="en"
          {...reach}
          text={text}
          onText={(typed) => setText(typed)}
          showMistake={isShown}
        />
      </div>
      <Button kind="primary" type="submit" wide>
        {t('second-sign')}
      </Button>
    </form>
  );
}

/** For a decision: name and password. */
export function SecondSignature(props: {
  readonly isBusy: boolean;
  /** What is signed; else the figures of a mend. */
  readonly note?: string;
  readonly onSign: (signed: Signed) => void;
}): ReactNode {
  const { t } = benchText();
  const submit = (event: FormEvent<HTMLFormElement>): void => {
    event.preventDefault();
    if (!props.isBusy) props.onSign(signedOf(new FormData(event.currentTarget)));
  };
  return (
    <form className={styles.second} onSubmit={submit} noValidate autoComplete="off">
      <p>{props.note ?? t('second-grow-note')}</p>
      <SignFields />
      <Button kind="primary" type="submit" wide>
        {t('second-sign')}
      </Button>
    </form>
  );
}

function SignFields(): ReactNode {
  const { t } = benchText();
  return (
    <div className={styles.two}>
      <TextField id="second-code" name="second-code" label={t('second-name')} autoComplete="off" autoCapitalize="none" spellCheck={false} />
      <TextField id="second-password" name="second-password" type="password" label={t('second-password')} autoComplete="off" />
    </div>
  );
}

const signedOf = (form: FormData): Signed => ({ code: String(form.get('second-code')), password: String(form.get('second-password')) });
