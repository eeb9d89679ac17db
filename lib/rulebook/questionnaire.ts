// What a customer can be asked and what each answer does. Effects are data: a threshold or a tag set is never code.

import type { SharePpm } from '../units/share.ts';
import type { AvoidTag, MaterialClass } from './material.ts';

export interface Concern {
  readonly id: string;
  readonly textId: string;
}

/** Why a visit can end without masks, worst first. */
export const OUTCOMES = ['mole', 'professional', 'age', 'wait', 'staff', 'none'] as const;
export type Outcome = (typeof OUTCOMES)[number];

export type Effect =
  | { readonly kind: 'wish'; readonly concernId: string; readonly weightCount: number }
  | { readonly kind: 'exclude'; readonly tags: readonly AvoidTag[] }
  | { readonly kind: 'cap'; readonly capId: string }
  | { readonly kind: 'mildest' }
  | { readonly kind: 'caution'; readonly cautionId: string; readonly mustTick: boolean }
  | { readonly kind: 'area'; readonly areaId: string }
  | { readonly kind: 'outcome'; readonly outcome: Outcome };

export interface Option {
  readonly id: string;
  readonly textId: string;
  /** Second line: what skipping does. */
  readonly hintTextId?: string;
  /** "None of these", "I would rather not say": clears all others. */
  readonly exclusive: boolean;
  readonly isSkip: boolean;
  readonly effects: readonly Effect[];
  /** Questions that this answer makes needless. */
  readonly skipsQuestionIds: readonly string[];
}

export interface Question {
  readonly id: string;
  readonly partTextId: string;
  readonly textId: string;
  readonly whyTextId?: string;
  readonly choose: 'one' | 'many';
  readonly mostCount: number;
  readonly options: readonly Option[];
}

/** A personal cap that an answer can set: all materials of a class together. */
export interface PersonCap {
  readonly id: string;
  readonly materialClass: MaterialClass;
  readonly maxPpm: SharePpm;
}

/** What happens when a customer avoids a tag that is handled open at the same bench. A tag without a row acts as "ask staff". */
export interface CrossContact {
  readonly tag: AvoidTag;
  readonly policy:
    | { readonly kind: 'caution'; readonly cautionId: string }
    | { readonly kind: 'ask-staff' }
    | { readonly kind: 'none'; readonly reason: string };
}

export type CautionPlace = 'kiosk' | 'card' | 'label' | 'bench';

export type CautionTrigger =
  | { readonly kind: 'always' }
  | { readonly kind: 'tag'; readonly tag: AvoidTag }
  | { readonly kind: 'class'; readonly materialClass: MaterialClass }
  | { readonly kind: 'material'; readonly materialId: string };

export interface Caution {
  readonly id: string;
  readonly places: readonly CautionPlace[];
  readonly audience: 'customer' | 'staff';
  readonly mustTick: boolean;
  readonly textId: string;
  /** Short form for the label; owed when places holds 'label'. */
  readonly labelTextId?: string;
  /** Empty: owed only where a rule, a limit or an answer names it. */
  readonly triggers: readonly CautionTrigger[];
  readonly source: string;
}
