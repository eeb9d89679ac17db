'use client';
// One judgement on two materials. It opens undecided, and asks for a limit or a caution only where the verdict needs one.
import type { ReactNode } from 'react';
import { useState } from 'react';
import type { SelectOption } from '#app/_ui/controls/field.tsx';
import { SelectField, TextAreaField, TextField } from '#app/_ui/controls/field.tsx';
import type { PairJudgement } from '#lib/rulebook/judgement.ts';
import { DraftForm } from '../draft-form.tsx';
import type { Mistakes } from '../form-fields.ts';
import { field } from '../form-fields.ts';
import { officeText } from '../office-text.ts';
import { judgementAsked, VERDICTS } from './judgement-asked.ts';
import { limitWords } from './limit-words.ts';

export function PairForm(props: {
  readonly revisionNo: number;
  readonly materials: readonly SelectOption[];
  readonly cautions: readonly SelectOption[];
  readonly first: string;
  readonly second: string;
  readonly judged: PairJudgement | null;
}): ReactNode {
  const { revisionNo, materials, cautions, first, second, judged } = props;
  const text = officeText();
  const { t } = text;
  const [verdict, setVerdict] = useState<string>(judged?.verdict ?? '');
  return (
    <DraftForm
      title={t('judge-title')}
      revisionNo={revisionNo}
      backTo="/office/pairs"
      saveWord={t('judge-save')}
      ask={(form) => judgementAsked(form, judged, text)}
    >
      {(mistakes) => (
        <>
          {judged ? (
            <ThisPair materials={materials} judged={judged} />
          ) : (
            <PairFields materials={materials} first={first} second={second} mistakes={mistakes} />
          )}
          <SelectField
            {...field('verdict', mistakes)}
            label={t('judge-verdict')}
            options={[
              { value: '', label: t('judge-choose-verdict') },
              ...VERDICTS.map((value) => ({ value, label: t(`verdict-${value}`) })),
            ]}
            value={verdict}
            onChange={(event) => setVerdict(event.currentTarget.value)}
          />
          {verdict === 'limit' && <LimitField mistakes={mistakes} judged={judged} />}
          {verdict === 'caution' && (
            <SelectField
              {...field('caution', mistakes)}
              label={t('judge-caution')}
              hint={t('judge-caution-hint')}
              options={[{ value: '', label: t('judge-choose-caution') }, ...cautions]}
              defaultValue={judged?.cautionId ?? ''}
            />
          )}
          <TextAreaField {...field('reason', mistakes)} label={t('judge-reason')} defaultValue={judged?.reason ?? ''} />
          <TextField
            {...field('source', mistakes)}
            label={t('judge-source')}
            hint={t('judge-source-hint')}
            defaultValue={judged?.source ?? ''}
          />
        </>
      )}
    </DraftForm>
  );
}

function PairFields(props: {
  readonly materials: readonly SelectOption[];
  readonly first: string;
  readonly second: string;
  readonly mistakes: Mistakes;
}): ReactNode {
  const { materials, first, second, mistakes } = props;
  const { t } = officeText();
  const choices = [{ value: '', label: t('judge-choose-material') }, ...materials];
  return (
    <>
      <SelectField {...field('first', mistakes)} label={t('judge-first')} options={choices} defaultValue={first} />
      <SelectField {...field('second', mistakes)} label={t('judge-second')} options={choices} defaultValue={second} />
    </>
  );
}

/** A judgement that stands is changed for its own pair only: its bounds mean these two, in this order. */
function ThisPair({ materials, judged }: { readonly materials: readonly SelectOption[]; readonly judged: PairJudgement }): ReactNode {
  const { t } = officeText();
  const { firstMaterialId, secondMaterialId } = judged;
  const nameOf = (id: string): string => materials.find((option) => option.value === id)?.label ?? id;
  return (
    <p className="type-strong">
      {t('judge-pair', { first: nameOf(firstMaterialId), second: nameOf(secondMaterialId) })}
      <input type="hidden" name="first" value={firstMaterialId} />
      <input type="hidden" name="second" value={secondMaterialId} />
    </p>
  );
}

/** The sum of both. Other bounds of an imported judgement are shown and kept. */
function LimitField({ mistakes, judged }: { readonly mistakes: Mistakes; readonly judged: PairJudgement | null }): ReactNode {
  const text = officeText();
  const { t } = text;
  const { maxSumPpm, ...others } = judged?.limit ?? {};
  const kept = limitWords(others, text).join(', ');
  return (
    <TextField
      {...field('max-sum', mistakes)}
      label={t('judge-max-sum')}
      hint={kept === '' ? t('judge-max-sum-hint') : t('judge-limit-kept', { kept })}
      inputMode="decimal"
      width="short"
      align="end"
      unit="%"
      defaultValue={maxSumPpm === undefined ? '' : String(maxSumPpm / 10_000)}
    />
  );
}
