// Every reference resolves. A rulebook whose references dangle would stop a shop in the middle of a jar.
import type { Book } from './book.ts';
import type { ReferenceKind } from './references.ts';
import { references } from './references.ts';
import type { Rulebook } from './rulebook.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

const idsIn = (list: readonly { readonly id: string }[]): ReadonlySet<string> => new Set(list.map((one) => one.id));

function known(rulebook: Rulebook): Readonly<Record<ReferenceKind, ReadonlySet<string>>> {
  return {
    substance: idsIn(rulebook.substances),
    material: idsIn(rulebook.materials),
    stock: idsIn(rulebook.stocks),
    shade: idsIn(rulebook.shades),
    active: idsIn(rulebook.actives),
    caution: idsIn(rulebook.cautions),
    concern: idsIn(rulebook.concerns),
    question: idsIn(rulebook.questions),
    'personal cap': idsIn(rulebook.personCaps),
    evidence: idsIn(rulebook.evidence),
    'label size': idsIn(rulebook.labelSizes),
    vessel: idsIn(rulebook.vessels),
    'jar size': idsIn(rulebook.jarSizes),
    area: idsIn(rulebook.house.exposure.areas),
    'class judgement': idsIn(rulebook.classJudgements),
  };
}

export function* checkReferences({ rulebook }: Book): Faults {
  const there = known(rulebook);
  for (const { path, kind, id } of references(rulebook)) {
    if (!there[kind].has(id)) yield fault(path, 'unknown-reference', { what: kind, id });
  }
}
