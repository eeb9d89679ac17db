'use client';
import type { ReactNode } from 'react';
import { TextAreaField } from '#app/_ui/controls/field.tsx';
import { DraftForm } from '../draft-form.tsx';
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
  return (
    <DraftForm
      title={title}
      revisionNo={revisionNo}
      backTo="/office/cautions"
      saveWord={t('save')}
      change={(form) => ({
        kind: 'set-caution-text',
        cautionId,
        lang: 'en',
        text: String(form.get('text')).trim(),
        labelText: labelText === null ? null : String(form.get('label')).trim(),
      })}
    >
      <TextAreaField id="text" name="text" label={t('caution-text')} defaultValue={text} rows={6} />
      {labelText !== null && <TextAreaField id="label" name="label" label={t('caution-label')} defaultValue={labelText} rows={3} />}
    </DraftForm>
  );
}
