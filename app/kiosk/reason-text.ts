// The plain reason for each code that a customer may meet. Codes that only formulators understand share one honest sentence.
import type { FindingCode } from '#lib/base/finding.ts';
import type { KioskKey } from '#app/_ui/text/kiosk/en.ts';

const REASONS: Readonly<Partial<Record<FindingCode, KioskKey>>> = {
  'too-many-actives': 'why-too-many-actives',
  'not-approved': 'why-approval',
  'approval-refused': 'why-approval',
  'pair-never': 'why-pair',
  'pair-not-judged': 'why-approval',
  'pair-limit-sum': 'why-pair',
  'pair-limit-first': 'why-pair',
  'pair-limit-second': 'why-pair',
  'pair-limit-ph': 'why-ph',
  'class-rule': 'why-pair',
  'allowance-exceeded': 'why-level',
  'level-not-permitted': 'why-level',
  'solubility-exceeded': 'why-level',
  'cap-exceeded': 'why-level',
  'ph-windows-apart': 'why-ph',
  'ph-too-low': 'why-ph',
  'ph-too-high': 'why-ph',
  'wetting-short': 'why-oil',
  'law-limit': 'why-law',
  'law-colourant': 'why-law',
  'person-excluded': 'why-personal',
  'person-cap': 'why-personal',
  'person-mildest': 'why-personal',
  'cross-contact': 'why-personal',
  'no-lot': 'why-shop',
  'lot-life-short': 'why-shop',
  stopped: 'why-shop',
};

export const reasonKey = (code: string): KioskKey => REASONS[code as FindingCode] ?? 'why-checked';
