// Ids and codes are unique, lists that a shop cannot do without are not empty, and nothing is named twice where once is meant.
import type { DocumentPath } from '../base/document-fault.ts';
import type { Book } from './book.ts';
import type { Rulebook } from './rulebook.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

const ID_LISTS = [
  'substances',
  'materials',
  'stocks',
  'shades',
  'actives',
  'pairJudgements',
  'classJudgements',
  'classRules',
  'evidence',
  'scopes',
  'limits',
  'markets',
  'concerns',
  'questions',
  'personCaps',
  'cautions',
  'jarSizes',
  'vessels',
  'labelSizes',
  'scaleProfiles',
] as const satisfies readonly (keyof Rulebook)[];

const CODE_LISTS = [
  'materials',
  'stocks',
  'shades',
  'actives',
  'jarSizes',
  'vessels',
  'scaleProfiles',
] as const satisfies readonly (keyof Rulebook)[];

/** A reason names its rule by id alone, so all that can be a reason share one set of ids. */
const RULE_LISTS = [
  'pairJudgements',
  'classJudgements',
  'classRules',
  'scopes',
  'limits',
  'personCaps',
] as const satisfies readonly (keyof Rulebook)[];

const NEEDED_LISTS = {
  languages: 'language',
  substances: 'substance',
  materials: 'material',
  stocks: 'stock',
  shades: 'shade',
  markets: 'market',
  concerns: 'concern',
  questions: 'question',
  jarSizes: 'jar size',
  vessels: 'vessel',
  labelSizes: 'label size',
  scaleProfiles: 'scale profile',
} as const satisfies Partial<Record<keyof Rulebook, string>>;

export function* checkIds({ rulebook }: Book): Faults {
  for (const list of ID_LISTS) yield* duplicateIds([list], rulebook[list]);
  for (const [index, question] of rulebook.questions.entries()) yield* duplicateIds(['questions', index, 'options'], question.options);
  yield* duplicateIds(['house', 'exposure', 'areas'], rulebook.house.exposure.areas);
  for (const list of CODE_LISTS) yield* duplicateCodes(list, rulebook[list]);
  yield* duplicateRuleIds(rulebook);
  for (const [list, what] of Object.entries(NEEDED_LISTS)) {
    if (rulebook[list as keyof typeof NEEDED_LISTS].length === 0) yield fault([list], 'empty-list', { what });
  }
  yield* checkRepeats(rulebook);
}

/** Positions whose key stands at an earlier position too. */
function repeated<T>(list: readonly T[], keyOf: (item: T) => string): readonly { readonly index: number; readonly key: string }[] {
  const seen = new Set<string>();
  return list.flatMap((item, index) => {
    const key = keyOf(item);
    if (seen.has(key)) return [{ index, key }];
    seen.add(key);
    return [];
  });
}

function* duplicateIds(path: DocumentPath, list: readonly { readonly id: string }[]): Faults {
  for (const { index, key } of repeated(list, (one) => one.id)) yield fault([...path, index, 'id'], 'duplicate-id', { id: key });
}

/** Capitals do not tell codes apart: they are read aloud and typed. */
function* duplicateCodes(list: string, entries: readonly { readonly code: string }[]): Faults {
  for (const { index } of repeated(entries, (one) => one.code.toUpperCase())) {
    yield fault([list, index, 'code'], 'duplicate-code', { code: entries[index]?.code ?? '' });
  }
}

function* duplicateRuleIds(rulebook: Rulebook): Faults {
  const firstList = new Map<string, string>();
  for (const list of RULE_LISTS) {
    for (const [index, { id }] of rulebook[list].entries()) {
      const earlier = firstList.get(id) ?? list;
      if (earlier !== list) yield fault([list, index, 'id'], 'duplicate-rule-id', { id });
      firstList.set(id, earlier);
    }
  }
}

function* repeats(path: DocumentPath, entries: readonly string[], key?: string): Faults {
  for (const { index, key: entry } of repeated(entries, (one) => one))
    yield fault([...path, index, ...(key ? [key] : [])], 'repeated-entry', { entry });
}

const materialIds = (parts: readonly { readonly materialId: string }[]): readonly string[] => parts.map((part) => part.materialId);
const substanceIds = (parts: readonly { readonly substanceId: string }[]): readonly string[] => parts.map((part) => part.substanceId);

function* checkRepeats(rulebook: Rulebook): Faults {
  const { base } = rulebook;
  yield* repeats(['languages'], rulebook.languages);
  yield* repeats(['base', 'parts'], materialIds(base.parts), 'materialId');
  yield* repeats(['base', 'wettingOilParts'], materialIds(base.wettingOilParts), 'materialId');
  yield* repeats(['base', 'preservation', 'preservatives'], substanceIds(base.preservation.preservatives), 'substanceId');
  yield* repeats(
    ['crossContacts'],
    rulebook.crossContacts.map((row) => row.tag),
    'tag',
  );
  for (const [index, material] of rulebook.materials.entries()) {
    yield* repeats(['materials', index, 'substances'], substanceIds(material.substances), 'substanceId');
    yield* repeats(['materials', index, 'classes'], material.classes);
    yield* repeats(['materials', index, 'tags'], material.tags);
  }
  for (const list of ['stocks', 'shades'] as const) {
    for (const [index, { parts }] of rulebook[list].entries()) yield* repeats([list, index, 'parts'], materialIds(parts), 'materialId');
  }
  for (const [index, active] of rulebook.actives.entries()) {
    for (const [at, level] of active.levels.entries()) {
      yield* repeats(
        ['actives', index, 'levels', at, 'benefits'],
        level.benefits.map((one) => one.concernId),
        'concernId',
      );
    }
  }
  for (const [index, scope] of rulebook.scopes.entries()) {
    yield* repeats(['scopes', index, 'shadeIds'], scope.shadeIds);
    yield* repeats(
      ['scopes', index, 'actives'],
      scope.actives.map((one) => one.activeId),
      'activeId',
    );
  }
  for (const [index, row] of rulebook.limits.entries()) {
    if (row.kind === 'substance') yield* repeats(['limits', index, 'substances'], substanceIds(row.substances), 'substanceId');
  }
}
