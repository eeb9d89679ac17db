'use client';
// A weighing that is worked in bit by bit.
import type { ReactNode } from 'react';
import { massUg } from '#lib/units/mass.ts';
import { benchText } from './bench-text.ts';
import styles from './portions.module.css';

/** From the start of the step, to be ticked as each is worked in; a help for the eye, not a record. */
export function Portions({ portionsUg }: { readonly portionsUg: readonly number[] }): ReactNode {
  const { t, target } = benchText();
  return (
    <fieldset className={styles.portions}>
      <legend>{t('portions')}</legend>
      {portionsUg.map((mass, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a portion is its place
        <label key={index} className={styles.portion}>
          <input type="checkbox" />
          {target(massUg(mass))}
        </label>
      ))}
    </fieldset>
  );
}
