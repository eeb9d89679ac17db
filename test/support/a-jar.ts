// Jars for tests: planned from shares of stocks, weighed from grams.
import type { Composition } from '#lib/composition/compose.ts';
import { compose, composePlan } from '#lib/composition/compose.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { Material, Stock, Substance } from '#lib/rulebook/material.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { gramsToUg } from '#lib/units/mass.ts';
import { sharePpm } from '#lib/units/share.ts';
import { aStock } from './a-material.ts';
import { aRulebook } from './a-rulebook.ts';

/** What a test adds to the small rulebook: a material without a stock of its own gets "<material>-neat". */
export interface Additions {
  readonly substances?: readonly Substance[];
  readonly materials?: readonly Material[];
  readonly stocks?: readonly Stock[];
  readonly rest?: Partial<Rulebook>;
}

/** The small rulebook with more on its shelves; a thing with an id it already has replaces the old one. */
export function aBook({ substances = [], materials = [], stocks = [], rest = {} }: Additions = {}): Book {
  const dull = aRulebook();
  const served = new Set(stocks.map((stock) => stock.parts[0]?.materialId));
  const neat = materials.filter((material) => !served.has(material.id)).map((material) => aStock(material.id));
  return openBook({
    ...dull,
    substances: replaced(dull.substances, substances),
    materials: replaced(dull.materials, materials),
    stocks: replaced(dull.stocks, [...neat, ...stocks]),
    ...rest,
  });
}

const replaced = <T extends { readonly id: string }>(old: readonly T[], fresh: readonly T[]): readonly T[] => {
  const ids = new Set(fresh.map((one) => one.id));
  return [...old.filter((one) => !ids.has(one.id)), ...fresh];
};

/** A jar that holds these shares of stocks, in ppm; the base takes the rest. */
export const aPlannedJar = (book: Book, sharesPpm: Readonly<Record<string, number>> = {}): Composition =>
  composePlan(book, {
    lines: Object.entries(sharesPpm).map(([stockId, share]) => ({
      stockId,
      sharePpm: sharePpm(share),
      purpose: 'active',
      materialId: null,
    })),
  });

/** A jar as weighed, in grams. */
export const aWeighedJar = (
  book: Book,
  grams: { readonly cream: number; readonly oil: number; readonly stocks: Readonly<Record<string, number>> },
): Composition =>
  compose(book, {
    cream: BigInt(gramsToUg(grams.cream)),
    oil: BigInt(gramsToUg(grams.oil)),
    stocks: new Map(Object.entries(grams.stocks).map(([stockId, mass]) => [stockId, BigInt(gramsToUg(mass))])),
  });
