// Check 13: what this customer avoids, how much of a class they may have, and the gentle set. Asked of the whole jar, base included.

import type { Person } from '../answers/person.ts';
import type { Finding } from '../base/finding.ts';
import { finding } from '../base/finding.ts';
import { irritancyLoad } from '../chemistry/caps.ts';
import type { Composition } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { AvoidTag } from '../rulebook/material.ts';
import type { CrossContact } from '../rulebook/questionnaire.ts';
import { exceedsPpm, partToPpm, WHOLE_PPM } from '../units/share.ts';
import { classPart } from './check-classes.ts';
import type { CautionOwed } from './verdict.ts';

export function checkPerson(book: Book, jar: Composition, person: Person): readonly Finding[] {
  return [...excludedTags(book, jar, person), ...caps(book, jar, person), ...gentle(book, jar, person), ...askStaff(book, jar, person)];
}

/** Tags of everything in the jar. */
export const tagsIn = (book: Book, jar: Composition): ReadonlySet<AvoidTag> =>
  new Set([...jar.materials.keys()].flatMap((id) => need(book.materials, id).tags));

function excludedTags(book: Book, jar: Composition, person: Person): readonly Finding[] {
  const held = tagsIn(book, jar);
  return [...person.excluded.keys()]
    .filter((tag) => held.has(tag))
    .sort()
    .map((tag) => finding('person-excluded', tag, { tag }));
}

function caps(book: Book, jar: Composition, person: Person): readonly Finding[] {
  return [...person.capIds.keys()].sort().flatMap((capId): Finding[] => {
    const cap = need(book.personCaps, capId);
    const found = classPart(book, jar, cap.materialClass);
    if (!exceedsPpm(found, jar.whole, cap.maxPpm)) return [];
    return [finding('person-cap', capId, { capId, foundPpm: partToPpm(found, jar.whole), maxPpm: cap.maxPpm })];
  });
}

/** The gentle set: total irritancy at or under the house's figure. */
function gentle(book: Book, jar: Composition, person: Person): readonly Finding[] {
  const max = book.rulebook.house.gentleIrritancyUnits;
  const load = irritancyLoad(book, jar);
  if (person.mildest.length === 0 || load * BigInt(WHOLE_PPM) <= BigInt(max) * jar.whole) return [];
  const foundUnits = Number((load * BigInt(WHOLE_PPM)) / jar.whole);
  return [finding('person-mildest', 'gentle-set', { foundUnits, maxUnits: max })];
}

/** Excluded tags that other jars bring to the same bench, with the house's policy for each. */
function crossContacts(book: Book, jar: Composition, person: Person): readonly { tag: AvoidTag; policy: CrossContact['policy'] }[] {
  const inJar = tagsIn(book, jar);
  const handled = new Set(book.rulebook.stocks.flatMap((stock) => stock.parts.flatMap((one) => need(book.materials, one.materialId).tags)));
  return [...person.excluded.keys()]
    .filter((tag) => handled.has(tag) && !inJar.has(tag))
    .sort()
    .map((tag) => ({ tag, policy: book.rulebook.crossContacts.find((row) => row.tag === tag)?.policy ?? { kind: 'ask-staff' } }));
}

const askStaff = (book: Book, jar: Composition, person: Person): readonly Finding[] =>
  crossContacts(book, jar, person).flatMap(({ tag, policy }): Finding[] =>
    policy.kind === 'ask-staff' ? [finding('cross-contact', tag, { tag })] : [],
  );

/** "Made where … is also used", for tags whose policy says so. */
export const crossContactCautions = (book: Book, jar: Composition, person: Person): readonly CautionOwed[] =>
  crossContacts(book, jar, person).flatMap(({ tag, policy }): CautionOwed[] =>
    policy.kind === 'caution' ? [{ cautionId: policy.cautionId, ruleId: tag }] : [],
  );
