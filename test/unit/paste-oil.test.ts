// Which oil wets the powders: the wetting oil, and what oil-borne stocks bring into the paste. Oil that is stirred in last comes too late.
import { expect, it } from 'vitest';
import { compose } from '#lib/composition/compose.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { AddedTo } from '#lib/rulebook/material.ts';
import { sharePpm } from '#lib/units/share.ts';
import { aDemoRulebook } from '#test/support/a-demo-book.ts';

const plain = aDemoRulebook();
const kaolin = plain.stocks.find((stock) => stock.id === 'kaolin-neat') ?? expect.fail('no kaolin');

/** Share of the jar that wets, in ppm, with 1 % of a stock that is nine tenths oil. */
function pasteOilPpm(addedTo: AddedTo): number {
  const parts = [
    { materialId: 'kaolin', sharePpm: sharePpm(100_000) },
    { materialId: 'caprylic-capric-triglyceride', sharePpm: sharePpm(900_000) },
  ];
  const book = openBook({ ...plain, stocks: [...plain.stocks, { ...kaolin, id: 'in-oil', code: 'IN-OIL', parts, addedTo }] });
  const jar = compose(book, { stocks: new Map([['in-oil', 10_000n]]), oil: 39_600n, cream: 950_400n });
  return Number((jar.pasteOil * 1_000_000n) / jar.whole);
}

it('counts the oil of a stock that goes into the paste, and of no other', () => {
  expect(pasteOilPpm('paste')).toBe(39_600 + 9_000);
  expect(pasteOilPpm('cream')).toBe(39_600);
  expect(pasteOilPpm('last')).toBe(39_600);
});
