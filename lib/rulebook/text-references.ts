// Every place of a rulebook that names a text.
import type { DocumentPath } from '../base/document-fault.ts';
import type { Claims } from './offer.ts';
import type { Rulebook } from './rulebook.ts';

export interface TextReference {
  readonly path: DocumentPath;
  readonly textId: string;
}

/** What every label says beside its cautions; no row names these, since every jar has them. */
export const LABEL_TEXT_IDS = { product: 'label.product', directions: 'label.directions' } as const;

/** All texts that a rulebook names, in the order of the document; one that is named twice comes twice. */
export function* textReferences(rulebook: Rulebook): Generator<TextReference> {
  for (const [index, { colour, claims }] of rulebook.shades.entries()) {
    yield { path: ['shades', index, 'colour', 'nameTextId'], textId: colour.nameTextId };
    yield* claimTexts(['shades', index, 'claims'], claims);
  }
  for (const [index, { claims }] of rulebook.actives.entries()) {
    if (claims) yield* claimTexts(['actives', index, 'claims'], claims);
  }
  for (const [index, { textId }] of rulebook.concerns.entries()) yield { path: ['concerns', index, 'textId'], textId };
  yield* questionTexts(rulebook);
  for (const [index, { textId, labelTextId }] of rulebook.cautions.entries()) {
    yield { path: ['cautions', index, 'textId'], textId };
    if (labelTextId !== undefined) yield { path: ['cautions', index, 'labelTextId'], textId: labelTextId };
  }
  for (const [index] of rulebook.labelSizes.entries())
    for (const textId of Object.values(LABEL_TEXT_IDS)) yield { path: ['labelSizes', index], textId };
}

function* claimTexts(path: DocumentPath, { goodTextId, lessGoodTextId }: Claims): Generator<TextReference> {
  yield { path: [...path, 'goodTextId'], textId: goodTextId };
  yield { path: [...path, 'lessGoodTextId'], textId: lessGoodTextId };
}

function* questionTexts({ questions }: Rulebook): Generator<TextReference> {
  for (const [index, question] of questions.entries()) {
    const path = ['questions', index];
    yield { path: [...path, 'partTextId'], textId: question.partTextId };
    yield { path: [...path, 'textId'], textId: question.textId };
    if (question.whyTextId !== undefined) yield { path: [...path, 'whyTextId'], textId: question.whyTextId };
    for (const [at, option] of question.options.entries()) {
      yield { path: [...path, 'options', at, 'textId'], textId: option.textId };
      if (option.hintTextId !== undefined) yield { path: [...path, 'options', at, 'hintTextId'], textId: option.hintTextId };
    }
  }
}
