// Ids of the rulebook as a person says them: an id is made of words, so the words are shown.

/** "staff-acid-clay" → "Staff acid clay" */
export const plainName = (id: string): string => {
  const words = plainWords(id);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
};

/** "swelling-clay" → "swelling clay" */
export const plainWords = (id: string): string => id.replaceAll('-', ' ');
