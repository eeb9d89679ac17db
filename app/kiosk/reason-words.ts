// The sentence for each reason that the server gives.
import type { KioskReasonKey } from '#app/_ui/text/kiosk-reasons/en.ts';
import { en } from '#app/_ui/text/kiosk-reasons/en.ts';
import { invariant } from '#lib/base/invariant.ts';
import type { ReasonView } from '#lib/contracts/kiosk-choices.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import { kioskReasonsText } from './kiosk-text.ts';

const SENTENCES = {
  avoided: null,
  capped: 'capped',
  mildest: 'mildest',
  'cross-contact': 'cross-contact',
  clash: 'clash',
  'less-together': 'less-together',
  'too-many': 'too-many',
  'not-approved': 'not-approved',
  'too-much': 'too-much',
  acidity: 'acidity',
  wetting: 'wetting',
  law: 'law',
  'not-checked': 'not-checked',
  'not-here': 'not-here',
  'out-of-stock': 'out-of-stock',
  stopped: 'stopped',
} satisfies Record<ReasonView['reason'], KioskReasonKey | null>;

/** One plain sentence; what a customer avoids is named by its tag, two things that clash by their names. */
export function reasonWords({ reason, names, tag }: ReasonView, lang: Lang): string {
  const { t } = kioskReasonsText(lang);
  const [first, second] = names;
  if (reason === 'clash' && first !== undefined && second !== undefined) return t('clash-named', { first, second });
  return t(SENTENCES[reason] ?? avoidedKey(tag));
}

function avoidedKey(tag: string | null): KioskReasonKey {
  const key = `avoided-${tag}`;
  invariant(key in en, `no words for ${key}`);
  return key as KioskReasonKey;
}
