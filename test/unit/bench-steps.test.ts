// Where a jar stands, what is weighed next, which lot is right. The jar is the worked one: 50 g + 2 g, seven lines (see fern-jar).
import { describe, expect, test } from 'vitest';
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import { gramsToUg, massUg } from '#lib/units/mass.ts';
import { addDays } from '#lib/units/time.ts';
import type { Card } from '#lib/weighing/card.ts';
import { allergenTagsOf } from '#lib/weighing/full-clean.ts';
import type { LotWish, ShelfLot } from '#lib/weighing/lot-check.ts';
import { checkLot } from '#lib/weighing/lot-check.ts';
import { cardFor } from '#lib/weighing/mixing-card.ts';
import type { Progress } from '#lib/weighing/next-step.ts';
import { CLEARANCE_ITEMS, nextStep, PROTECTION_ITEMS, pasteStepId, stepsDoneCount } from '#lib/weighing/next-step.ts';
import { nextWeighing } from '#lib/weighing/next-weighing.ts';
import type { BenchFact } from '#lib/weighing/readings.ts';
import { foldReadings } from '#lib/weighing/readings.ts';
import { aLot, FERN_DAY, fernAsk, fernBook, fernLots, fernPlan } from '#test/support/fern-jar.ts';
import { grownJar } from '#test/support/golden-cards.ts';

const KAOLIN = { kind: 'stock', stockId: 'kaolin-neat' } as const;

function cardOf(book: Book, lots = fernLots(book)): Card {
  const card = cardFor(fernAsk(book, { lots }));
  if (!card.ok) throw new Error(JSON.stringify(card.refusal));
  return card.value;
}

const reading = (seq: number, lineNo: number, grams: number, weighingNo = 1): BenchFact => ({
  kind: 'reading',
  seq,
  lineNo,
  weighingNo,
  lotId: 'lot',
  massUg: gramsToUg(grams),
});

const nothing = (card: Card): Progress => ({
  fitScaleIds: [],
  isMeterFit: false,
  cleared: [],
  needsFullClean: false,
  isBound: false,
  state: foldReadings(card, []),
  confirmed: [],
  passed: [],
});

describe('the next step', () => {
  const card = cardOf(fernBook());
  const fit = { ...nothing(card), fitScaleIds: ['scale-10mg'] };

  test('is the first whose proof is missing, in the order of the card', () => {
    const proofs: readonly Partial<Progress>[] = [
      {},
      { fitScaleIds: ['scale-10mg'] },
      { cleared: CLEARANCE_ITEMS },
      { cleared: [...CLEARANCE_ITEMS, ...PROTECTION_ITEMS] },
      { isBound: true },
    ];
    const found = proofs.map((_, index) => {
      const progress = Object.assign({}, nothing(card), ...proofs.slice(0, index + 1)) as Progress;
      return [nextStep(card, progress).kind, stepsDoneCount(card, progress)];
    });
    expect(found).toEqual([
      ['fitness', 0],
      ['clearance', 1],
      ['protection', 2],
      ['bind-jar', 3],
      ['weigh', 4],
    ]);
  });

  test('a bench that owes a full clean is not clear without it', () => {
    expect(nextStep(card, { ...fit, needsFullClean: true, cleared: [...CLEARANCE_ITEMS, ...PROTECTION_ITEMS] }).kind).toBe('clearance');
    expect(nextStep(card, { ...fit, needsFullClean: true, cleared: [...CLEARANCE_ITEMS, ...PROTECTION_ITEMS, 'fully-cleaned'] }).kind).toBe(
      'bind-jar',
    );
  });

  test('protection alone is no clearance, and one missing item is missing', () => {
    expect(nextStep(card, { ...fit, cleared: PROTECTION_ITEMS }).kind).toBe('clearance');
    expect(nextStep(card, { ...fit, cleared: [...CLEARANCE_ITEMS, 'mask-on', 'eyes-covered'] }).kind).toBe('protection');
  });

  test('a line that is over its band stays the step', () => {
    const progress = {
      ...fit,
      cleared: [...CLEARANCE_ITEMS, ...PROTECTION_ITEMS],
      isBound: true,
      state: foldReadings(card, [reading(1, 1, 0.9)]),
    };
    expect(nextStep(card, progress)).toMatchObject({ kind: 'weigh', lineNo: 1 });
  });

  test('a card whose every step is proved stays at the release', () => {
    const all = [0.78, 0.26, 0.26, 1.98, 47.47, 1.04, 0.21].map((grams, index) => reading(index + 1, index + 1, grams));
    const progress: Progress = {
      ...fit,
      cleared: [...CLEARANCE_ITEMS, ...PROTECTION_ITEMS],
      isBound: true,
      state: foldReadings(card, all),
      confirmed: ['paste', 'dissolve'],
      passed: ['temperature', 'draw-down', 'look', 'net'],
    };
    expect([nextStep(card, progress), stepsDoneCount(card, progress)]).toEqual([{ kind: 'release' }, card.steps.length - 1]);
  });

  test('the second paste of a larger batch is a step of its own', () => {
    const before = [0.78, 0.26, 0.26, 1.98, 47.47, 1.3].map((grams, index) => reading(index + 1, index + 1, grams));
    const { grown } = grownJar([
      [1, 0.78],
      [2, 0.26],
      [3, 0.26],
      [4, 1.98],
      [5, 47.47],
      [6, 1.3],
    ]);
    const state = foldReadings(card, [...before, { kind: 'grown', seq: 7, batchUg: grown.batchUg, lines: grown.lines }]);
    expect([pasteStepId(foldReadings(card, before)), pasteStepId(state)]).toEqual(['paste', 'second-paste-65000000']);
  });
});

describe('the next weighing', () => {
  test('of a line from one lot is the whole line', () => {
    const card = cardOf(fernBook());
    expect(nextWeighing(card, foldReadings(card, []), 1)).toMatchObject({
      weighingNo: 1,
      kind: 'line',
      wantedUg: 780_000,
      loUg: 710_000,
      hiUg: 850_000,
      lot: { lotCode: 'L1' },
    });
  });

  test('of a line from two lots is a part of it, then what is left of the band', () => {
    const book = fernBook();
    const lots = [
      ...fernLots(book).filter((lot) => lot.id !== 'lot-kaolin-neat'),
      aLot(KAOLIN, { id: 'k1', code: 'k1', leftUg: gramsToUg(0.5) }),
      aLot(KAOLIN, { id: 'k2', code: 'k2', leftUg: gramsToUg(0.6) }),
    ];
    const card = cardOf(book, lots);
    // 0.50 g of 0.78 g, each way as far as the line's own band of 0.71 to 0.85 g.
    expect(nextWeighing(card, foldReadings(card, []), 1)).toMatchObject({
      weighingNo: 1,
      wantedUg: 500_000,
      loUg: 430_000,
      hiUg: 570_000,
      lot: { lotCode: 'k1' },
    });
    expect(nextWeighing(card, foldReadings(card, [reading(1, 1, 0.52)]), 1)).toMatchObject({
      weighingNo: 2,
      wantedUg: 260_000,
      loUg: 190_000,
      hiUg: 330_000,
      lot: { lotCode: 'k2' },
    });
  });

  test('onto a line that is over its band is a fault', () => {
    const card = cardOf(fernBook());
    expect(() => nextWeighing(card, foldReadings(card, [reading(1, 1, 0.9)]), 1)).toThrow('nothing can be weighed onto line 1');
    expect(() => nextWeighing(card, foldReadings(card, []), 9)).toThrow('line 9');
  });
});

describe('the lot in hand', () => {
  const book = fernBook();
  const shelf = (lot: Partial<ShelfLot['lot']> = {}, more: Partial<ShelfLot> = {}): ShelfLot => ({
    lot: aLot(KAOLIN, lot),
    thereUg: gramsToUg(10),
    isStopped: false,
    ...more,
  });
  const wish = (onCard: ShelfLot | null = shelf()): LotWish => ({ source: KAOLIN, massUg: gramsToUg(0.78), onCard, day: FERN_DAY });
  const faultOf = (shown: ShelfLot, asked = wish()) => {
    const checked = checkLot(book, shown, asked);
    return checked.ok ? null : checked.refusal;
  };

  test('the card’s own, released and in date, is right', () => expect(faultOf(shelf())).toBeNull());

  test('each fault is named', () => {
    expect(faultOf(shelf({ source: { kind: 'cream' } }))).toBe('other-stock');
    expect(faultOf(shelf({ status: 'held' }))).toBe('not-released');
    expect(faultOf(shelf({ status: 'quarantine' }))).toBe('not-released');
    expect(faultOf(shelf({}, { isStopped: true }))).toBe('stopped');
    expect(faultOf(shelf({ expiresOn: addDays(FERN_DAY, -1) }))).toBe('expired');
    expect(faultOf(shelf({}, { thereUg: massUg(779_999) }))).toBe('too-little');
    expect(faultOf(shelf({ id: 'other' }))).toBe('not-on-card');
  });

  test('a lot may be used up to the last day and the last microgram', () => {
    expect(faultOf(shelf({ expiresOn: FERN_DAY }, { thereUg: gramsToUg(0.78) }))).toBeNull();
  });

  test('another lot takes the place of one that is no longer fit, or of none', () => {
    const other = shelf({ id: 'other', code: 'L9' });
    expect(faultOf(other, wish(shelf({ status: 'held' })))).toBeNull();
    expect(faultOf(other, wish(null))).toBeNull();
    expect(faultOf(shelf({ id: 'other', status: 'held' }), wish(shelf({ status: 'held' })))).toBe('not-released');
  });

  test('an opened lot is past its date when its days in use are', () => {
    const panthenol = { kind: 'stock', stockId: 'panthenol-75' } as const;
    const shown = (openedDaysAgo: number): ShelfLot => ({
      lot: aLot(panthenol, { openedOn: addDays(FERN_DAY, -openedDaysAgo) }),
      thereUg: gramsToUg(10),
      isStopped: false,
    });
    const asked = { source: panthenol, massUg: gramsToUg(0.21), onCard: null, day: FERN_DAY };
    expect([faultOf(shown(180), asked), faultOf(shown(181), asked)]).toEqual([null, 'expired']);
  });
});

test('allergens that the stocks of a plan bring; what only the base brings is not counted', () => {
  const book = fernBook();
  const bent = openBook({
    ...book.rulebook,
    materials: book.rulebook.materials.map((one) => (one.id === 'illite' ? { ...one, tags: ['oat', 'acid'] } : one)),
  });
  expect([allergenTagsOf(book, fernPlan(book)), allergenTagsOf(bent, fernPlan(bent))]).toEqual([[], ['oat']]);
});
