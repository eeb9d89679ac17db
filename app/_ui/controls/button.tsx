// Buttons of all three faces: height, padding and type come from the face. A button that cannot act yet says why and keeps focus.
import type { AnchorHTMLAttributes, ButtonHTMLAttributes, ReactNode } from 'react';
import { classNames } from '../class-names.ts';
import type { IconName } from '../marks/icon.tsx';
import { Icon } from '../marks/icon.tsx';
import styles from './button.module.css';

export type ButtonKind = 'primary' | 'plain' | 'quiet' | 'destructive' | 'destructive-now';

interface Looks {
  readonly kind?: ButtonKind;
  readonly icon?: IconName;
  readonly iconEnd?: IconName;
  readonly wide?: boolean;
  /** Text at the start and the end icon at the far edge, for rows of actions. */
  readonly spread?: boolean;
  /** small: second-rank actions; large: the one way in, with its word in the heading face. */
  readonly size?: 'small' | 'usual' | 'large';
  readonly children: ReactNode;
}

export type ButtonProps = Looks &
  Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'style' | 'disabled' | 'children'> & {
    /** Dashed, still focusable; the text must say what is missing. It never submits a form. */
    readonly notReady?: boolean;
    /** A mark in place of an icon, such as a weighing state. */
    readonly mark?: ReactNode;
  };

export type ButtonLinkProps = Looks & Omit<AnchorHTMLAttributes<HTMLAnchorElement>, 'style' | 'children'> & { readonly href: string };

export function Button(props: ButtonProps): ReactNode {
  const { kind = 'plain', icon, iconEnd, wide, spread, size, notReady, mark, children, className, type = 'button', ...rest } = props;
  return (
    <button
      {...rest}
      type={notReady ? 'button' : type}
      aria-disabled={notReady ? 'true' : rest['aria-disabled']}
      className={classNames(look({ kind, wide, spread, size }), notReady && styles.notReady, className)}
    >
      <Face icon={icon} iconEnd={iconEnd} mark={mark}>
        {children}
      </Face>
    </button>
  );
}

/** Looks like a button, goes to a page. */
export function ButtonLink(props: ButtonLinkProps): ReactNode {
  const { kind = 'plain', icon, iconEnd, wide, spread, size, children, className, ...rest } = props;
  return (
    <a {...rest} className={classNames(look({ kind, wide, spread, size }), className)}>
      <Face icon={icon} iconEnd={iconEnd}>
        {children}
      </Face>
    </a>
  );
}

const look = (looks: Pick<Looks, 'wide' | 'spread' | 'size'> & { readonly kind: ButtonKind }): string =>
  classNames(styles.button, styles[looks.kind], looks.wide && styles.wide, looks.spread && styles.spread, looks.size && styles[looks.size]);

function Face(props: {
  readonly icon?: IconName | undefined;
  readonly iconEnd?: IconName | undefined;
  readonly mark?: ReactNode;
  readonly children: ReactNode;
}): ReactNode {
  return (
    <>
      {props.mark}
      {props.icon && <Icon name={props.icon} />}
      <span className={styles.word}>{props.children}</span>
      {props.iconEnd && <Icon name={props.iconEnd} />}
    </>
  );
}
