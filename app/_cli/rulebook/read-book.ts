// From a file's text to an opened rulebook. Every command but `check` refuses to compute with an unsound one.
import type { Result } from '#lib/base/result.ts';
import { accept, refuse } from '#lib/base/result.ts';
import { parseRulebook } from '#lib/contracts/rulebook.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import { checkRulebook } from '#lib/rulebook/check-rulebook.ts';
import type { SoundnessFault } from '#lib/rulebook/soundness-fault.ts';
import type { Answered } from './answered.ts';
import { no, notAsked } from './answered.ts';

export interface ReadBook {
  readonly book: Book;
  readonly faults: readonly SoundnessFault[];
}

export function readBook(text: string, mayBeUnsound: boolean): Result<ReadBook, Answered> {
  const json = jsonOf(text);
  if (!json.ok) return refuse(notAsked(`The file is not JSON: ${json.refusal}`));
  const parsed = parseRulebook(json.value);
  if (!parsed.ok)
    return refuse(
      (mayBeUnsound ? no : (output: object) => notAsked('The rulebook cannot be read', output))({ ok: false, faults: parsed.refusal }),
    );
  const faults = checkRulebook(parsed.value);
  const errors = faults.filter((fault) => fault.weight === 'error');
  if (errors.length > 0 && !mayBeUnsound) return refuse(notAsked('The rulebook is unsound: mend it first', { faults: errors }));
  return accept({ book: openBook(parsed.value), faults });
}

/** JSON, or the parser's own words about where it breaks. */
export function jsonOf(text: string): Result<unknown, string> {
  try {
    return accept(JSON.parse(text));
  } catch (error) {
    if (error instanceof SyntaxError) return refuse(error.message);
    throw error;
  }
}
