// One fault of a rulebook that can be read but makes no sense. Errors forbid publishing; warnings ask somebody to look.
import type { DocumentFault, DocumentPath } from '../base/document-fault.ts';
import type { SoundnessCode } from './soundness-messages.ts';
import { SOUNDNESS_MESSAGES } from './soundness-messages.ts';

type Messages = typeof SOUNDNESS_MESSAGES;

/** The facts that a code carries, as its message takes them. */
export type SoundnessFacts<C extends SoundnessCode> = Parameters<Messages[C]> extends [infer Facts] ? Facts : Record<never, never>;

export interface SoundnessFault extends DocumentFault {
  readonly code: SoundnessCode;
  readonly weight: 'error' | 'warning';
  readonly facts: Readonly<Record<string, string | number>>;
}

/** What may be so on purpose. All other codes are errors. */
const WARNINGS: ReadonlySet<SoundnessCode> = new Set([
  'exposure-missing',
  'made-here-long',
  'base-over-coming-limit',
  'base-class-never',
  'over-coming-limit',
  'shade-not-approved',
  'active-not-approved',
  'price-zero',
  'override-idle',
  'rule-idle',
  'no-limit-row',
  'responsible-person-blank',
  'colourant-not-listed',
  'concern-never-wished',
  'caution-idle',
  'missing-staff-name',
]);

/** A fault at a place; its words are made from its facts. */
export function fault<C extends SoundnessCode>(path: DocumentPath, code: C, facts: SoundnessFacts<C>): SoundnessFault {
  const say = SOUNDNESS_MESSAGES[code] as (facts: SoundnessFacts<C>) => string;
  return { path, code, weight: WARNINGS.has(code) ? 'warning' : 'error', facts: facts as SoundnessFault['facts'], message: say(facts) };
}

/** Faults as a check finds them, one after another; no check stops at its first. */
export type Faults = Iterable<SoundnessFault>;
