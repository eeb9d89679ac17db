// The shelves through half a year: what runs low or grows old is ordered again, comes in, waits for its certificate, and is released or not.
import type { NewLot } from '#app/_flows/receive-lot.ts';
import { decideLot, receiveLot } from '#app/_flows/receive-lot.ts';
import { benchLotOf } from '#app/_flows/shop-context.ts';
import { listStandingLots } from '#db/lots.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need } from '#lib/rulebook/book.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { gramsToUg } from '#lib/units/mass.ts';
import { moneyMinor } from '#lib/units/money.ts';
import { addDays, daysBetween, localDaysIn } from '#lib/units/time.ts';
import type { BenchLot } from '#lib/weighing/allocate-lots.ts';
import { lastDayOf } from '#lib/weighing/allocate-lots.ts';
import type { Stage } from './stage.ts';
import { as, DEMO_ZONE, went } from './stage.ts';

interface Ware {
  readonly kind: NewLot['kind'];
  readonly refId: string;
  readonly code: string;
  readonly grams: number;
  /** Ordered again under this. */
  readonly leastG: number;
  readonly lifeDays: number;
  readonly costMinorPerKg: number;
  readonly certificateItems: readonly string[];
}

const DAY_OF = localDaysIn(DEMO_ZONE);

/** A delivery is on the shelf this long before the old one is used up. */
const AHEAD_DAYS = 8;

function wares({ rulebook, materials }: Book): readonly Ware[] {
  const { base, stocks } = rulebook;
  const ofBase = {
    refId: base.id,
    costMinorPerKg: base.costMinorPerKg,
    lifeDays: 270,
    certificateItems: ['identity', 'pH', 'total count'],
  };
  return [
    { ...ofBase, kind: 'base-cream', code: `${base.code}-CREAM`, grams: 3_000, leastG: 700 },
    { ...ofBase, kind: 'base-oil', code: `${base.code}-OIL`, grams: 250, leastG: 40 },
    ...stocks.map(
      (stock): Ware => ({
        kind: 'stock',
        refId: stock.id,
        code: stock.code,
        grams: stock.isBlend ? 60 : 100,
        leastG: 12,
        lifeDays: stock.preservation === 'dry' ? 540 : 365,
        costMinorPerKg: stock.costMinorPerKg,
        certificateItems: [...new Set(stock.parts.flatMap(({ materialId }) => need(materials, materialId).certificateItems))],
      }),
    ),
  ];
}

/** Looks along the shelves and brings in what is needed for the days to come; empties and outdated lots are cleared away. */
export function restock(stage: Stage, book: Book): void {
  const lots = standing(stage);
  for (const lot of lots) clearAway(stage, book, lot);
  for (const ware of wares(book)) {
    const usable = lots.filter((lot) => isOf(lot, ware) && lot.status === 'released' && daysLeft(book, lot, stage) >= leastDays(book));
    const grams = usable.reduce((sum, lot) => sum + lot.leftUg, 0) / 1_000_000;
    if (grams < ware.leastG) bringIn(stage, ware);
  }
}

const leastDays = (book: Book): number => book.rulebook.house.minRemainingLifeDays + AHEAD_DAYS;

const daysLeft = (book: Book, lot: BenchLot, { day }: Stage): number => daysBetween(day, lastDayOf(book, lot, day));

const standing = ({ services }: Stage): readonly BenchLot[] =>
  services.db.read((tx) => listStandingLots(tx).flatMap((state) => benchLotOf(state, DAY_OF) ?? []));

const isOf = ({ source }: BenchLot, { kind, refId }: Ware): boolean =>
  source.kind === 'stock' ? kind === 'stock' && source.stockId === refId : kind === (source.kind === 'cream' ? 'base-cream' : 'base-oil');

function clearAway(stage: Stage, book: Book, lot: BenchLot): void {
  if (lot.status !== 'released' || lot.openedOn === null) return;
  const isOver = lastDayOf(book, lot, stage.day) < stage.day;
  if (!isOver && lot.leftUg >= 500_000) return;
  went(
    decideLot(as(stage, 'mixer'), { lotId: lot.id, kind: 'spent', reason: isOver ? 'Its days are over' : 'Empty' }),
    'a lot is cleared away',
  );
}

/** Some deliveries come without a paper, some with the wrong one: those are held or sent back, and the next one comes at once. */
export function bringIn(stage: Stage, ware: Ware): void {
  const { dice } = stage;
  const { lotId, code } = receive(stage, ware, {});
  if (ware.kind === 'stock' && dice.chance(0.03)) {
    decide(stage, lotId, 'held', 'The certificate names another lot');
    stage.clock.pass(30);
    decide(stage, lotId, 'rejected', 'Sent back: the supplier could not show the right certificate');
    return void bringIn(stage, ware);
  }
  decide(stage, lotId, 'released', `Certificate of ${code} checked`);
}

type Bend = Partial<Pick<NewLot, 'measuredPhX100' | 'certificate' | 'expiryDay'>>;

function receive(stage: Stage, ware: Ware, bend: Bend): { readonly lotId: string; readonly code: string } {
  const { dice, day, lotNos } = stage;
  const lotNo = (lotNos.get(ware.code) ?? 100) + 1;
  lotNos.set(ware.code, lotNo);
  const code = `${ware.code}-${lotNo}`;
  const lot: NewLot = {
    kind: ware.kind,
    refId: ware.refId,
    code,
    expiryDay: addDays(day, ware.lifeDays - dice.between(0, 40)),
    receivedMassUg: gramsToUg(ware.grams),
    receivedCount: null,
    costMinor: moneyMinor(Math.ceil((ware.costMinorPerKg * ware.grams) / 1000)),
    measuredPhX100: ware.kind === 'base-cream' ? phX100(dice.between(592, 608)) : null,
    supplier: 'Invented supplier',
    certificate: Object.fromEntries(ware.certificateItems.map((item) => [item, 'passed'])),
    ...bend,
  };
  return { code, ...went(receiveLot(as(stage, 'mixer'), lot), `lot ${code} comes in`) };
}

export function decide(stage: Stage, lotId: string, kind: 'released' | 'held' | 'rejected', reason: string): void {
  stage.clock.pass(1);
  went(decideLot(as(stage, 'mixer'), { lotId, kind, reason }), `a lot is ${kind}`);
}

/** What stands there today beside the usual: a delivery that nobody has looked at, one on hold, and one that will soon be too old to use. */
export function oddLots(stage: Stage, book: Book): void {
  const [first, second, third] = wares(book).filter(({ kind }) => kind === 'stock');
  if (first) receive(stage, first, { certificate: {} });
  if (second)
    decide(stage, receive(stage, second, { certificate: { identity: 'missing' } }).lotId, 'held', 'The certificate lacks the heavy metals');
  if (third) {
    const { lotId } = receive(stage, third, { expiryDay: addDays(stage.day, leastDays(book) - 2) });
    decide(stage, lotId, 'released', 'Certificate checked; to be used first');
  }
}
