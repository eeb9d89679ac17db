// Does a label's text fit its label? Letters never shrink under their floor, so a text that is too long refuses the size instead.
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import type { LabelSize } from '../rulebook/offer.ts';
import type { LabelContent } from './label-content.ts';

/** Findings for ingredients and cautions over what the label holds at its smallest permitted letters. */
export const labelFit = (content: Pick<LabelContent, 'ingredientsText' | 'cautions'>, size: LabelSize): readonly Finding[] => [
  ...tooLong(size.id, content.ingredientsText, size.ingredientsCharCount),
  ...tooLong(size.id, content.cautions.map((caution) => caution.text).join(' '), size.cautionsCharCount),
];

/** Counts code points: what a reader sees as one letter is never counted as none. */
function tooLong(labelSizeId: string, text: string, maxCharCount: number): readonly Finding[] {
  const foundCharCount = [...text].length;
  return foundCharCount > maxCharCount ? [finding('label-too-long', labelSizeId, { labelSizeId, foundCharCount, maxCharCount })] : [];
}
