// What is made of parts sums exactly to the whole: a composition that is a little short would hide something from every limit.
import type { DocumentPath } from '../base/document-fault.ts';
import { WHOLE_PPM } from '../units/share.ts';
import type { Book } from './book.ts';
import type { Faults } from './soundness-fault.ts';
import { fault } from './soundness-fault.ts';

export function* checkSums({ rulebook }: Book): Faults {
  yield* wholeOf(['base', 'parts'], named(rulebook.base.parts));
  yield* wholeOf(['base', 'wettingOilParts'], named(rulebook.base.wettingOilParts));
  for (const [index, material] of rulebook.materials.entries()) {
    const held = material.substances.map(({ substanceId, sharePpm }) => ({ id: substanceId, sharePpm }));
    yield* wholeOf(['materials', index, 'substances'], held);
  }
  for (const [index, stock] of rulebook.stocks.entries()) yield* wholeOf(['stocks', index, 'parts'], named(stock.parts));
  for (const [index, shade] of rulebook.shades.entries()) yield* noZero(['shades', index, 'parts'], named(shade.parts));
}

interface Named {
  readonly id: string;
  readonly sharePpm: number;
}

const named = (parts: readonly { readonly materialId: string; readonly sharePpm: number }[]): readonly Named[] =>
  parts.map(({ materialId, sharePpm }) => ({ id: materialId, sharePpm }));

function* wholeOf(path: DocumentPath, parts: readonly Named[]): Faults {
  yield* noZero(path, parts);
  const foundPpm = parts.reduce((sum, part) => sum + part.sharePpm, 0);
  if (foundPpm !== WHOLE_PPM) yield fault(path, 'sum-not-whole', { foundPpm });
}

function* noZero(path: DocumentPath, parts: readonly Named[]): Faults {
  for (const [index, part] of parts.entries()) {
    if (part.sharePpm === 0) yield fault([...path, index, 'sharePpm'], 'zero-share', { id: part.id });
  }
}
