// The ingredients of a jar in the order that a market prints them. EU: Regulation (EC) No 1223/2009, Article 19(1)(g); US: 21 CFR 701.3(f).
// Both leave some groups free; these are printed descending all the same, so that one jar has one label.
import { compareText } from '../base/compare.ts';
import type { Composition } from '../composition/compose.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { MarketId } from '../rulebook/language.ts';
import type { Market } from '../rulebook/limit.ts';
import type { Substance } from '../rulebook/material.ts';
import type { Part } from '../units/share.ts';
import { addParts, belowPpm, exceedsPpm, part, partToPpm } from '../units/share.ts';
import { allergensOwed } from './allergens.ts';

/** 1 % of the jar: below it the EU leaves the order free, at it the US does too. */
const FREE_AT_PPM = 10_000;

/** "ordered": its place is law. "free": any order after those. "colourant": after all others. */
export type LabelGroup = 'ordered' | 'free' | 'colourant';

export interface LabelIngredient {
  readonly name: string;
  /** To be marked "(nano)"; the EU only. */
  readonly nano: boolean;
  readonly group: LabelGroup;
  /** For people; the order was made from exact parts. */
  readonly shownPpm: number;
}

interface Entry {
  readonly name: string;
  readonly nano: boolean;
  readonly colourIndex: string | undefined;
  readonly held: Part;
}

/**
 * Ingredients by the market's label names, summed by that name, with the fragrance allergens owed in their places.
 * Substances that the jar does not hold are left out.
 */
export function labelIngredients(book: Book, jar: Composition, market: Pick<Market, 'id' | 'productKind'>): readonly LabelIngredient[] {
  const named = sumByName(book, jar, market.id);
  const names = new Set(named.map((entry) => entry.name));
  const allergens = allergensOwed(book, jar, market)
    .filter((allergen) => !names.has(allergen.name))
    .map((allergen): Entry => ({ name: allergen.name, nano: false, colourIndex: undefined, held: allergen.held }));
  return [...named, ...allergens]
    .map((entry) => ({ entry, group: groupOf(entry, jar.whole, market.id) }))
    .sort((a, b) => compareEntries(a, b))
    .map(({ entry, group }) => ({ name: entry.name, nano: entry.nano, group, shownPpm: partToPpm(entry.held, jar.whole) }));
}

function sumByName(book: Book, jar: Composition, marketId: MarketId): readonly Entry[] {
  const entries = new Map<string, Entry>();
  for (const [substanceId, held] of jar.substances) {
    if (held === 0n) continue;
    const substance: Substance = need(book.substances, substanceId);
    const name = substance.labelNames[marketId];
    const nano = marketId === 'EU' && substance.nano;
    const key = `${name}|${nano}`;
    const before = entries.get(key);
    entries.set(key, {
      name,
      nano,
      colourIndex: [before?.colourIndex, substance.colourIndex].filter((index) => index !== undefined).sort(compareColourIndex)[0],
      held: addParts(before?.held ?? part(0n), held),
    });
  }
  return [...entries.values()];
}

function groupOf(entry: Entry, whole: Part, marketId: MarketId): LabelGroup {
  if (entry.colourIndex !== undefined) return 'colourant';
  const ordered = marketId === 'EU' ? !belowPpm(entry.held, whole, FREE_AT_PPM) : exceedsPpm(entry.held, whole, FREE_AT_PPM);
  return ordered ? 'ordered' : 'free';
}

interface Grouped {
  readonly entry: Entry;
  readonly group: LabelGroup;
}

/** Descending by exact part, equal parts by name; colourants last by CI number. */
function compareEntries(a: Grouped, b: Grouped): number {
  const lasts = Number(a.group === 'colourant') - Number(b.group === 'colourant');
  if (lasts !== 0) return lasts;
  if (a.group === 'colourant')
    return compareColourIndex(a.entry.colourIndex ?? '', b.entry.colourIndex ?? '') || compareNames(a.entry, b.entry);
  if (a.entry.held !== b.entry.held) return a.entry.held > b.entry.held ? -1 : 1;
  return compareNames(a.entry, b.entry);
}

const compareNames = (a: Entry, b: Entry): number => compareText(a.name, b.name) || Number(a.nano) - Number(b.nano);

/** CI numbers by value, then by suffix: 77266 before 77268:1 before 77491. */
function compareColourIndex(a: string, b: string): number {
  const value = (index: string): number => Number.parseInt(index, 10);
  return value(a) - value(b) || compareText(a, b);
}
