// The mixing card: what is on it, and every reason why a bench has none.
import { describe, expect, it } from 'vitest';
import { composePlan } from '#lib/composition/compose.ts';
import { openBook } from '#lib/rulebook/book.ts';
import { gramsToUg, massUg } from '#lib/units/mass.ts';
import { loadUnits, temperatureC, volumeUl } from '#lib/units/material-property.ts';
import { factorPpm, sharePpm } from '#lib/units/share.ts';
import { localDay } from '#lib/units/time.ts';
import { allocateLots } from '#lib/weighing/allocate-lots.ts';
import { benchLines } from '#lib/weighing/bench-line.ts';
import type { CardAsk } from '#lib/weighing/mixing-card.ts';
import { benchFindings, cardFor, lotFindings } from '#lib/weighing/mixing-card.ts';
import { mostCorrectionUg, phCheckFor } from '#lib/weighing/ph-due.ts';
import { aMaterial, anAcidityTable, aStock, aWindow, parts } from '#test/support/a-material.ts';
import { aJarSize, aScaleProfile } from '#test/support/an-offer.ts';
import type { FernBends } from '#test/support/fern-jar.ts';
import { aLot, FERN_DAY, fernAsk, fernBook, fernLots, fernPlan } from '#test/support/fern-jar.ts';
import { cardOf } from '#test/support/golden-cards.ts';

/** 100 g in all: every line of the fern jar can be weighed at 5 %. */
const BIG = { jarSize: aJarSize({ netUg: gramsToUg(98), overageUg: gramsToUg(2) }) };

const KAOLIN = { kind: 'stock', stockId: 'kaolin-neat' } as const;

const refusals = (bends: FernBends, overrides: Partial<CardAsk> = {}) => {
  const made = cardFor(fernAsk(fernBook(bends), overrides));
  return made.ok ? [] : made.refusal;
};

const fernCard = (bends: FernBends = {}, overrides: Partial<CardAsk> = {}) => cardOf(fernAsk(fernBook(bends), overrides));

describe('why a bench has no card', () => {
  it('has no scale', () => {
    expect(refusals({}, { scales: [] })).toEqual([{ code: 'no-scale', ruleId: 'bench', facts: {} }]);
  });

  it('cannot weigh so little: every line that is too small is named with what would do', () => {
    const found = refusals({}, { jarSize: aJarSize({ netUg: gramsToUg(15), overageUg: gramsToUg(1) }) });
    expect(found.map((one) => one.facts)).toEqual([
      { stockId: 'illite-neat', exactUg: 80_000, leastUg: 150_000 },
      { stockId: 'chromium-20', exactUg: 80_000, leastUg: 150_000 },
      { stockId: 'panthenol-75', exactUg: 64_000, leastUg: 150_000 },
    ]);
    expect(new Set(found.map((one) => one.code))).toEqual(new Set(['not-weighable']));
  });

  it('has a scale that bears too little, boats apart', () => {
    const found = refusals({}, { scales: [aScaleProfile({ capacityUg: gramsToUg(40) })] });
    expect(found).toEqual([
      { code: 'over-capacity', ruleId: 'bench', facts: { stockId: 'cream', massUg: 50_752_000, capacityUg: 40_000_000 } },
    ]);
  });

  it('has a vessel that is too small for 52 g at 1.01 g/mL', () => {
    const found = refusals({ vessel: { capacityUl: volumeUl(51_000) } });
    expect(found).toEqual([
      { code: 'vessel-too-small', ruleId: 'bench', facts: { vesselId: 'vessel-100', needUl: 51_486, capacityUl: 51_000 } },
    ]);
  });

  it('cannot hold a limit at the worst corner: the line and the limit are named', () => {
    const { caps } = fernBook().rulebook.base;
    const found = refusals({ base: { caps: { ...caps, irritancyUnits: loadUnits(20_000) } } });
    expect(found).toEqual([
      { code: 'band-too-narrow', ruleId: 'cap:irritancyUnits', facts: { stockId: 'niacinamide-neat', limitId: 'cap:irritancyUnits' } },
    ]);
  });

  it('has no lot: held, in quarantine, spent, expired and too small ones do not count', () => {
    const lots = fernLots(fernBook()).filter((lot) => lot.id !== 'lot-kaolin-neat');
    const useless = [
      aLot(KAOLIN, { status: 'held' }),
      aLot(KAOLIN, { status: 'quarantine' }),
      aLot(KAOLIN, { status: 'spent' }),
      aLot(KAOLIN, { expiresOn: localDay('2026-11-24') }),
      aLot(KAOLIN, { leftUg: gramsToUg(0.84) }),
    ];
    const found = refusals({}, { lots: [...lots, ...useless] });
    expect(found).toEqual([{ code: 'no-lot', ruleId: 'kaolin-neat', facts: { stockId: 'kaolin-neat', neededUg: 850_000 } }]);
  });

  it('has only a lot that would give the jar too short a life', () => {
    const lots = fernLots(fernBook()).map((lot) =>
      lot.source.kind === 'wetting-oil' ? { ...lot, openedOn: localDay('2026-09-01') } : lot,
    );
    const found = refusals({}, { lots });
    expect(found).toEqual([{ code: 'lot-life-short', ruleId: 'wetting-oil', facts: { stockId: 'wetting-oil', lifeDays: 5, minDays: 30 } }]);
  });

  it('speaks to the verdict in two voices: the bench, and the lots', () => {
    const book = fernBook();
    const { jarSize, lots, day, phDue, fullCleanAfterTags, warmestC } = fernAsk(book);
    const shop = { book, jarSize, lots, day, phDue, fullCleanAfterTags, warmestC, limitsOf: () => [] };
    const scales = [aScaleProfile()];
    const plan = fernPlan(book);
    expect(benchFindings({ ...shop, scales: [] })(plan).map((one) => one.code)).toEqual(['no-scale']);
    expect(benchFindings({ ...shop, scales })(plan)).toEqual([]);
    expect(lotFindings({ ...shop, scales })(plan)).toEqual([]);
    expect(lotFindings({ ...shop, scales, lots: [] })(plan).map((one) => one.code)).toEqual(Array(7).fill('no-lot'));
    expect(lotFindings({ ...shop, scales: [], lots: [] })(plan)).toEqual([]);
  });
});

describe('lots', () => {
  const book = fernBook();
  const ask = { source: KAOLIN, targetUg: gramsToUg(0.78), mostUg: gramsToUg(0.85), stepUg: massUg(10_000) };
  const lot = (code: string, grams: number, expires: string) =>
    aLot(KAOLIN, { id: code, code, leftUg: gramsToUg(grams), expiresOn: localDay(expires) });

  it('takes the first to expire among those that alone have enough', () => {
    const found = allocateLots(
      book,
      [lot('late', 5, '2027-09-01'), lot('early', 5, '2027-03-01'), lot('crumb', 0.5, '2027-02-01')],
      FERN_DAY,
      ask,
    );
    expect(found).toEqual({ ok: true, value: [{ lotId: 'early', lotCode: 'early', massUg: 780_000 }] });
  });

  it('an opened lot ends with its days in use', () => {
    const source = { kind: 'stock', stockId: 'panthenol-75' } as const;
    const open = { ...aLot(source, { code: 'open', id: 'open', openedOn: localDay('2026-07-01') }), leftUg: gramsToUg(5) };
    const closed = {
      ...aLot(source, { code: 'closed', id: 'closed', openedOn: null, expiresOn: localDay('2027-06-01') }),
      leftUg: gramsToUg(5),
    };
    const found = allocateLots(book, [closed, open], FERN_DAY, { ...ask, source });
    expect(found.ok && found.value[0]?.lotCode).toBe('open');
  });

  it('refuses a line whose scale could not bear a second weighing', () => {
    const source = { kind: 'stock', stockId: 'illite-neat' } as const;
    const bands = { ...book.rulebook.house.bands, usualPpm: factorPpm(300_000) };
    const rough = fernBook({ house: { bands }, niacinamideTauPpm: 300_000 });
    const others = fernLots(book).filter((one) => one.id !== 'lot-illite-neat');
    const half = (code: string) => aLot(source, { id: code, code, leftUg: gramsToUg(0.2) });
    const scales = [aScaleProfile({ repeatabilityUg: massUg(30_000) })];
    const refused = cardFor(fernAsk(rough, { scales, limits: [], lots: [...others, half('i1'), half('i2')] }));
    const facts = { stockId: 'illite-neat', exactUg: 260_000, leastUg: 282_843 };
    expect(refused).toEqual({ ok: false, refusal: [{ code: 'not-weighable', ruleId: 'bench', facts }] });
    expect(cardFor(fernAsk(rough, { scales, limits: [], lots: [...others, aLot(source)] })).ok).toBe(true);
  });
});

describe('what is on a card', () => {
  it('a line under 2 g goes into a boat, 2 g and more into the vessel, unless the stock says otherwise', () => {
    const big = fernCard({}, BIG);
    const containers = (card: typeof big) => card.lines.filter((line) => line.source.kind === 'stock').map((line) => line.container);
    expect(big.lines.find((line) => line.code === 'S-20')).toMatchObject({ targetUg: 2_000_000, container: 'vessel' });
    expect(containers(fernCard())).toEqual(Array(5).fill('boat'));
    expect(containers(fernCard({ stock: { weighedIn: 'vessel' } }))).toEqual(Array(5).fill('vessel'));
  });

  it('a stock with insoluble powder in it goes into the paste even where it says it is added last', () => {
    const lines = benchLines(fernBook({ stock: { addedTo: 'last' } }), fernPlan(fernBook()));
    expect(lines.map((line) => line.place)).toEqual([
      'paste-powder',
      'paste-powder',
      'paste-powder',
      'wetting-oil',
      'cream',
      'last',
      'last',
    ]);
  });

  it('flags a second person for look-alikes, for what the formulator flags, and near a legal limit or a cap', () => {
    const flagged = (bends: FernBends) =>
      fernCard(bends, BIG)
        .lines.filter((line) => line.needsSecondPerson)
        .map((line) => line.code);
    const { caps } = fernBook().rulebook.base;
    expect(flagged({})).toEqual(['S-20']);
    expect(flagged({ stock: { secondPerson: true } })).toHaveLength(5);
    expect(flagged({ base: { caps: { ...caps, pigmentPpm: sharePpm(1200) } } })).toEqual(['S-12', 'S-20']);
  });

  it('narrows the band of a line whose own level lies within 20 % of a cap, and of no other', () => {
    const { caps } = fernBook().rulebook.base;
    const tau = (pigment: number) =>
      fernCard({ base: { caps: { ...caps, pigmentPpm: sharePpm(pigment) } } }, BIG).lines.find((line) => line.code === 'S-12')?.tauPpm;
    expect([tau(1200), tau(1201)]).toEqual([50_000, 100_000]);
  });

  it('names the room only where something would suffer from warmth, and taps only where it is warm', () => {
    const tap = (warmestC: number | null) =>
      fernCard({}, { warmestC: warmestC === null ? null : temperatureC(warmestC) }).steps.find((step) => step.kind === 'temperature');
    expect(tap(24)).toEqual({ kind: 'temperature', atMostC: 60, isTapNeeded: false });
    expect(tap(25)).toMatchObject({ isTapNeeded: true });
    expect(tap(null)).toMatchObject({ isTapNeeded: true });
  });

  it('works in the order paste, cream, additions', () => {
    const card = fernCard();
    expect(card.steps.map((step) => step.kind)).toEqual([
      'fitness',
      'clearance',
      'protection',
      'bind-jar',
      'weigh',
      'weigh',
      'weigh',
      'weigh',
      'paste',
      'cream',
      'temperature',
      'weigh',
      'weigh',
      'dissolve',
      'draw-down',
      'inspect',
      'fill',
      'release',
    ]);
  });

  it('is plain JSON', () => {
    const card = fernCard();
    expect(JSON.parse(JSON.stringify(card))).toEqual(card);
  });
});

describe('which jars are measured', () => {
  const jarOf = (house: FernBends['house']) => {
    const book = fernBook({ house });
    return { book, jar: composePlan(book, fernPlan(book)) };
  };
  const rule = { method: 'neat', when: 'acid-or-narrow-else-first-of-day', narrowWindowX100: 200 } as const;

  it('every jar where the house says so', () => {
    const { book, jar } = jarOf({ phMeasured: { ...rule, when: 'every-jar' } });
    expect(phCheckFor(book, jar, false)).toEqual({ minPhX100: 500, maxPhX100: 700, method: 'neat' });
  });

  it('else the first of base lot and day, and windows narrower than the house’s figure', () => {
    const wide = jarOf({ phMeasured: rule });
    expect(phCheckFor(wide.book, wide.jar, false)).toBeNull();
    expect(phCheckFor(wide.book, wide.jar, true)).not.toBeNull();
    const narrow = jarOf({ phMeasured: { ...rule, narrowWindowX100: 201 } });
    expect(phCheckFor(narrow.book, narrow.jar, false)).not.toBeNull();
  });

  it('and any jar with an acid among its additions', () => {
    const { book } = jarOf({ phMeasured: rule });
    const acid = aMaterial('lactic-acid', {
      classes: ['acid'],
      substances: [],
      acidity: anAcidityTable(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0),
      phFresh: aWindow(330, 750),
    });
    const sour = openBook({
      ...book.rulebook,
      materials: [...book.rulebook.materials, acid],
      stocks: [aStock('lactic-acid', { parts: parts({ 'lactic-acid': 1_000_000 }) })],
    });
    const line = { stockId: 'lactic-acid-neat', sharePpm: sharePpm(5000), purpose: 'active', materialId: 'lactic-acid' } as const;
    expect(phCheckFor(sour, composePlan(sour, { lines: [line] }), false)).not.toBeNull();
    expect(phCheckFor(sour, composePlan(sour, { lines: [] }), false)).toBeNull();
  });

  it('a correction is a share of what is in the vessel, down to whole µg', () => {
    const book = fernBook({ house: { phCorrection: { stockId: 'citrate', maxSharePpm: sharePpm(5000) } } });
    expect(mostCorrectionUg(book, massUg(52_000_199))).toBe(260_000);
    expect(mostCorrectionUg(fernBook(), gramsToUg(52))).toBeNull();
  });
});
