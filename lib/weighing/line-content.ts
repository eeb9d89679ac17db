// What one unit of mass of each line holds, over one common grain: the coefficients from which every linear limit is made.

import type { Content } from '../composition/content.ts';
import { creamContent, oilContent, stockContent } from '../composition/content.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Material } from '../rulebook/material.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { BenchLine, LineSource } from './bench-line.ts';
import type { LineShare, MassLimit } from './mass-limit.ts';

const PPM = BigInt(WHOLE_PPM);

/** A line's content: shares of its materials and substances, as numerators over the grain. */
export interface LineContent {
  readonly lineId: string;
  readonly isAddition: boolean;
  readonly materials: ReadonlyMap<string, bigint>;
  readonly substances: ReadonlyMap<string, bigint>;
}

/** The common grain of all lines of a book: every content's whole divides it. */
const grainOf = (book: Book): bigint => BigInt(WHOLE_PPM - book.rulebook.base.wettingOilPpm) * 10n ** 12n;

export function lineContents(book: Book, lines: readonly BenchLine[]): readonly LineContent[] {
  const grain = grainOf(book);
  return lines.map(({ lineId, source }) => {
    const content = contentOf(book, source);
    const scaled = (held: ReadonlyMap<string, bigint>): ReadonlyMap<string, bigint> =>
      new Map([...held].map(([id, numerator]) => [id, numerator * (grain / content.whole)]));
    return { lineId, isAddition: source.kind === 'stock', materials: scaled(content.materials), substances: scaled(content.substances) };
  });
}

function contentOf(book: Book, source: LineSource): Content {
  if (source.kind === 'stock') return stockContent(book, source.stockId);
  return source.kind === 'cream' ? creamContent(book) : oilContent(book);
}

/** How much a thing counts, in ppm of itself (10^6 = wholly). */
export type Weight = (content: LineContent, grain: bigint) => bigint;

/** Σ materials × weight. */
export const byMaterial =
  (book: Book, weightPpm: (material: Material) => number): Weight =>
  (content) =>
    [...content.materials].reduce((sum, [id, held]) => sum + held * BigInt(weightPpm(need(book.materials, id))), 0n);

/** Σ substances × weight. */
export const bySubstance =
  (weightPpm: (substanceId: string) => number): Weight =>
  (content) =>
    [...content.substances].reduce((sum, [id, held]) => sum + held * BigInt(weightPpm(id)), 0n);

/** Additions count wholly, the base not at all. */
export const byAddition: Weight = (content, grain) => (content.isAddition ? grain * PPM : 0n);

type LimitHead = Pick<MassLimit, 'id' | 'code' | 'basis' | 'direction'>;

/** Σ mass × weight against a share of the whole jar in ppm. */
export function shareLimit(
  book: Book,
  contents: readonly LineContent[],
  head: LimitHead,
  { weight, limitPpm }: { weight: Weight; limitPpm: number },
): MassLimit {
  const grain = grainOf(book);
  const allowed = BigInt(limitPpm) * grain;
  const shares = new Map(contents.map((one): [string, LineShare] => [one.lineId, { content: weight(one, grain), allowed }]));
  return { ...head, whole: grain * PPM, shares };
}

/** Σ mass × weight against a number of mg per 100 g of something else in the jar, such as its water. */
export function ratioLimit(
  book: Book,
  contents: readonly LineContent[],
  head: LimitHead,
  { weight, of, mgPer100g }: { weight: Weight; of: Weight; mgPer100g: number },
): MassLimit {
  const grain = grainOf(book);
  const shares = new Map(
    contents.map((one): [string, LineShare] => [
      one.lineId,
      { content: weight(one, grain) * 100_000n, allowed: of(one, grain) * BigInt(mgPer100g) },
    ]),
  );
  return { ...head, whole: grain * PPM * 100_000n, shares };
}

/** Σ mass × weight × found ≤ Σ mass × whole, for a share that is no whole ppm. */
export function boundLimit(
  book: Book,
  contents: readonly LineContent[],
  head: LimitHead,
  { weight, bound }: { weight: Weight; bound: { readonly found: bigint; readonly whole: bigint } },
): MassLimit {
  const grain = grainOf(book);
  const shares = new Map(
    contents.map((one): [string, LineShare] => [one.lineId, { content: weight(one, grain) * bound.found, allowed: grain * bound.whole }]),
  );
  return { ...head, whole: grain * bound.found, shares };
}
