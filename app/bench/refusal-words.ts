// A refusal of the bench in words: what it is, and what to do.

import type { BenchRefusalKey } from '#app/_ui/text/bench-refusals/en.ts';
import { en } from '#app/_ui/text/bench-refusals/en.ts';
import { createText } from '#app/_ui/text/create-text.ts';
import { assertNever } from '#lib/base/invariant.ts';
import type { BenchRefusalBody } from '#lib/contracts/bench-refusal.ts';
import { findingWords } from './finding-words.ts';

const text = createText<BenchRefusalKey, 'en'>('en', { en });

export function refusalWords(refusal: BenchRefusalBody): string {
  const { t, target, day } = text;
  switch (refusal.kind) {
    case 'bench-busy':
      return t(refusal.kind, { shortCode: refusal.shortCode });
    case 'stopped':
      return t(refusal.kind, { reasons: refusal.reasons.join('; ') });
    case 'unfit':
      return t(refusal.kind, { what: refusal.what });
    case 'between-steps':
      return t(refusal.kind, { step: target(refusal.stepUg) });
    case 'over-capacity':
      return t(refusal.kind, { capacity: target(refusal.capacityUg) });
    case 'lot':
      return t(`lot-${refusal.fault}`, { shown: refusal.shownCode, expected: refusal.expectedCode ?? t('lot-any') });
    case 'too-little':
      return t(refusal.kind, { mass: target(refusal.addUg) });
    case 'too-much':
      return t(refusal.kind, { mass: target(refusal.overUg) });
    case 'correction-too-large':
      return t(refusal.kind, { most: target(refusal.mostUg) });
    case 'cannot-make':
      return t(refusal.kind, { why: refusal.findings.map(findingWords).join(' ') });
    case 'correction-too-small':
      return t(refusal.kind, { least: target(refusal.leastUg) });
    case 'more-than-mixed':
      return t(refusal.kind, { most: target(refusal.mostUg) });
    case 'order-held':
      return t(refusal.kind, { why: refusal.reason });
    case 'past-use-by':
      return t(refusal.kind, { day: day(refusal.useByDay) });
    case 'label-lacks-text':
      return t(refusal.kind, { textIds: refusal.textIds.join(', ') });
    case 'no-such-order':
    case 'other-content':
    case 'already-claimed':
    case 'no-bench':
    case 'not-yours':
    case 'not-this-step':
    case 'not-confirmed':
    case 'entries-differ':
    case 'second-needed':
    case 'second-wrong':
    case 'second-locked':
    case 'second-same-person':
    case 'second-role':
    case 'second-differs':
    case 'nothing-to-take-back':
    case 'cannot-mend':
    case 'under-tare':
    case 'other-jar':
    case 'life-over':
    case 'decider-needed':
    case 'label-not-printed':
    case 'not-ready':
      return t(refusal.kind);
    default:
      return assertNever(refusal);
  }
}
