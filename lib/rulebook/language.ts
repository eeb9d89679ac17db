// Languages and markets that a rulebook can speak of. Lists are closed so that a forgotten text is a compile error or a finding, never a blank.

export const LANGS = ['en', 'fr', 'de', 'es', 'ar'] as const;
export type Lang = (typeof LANGS)[number];

export const MARKET_IDS = ['EU', 'US'] as const;
export type MarketId = (typeof MARKET_IDS)[number];

export type ProductKind = 'rinse-off' | 'leave-on';

/** A name inside a sentence: "Zinc PCA" is "zinc PCA", letters that stand for words stay. */
export const midSentence = (name: string): string => name.replaceAll(/\p{Lu}\p{Ll}+/gu, (word) => word.toLowerCase());
