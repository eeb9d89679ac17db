// Why something is not offered, as a customer may hear it: a plain reason without a number. What follows from an answer is marked, so that
// a screen keeps it covered until somebody asks, and names the question, so that the answer can be changed.
import type { Finding, FindingCode } from '../base/finding.ts';
import type { Book } from '../rulebook/book.ts';
import type { Lang } from '../rulebook/language.ts';
import type { AvoidTag } from '../rulebook/material.ts';
import type { Because, Person } from './person.ts';

export const REASONS = [
  'avoided',
  'capped',
  'mildest',
  'cross-contact',
  'clash',
  'less-together',
  'too-many',
  'not-approved',
  'too-much',
  'acidity',
  'wetting',
  'law',
  'not-checked',
  'not-here',
  'out-of-stock',
  'stopped',
] as const;
export type Reason = (typeof REASONS)[number];

export interface CustomerReason {
  readonly reason: Reason;
  /** The two things that do not go together, by name. */
  readonly names: readonly string[];
  /** What the customer avoids. */
  readonly tag: AvoidTag | null;
  /** Follows from an answer about the person. */
  readonly isPersonal: boolean;
  readonly questionIds: readonly string[];
}

/** What each finding comes to for a customer. */
const REASON_OF = {
  'unknown-shade': 'not-approved',
  'unknown-active': 'not-approved',
  'unknown-level': 'not-approved',
  'too-many-actives': 'too-many',
  'repeated-part': 'not-approved',
  'no-stock': 'not-here',
  'stock-share-not-whole': 'not-here',
  'netting-below-zero': 'not-here',
  'netting-not-whole': 'not-here',
  'not-approved': 'not-approved',
  'approval-refused': 'not-approved',
  'pair-never': 'clash',
  'pair-not-judged': 'not-checked',
  'pair-limit-sum': 'less-together',
  'pair-limit-first': 'less-together',
  'pair-limit-second': 'less-together',
  'pair-limit-ph': 'acidity',
  'class-rule': 'clash',
  'allowance-exceeded': 'too-much',
  'level-not-permitted': 'too-much',
  'solubility-exceeded': 'too-much',
  'cap-exceeded': 'too-much',
  'ph-windows-apart': 'acidity',
  'ph-too-low': 'acidity',
  'ph-too-high': 'acidity',
  'ph-outside-table': 'not-checked',
  'acidity-missing': 'not-checked',
  'preservative-too-low': 'not-checked',
  'preservative-ph': 'not-checked',
  'preservative-undissociated': 'not-checked',
  'powder-beyond-challenge': 'not-checked',
  'swelling-clay-beyond-challenge': 'not-checked',
  'wetting-short': 'wetting',
  'law-limit': 'law',
  'law-colourant': 'law',
  'exposure-margin': 'not-checked',
  'exposure-no-figure': 'not-checked',
  'person-excluded': 'avoided',
  'person-cap': 'capped',
  'person-mildest': 'mildest',
  'cross-contact': 'cross-contact',
  'not-weighable': 'not-here',
  'band-too-narrow': 'not-here',
  'over-capacity': 'not-here',
  'vessel-too-small': 'not-here',
  'label-too-long': 'not-here',
  'no-scale': 'not-here',
  'no-lot': 'out-of-stock',
  'lot-life-short': 'out-of-stock',
  stopped: 'stopped',
  'base-lot-ph': 'not-here',
} satisfies Record<FindingCode, Reason>;

/** Each reason once, what follows from answers first. */
export function customerReasons(book: Book, lang: Lang, findings: readonly Finding[], person: Person): readonly CustomerReason[] {
  const told = findings.map((found) => reasonOf(book, lang, found, person));
  const distinct = [...new Map(told.map((one) => [`${one.reason}|${one.tag ?? ''}|${one.names.join('+')}`, one])).values()];
  return [...distinct.filter((one) => one.isPersonal), ...distinct.filter((one) => !one.isPersonal)];
}

function reasonOf(book: Book, lang: Lang, found: Finding, person: Person): CustomerReason {
  const reason = REASON_OF[found.code];
  const because = becauseOf(found, person);
  const tag = found.code === 'person-excluded' || found.code === 'cross-contact' ? (found.facts.tag as AvoidTag) : null;
  const questionIds = [...new Set((because ?? []).map(({ questionId }) => questionId))];
  return { reason, names: namesOf(book, lang, found), tag, isPersonal: because !== null, questionIds };
}

/** The answers behind a finding of the person's own check; null for every other check. */
function becauseOf(found: Finding, person: Person): readonly Because[] | null {
  if (found.code === 'person-excluded' || found.code === 'cross-contact') return person.excluded.get(found.facts.tag as AvoidTag) ?? [];
  if (found.code === 'person-cap') return person.capIds.get(found.facts.capId) ?? [];
  return found.code === 'person-mildest' ? person.mildest : null;
}

function namesOf(book: Book, lang: Lang, found: Finding): readonly string[] {
  if (!('firstMaterialId' in found.facts)) return [];
  return [found.facts.firstMaterialId, found.facts.secondMaterialId].flatMap((id) => nameOf(book, lang, id) ?? []);
}

/** An active goes by its own name: that of the material as bought may tell its strength. */
function nameOf(book: Book, lang: Lang, materialId: string): string | undefined {
  const active = book.rulebook.actives.find((one) => one.materialId === materialId);
  return (active ?? book.materials.get(materialId))?.name[lang];
}
