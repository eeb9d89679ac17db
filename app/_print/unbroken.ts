/** A number and what it counts stay on one line. */
export const unbroken = (text: string): string => text.replaceAll(/(\d) (?=\p{L})/gu, '$1\u00a0');
