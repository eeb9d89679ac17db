// What a list of materials holds, for the soundness check: unknown materials are passed over, since their reference is reported by itself.
import type { Book } from './book.ts';
import type { Material } from './material.ts';

export type PartsList = readonly { readonly materialId: string; readonly sharePpm: number }[];

/** The known materials of a list with their shares in ppm. */
export const knownParts = (book: Book, parts: PartsList): readonly { readonly material: Material; readonly sharePpm: number }[] =>
  parts.flatMap(({ materialId, sharePpm }) => {
    const material = book.materials.get(materialId);
    return material ? [{ material, sharePpm }] : [];
  });

/** Substances of a list of materials: share × share, of 10^12. */
export function substancesIn(book: Book, parts: PartsList): ReadonlyMap<string, bigint> {
  const held = new Map<string, bigint>();
  for (const { material, sharePpm } of knownParts(book, parts)) {
    for (const one of material.substances)
      held.set(one.substanceId, (held.get(one.substanceId) ?? 0n) + BigInt(sharePpm) * BigInt(one.sharePpm));
  }
  return held;
}

/** Σ share in ppm × `unitsOf` over the known materials of a list. */
export const loadOf = (book: Book, parts: PartsList, unitsOf: (material: Material) => number): number =>
  knownParts(book, parts).reduce((sum, { material, sharePpm }) => sum + sharePpm * unitsOf(material), 0);

/** Σ share in ppm of the known materials that count. */
export const shareOf = (book: Book, parts: PartsList, counts: (material: Material) => boolean): number =>
  loadOf(book, parts, (material) => (counts(material) ? 1 : 0));

/** What must be wetted in oil before it meets water. */
export const isPowder = (material: Material): boolean => material.kind === 'insoluble-powder' || material.kind === 'pigment';
