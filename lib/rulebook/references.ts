// Every place of a rulebook that names something else in it. One walk serves the check of references and the search for what is never named.
import type { DocumentPath } from '../base/document-fault.ts';
import type { Effect, Option } from './questionnaire.ts';
import type { Rulebook } from './rulebook.ts';

export type ReferenceKind =
  | 'substance'
  | 'material'
  | 'stock'
  | 'shade'
  | 'active'
  | 'caution'
  | 'concern'
  | 'question'
  | 'personal cap'
  | 'evidence'
  | 'label size'
  | 'vessel'
  | 'jar size'
  | 'area'
  | 'class judgement';

export interface Reference {
  readonly path: DocumentPath;
  readonly kind: ReferenceKind;
  readonly id: string;
}

/** All references but those to texts, in the order of the document. */
export function* references(rulebook: Rulebook): Generator<Reference> {
  yield* baseReferences(rulebook);
  yield* materialReferences(rulebook);
  yield* offerReferences(rulebook);
  yield* judgementReferences(rulebook);
  yield* lawReferences(rulebook);
  yield* questionReferences(rulebook);
  yield* sizeReferences(rulebook);
}

/** References of one kind in one key of each entry of a list; entries that leave the key out name nothing. */
function* eachOf<T extends object>(
  path: DocumentPath,
  list: readonly T[],
  key: keyof T & string,
  kind: ReferenceKind,
): Generator<Reference> {
  for (const [index, entry] of list.entries()) {
    const id = entry[key];
    if (typeof id === 'string') yield { path: [...path, index, key], kind, id };
  }
}

function* idsOf(path: DocumentPath, ids: readonly string[], kind: ReferenceKind): Generator<Reference> {
  for (const [index, id] of ids.entries()) yield { path: [...path, index], kind, id };
}

function* baseReferences({ base, house }: Rulebook): Generator<Reference> {
  yield* eachOf(['base', 'parts'], base.parts, 'materialId', 'material');
  yield* eachOf(['base', 'wettingOilParts'], base.wettingOilParts, 'materialId', 'material');
  yield* eachOf(['base', 'preservation', 'preservatives'], base.preservation.preservatives, 'substanceId', 'substance');
  yield { path: ['base', 'preservation', 'evidenceId'], kind: 'evidence', id: base.preservation.evidenceId };
  yield* idsOf(['base', 'evidenceIds'], base.evidenceIds, 'evidence');
  if (house.phCorrection) yield { path: ['house', 'phCorrection', 'stockId'], kind: 'stock', id: house.phCorrection.stockId };
}

function* materialReferences({ materials, stocks, shades }: Rulebook): Generator<Reference> {
  for (const [index, material] of materials.entries())
    yield* eachOf(['materials', index, 'substances'], material.substances, 'substanceId', 'substance');
  for (const [index, stock] of stocks.entries()) {
    yield* eachOf(['stocks', index, 'parts'], stock.parts, 'materialId', 'material');
    yield* idsOf(['stocks', index, 'staffCautionIds'], stock.staffCautionIds, 'caution');
  }
  for (const [index, shade] of shades.entries()) yield* eachOf(['shades', index, 'parts'], shade.parts, 'materialId', 'material');
}

function* offerReferences({ actives, scopes }: Rulebook): Generator<Reference> {
  yield* eachOf(['actives'], actives, 'materialId', 'material');
  for (const [index, active] of actives.entries()) {
    for (const [at, level] of active.levels.entries())
      yield* eachOf(['actives', index, 'levels', at, 'benefits'], level.benefits, 'concernId', 'concern');
  }
  for (const [index, scope] of scopes.entries()) {
    yield* idsOf(['scopes', index, 'shadeIds'], scope.shadeIds, 'shade');
    yield* eachOf(['scopes', index, 'actives'], scope.actives, 'activeId', 'active');
    yield* idsOf(['scopes', index, 'evidenceIds'], scope.evidenceIds, 'evidence');
  }
}

function* judgementReferences({ pairJudgements, classJudgements, classRules }: Rulebook): Generator<Reference> {
  yield* eachOf(['pairJudgements'], pairJudgements, 'firstMaterialId', 'material');
  yield* eachOf(['pairJudgements'], pairJudgements, 'secondMaterialId', 'material');
  yield* eachOf(['pairJudgements'], pairJudgements, 'cautionId', 'caution');
  yield* eachOf(['pairJudgements'], pairJudgements, 'overridesClassJudgementId', 'class judgement');
  yield* eachOf(['pairJudgements'], pairJudgements, 'evidenceId', 'evidence');
  yield* eachOf(['classJudgements'], classJudgements, 'cautionId', 'caution');
  for (const [index, { then }] of classRules.entries()) {
    if (then.kind === 'caution') yield { path: ['classRules', index, 'then', 'cautionId'], kind: 'caution', id: then.cautionId };
  }
}

function* lawReferences({ limits }: Rulebook): Generator<Reference> {
  for (const [index, row] of limits.entries()) {
    if (row.kind === 'colourant') yield { path: ['limits', index, 'substanceId'], kind: 'substance', id: row.substanceId };
    else {
      yield* eachOf(['limits', index, 'substances'], row.substances, 'substanceId', 'substance');
      if (row.cautionId !== undefined) yield { path: ['limits', index, 'cautionId'], kind: 'caution', id: row.cautionId };
    }
  }
}

function* questionReferences({ questions, crossContacts, cautions }: Rulebook): Generator<Reference> {
  for (const [index, question] of questions.entries()) {
    for (const [at, option] of question.options.entries()) yield* optionReferences(['questions', index, 'options', at], option);
  }
  for (const [index, { policy }] of crossContacts.entries()) {
    if (policy.kind === 'caution') yield { path: ['crossContacts', index, 'policy', 'cautionId'], kind: 'caution', id: policy.cautionId };
  }
  for (const [index, caution] of cautions.entries()) {
    for (const [at, trigger] of caution.triggers.entries()) {
      if (trigger.kind === 'material')
        yield { path: ['cautions', index, 'triggers', at, 'materialId'], kind: 'material', id: trigger.materialId };
    }
  }
}

function* optionReferences(path: DocumentPath, option: Option): Generator<Reference> {
  for (const [index, effect] of option.effects.entries()) {
    const named = namedBy(effect);
    if (named) yield { path: [...path, 'effects', index, named.key], kind: named.kind, id: named.id };
  }
  yield* idsOf([...path, 'skipsQuestionIds'], option.skipsQuestionIds, 'question');
}

function namedBy(effect: Effect): { readonly key: string; readonly kind: ReferenceKind; readonly id: string } | null {
  if (effect.kind === 'wish') return { key: 'concernId', kind: 'concern', id: effect.concernId };
  if (effect.kind === 'cap') return { key: 'capId', kind: 'personal cap', id: effect.capId };
  if (effect.kind === 'caution') return { key: 'cautionId', kind: 'caution', id: effect.cautionId };
  return effect.kind === 'area' ? { key: 'areaId', kind: 'area', id: effect.areaId } : null;
}

function* sizeReferences({ jarSizes, labelSizes }: Rulebook): Generator<Reference> {
  yield* eachOf(['jarSizes'], jarSizes, 'vesselId', 'vessel');
  yield* eachOf(['jarSizes'], jarSizes, 'labelSizeId', 'label size');
  for (const [index, labelSize] of labelSizes.entries()) yield* idsOf(['labelSizes', index, 'fits'], labelSize.fits, 'jar size');
}
