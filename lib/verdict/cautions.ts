// Cautions that a jar owes for what is in it. Answers, judgements, class rules and limit rows add theirs beside these.

import { assertNever } from '../base/invariant.ts';
import type { Composition } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { CautionTrigger } from '../rulebook/questionnaire.ts';
import type { CautionOwed } from './verdict.ts';

export function triggeredCautions(book: Book, jar: Composition): readonly CautionOwed[] {
  return book.rulebook.cautions
    .filter((caution) => caution.triggers.some((trigger) => fires(book, jar, trigger)))
    .map((caution) => ({ cautionId: caution.id, ruleId: caution.id }));
}

function fires(book: Book, jar: Composition, trigger: CautionTrigger): boolean {
  const materials = [...jar.materials.keys()].map((id) => need(book.materials, id));
  switch (trigger.kind) {
    case 'always':
      return true;
    case 'tag':
      return materials.some((material) => material.tags.includes(trigger.tag));
    case 'class':
      return materials.some((material) => material.classes.includes(trigger.materialClass));
    case 'material':
      return jar.materials.has(trigger.materialId);
    default:
      return assertNever(trigger);
  }
}
