// Markets: somebody answers for them, and what is restricted or gives colour has been thought of in each.
import type { Book } from './book.ts';
import type { Market } from './limit.ts';
import type { Material } from './material.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

export function* checkMarkets(book: Book): Faults {
  for (const [index, market] of book.rulebook.markets.entries()) {
    for (const what of ['name', 'address', 'contact'] as const) {
      const path = ['markets', index, 'responsiblePerson', what];
      if (market.responsiblePerson[what].trim() === '') yield fault(path, 'responsible-person-blank', { marketId: market.id, what });
    }
    yield* silentLaw(book, market, index);
    yield* colourants(book, market, index);
  }
}

/** Substances in use that some market restricts but this one has no row for. */
function* silentLaw({ rulebook }: Book, market: Market, index: number): Faults {
  const inUse = new Set(rulebook.materials.flatMap((material) => material.substances.map((one) => one.substanceId)));
  const rows = rulebook.limits.filter((row) => row.kind === 'substance');
  const here = new Set(rows.filter((row) => row.marketId === market.id).flatMap((row) => row.substances.map((one) => one.substanceId)));
  const anywhere = new Set(rows.flatMap((row) => row.substances.map((one) => one.substanceId)));
  for (const substanceId of anywhere) {
    if (inUse.has(substanceId) && !here.has(substanceId))
      yield fault(['markets', index], 'no-limit-row', { substanceId, marketId: market.id });
  }
}

/** Colouring materials of the shades of which a substance has no permission here (water needs none). */
function* colourants(book: Book, market: Market, index: number): Faults {
  const permitted = new Set(
    book.rulebook.limits.flatMap((row) => (row.kind === 'colourant' && row.marketId === market.id ? [row.substanceId] : [])),
  );
  const needs = (material: Material): boolean =>
    material.kind === 'pigment' || (market.colourantsListed === 'all-colouring' && material.colours);
  const isFree = (substanceId: string): boolean => permitted.has(substanceId) || book.substances.get(substanceId)?.isWater === true;
  const used = new Set(book.rulebook.shades.flatMap((shade) => shade.parts.map((part) => part.materialId)));
  for (const materialId of used) {
    const material = book.materials.get(materialId);
    if (!material || !needs(material) || material.substances.every((one) => isFree(one.substanceId))) continue;
    yield fault(['markets', index], 'colourant-not-listed', { materialId, marketId: market.id });
  }
}
