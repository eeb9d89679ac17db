'use client';
import type { ReactNode } from 'react';
import { TextAreaField } from '#app/_ui/controls/field.tsx';
import { DraftForm } from '../draft-form.tsx';
import type { Asked } from '../form-fields.ts';
import { field, typed } from '../form-fields.ts';
import { officeText } from '../office-text.ts';

export function CautionForm(props: {
  readonly title: string;
  readonly revisionNo: number;
  readonly cautionId: string;
  readonly text: string;
  /** Null: it has no place on the label. */
  readonly labelText: string | null;
}): ReactNode {
  const { title, revisionNo, cautionId, text, labelText } = props;
  const { t } = officeText();

  const ask = (form: FormData): Asked => {
    const words = typed(form, 'text');
    const label = labelText === null ? null : typed(form, 'label');
    if (words !== '' && label !== '') return { change: { kind: 'set-caution-text', cautionId, lang: 'en', text: words, labelText: label } };
    return {
      mistakes: { ...(words === '' && { text: t('caution-text-blank') }), ...(label === '' && { label: t('caution-label-blank') }) },
    };
  };

  return (
    <DraftForm title={title} revisionNo={revisionNo} backTo="/office/cautions" saveWord={t('save')} ask={ask}>
      {(mistakes) => (
        <>
          <TextAreaField {...field('text', mistakes)} label={t('caution-text')} defaultValue={text} rows={6} />
          {labelText !== null && (
            <TextAreaField {...field('label', mistakes)} label={t('caution-label')} defaultValue={labelText} rows={3} />
          )}
        </>
      )}
    </DraftForm>
  );
}
