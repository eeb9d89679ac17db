// After a reading: what is recorded, what may be mended, and what may not. Nothing is ever accepted outside its band.
import { describe, expect, it } from 'vitest';
import { gramsToUg, massUg, sumMass } from '#lib/units/mass.ts';
import { volumeUl } from '#lib/units/material-property.ts';
import { factorPpm } from '#lib/units/share.ts';
import type { GrowAsk } from '#lib/weighing/grow-batch.ts';
import { growBatch } from '#lib/weighing/grow-batch.ts';
import { costOf, mendOptions } from '#lib/weighing/mis-weigh.ts';
import type { BenchFact } from '#lib/weighing/readings.ts';
import { foldReadings, voidableSeq } from '#lib/weighing/readings.ts';
import { netContentOf, weighedAmounts } from '#lib/weighing/release-jar.ts';
import { aScaleProfile } from '#test/support/an-offer.ts';
import type { FernBends } from '#test/support/fern-jar.ts';
import { aLot, fernAsk, fernBook, fernLots } from '#test/support/fern-jar.ts';
import { cardOf, grownJar, readingsOf, vesselJar } from '#test/support/golden-cards.ts';

type Readings = readonly (readonly [lineNo: number, grams: number])[];

const ALL: Readings = [
  [1, 0.78],
  [2, 0.26],
  [3, 0.26],
  [4, 1.98],
  [5, 47.47],
  [6, 1.04],
  [7, 0.21],
];

function jar(readings: Readings, bends: FernBends = {}): GrowAsk {
  const book = fernBook({ stock: { weighedIn: 'vessel' }, ...bends });
  const ask = fernAsk(book);
  const card = cardOf(ask);
  return { book, card, state: foldReadings(card, readingsOf(readings)), limits: ask.limits, lots: fernLots(book), day: ask.day };
}

const refusalsOf = (ask: GrowAsk) => {
  const grown = growBatch(ask);
  return grown.ok ? [] : grown.refusal;
};

describe('after a reading', () => {
  it('inside the band, ends included, it is recorded and nothing else is offered', () => {
    for (const grams of [0.71, 0.78, 0.85]) expect(mendOptions(jar([[1, grams]]), 1)).toEqual([{ kind: 'record' }]);
  });

  it('too little: add up to the target, or throw away', () => {
    const [add, discard] = mendOptions(jar([[1, 0.7]]), 1);
    expect(add).toEqual({ kind: 'add', addUg: 80_000 });
    expect(discard?.kind).toBe('discard');
  });

  it('too much in a boat: out to waste down to the target, with what it costs', () => {
    const ask = jar([[1, 0.9]], { stock: { weighedIn: 'boat', costMinorPerKg: 50_000 } });
    expect(mendOptions(ask, 1)).toEqual([
      { kind: 'take-out', outUg: 120_000, wasteMinor: 6 },
      { kind: 'discard', wasteMinor: 45, growRefusals: [] },
    ]);
  });

  it('too much in the vessel: the batch grows with a second person, and the surplus is counted as waste', () => {
    const [grow, discard] = mendOptions(jar([[1, 0.9]]), 1);
    expect(grow).toMatchObject({ kind: 'grow', needsSecondPerson: true, grown: { batchUg: 60_000_000, needsSecondPaste: false } });
    // 8 g more: 7.61 g of base at 1.5 minor units a gram and 0.39 g of stocks at 4: 11.415 + 1.56, rounded up.
    expect(grow?.kind === 'grow' && grow.wasteMinor).toBe(13);
    expect(discard).toEqual({ kind: 'discard', wasteMinor: 4, growRefusals: [] });
  });

  it('never offers to accept a reading outside its band', () => {
    for (const [lineNo, grams] of [
      [1, 0.7],
      [1, 0.86],
      [4, 2.2],
      [5, 48.5],
    ] as const) {
      const options = mendOptions(jar([...ALL.slice(0, lineNo - 1), [lineNo, grams]]), lineNo);
      expect(options.map((option) => option.kind)).not.toContain('record');
      expect(options.at(-1)?.kind).toBe('discard');
    }
  });

  it('costs are exact sums, rounded up once', () => {
    const book = fernBook({ stock: { costMinorPerKg: 1 } });
    const one = { source: { kind: 'stock', stockId: 'kaolin-neat' }, massUg: 1 } as const;
    expect(costOf(book, [])).toBe(0);
    expect(costOf(book, [one, one])).toBe(1);
    expect(costOf(book, [{ source: { kind: 'cream' }, massUg: 1_000_000_000 }])).toBe(1500);
  });
});

describe('a larger batch (both worked out by hand)', () => {
  it('kaolin read 0.90 g first: 60.00 g', () => {
    const { grown } = grownJar([[1, 0.9]]);
    expect(grown.lines.map((line) => line.targetUg)).toEqual([0.9, 0.3, 0.3, 2.28, 54.78, 1.2, 0.24].map(gramsToUg));
    expect([grown.batchUg, grown.totalUg, grown.needsSecondPaste]).toEqual([60_000_000, 60_000_000, false]);
  });

  it('niacinamide read 1.30 g after the cream: 65.00 g, powders and oil as a second paste', () => {
    const { grown } = grownJar(ALL.slice(0, 5).concat([[6, 1.3]]));
    expect(grown.lines.map((line) => [line.topUpUg, line.into])).toEqual([
      [200_000, 'second-paste'],
      [70_000, 'second-paste'],
      [70_000, 'second-paste'],
      [490_000, 'second-paste'],
      [11_860_000, 'vessel'],
      [0, null],
      [260_000, 'vessel'],
    ]);
    expect([grown.batchUg, grown.totalUg, grown.needsSecondPaste]).toEqual([65_000_000, 65_000_000, true]);
  });

  it('leaves alone what stands well in the larger batch', () => {
    const { grown } = grownJar([
      [1, 0.78],
      [2, 0.28],
      [3, 0.26],
      [4, 2.08],
    ]);
    expect(grown.batchUg).toBe(56_000_000);
    expect(grown.lines.slice(0, 4).map((line) => [line.topUpUg, line.into])).toEqual(Array(4).fill([0, null]));
  });

  it('tops up from what is beyond the reservation', () => {
    const { grown } = grownJar([[1, 0.9]]);
    expect(grown.lots.map(({ lineNo, lots }) => [lineNo, lots[0]?.massUg])).toEqual([
      [2, 40_000],
      [3, 40_000],
      [4, 300_000],
      [5, 7_310_000],
      [6, 160_000],
      [7, 30_000],
    ]);
  });
});

describe('why a batch does not grow', () => {
  const HEAVY: Readings = [[1, 0.9]];

  it('the house does not permit it', () => {
    expect(refusalsOf(jar(HEAVY, { house: { mayGrow: false } }))).toEqual([{ kind: 'not-permitted' }]);
    const options = mendOptions(jar(HEAVY, { house: { mayGrow: false } }), 1);
    expect(options).toMatchObject([{ kind: 'discard', growRefusals: [{ kind: 'not-permitted' }] }]);
  });

  it('the vessel is too small', () => {
    const found = refusalsOf(jar(HEAVY, { vessel: { capacityUl: volumeUl(55_000) } }));
    expect(found).toMatchObject([{ kind: 'bench', finding: { code: 'vessel-too-small', facts: { needUl: 59_406 } } }]);
  });

  it('the scale would bear too much', () => {
    const ask = jar(HEAVY);
    const card = cardOf(fernAsk(ask.book, { scales: [aScaleProfile({ capacityUg: gramsToUg(55) })] }));
    const found = refusalsOf({ ...ask, card, state: foldReadings(card, readingsOf(HEAVY)) });
    expect(found.map((one) => one.kind === 'scale-full' && one.lineNo)).toEqual([5, 6, 7]);
  });

  it('the stock is not there', () => {
    const ask = jar(HEAVY);
    const lots = ask.lots.map((lot) => (lot.source.kind === 'cream' ? { ...lot, leftUg: gramsToUg(7) } : lot));
    expect(refusalsOf({ ...ask, lots })).toMatchObject([
      { kind: 'bench', finding: { code: 'no-lot', facts: { stockId: 'cream', neededUg: 7_310_000 } } },
    ]);
  });

  it('a top-up would be one weighing too many for the scale', () => {
    const ask = jar(HEAVY);
    const shaky = {
      ...ask.card,
      lines: ask.card.lines.map((line) => ({ ...line, scale: { ...line.scale, repeatabilityUg: massUg(12_000) } })),
    };
    const state = foldReadings(
      shaky,
      readingsOf([
        [1, 0.78],
        [2, 0.26],
        [3, 0.26],
        [4, 2.4],
      ]),
    );
    expect(refusalsOf({ ...ask, card: shaky, state })).toMatchObject([
      { kind: 'top-up-too-small', lineNo: 2 },
      { kind: 'top-up-too-small', lineNo: 3 },
    ]);
  });

  it('a limit would be broken at a corner of the larger batch', () => {
    const ask = jar(HEAVY);
    const shares = new Map(ask.card.lines.map((line) => [line.lineId, { content: line.lineNo === 1 ? 1_000_000n : 0n, allowed: 15_000n }]));
    const limit = { id: 'house:kaolin', code: 'cap-exceeded', basis: 'cap', direction: 'at-most', whole: 1_000_000n, shares } as const;
    expect(refusalsOf({ ...ask, limits: [limit] })).toEqual([{ kind: 'limit', limitId: 'house:kaolin' }]);
  });

  it('the second paste would have too little oil', () => {
    const overOiled: Readings = [
      [1, 0.78],
      [2, 0.26],
      [3, 0.26],
      [4, 2.07],
      [5, 47.47],
      [6, 1.18],
    ];
    const found = refusalsOf(jar(overOiled, { house: { wettingSparePpm: factorPpm(3_000_000) } }));
    expect(found).toEqual([{ kind: 'oil-short' }]);
  });
});

describe('the state of a jar', () => {
  const card = vesselJar([[1, 0.78]]).ask.card;
  const reading = (seq: number, lineNo: number, grams: number, weighingNo = 1): BenchFact => ({
    kind: 'reading',
    seq,
    lineNo,
    weighingNo,
    lotId: 'lot',
    massUg: gramsToUg(grams),
  });

  it('begins with nothing weighed and asks for the first line', () => {
    const state = foldReadings(card, []);
    expect(state).toMatchObject({ weighedUg: 0, nextLineNo: 1, isAllInBand: false, isGrown: false });
    expect(new Set(state.lines.map((line) => line.stage))).toEqual(new Set(['waiting']));
  });

  it('a later reading of the same weighing takes the place of the earlier one', () => {
    const state = foldReadings(card, [reading(1, 1, 0.7), reading(2, 1, 0.79)]);
    expect(state.lines[0]).toMatchObject({ weighedUg: 790_000, weighingsCount: 1, stage: 'in-band' });
    expect(state.nextLineNo).toBe(2);
  });

  it('a reading that was taken back counts no more; only the last fact can be', () => {
    const facts: BenchFact[] = [reading(1, 1, 0.78), reading(2, 2, 0.62)];
    expect(voidableSeq(facts)).toBe(2);
    const after: BenchFact[] = [...facts, { kind: 'void', seq: 3, voidedSeq: 2 }];
    expect(foldReadings(card, after).lines[1]).toMatchObject({ weighedUg: 0, stage: 'waiting' });
    expect(voidableSeq(after)).toBeNull();
  });

  it('light, heavy and in band; waste is counted apart', () => {
    const state = foldReadings(card, [
      reading(1, 1, 0.7),
      reading(2, 2, 0.3),
      { kind: 'waste', seq: 3, lineNo: 2, lotId: 'lot', massUg: massUg(40_000) },
    ]);
    expect(state.lines.slice(0, 3).map((line) => line.stage)).toEqual(['light', 'heavy', 'waiting']);
    expect([state.weighedUg, state.wasteUg]).toEqual([1_000_000, 40_000]);
  });

  it('a line from two lots is not light after the first', () => {
    const book = fernBook();
    const kaolin = { kind: 'stock', stockId: 'kaolin-neat' } as const;
    const lots = [
      ...fernLots(book).filter((lot) => lot.id !== 'lot-kaolin-neat'),
      aLot(kaolin, { id: 'k1', code: 'k1', leftUg: gramsToUg(0.5) }),
      aLot(kaolin, { id: 'k2', code: 'k2', leftUg: gramsToUg(0.5) }),
    ];
    const split = cardOf(fernAsk(book, { lots }));
    expect(foldReadings(split, [reading(1, 1, 0.5)]).lines[0]?.stage).toBe('partial');
    expect(foldReadings(split, [reading(1, 1, 0.5), reading(2, 1, 0.28, 2)]).lines[0]).toMatchObject({
      stage: 'in-band',
      weighedUg: 780_000,
      weighingsCount: 2,
    });
    expect(foldReadings(split, [reading(1, 1, 0.5), reading(2, 1, 0.1, 2)]).lines[0]?.stage).toBe('light');
  });

  it('after the batch grew, a line owes its top-up', () => {
    const before = [
      reading(1, 1, 0.78),
      reading(2, 2, 0.26),
      reading(3, 3, 0.26),
      reading(4, 4, 1.98),
      reading(5, 5, 47.47),
      reading(6, 6, 1.3),
    ];
    const { grown } = grownJar([...ALL.slice(0, 5), [6, 1.3]]);
    const grew: BenchFact = { kind: 'grown', seq: 7, batchUg: grown.batchUg, lines: grown.lines };
    const state = foldReadings(card, [...before, grew]);
    expect(state.lines.map((line) => line.stage)).toEqual(['partial', 'partial', 'partial', 'partial', 'partial', 'in-band', 'waiting']);
    expect(state).toMatchObject({ isGrown: true, batchUg: 65_000_000, nextLineNo: 1 });
    const topped = foldReadings(card, [...before, grew, reading(8, 1, 0.2, 2)]);
    expect(topped.lines[0]).toMatchObject({ stage: 'in-band', weighedUg: 980_000 });
    expect(topped.nextLineNo).toBe(2);
  });
});

describe('release', () => {
  it('hands over what was weighed, cream and oil apart, a correction of the pH included', () => {
    const { card, state } = jar(ALL);
    expect(weighedAmounts(card, state)).toEqual({
      ok: true,
      value: {
        stocks: new Map([
          ['kaolin-neat', 780_000n],
          ['illite-neat', 260_000n],
          ['chromium-20', 260_000n],
          ['niacinamide-neat', 1_040_000n],
          ['panthenol-75', 210_000n],
        ]),
        cream: 47_470_000n,
        oil: 1_980_000n,
      },
    });
    const corrected = foldReadings(card, [
      ...readingsOf(ALL),
      { kind: 'correction', seq: 20, stockId: 'panthenol-75', lotId: 'lot', massUg: massUg(100_000) },
    ]);
    const amounts = weighedAmounts(card, corrected);
    expect(amounts.ok && amounts.value.stocks.get('panthenol-75')).toBe(310_000n);
    expect(corrected.weighedUg).toBe(52_100_000);
  });

  it('refuses while a line is open or outside its band', () => {
    const { card, state } = jar([...ALL.slice(0, 5), [6, 1.3]]);
    expect(weighedAmounts(card, state)).toEqual({ ok: false, refusal: { lineNos: [6, 7] } });
  });

  it('a jar holds at least what its label says; the tolerable error of 4.5 g only marks how short it is (Directive 76/211/EEC, Annex I)', () => {
    const net = (grams: number, error: number | null = 4.5) =>
      netContentOf(gramsToUg(grams), gramsToUg(50), error === null ? null : gramsToUg(error));
    expect([net(50), net(51), net(49.99), net(45.5), net(45.49), net(1, null)]).toEqual([
      'full',
      'full',
      'short',
      'short',
      'far-short',
      'short',
    ]);
  });

  it('the worked card sums to its batch', () => {
    expect(sumMass(ALL.map(([, grams]) => gramsToUg(grams)))).toBe(52_000_000);
  });
});
