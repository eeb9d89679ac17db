'use client';
import type { ReactNode } from 'react';
import { TextField } from '#app/_ui/controls/field.tsx';
import type { Level } from '#lib/rulebook/offer.ts';
import { DraftForm } from '../draft-form.tsx';
import type { Asked } from '../form-fields.ts';
import { field, typed } from '../form-fields.ts';
import { minorFromText, textFromMinor } from '../money-text.ts';
import styles from '../office.module.css';
import { officeText } from '../office-text.ts';

export function LevelForm(props: {
  readonly title: string;
  readonly revisionNo: number;
  readonly activeId: string;
  readonly level: Level;
  readonly currency: string;
}): ReactNode {
  const { title, revisionNo, activeId, level, currency } = props;
  const { t } = officeText();

  const ask = (form: FormData): Asked => {
    const priceMinor = minorFromText(typed(form, 'price'));
    if (priceMinor === null) return { mistakes: { price: t('price-mistake') } };
    return { change: { kind: 'set-level', activeId, levelPpm: level.levelPpm, permitted: form.get('permitted') !== null, priceMinor } };
  };

  return (
    <DraftForm title={title} revisionNo={revisionNo} backTo="/office/offer" saveWord={t('save')} ask={ask}>
      {(mistakes) => (
        <>
          <label className={styles.look}>
            <input type="checkbox" name="permitted" defaultChecked={level.permitted} />
            {t('level-on-sale')}
          </label>
          <TextField
            {...field('price', mistakes)}
            label={t('level-price', { currency })}
            hint={t('level-price-hint')}
            defaultValue={textFromMinor(level.priceMinor)}
            inputMode="decimal"
            width="short"
            align="end"
          />
        </>
      )}
    </DraftForm>
  );
}
