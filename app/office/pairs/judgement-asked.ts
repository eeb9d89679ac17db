// The judgement that a filled form asks for, or what is missing in it, field by field. What the form does not show is kept: other bounds,
// the class judgement that this one overrides, and its evidence.
import type { JudgementVerdict, PairJudgement, PairLimit } from '#lib/rulebook/judgement.ts';
import type { Asked, Mistakes } from '../form-fields.ts';
import { typed } from '../form-fields.ts';
import type { OfficeText } from '../office-text.ts';

export const VERDICTS = ['never', 'limit', 'caution', 'fine'] as const satisfies readonly JudgementVerdict[];

export function judgementAsked(form: FormData, judged: PairJudgement | null, { t }: OfficeText): Asked {
  const [first, second, reason, source] = ['first', 'second', 'reason', 'source'].map((name) => typed(form, name));
  const verdict = VERDICTS.find((one) => one === typed(form, 'verdict'));
  const cautionId = typed(form, 'caution');
  const limit = limitAsked(typed(form, 'max-sum'), judged?.limit);
  const mistakes: Mistakes = {
    ...(first === '' && { first: t('judge-no-material') }),
    ...(second === '' && { second: t('judge-no-material') }),
    ...(second !== '' && first === second && { second: t('judge-same-material') }),
    ...(verdict === undefined && { verdict: t('judge-no-verdict') }),
    ...(verdict === 'limit' && limit === null && { 'max-sum': t('percent-mistake') }),
    ...(verdict === 'caution' && cautionId === '' && { caution: t('judge-no-caution') }),
    ...(reason === '' && { reason: t('judge-no-reason') }),
    ...(source === '' && { source: t('judge-no-source') }),
  };
  if (!first || !second || !reason || !source || !verdict || Object.keys(mistakes).length > 0) return { mistakes };
  const { overridesClassJudgementId, evidenceId } = judged ?? {};
  return {
    change: {
      kind: 'judge-pair',
      firstMaterialId: first,
      secondMaterialId: second,
      verdict,
      ...(verdict === 'limit' && limit !== null && { limit }),
      ...(verdict === 'caution' && { cautionId }),
      ...(overridesClassJudgementId !== undefined && { overridesClassJudgementId }),
      ...(evidenceId !== undefined && { evidenceId }),
      reason,
      source,
    },
  };
}

/** Null where the text is no share, or where nothing at all would be limited. */
function limitAsked(text: string, old: PairLimit = {}): (Omit<PairLimit, 'maxSumPpm'> & { readonly maxSumPpm?: number }) | null {
  const { maxSumPpm: _, ...others } = old;
  if (text === '') return Object.keys(others).length > 0 ? others : null;
  const maxSumPpm = ppmFromPercent(text);
  return maxSumPpm === null ? null : { ...others, maxSumPpm };
}

/** "2.5" → 25 000; null where it is no share in whole ppm. */
function ppmFromPercent(text: string): number | null {
  const parts = /^(\d{1,3})(?:[.,](\d{1,4}))?$/.exec(text);
  if (!parts) return null;
  const ppm = Number(parts[1]) * 10_000 + Number((parts[2] ?? '').padEnd(4, '0'));
  return ppm <= 1_000_000 ? ppm : null;
}
