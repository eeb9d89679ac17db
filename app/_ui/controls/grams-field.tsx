// A field for a typed mass. The text stays as typed; the parsed mass, or what to do, goes to the caller with every key.
'use client';
import type { ReactNode } from 'react';
import type { Result } from '#lib/base/result.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { decimalSign } from '../text/format-number.ts';
import { gramsRefusalText } from '../text/grams-refusal-text.ts';
import type { GramsRefusal } from '../text/parse-grams.ts';
import { parseGrams } from '../text/parse-grams.ts';
import { TextField } from './field.tsx';

export interface GramsFieldProps {
  readonly id: string;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly lang: Lang;
  readonly stepUg: MassUg;
  readonly capacityUg: MassUg;
  readonly text: string;
  readonly onText: (text: string, result: Result<MassUg, GramsRefusal>) => void;
  /** Show the mistake only after the person has left the field or pressed the button. */
  readonly showMistake: boolean;
  readonly onBlur?: () => void;
  readonly autoFocus?: boolean;
}

export function GramsField(props: GramsFieldProps): ReactNode {
  const { id, label, hint, lang, stepUg, capacityUg, text, onText, showMistake, onBlur, autoFocus } = props;
  const form = { decimalSign: decimalSign(lang), stepUg, capacityUg };
  const result = parseGrams(text, form);
  return (
    <TextField
      id={id}
      label={label}
      hint={hint}
      error={showMistake && !result.ok ? gramsRefusalText(result.refusal, lang, { massUg: stepUg, stepUg }) : undefined}
      value={text}
      onChange={(event) => onText(event.target.value, parseGrams(event.target.value, form))}
      onBlur={onBlur}
      autoFocus={autoFocus}
      inputMode="decimal"
      autoComplete="off"
      dir="ltr"
      unit="g"
      align="end"
    />
  );
}
