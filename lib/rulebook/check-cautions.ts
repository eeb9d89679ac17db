// A caution reaches the person it is owed to: somewhere, in the form that the place demands, and because of something.
import type { DocumentPath } from '../base/document-fault.ts';
import { assertNever } from '../base/invariant.ts';
import type { Book } from './book.ts';
import type { Caution, CautionTrigger } from './questionnaire.ts';
import { references } from './references.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

export function* checkCautions(book: Book): Faults {
  const named = new Set([...references(book.rulebook)].filter((one) => one.kind === 'caution').map((one) => one.id));
  for (const [index, caution] of book.rulebook.cautions.entries()) {
    const path = ['cautions', index];
    yield* placeFaults(path, caution);
    for (const [at, trigger] of caution.triggers.entries()) {
      const absent = absentIn(book, trigger);
      if (absent !== null) yield fault([...path, 'triggers', at], 'rule-idle', { absent });
    }
    if (caution.triggers.length === 0 && !named.has(caution.id)) yield fault(path, 'caution-idle', {});
  }
}

function* placeFaults(path: DocumentPath, { places, audience, mustTick, labelTextId }: Caution): Faults {
  if (places.length === 0) yield fault([...path, 'places'], 'caution-no-place', {});
  if (places.includes('label') && labelTextId === undefined) yield fault([...path, 'labelTextId'], 'caution-no-label-text', {});
  if (mustTick && audience === 'staff') yield fault([...path, 'mustTick'], 'must-tick-staff', {});
  if (mustTick && audience === 'customer' && !places.includes('kiosk')) yield fault([...path, 'places'], 'must-tick-not-at-kiosk', {});
  for (const place of ['kiosk', 'label'] as const) {
    if (audience === 'staff' && places.includes(place)) yield fault([...path, 'places'], 'caution-wrong-place', { place });
  }
}

/** The tag or class that a trigger waits for although no material has it. Materials are references and reported as such. */
function absentIn({ rulebook: { materials } }: Book, trigger: CautionTrigger): string | null {
  switch (trigger.kind) {
    case 'tag':
      return materials.some((material) => material.tags.includes(trigger.tag)) ? null : trigger.tag;
    case 'class':
      return materials.some((material) => material.classes.includes(trigger.materialClass)) ? null : trigger.materialClass;
    case 'always':
    case 'material':
      return null;
    default:
      return assertNever(trigger);
  }
}
