// How a line of the card is named and drawn at the bench.

import { swatchOf } from '#lib/colour/lab.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need } from '#lib/rulebook/book.ts';
import type { Card, CardLine } from '#lib/weighing/card.ts';
import type { LayerLook } from './jar-picture.ts';
import { lookOf } from './jar-picture.ts';

/** The words around the two parts of the base belong to the screen. */
export type LineName =
  | { readonly kind: 'stock'; readonly name: string; readonly lookAlikeName: string | null }
  | { readonly kind: 'cream' | 'wetting-oil'; readonly baseCode: string };

export const lineName = ({ source, name, code, lookAlikeName }: Pick<CardLine, 'source' | 'name' | 'code' | 'lookAlikeName'>): LineName =>
  source.kind === 'stock' ? { kind: 'stock', name: name.en ?? code, lookAlikeName } : { kind: source.kind, baseCode: code };

/** The first part of a stock is what it is for, and gives it its look; a shade's blend has the shade's colour. */
export function lineLook(
  book: Book,
  card: Card,
  { source }: Pick<CardLine, 'source'>,
): { readonly look: LayerLook; readonly fillHex: string | null } {
  if (source.kind !== 'stock') return { look: source.kind === 'cream' ? 'cream' : 'oil', fillHex: null };
  const stock = need(book.stocks, source.stockId);
  const [first] = stock.parts;
  const material = first && need(book.materials, first.materialId);
  if (!material) return { look: 'humectant', fillHex: null };
  const largest = need(book.shades, card.plan.variant.shadeId).parts.reduce((most, part) => (part.sharePpm > most.sharePpm ? part : most));
  const look = lookOf(material, material.id === largest.materialId && !stock.isBlend);
  return { look, fillHex: look === 'mineral-colour' || stock.isBlend ? shadeHex(book, card) : null };
}

export function shadeHex(book: Book, card: Card): string {
  const { wet } = need(book.shades, card.plan.variant.shadeId).colour;
  return swatchOf({ l: wet.lX100 / 100, a: wet.aX100 / 100, b: wet.bX100 / 100 }).hex;
}
