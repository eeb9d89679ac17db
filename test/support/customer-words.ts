// Measures a text for customers: how hard it is to read, how long its sentences are and which banned words it uses.
import { BANNED, INGREDIENT_NAMES } from './customer-words.data.ts';

const wordsOf = (text: string): readonly string[] => text.match(/[\p{L}\p{N}][\p{L}\p{N}’'-]*/gu) ?? [];

/** Full stops and question marks end a sentence; so does the end of a text without any. */
export const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.?!])\s+/u).filter((one) => wordsOf(one).length > 0);

export const wordsCount = (text: string): number => wordsOf(text).length;

/** Groups of vowels, less a silent ending: the usual count behind readability formulas. */
export function syllablesCount(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '');
  if (letters.length <= 3) return 1;
  const spoken = letters.replace(/(?:[^laeiouy]es|[^dt]ed|[^laeiouy]e)$/, (end) => end.charAt(0));
  return Math.max(1, (spoken.match(/[aeiouy]+/g) ?? []).length);
}

/** Flesch–Kincaid grade: 0.39 · words / sentences + 11.8 · syllables / words − 15.59 (Kincaid and others, 1975). */
export function fleschKincaidGrade(passage: string): number {
  const plain = INGREDIENT_NAMES.reduce((text, name) => text.replaceAll(new RegExp(name, 'gi'), 'it'), passage);
  const words = wordsOf(plain);
  const syllables = words.reduce((sum, word) => sum + syllablesCount(word), 0);
  return (0.39 * words.length) / sentencesOf(plain).length + (11.8 * syllables) / words.length - 15.59;
}

/** Banned words as they stand in the list. */
export function bannedIn(text: string, lang: keyof typeof BANNED): readonly string[] {
  const { stem, whole } = BANNED[lang];
  const begins = (word: string, end: string): boolean => new RegExp(`(?<![\\p{L}-])${word}${end}`, 'iu').test(text);
  return [...stem.filter((word) => begins(word, '')), ...whole.filter((word) => begins(word, '(?![\\p{L}])'))];
}

/** Names of the values that a text waits for, each once and in order. */
export const argumentsOf = (text: string): readonly string[] =>
  [...new Set([...text.matchAll(/\{\s*([A-Za-z][\w-]*)/g)].map((found) => found[1] ?? ''))].sort();
