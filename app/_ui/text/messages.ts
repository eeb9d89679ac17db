// What a catalogue is. English is the source: its keys are the type that every other language must satisfy, so a forgotten
// text is a compile error and never a blank.
import type { Lang } from '#lib/rulebook/language.ts';

/** Whole sentences in ICU MessageFormat; never glued together from parts. */
export type Catalogue<Key extends string> = Readonly<Record<Key, string>>;

/** One catalogue per language that a face is offered in. */
export type Catalogues<Key extends string, Offered extends Lang = Lang> = Readonly<Record<Offered, Catalogue<Key>>>;

export type MessageValues = Readonly<Record<string, string | number>>;

interface LanguageFacts {
  readonly direction: 'ltr' | 'rtl';
  /** BCP 47 tag for numbers and dates. Western digits everywhere: they must match the scale and the label. */
  readonly locale: string;
  /** The language in its own words. */
  readonly name: string;
}

export const languageFacts = {
  en: { direction: 'ltr', locale: 'en-GB', name: 'English' },
  fr: { direction: 'ltr', locale: 'fr-FR', name: 'Français' },
  de: { direction: 'ltr', locale: 'de-DE', name: 'Deutsch' },
  es: { direction: 'ltr', locale: 'es-ES', name: 'Español' },
  ar: { direction: 'rtl', locale: 'ar-u-nu-latn', name: 'العربية' },
} satisfies Record<Lang, LanguageFacts>;
