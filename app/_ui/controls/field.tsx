// Fields of a form: label above, what is asked for under it, and the mistake with what to do below, tied together for readers.
import type { InputHTMLAttributes, ReactNode, SelectHTMLAttributes, TextareaHTMLAttributes } from 'react';
import { classNames } from '../class-names.ts';
import { Icon } from '../marks/icon.tsx';
import { JudgementMark } from '../marks/judgement-mark.tsx';
import styles from './field.module.css';

export interface FieldFrame {
  readonly id: string;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  /** What to do, such as "Give 5 or less". */
  readonly error?: ReactNode;
}

/** Label, hint, control, mistake. Give the control `describedBy(field)`. */
export function Field({ id, label, hint, error, children }: FieldFrame & { readonly children: ReactNode }): ReactNode {
  return (
    <div className={styles.field}>
      <label htmlFor={id} className="type-label">
        {label}
      </label>
      {hint && (
        <p id={`${id}-hint`} className="type-small type-second">
          {hint}
        </p>
      )}
      {children}
      {error && (
        <p id={`${id}-error`} className={classNames(styles.error, 'type-small')}>
          <JudgementMark kind="never" size="0.9em" />
          <span>{error}</span>
        </p>
      )}
    </div>
  );
}

/** Attributes that tie a control to its hint and its mistake. */
export function describedBy({ id, hint, error }: FieldFrame): {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': 'true' | undefined;
} {
  const parts = [hint ? `${id}-hint` : undefined, error ? `${id}-error` : undefined].filter(Boolean);
  return { id, 'aria-describedby': parts.length > 0 ? parts.join(' ') : undefined, 'aria-invalid': error ? 'true' : undefined };
}

type Native<Attributes> = Omit<Attributes, 'style' | 'id' | 'children'>;

export type TextFieldProps = FieldFrame &
  Native<InputHTMLAttributes<HTMLInputElement>> & {
    /** A unit inside the frame, after the text. */
    readonly unit?: string;
    readonly icon?: 'search' | 'scan' | 'page';
    readonly align?: 'start' | 'end';
    readonly width?: 'full' | 'short';
  };

export function TextField(props: TextFieldProps): ReactNode {
  const { id, label, hint, error, unit, icon, align = 'start', width = 'full', className, type = 'text', ...rest } = props;
  const frame = { id, label, hint, error };
  return (
    <Field {...frame}>
      <span className={classNames(styles.frame, error !== undefined && styles.mistaken, width === 'short' && styles.short)}>
        {icon && <Icon name={icon} />}
        <input
          {...rest}
          {...describedBy(frame)}
          type={type}
          className={classNames(styles.input, align === 'end' && styles.end, className)}
        />
        {unit && <span className={styles.unit}>{unit}</span>}
      </span>
    </Field>
  );
}

export function TextAreaField(props: FieldFrame & Native<TextareaHTMLAttributes<HTMLTextAreaElement>>): ReactNode {
  const { id, label, hint, error, className, rows = 3, ...rest } = props;
  const frame = { id, label, hint, error };
  return (
    <Field {...frame}>
      <span className={classNames(styles.frame, error !== undefined && styles.mistaken)}>
        <textarea {...rest} {...describedBy(frame)} rows={rows} className={classNames(styles.input, styles.area, className)} />
      </span>
    </Field>
  );
}

export interface SelectOption {
  readonly value: string;
  readonly label: string;
}

export function SelectField(
  props: FieldFrame & Native<SelectHTMLAttributes<HTMLSelectElement>> & { readonly options: readonly SelectOption[] },
): ReactNode {
  const { id, label, hint, error, className, options, ...rest } = props;
  const frame = { id, label, hint, error };
  return (
    <Field {...frame}>
      <span className={classNames(styles.frame, error !== undefined && styles.mistaken)}>
        <select {...rest} {...describedBy(frame)} className={classNames(styles.input, styles.select, className)}>
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
        <Icon name="chevron-down" size="1.1em" />
      </span>
    </Field>
  );
}
