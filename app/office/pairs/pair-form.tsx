'use client';
import type { ReactNode } from 'react';
import type { SelectOption } from '#app/_ui/controls/field.tsx';
import { SelectField, TextAreaField, TextField } from '#app/_ui/controls/field.tsx';
import type { ChangeDraftInput } from '#lib/contracts/draft.ts';
import type { PairJudgement } from '#lib/rulebook/judgement.ts';
import { DraftForm } from '../draft-form.tsx';
import { officeText } from '../office-text.ts';

const VERDICTS = ['never', 'limit', 'caution', 'fine'] as const;

export function PairForm(props: {
  readonly revisionNo: number;
  readonly materials: readonly SelectOption[];
  readonly cautions: readonly SelectOption[];
  readonly first: string;
  readonly second: string;
  readonly judged: PairJudgement | null;
}): ReactNode {
  const { revisionNo, materials, cautions, first, second, judged } = props;
  const { t } = officeText();
  return (
    <DraftForm
      title={t('judge-title')}
      revisionNo={revisionNo}
      backTo="/office/pairs"
      saveWord={t('judge-save')}
      change={(form) => judgementFrom(form, judged) ?? t('percent-mistake')}
    >
      <SelectField id="first" name="first" label={t('judge-first')} options={materials} defaultValue={first} />
      <SelectField id="second" name="second" label={t('judge-second')} options={materials} defaultValue={second} />
      <SelectField
        id="verdict"
        name="verdict"
        label={t('judge-verdict')}
        options={VERDICTS.map((value) => ({ value, label: t(`verdict-${value}`) }))}
        defaultValue={judged?.verdict ?? 'never'}
      />
      <TextField
        id="max-sum"
        name="max-sum"
        label={t('judge-max-sum')}
        hint={t('judge-max-sum-hint')}
        inputMode="decimal"
        width="short"
        align="end"
        defaultValue={judged?.limit?.maxSumPpm === undefined ? '' : String(judged.limit.maxSumPpm / 10_000)}
      />
      <SelectField
        id="caution"
        name="caution"
        label={t('judge-caution')}
        hint={t('judge-caution-hint')}
        options={[{ value: '', label: t('none') }, ...cautions]}
        defaultValue={judged?.cautionId ?? ''}
      />
      <TextAreaField id="reason" name="reason" label={t('judge-reason')} defaultValue={judged?.reason ?? ''} />
      <TextField id="source" name="source" label={t('judge-source')} hint={t('judge-source-hint')} defaultValue={judged?.source ?? ''} />
    </DraftForm>
  );
}

/** Null where the limit is no share. What the form does not show of an old limit is kept. */
function judgementFrom(form: FormData, judged: PairJudgement | null): ChangeDraftInput['change'] | null {
  const text = (name: string): string => String(form.get(name) ?? '').trim();
  const verdict = VERDICTS.find((one) => one === text('verdict')) ?? 'never';
  const maxSumPpm = ppmFromPercent(text('max-sum'));
  if (verdict === 'limit' && maxSumPpm === null && text('max-sum') !== '') return null;
  const limit = { ...judged?.limit, ...(maxSumPpm !== null && { maxSumPpm }) };
  return {
    kind: 'judge-pair',
    firstMaterialId: text('first'),
    secondMaterialId: text('second'),
    verdict,
    ...(verdict === 'limit' && { limit }),
    ...(verdict === 'caution' && text('caution') !== '' && { cautionId: text('caution') }),
    reason: text('reason'),
    source: text('source'),
  };
}

/** "2.5" → 25 000; null where it is no share in whole ppm. */
function ppmFromPercent(text: string): number | null {
  const parts = /^(\d{1,3})(?:[.,](\d{1,4}))?$/.exec(text);
  if (!parts) return null;
  const ppm = Number(parts[1]) * 10_000 + Number((parts[2] ?? '').padEnd(4, '0'));
  return ppm <= 1_000_000 ? ppm : null;
}
