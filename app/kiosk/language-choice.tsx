'use client';
// One button a language, each in its own words. Nothing to choose, nothing shown.
import type { ReactNode } from 'react';
import { Button } from '#app/_ui/controls/button.tsx';
import { languageFacts } from '#app/_ui/text/messages.ts';
import type { Lang } from '#lib/rulebook/language.ts';
import styles from './kiosk.module.css';
import type { KioskText } from './kiosk-text.ts';
import { isSpoken } from './kiosk-text.ts';

export interface LanguageChoiceProps {
  readonly languages: readonly Lang[];
  readonly text: KioskText;
  readonly onLanguage: (lang: Lang) => void;
}

export function LanguageChoice({ languages, text, onLanguage }: LanguageChoiceProps): ReactNode {
  const offered = languages.filter(isSpoken);
  if (offered.length < 2) return null;
  return (
    <fieldset className={styles.languages} aria-label={text.t('language')}>
      {offered.map((lang) => (
        <Button key={lang} lang={lang} aria-pressed={text.lang === lang} onClick={() => onLanguage(lang)}>
          {languageFacts[lang].name}
        </Button>
      ))}
    </fieldset>
  );
}
