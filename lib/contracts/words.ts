// Texts on the wire. Ids and codes stay within letters, digits, dot, dash and underscore, since keys of variants and pairs are put together
// from them with other signs, and codes are read aloud, scanned and sorted.
import { z } from 'zod';
import { LANGS, MARKET_IDS } from '../rulebook/language.ts';
import { isLocalDay, localDay } from '../units/time.ts';

const NAME = /^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/;
const nameError = 'must be 1 to 64 letters, digits, dots, dashes or underscores, and begin with a letter or digit';

export const idSchema = z.string({ error: nameError }).regex(NAME, { error: nameError }).meta({ description: 'an id, unique in its list' });

/** What people and scanners read; the same signs as an id. */
export const codeSchema = z
  .string({ error: nameError })
  .regex(NAME, { error: nameError })
  .meta({ description: 'a code that people and scanners read' });

const wellFormed = (value: string): boolean => value.isWellFormed();

/** Any text, also an empty one. Half of a surrogate pair is refused: it has no canonical bytes and could not be signed. */
export const textSchema = z.string({ error: 'must be a text' }).refine(wellFormed, { error: 'holds half of a character: type it anew' });

/** A text that says something: a source, a reason, a name on the law's list. */
export const statementSchema = textSchema.regex(/\S/, { error: 'must not be blank: say what it is' });

const dayError = 'must be a calendar day as YYYY-MM-DD';
export const localDaySchema = z
  .string({ error: dayError })
  .refine(isLocalDay, { error: dayError })
  .meta({ format: 'date' })
  .transform(localDay);

export const langSchema = z.enum(LANGS);
export const marketIdSchema = z.enum(MARKET_IDS);

/** A name in the languages in which it is known. */
export const namesSchema = z.partialRecord(langSchema, textSchema);
