// Digits on the screen for gloved hands, with the decimal sign that the language and the scale use.
'use client';
import type { ReactNode } from 'react';
import { Icon } from '../marks/icon.tsx';
import styles from './keypad.module.css';

export interface KeypadProps {
  readonly label: string;
  readonly decimalSign: '.' | ',';
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly words: { readonly decimalSign: string; readonly deleteLast: string };
}

const digits = ['1', '2', '3', '4', '5', '6', '7', '8', '9'] as const;

export function Keypad({ label, decimalSign, text, onText, words }: KeypadProps): ReactNode {
  return (
    <fieldset className={styles.keypad} dir="ltr">
      <legend className="for-readers">{label}</legend>
      {digits.map((digit) => (
        <Key key={digit} onPress={() => onText(text + digit)}>
          {digit}
        </Key>
      ))}
      <Key name={words.decimalSign} onPress={() => onText(text + decimalSign)}>
        {decimalSign}
      </Key>
      <Key onPress={() => onText(`${text}0`)}>0</Key>
      <Key name={words.deleteLast} onPress={() => onText(text.slice(0, -1))}>
        <Icon name="undo" size="1em" />
      </Key>
    </fieldset>
  );
}

const Key = (props: { readonly name?: string; readonly onPress: () => void; readonly children: ReactNode }): ReactNode => (
  <button type="button" className={styles.key} aria-label={props.name} onClick={props.onPress}>
    {props.children}
  </button>
);
