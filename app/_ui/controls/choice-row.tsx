// One answer: a native radio or checkbox inside its label, so that the whole row is the target. Nothing is ever ticked by itself.
import type { InputHTMLAttributes, ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import styles from './choice-row.module.css';

export type ChoiceRowProps = Omit<InputHTMLAttributes<HTMLInputElement>, 'style' | 'type' | 'children'> & {
  readonly type: 'radio' | 'checkbox';
  readonly label: ReactNode;
  /** Second line: what this answer does. */
  readonly note?: ReactNode;
  /** A mark or a shortcut at the ends of the row. */
  readonly mark?: ReactNode;
  readonly end?: ReactNode;
  /** Ink border where the row stands alone, as for "I have read all of these". */
  readonly alone?: boolean;
};

export function ChoiceRow({ type, label, note, mark, end, alone, className, ...rest }: ChoiceRowProps): ReactNode {
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the native control is inside ChoiceBox
    <label className={classNames(styles.row, alone && styles.alone, className)}>
      <ChoiceBox type={type} {...rest} />
      {mark}
      <span className={styles.text}>
        <span className={classNames(styles.label, 'type-choice')}>{label}</span>
        {note && <span className="type-small type-second">{note}</span>}
      </span>
      {end}
    </label>
  );
}

/** The box alone, for a card or a table head that is its own label. */
export function ChoiceBox({
  type,
  className,
  ...rest
}: Omit<InputHTMLAttributes<HTMLInputElement>, 'style' | 'type'> & { readonly type: 'radio' | 'checkbox' }): ReactNode {
  return (
    <span className={classNames(styles.box, className)}>
      <input {...rest} type={type} className={classNames(styles.input, type === 'radio' && styles.round)} />
      <svg viewBox="0 0 24 24" className={styles.sign} aria-hidden="true">
        {type === 'radio' ? (
          <circle cx={12} cy={12} r={7} fill="currentColor" />
        ) : (
          <path d="M5 12.4l4.7 4.7L19.2 7.5" fill="none" stroke="currentColor" strokeWidth={2.8} />
        )}
      </svg>
    </span>
  );
}

/** Rows one above the other; on a wide kiosk two beside each other, unless an answer needs the room. */
export const ChoiceRows = (props: { readonly columns?: 'one' | 'auto'; readonly children: ReactNode }): ReactNode => (
  <div className={classNames(styles.rows, (props.columns ?? 'auto') === 'auto' && styles.auto)}>{props.children}</div>
);

/** "or" between two seams, before answers that rule out the rest. */
export const ChoiceOr = ({ word }: { readonly word: string }): ReactNode => (
  <p className={classNames(styles.or, 'type-small', 'type-second')}>
    <span>{word}</span>
  </p>
);
