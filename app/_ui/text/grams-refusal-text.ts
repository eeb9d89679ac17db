// Words for a typed mass that was refused; each says what to do.
import { assertNever } from '#lib/base/invariant.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import type { MassUg } from '#lib/units/mass.ts';
import { createText } from './create-text.ts';
import { formatTargetGrams, readingDigits } from './format-grams.ts';
import type { Catalogues } from './messages.ts';
import type { GramsRefusal } from './parse-grams.ts';
import { ar } from './weights/ar.ts';
import { de } from './weights/de.ts';
import type { WeightsKey } from './weights/en.ts';
import { en } from './weights/en.ts';
import { es } from './weights/es.ts';
import { fr } from './weights/fr.ts';

export const weightsCatalogues: Catalogues<WeightsKey> = { en, fr, de, es, ar };

/** `exampleUg` is a mass such as this scale shows, used where an example helps. */
export function gramsRefusalText(refusal: GramsRefusal, lang: Lang, example: { readonly massUg: MassUg; readonly stepUg: MassUg }): string {
  const { t } = createText(lang, weightsCatalogues);
  switch (refusal.kind) {
    case 'empty':
    case 'negative':
      return t(refusal.kind);
    case 'not-a-number':
      return t(refusal.kind, { example: readingDigits(example.massUg, example.stepUg, lang) });
    case 'other-sign':
      return t(refusal.kind, { typed: refusal.typed, meant: refusal.meant });
    case 'too-fine':
      return t(refusal.kind, { decimals: refusal.decimals });
    case 'between-steps':
      return t(refusal.kind, { step: formatTargetGrams(refusal.stepUg, lang) });
    case 'over-capacity':
      return t(refusal.kind, { capacity: formatTargetGrams(refusal.capacityUg, lang) });
    default:
      return assertNever(refusal);
  }
}
