// The kiosk's words, in each language that it speaks. A rulebook may be on sale in more; the kiosk offers those it has words for.
import type { Text } from '#app/_ui/text/create-text.ts';
import { createText } from '#app/_ui/text/create-text.ts';
import type { KioskKey } from '#app/_ui/text/kiosk/en.ts';
import { en } from '#app/_ui/text/kiosk/en.ts';
import { fr } from '#app/_ui/text/kiosk/fr.ts';
import type { KioskReasonKey } from '#app/_ui/text/kiosk-reasons/en.ts';
import { en as reasonsEn } from '#app/_ui/text/kiosk-reasons/en.ts';
import { fr as reasonsFr } from '#app/_ui/text/kiosk-reasons/fr.ts';
import type { Lang } from '#lib/rulebook/language.ts';

export type KioskText = Text<KioskKey>;

interface Spoken {
  readonly text: KioskText;
  readonly reasons: Text<KioskReasonKey>;
}

const catalogues = { en, fr };
const reasons = { en: reasonsEn, fr: reasonsFr };
const spoken = (lang: keyof typeof catalogues): Spoken => ({ text: createText(lang, catalogues), reasons: createText(lang, reasons) });

/** One object a language for good, so that it can stand in the dependencies of an effect. */
const SPOKEN: Partial<Record<Lang, Spoken>> & { readonly en: Spoken } = { en: spoken('en'), fr: spoken('fr') };

export const isSpoken = (lang: Lang): boolean => SPOKEN[lang] !== undefined;

/** Words in a language; in English where the kiosk does not speak it. */
export const kioskText = (lang: Lang): KioskText => (SPOKEN[lang] ?? SPOKEN.en).text;
export const kioskReasonsText = (lang: Lang): Text<KioskReasonKey> => (SPOKEN[lang] ?? SPOKEN.en).reasons;
