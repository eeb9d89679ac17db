// A limit on two things that meet, in words: every bound that it has, none left out.
import type { PairLimit } from '#lib/rulebook/judgement.ts';
import type { OfficeText } from '../office-text.ts';

export function limitWords(limit: PairLimit, { t, percent, number }: OfficeText): readonly string[] {
  const { maxSumPpm, maxFirstPpm, maxSecondPpm, minPhX100, maxPhX100 } = limit;
  return [
    ...(maxSumPpm === undefined ? [] : [t('limit-sum', { most: percent(maxSumPpm) })]),
    ...(maxFirstPpm === undefined ? [] : [t('limit-first', { most: percent(maxFirstPpm) })]),
    ...(maxSecondPpm === undefined ? [] : [t('limit-second', { most: percent(maxSecondPpm) })]),
    ...(minPhX100 === undefined ? [] : [t('limit-ph-from', { ph: number(minPhX100 / 100) })]),
    ...(maxPhX100 === undefined ? [] : [t('limit-ph-to', { ph: number(maxPhX100 / 100) })]),
  ];
}
