// Every text that a person can meet stands there in every language on sale; a blank counts as missing. Each is named once for a language.
// Staff can read a material's name in another language, so that is only pointed out.
import type { Book } from './book.ts';
import type { Lang } from './language.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';
import { textReferences } from './text-references.ts';

export function* checkTexts(book: Book): Faults {
  const { languages, currency } = book.rulebook;
  if (!/^[A-Z]{3}$/.test(currency)) yield fault(['currency'], 'currency-code', { found: currency });
  for (const [index, lang] of languages.entries()) {
    yield* missingTexts(book, lang);
    yield* missingNames(book, lang, index === 0);
  }
}

const isBlank = (text: string | undefined): boolean => text === undefined || text.trim() === '';

function* missingTexts({ rulebook }: Book, lang: Lang): Faults {
  const texts = rulebook.texts[lang] ?? {};
  const firstUse = new Map([...textReferences(rulebook)].toReversed().map(({ textId, path }) => [textId, path.join('.')]));
  for (const [textId, usedAt] of [...firstUse].toReversed()) {
    const written = Object.hasOwn(texts, textId) ? texts[textId] : undefined;
    if (isBlank(written)) yield fault(['texts', lang, textId], 'missing-text', { textId, lang, usedAt });
  }
}

function* missingNames({ rulebook }: Book, lang: Lang, isFirst: boolean): Faults {
  for (const list of ['shades', 'actives', 'materials', 'stocks'] as const) {
    const isShown = list === 'shades' || list === 'actives';
    for (const [index, { name }] of rulebook[list].entries()) {
      if (isBlank(name[lang]))
        yield fault([list, index, 'name', lang], isShown || isFirst ? 'missing-name' : 'missing-staff-name', { lang });
    }
  }
}
