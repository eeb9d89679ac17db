// Which choices may stand in one jar at all, known before any variant is looked at.
import type { ActiveChoice, CompiledOffer, Option, ShadeChoice } from './compile-offer.ts';

/** 1 where a choice may stand beside a shade (shade × choice) or another choice (choice × choice), however each is weighed. */
export interface Together {
  readonly beside: Uint8Array;
  readonly withChoice: Uint8Array;
}

interface Clashing extends Pick<CompiledOffer, 'stockCodes' | 'neatOf'> {
  readonly clash: Uint8Array;
  readonly barred: Uint8Array;
}

export const compileTogether = (book: Clashing, shades: readonly ShadeChoice[], choices: readonly ActiveChoice[]): Together => ({
  beside: Uint8Array.from(shades.flatMap((shade) => choices.map((choice) => may(book, shade, choice)))),
  withChoice: Uint8Array.from(choices.flatMap((one) => choices.map((choice) => may(book, one, choice)))),
});

function may(book: Clashing, one: ShadeChoice | ActiveChoice, choice: ActiveChoice): 0 | 1 {
  if (sameMaterial(one, choice)) return 0;
  return one.options.some((mine) => choice.options.some((theirs) => !clashes(book, mine, theirs))) ? 1 : 0;
}

const sameMaterial = (one: ShadeChoice | ActiveChoice, { materialId }: ActiveChoice): boolean =>
  'wanted' in one ? one.wanted.has(materialId) : one.materialId === materialId;

function clashes({ clash, barred, stockCodes, neatOf }: Clashing, mine: Option, theirs: Option): boolean {
  // A neat stock may be netted away, with its missing table; what it clashes with stays, since a premix brings the same material.
  const bars = (stock: number): boolean =>
    (barred[stock] === 1 && (neatOf[stock] ?? -1) < 0) || clash[stock * stockCodes.length + stock] === 1;
  return (
    [...mine.stocks, ...theirs.stocks].some(bars) ||
    mine.stocks.some((a) => theirs.stocks.some((b) => clash[a * stockCodes.length + b] === 1))
  );
}
