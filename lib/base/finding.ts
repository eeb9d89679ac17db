// One machine-readable reason why something is refused or undecided. Every text that anyone sees is made from it, so "why" cannot drift from the rule.
// Facts are plain JSON; their names carry the unit.

export type CheckNo = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | 11 | 12 | 13 | 14 | 15;

/** Who may read the numbers of a finding; a customer only ever sees its plain text. */
export type Audience = 'customer' | 'staff' | 'formulator';

/** The facts that each code carries. The keys are the closed list of codes. */
export interface FindingFacts {
  // 1 structure
  'unknown-shade': { shadeId: string };
  'unknown-active': { activeId: string };
  'unknown-level': { activeId: string; levelPpm: number };
  'too-many-actives': { activesCount: number; mostActivesCount: number };
  'repeated-part': { materialId: string };
  'no-stock': { materialId: string };
  'stock-share-not-whole': { stockId: string; materialId: string };
  'netting-below-zero': { stockId: string; materialId: string };
  'netting-not-whole': { stockId: string; materialId: string };
  // 2 approval
  'not-approved': Record<never, never>;
  'approval-refused': { scopeId: string };
  // 3 pairs
  'pair-never': { firstMaterialId: string; secondMaterialId: string };
  'pair-not-judged': { firstMaterialId: string; secondMaterialId: string };
  'pair-limit-sum': { firstMaterialId: string; secondMaterialId: string; foundPpm: number; maxPpm: number };
  'pair-limit-first': { firstMaterialId: string; secondMaterialId: string; foundPpm: number; maxPpm: number };
  'pair-limit-second': { firstMaterialId: string; secondMaterialId: string; foundPpm: number; maxPpm: number };
  'pair-limit-ph': { firstMaterialId: string; secondMaterialId: string; minPhX100: number | null; maxPhX100: number | null };
  // 4 classes
  'class-rule': { firstClass: string; secondClass: string | null; minPhX100: number | null; maxPhX100: number | null };
  // 5 allowance
  'allowance-exceeded': { foundPpm: number; maxPpm: number };
  // 6 levels and solubility
  'level-not-permitted': { activeId: string; levelPpm: number };
  'solubility-exceeded': { substanceId: string; foundPpm: number; maxPpm: number };
  // 7 caps
  'cap-exceeded': { cap: string; foundUnits: number; maxUnits: number };
  // 8 pH
  'ph-windows-apart': { lowerOf: string; upperOf: string; minPhX100: number; maxPhX100: number };
  'ph-too-low': { windowOf: string; minPhX100: number; predictedPhX100: number | null };
  'ph-too-high': { windowOf: string; maxPhX100: number; predictedPhX100: number | null };
  'ph-outside-table': { atPhX100: number };
  'acidity-missing': { stockId: string };
  // 9 preservation
  'preservative-too-low': { substanceId: string; foundPpm: number; minPpm: number };
  'preservative-ph': { substanceId: string; minPhX100: number; maxPhX100: number };
  'preservative-undissociated': { substanceId: string; foundPpm: number; minPpm: number };
  'powder-beyond-challenge': { foundPpm: number; maxPpm: number };
  'swelling-clay-beyond-challenge': { foundPpm: number; maxPpm: number };
  // 10 wetting
  'wetting-short': { neededPpm: number; availablePpm: number };
  // 11 law
  'law-limit': { marketId: string; substanceIds: string; foundPpm: number; maxPpm: number; expressedAs: string };
  'law-colourant': { marketId: string; substanceId: string };
  // 12 exposure
  'exposure-margin': { substanceId: string; marginX100: number; floorCount: number };
  'exposure-no-figure': { substanceId: string };
  // 13 person
  'person-excluded': { tag: string };
  'person-cap': { capId: string; foundPpm: number; maxPpm: number };
  'person-mildest': { foundUnits: number; maxUnits: number };
  'cross-contact': { tag: string };
  // 14 bench
  'not-weighable': { stockId: string; exactUg: number; leastUg: number };
  'band-too-narrow': { stockId: string; limitId: string };
  'over-capacity': { stockId: string; massUg: number; capacityUg: number };
  'vessel-too-small': { vesselId: string; needUl: number; capacityUl: number };
  'label-too-long': { labelSizeId: string; foundCharCount: number; maxCharCount: number };
  'no-scale': Record<never, never>;
  // 15 shop
  'no-lot': { stockId: string; neededUg: number };
  'lot-life-short': { stockId: string; lifeDays: number; minDays: number };
  stopped: { subjectKind: string; subjectId: string };
  'base-lot-ph': { lotId: string; measuredPhX100: number };
}

export type FindingCode = keyof FindingFacts;

/** A finding of any code: code + the rule that spoke + the numbers that decided. */
export type Finding = {
  [C in FindingCode]: { readonly code: C; readonly ruleId: string; readonly facts: Readonly<FindingFacts[C]> };
}[FindingCode];

interface CodeEntry {
  readonly check: CheckNo;
  readonly audience: Audience;
  /** "undecided" names what is missing; it acts as refused. */
  readonly weight: 'refused' | 'undecided';
}

const entry = (check: CheckNo, audience: Audience, weight: CodeEntry['weight'] = 'refused'): CodeEntry => ({ check, audience, weight });

/** Every code with its check and audience. */
export const FINDING_CODES = {
  'unknown-shade': entry(1, 'formulator'),
  'unknown-active': entry(1, 'formulator'),
  'unknown-level': entry(1, 'formulator'),
  'too-many-actives': entry(1, 'customer'),
  'repeated-part': entry(1, 'formulator'),
  'no-stock': entry(1, 'formulator'),
  'stock-share-not-whole': entry(1, 'formulator'),
  'netting-below-zero': entry(1, 'formulator'),
  'netting-not-whole': entry(1, 'formulator'),
  'not-approved': entry(2, 'customer'),
  'approval-refused': entry(2, 'customer'),
  'pair-never': entry(3, 'customer'),
  'pair-not-judged': entry(3, 'formulator'),
  'pair-limit-sum': entry(3, 'customer'),
  'pair-limit-first': entry(3, 'customer'),
  'pair-limit-second': entry(3, 'customer'),
  'pair-limit-ph': entry(3, 'customer'),
  'class-rule': entry(4, 'customer'),
  'allowance-exceeded': entry(5, 'customer'),
  'level-not-permitted': entry(6, 'customer'),
  'solubility-exceeded': entry(6, 'customer'),
  'cap-exceeded': entry(7, 'customer'),
  'ph-windows-apart': entry(8, 'customer'),
  'ph-too-low': entry(8, 'customer'),
  'ph-too-high': entry(8, 'customer'),
  'ph-outside-table': entry(8, 'formulator', 'undecided'),
  'acidity-missing': entry(8, 'formulator', 'undecided'),
  'preservative-too-low': entry(9, 'formulator'),
  'preservative-ph': entry(9, 'formulator'),
  'preservative-undissociated': entry(9, 'formulator'),
  'powder-beyond-challenge': entry(9, 'formulator'),
  'swelling-clay-beyond-challenge': entry(9, 'formulator'),
  'wetting-short': entry(10, 'customer'),
  'law-limit': entry(11, 'customer'),
  'law-colourant': entry(11, 'customer'),
  'exposure-margin': entry(12, 'formulator'),
  'exposure-no-figure': entry(12, 'formulator', 'undecided'),
  'person-excluded': entry(13, 'customer'),
  'person-cap': entry(13, 'customer'),
  'person-mildest': entry(13, 'customer'),
  'cross-contact': entry(13, 'customer'),
  'not-weighable': entry(14, 'staff'),
  'band-too-narrow': entry(14, 'staff'),
  'over-capacity': entry(14, 'staff'),
  'vessel-too-small': entry(14, 'staff'),
  'label-too-long': entry(14, 'staff'),
  'no-scale': entry(14, 'staff'),
  'no-lot': entry(15, 'customer'),
  'lot-life-short': entry(15, 'customer'),
  stopped: entry(15, 'customer'),
  'base-lot-ph': entry(15, 'staff'),
} satisfies Record<FindingCode, CodeEntry>;

/** Makes a finding; the facts must be those of the code. */
export function finding<C extends FindingCode>(code: C, ruleId: string, facts: FindingFacts[C]): Finding {
  return { code, ruleId, facts } as Finding;
}

export const checkOf = (found: Finding): CheckNo => FINDING_CODES[found.code].check;
