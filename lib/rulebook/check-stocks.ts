// A stock stands at the bench in a form that works: powders in the paste, blends dry and equal to a shade, lives that preservation allows.

import type { DocumentPath } from '../base/document-fault.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { Book } from './book.ts';
import { isPowder, knownParts } from './held-shares.ts';
import type { Material, Stock } from './material.ts';
import type { Shade } from './offer.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

/** Without preservation, at 2 to 8 °C (common practice, no source). */
const UNPRESERVED_HOURS = 24;
/** A preserved solution made at the bench (common practice, no source). */
const SOLUTION_HOURS = 168;

const isDry = (material: Material): boolean => isPowder(material) || material.kind === 'soluble-powder' || material.kind === 'gum';

export function* checkStocks(book: Book): Faults {
  for (const [index, stock] of book.rulebook.stocks.entries()) {
    const path = ['stocks', index];
    yield* life(path, stock);
    yield* form(path, book, stock);
    if (stock.isBlend) yield* blend(path, book, stock);
    if (stock.needsHeat && (stock.parts.length < 2 || stock.isBlend)) yield fault([...path, 'needsHeat'], 'heat-not-premix', {});
    for (const [at, cautionId] of stock.staffCautionIds.entries()) {
      if (book.cautions.get(cautionId)?.audience === 'customer') {
        yield fault([...path, 'staffCautionIds', at], 'caution-wrong-audience', { cautionId, audience: 'staff' });
      }
    }
  }
}

function* life(path: DocumentPath, { preservation, madeHereHours }: Stock): Faults {
  const at = [...path, 'madeHereHours'];
  if (preservation === 'unpreserved-aqueous') {
    if (madeHereHours === undefined) yield fault(at, 'unpreserved-life-missing', { mostHours: UNPRESERVED_HOURS });
    else if (madeHereHours > UNPRESERVED_HOURS)
      yield fault(at, 'unpreserved-life', { foundHours: madeHereHours, mostHours: UNPRESERVED_HOURS });
  }
  if (preservation === 'preserved' && madeHereHours !== undefined && madeHereHours > SOLUTION_HOURS) {
    yield fault(at, 'made-here-long', { foundHours: madeHereHours, usualHours: SOLUTION_HOURS });
  }
}

function* form(path: DocumentPath, book: Book, stock: Stock): Faults {
  const materials = knownParts(book, stock.parts).map((part) => part.material);
  const powder = materials.find(isPowder);
  if (powder && stock.addedTo !== 'paste') yield fault([...path, 'addedTo'], 'powder-not-in-paste', { materialId: powder.id });
  const wet = materials.find((material) => !isDry(material) && material.kind !== 'wax');
  if (wet && stock.preservation === 'dry') yield fault([...path, 'preservation'], 'dry-stock-wet', { materialId: wet.id });
}

function* blend(path: DocumentPath, book: Book, stock: Stock): Faults {
  if (stock.parts.length < 2) yield fault([...path, 'parts'], 'blend-single', {});
  const wet = knownParts(book, stock.parts).find(({ material }) => !isDry(material));
  if (wet) yield fault([...path, 'parts'], 'blend-not-dry', { materialId: wet.material.id });
  if (!book.rulebook.shades.some((shade) => servesWhole(stock, shade))) yield fault([...path, 'parts'], 'blend-no-shade', {});
}

/** A blend serves a shade when every ratio is equal, exactly. */
export function servesWhole(stock: Stock, shade: Shade): boolean {
  const totalPpm = shade.parts.reduce((sum, part) => sum + part.sharePpm, 0);
  return (
    stock.parts.length === shade.parts.length &&
    shade.parts.every((wanted) => {
      const held = stock.parts.find((part) => part.materialId === wanted.materialId);
      return held !== undefined && held.sharePpm * totalPpm === wanted.sharePpm * WHOLE_PPM;
    })
  );
}
