// A form of the draft between the page and the wire: what was typed, what is mistaken, what is asked for.
import type { ChangeDraftInput } from '#lib/contracts/draft.ts';

/** What to do, by the name of the field; every field's id is its name. */
export type Mistakes = Readonly<Record<string, string>>;

export type Asked = { readonly change: ChangeDraftInput['change'] } | { readonly mistakes: Mistakes };

/** A field's own attributes: id, name and, where it is mistaken, what to do. */
export const field = (name: string, mistakes: Mistakes): { id: string; name: string; error?: string } => ({
  id: name,
  name,
  ...(mistakes[name] !== undefined && { error: mistakes[name] }),
});

/** What was typed, without blanks around it. */
export const typed = (form: FormData, name: string): string => String(form.get(name) ?? '').trim();
