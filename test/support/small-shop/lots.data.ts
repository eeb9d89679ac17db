// Lots on the shelves of the small shop: one of every stock and of both parts of the base. Invented.
import type { NewLot } from '#app/_flows/receive-lot.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { gramsToUg } from '#lib/units/mass.ts';
import type { LocalDay } from '#lib/units/time.ts';
import { addDays } from '#lib/units/time.ts';

const STOCK_G = 400;
const CREAM_G = 5_000;
const OIL_G = 500;

export function smallLots(rulebook: Rulebook, today: LocalDay): readonly NewLot[] {
  const lot = ({ kind, refId, code, grams, lifeDays }: { kind: NewLot['kind']; refId: string; code: string; grams: number; lifeDays: number }): NewLot => ({
    kind,
    refId,
    code,
    expiryDay: addDays(today, lifeDays),
    receivedMassUg: gramsToUg(grams),
    receivedCount: null,
    costMinor: null,
    measuredPhX100: null,
    supplier: 'Invented supplier',
    certificate: { identity: 'passed' },
  });
  const { base, stocks } = rulebook;
  return [
    ...stocks.map((stock, index) => lot({ kind: 'stock', refId: stock.id, code: `${stock.code}-${String(101 + index)}`, grams: STOCK_G, lifeDays: 240 + 10 * index })),
    lot({ kind: 'base-cream', refId: base.id, code: `${base.code}-CREAM-118`, grams: CREAM_G, lifeDays: 210 }),
    lot({ kind: 'base-oil', refId: base.id, code: `${base.code}-OIL-118`, grams: OIL_G, lifeDays: 210 }),
  ];
}
