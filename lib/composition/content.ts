// What one gram of a thing on the bench holds: stocks, cream and wetting oil alike. Everything downstream sums these, so a carrier can never be forgotten.
import { invariant } from '../base/invariant.ts';
import type { Base } from '../rulebook/base.ts';
import type { Book } from '../rulebook/book.ts';
import { need } from '../rulebook/book.ts';
import type { Part } from '../units/share.ts';
import { part, WHOLE_PPM } from '../units/share.ts';

/** Materials and substances of one source; each part is of `whole`. */
export interface Content {
  readonly whole: Part;
  readonly materials: ReadonlyMap<string, Part>;
  readonly substances: ReadonlyMap<string, Part>;
}

type PartsList = readonly { readonly materialId: string; readonly sharePpm: number }[];

const PPM = BigInt(WHOLE_PPM);

/** Content of a stock: shares × shares, whole = 10^12. Throws a Fault for an unknown stock. */
export const stockContent = (book: Book, stockId: string): Content => contentOf(book, need(book.stocks, stockId).parts, PPM);

/** Content of the held-back wetting oil, whole = 10^12. */
export const oilContent = (book: Book): Content => contentOf(book, book.rulebook.base.wettingOilParts, PPM);

/** Content of the cream: the whole base less its wetting oil. The whole is not 10^12, since the ratio need not divide evenly. */
export function creamContent(book: Book): Content {
  return contentOf(book, creamParts(book.rulebook.base), BigInt(WHOLE_PPM - book.rulebook.base.wettingOilPpm) * PPM);
}

/** base × 10^6 − ratio × oil, material by material; sums to (10^6 − ratio) × 10^6. */
function creamParts(base: Base): PartsList {
  const oilShare = new Map(base.wettingOilParts.map((oil) => [oil.materialId, oil.sharePpm as number]));
  const parts = base.parts.map(({ materialId, sharePpm }) => ({
    materialId,
    sharePpm: sharePpm * WHOLE_PPM - base.wettingOilPpm * (oilShare.get(materialId) ?? 0),
  }));
  invariant(
    parts.every((one) => one.sharePpm >= 0),
    'the base holds less of an oil than its wetting oil takes',
  );
  return parts.filter((one) => one.sharePpm > 0);
}

function contentOf(book: Book, parts: PartsList, wholeOfParts: bigint): Content {
  const materials = new Map<string, Part>();
  const substances = new Map<string, Part>();
  for (const { materialId, sharePpm } of parts) {
    add(materials, materialId, BigInt(sharePpm) * PPM);
    for (const held of need(book.materials, materialId).substances)
      add(substances, held.substanceId, BigInt(sharePpm) * BigInt(held.sharePpm));
  }
  return { whole: part(wholeOfParts * PPM), materials, substances };
}

const add = (into: Map<string, Part>, id: string, amount: bigint): void => {
  into.set(id, part((into.get(id) ?? 0n) + amount));
};
