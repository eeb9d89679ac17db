// Laws of weighing: what holds for every mass, scale, tolerance, limit and reading, checked against brute force where there is a slow way.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson } from '#lib/base/canonical-json.ts';
import { powderPart } from '#lib/chemistry/caps.ts';
import { compose, composePlan } from '#lib/composition/compose.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { need, openBook } from '#lib/rulebook/book.ts';
import type { Plan } from '#lib/rulebook/variant.ts';
import { exactFromText, exactMass, exactOfUg, exactText, GRAINS_PER_UG } from '#lib/units/exact-mass.ts';
import { gramsToUg, massUg } from '#lib/units/mass.ts';
import { factorPpm, partToPpm, sharePpm, WHOLE_PPM } from '#lib/units/share.ts';
import { judgeVariant, judgeWeighed } from '#lib/verdict/judge.ts';
import { bandOf, nearestStep, readingsIn } from '#lib/weighing/band.ts';
import { isInPaste } from '#lib/weighing/bench-line.ts';
import type { Card } from '#lib/weighing/card.ts';
import { creamPortions } from '#lib/weighing/cream-portions.ts';
import type { MassLimit } from '#lib/weighing/mass-limit.ts';
import { pushOf } from '#lib/weighing/mass-limit.ts';
import { massLimits } from '#lib/weighing/mass-limits.ts';
import { mendOptions } from '#lib/weighing/mis-weigh.ts';
import { cardFor } from '#lib/weighing/mixing-card.ts';
import { foldReadings } from '#lib/weighing/readings.ts';
import { weighedAmounts } from '#lib/weighing/release-jar.ts';
import { canWeigh, leastUg } from '#lib/weighing/scale.ts';
import type { CornerLine } from '#lib/weighing/worst-corner.ts';
import { narrowBands, worstSum } from '#lib/weighing/worst-corner.ts';
import { aDemoBook, TEST_DAY } from '#test/support/a-demo-book.ts';
import { allVariants } from '#test/support/all-variants.ts';
import { aJarSize, aScaleProfile } from '#test/support/an-offer.ts';
import { aLot, FERN_DAY, fernAsk, fernBook, fernPlan } from '#test/support/fern-jar.ts';

const SEED = 20_261_125;
const runs = (numRuns: number) => ({ seed: SEED, numRuns });

const steps = fc.constantFrom(100, 1000, 2000, 5000, 10_000, 100_000).map(massUg);
const taus = fc.integer({ min: 1000, max: 200_000 }).map(factorPpm);
const exacts = fc.bigInt({ min: 1n, max: 100_000_000n * GRAINS_PER_UG }).map(exactMass);
const scales = fc
  .record({ step: steps, repeatability: fc.integer({ min: 0, max: 20_000 }) })
  .map(({ step, repeatability }) => aScaleProfile({ stepUg: step, repeatabilityUg: massUg(repeatability) }));

describe('one line', () => {
  it('an exact mass crosses as text without loss', () => {
    fc.assert(
      fc.property(exacts, (exact) => {
        expect(exactFromText(exactText(exact))).toBe(exact);
      }),
      runs(200),
    );
  });

  it('a target is never off by more than half a step', () => {
    fc.assert(
      fc.property(exacts, steps, (exact, step) => {
        const off = 2n * (exactOfUg(nearestStep(exact, step)) - exact);
        expect(off > -exactOfUg(step) && off <= exactOfUg(step)).toBe(true);
      }),
      runs(500),
    );
  });

  it('band ends are readings inside the tolerance, and the next readings outwards are not', () => {
    fc.assert(
      fc.property(exacts, taus, steps, (exact, tau, step) => {
        const { loUg, hiUg } = bandOf(exact, tau, step);
        expect([loUg % step, hiUg % step]).toEqual([0, 0]);
        const ppm = BigInt(WHOLE_PPM);
        const lowest = exact * (ppm - BigInt(tau));
        const highest = exact * (ppm + BigInt(tau));
        expect(exactOfUg(loUg) * ppm >= lowest && exactOfUg(hiUg) * ppm <= highest).toBe(true);
        expect(BigInt(loUg - step) * GRAINS_PER_UG * ppm < lowest && BigInt(hiUg + step) * GRAINS_PER_UG * ppm > highest).toBe(true);
      }),
      runs(500),
    );
  });

  it('what can be weighed has three readings and its target in the band; more of it can be weighed too', () => {
    fc.assert(
      fc.property(exacts, taus, scales, fc.integer({ min: 1, max: 5 }), (exact, tau, scale, weighings) => {
        fc.pre(canWeigh(scale, exact, tau, weighings));
        const band = bandOf(exact, tau, scale.stepUg);
        const target = nearestStep(exact, scale.stepUg);
        expect(readingsIn(band, scale.stepUg)).toBeGreaterThanOrEqual(3);
        expect(target >= band.loUg && target <= band.hiUg).toBe(true);
        expect(canWeigh(scale, exactMass(exact + 1n), tau, weighings)).toBe(true);
        expect(canWeigh(scale, exact, tau, 1)).toBe(true);
      }),
      runs(500),
    );
  });

  it('the least mass is the very first that can be weighed', () => {
    fc.assert(
      fc.property(taus, scales, fc.integer({ min: 1, max: 5 }), (tau, scale, weighings) => {
        const least = leastUg(scale, tau, weighings);
        expect(canWeigh(scale, exactOfUg(least), tau, weighings)).toBe(true);
        expect(canWeigh(scale, exactOfUg(massUg(least - 1)), tau, weighings)).toBe(false);
      }),
      runs(500),
    );
  });

  it('cream portions sum to the cream; each but the last equals what is in the vessel', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 1, max: 20_000 }),
        fc.integer({ min: 0, max: 100 }),
        (paste, cream, least) => {
          const step = massUg(10_000);
          const portions = creamPortions({
            inVesselUg: massUg(paste * step),
            creamUg: massUg(cream * step),
            stepUg: step,
            leastUg: massUg(least * step),
          });
          expect(portions.reduce((sum, one) => sum + one, 0)).toBe(cream * step);
          portions.reduce((inVessel, portion, index) => {
            if (index < portions.length - 1) expect(portion).toBe(inVessel);
            return inVessel + portion;
          }, paste * step);
          if (portions.length > 1) expect(portions.at(-1)).toBeGreaterThanOrEqual(least * step);
        },
      ),
      runs(300),
    );
  });
});

const LINE_IDS = ['a', 'b', 'c', 'd', 'e'];

const cornerLine = (lineId: string): fc.Arbitrary<CornerLine> =>
  fc
    .record({
      step: fc.constantFrom(1000, 10_000),
      target: fc.integer({ min: 20, max: 400 }),
      below: fc.integer({ min: 1, max: 20 }),
      above: fc.integer({ min: 1, max: 20 }),
    })
    .map(({ step, target, below, above }) => ({
      lineId,
      stepUg: massUg(step),
      targetUg: massUg(target * step),
      band: { loUg: massUg((target - Math.min(below, target)) * step), hiUg: massUg((target + above) * step) },
    }));

/** Limits that the targets themselves hold, some of them by very little. */
const limitFor = (lines: readonly CornerLine[], id: string): fc.Arbitrary<MassLimit> =>
  fc
    .record({
      direction: fc.constantFrom<'at-most' | 'at-least'>('at-most', 'at-least'),
      contents: fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: lines.length, maxLength: lines.length }),
      room: fc.integer({ min: 0, max: 150 }),
      code: fc.constantFrom<'law-limit' | 'cap-exceeded'>('law-limit', 'cap-exceeded'),
    })
    .map(({ direction, contents, room, code }) => {
      const total = lines.reduce((sum, line) => sum + line.targetUg, 0);
      const held = lines.reduce((sum, line, index) => sum + line.targetUg * (contents[index] ?? 0), 0);
      const sign = direction === 'at-most' ? 1 : -1;
      const allowed = BigInt(Math.max(0, Math.round((held / total) * (1000 + sign * room) * 10)));
      const shares = new Map(lines.map((line, index) => [line.lineId, { content: BigInt(contents[index] ?? 0) * 10_000n, allowed }]));
      return { id, code, basis: 'cap', direction, whole: 10_000_000n, shares };
    });

const corners = fc.integer({ min: 1, max: 5 }).chain((count) =>
  fc.tuple(...LINE_IDS.slice(0, count).map(cornerLine)).chain((lines) =>
    fc.record({
      lines: fc.constant(lines as readonly CornerLine[]),
      limits: fc.tuple(...['p', 'q', 'r', 's'].map((id) => limitFor(lines, id))),
    }),
  ),
);

/** The largest sum over all 2^n corners, the slow way. */
function bruteWorst(limit: MassLimit, lines: readonly CornerLine[]): bigint {
  const sums = Array.from({ length: 2 ** lines.length }, (_, corner) =>
    lines.reduce(
      (sum, line, index) => sum + pushOf(limit, line.lineId) * BigInt(corner & (1 << index) ? line.band.hiUg : line.band.loUg),
      0n,
    ),
  );
  return sums.sort((a, b) => (a > b ? -1 : 1))[0] ?? 0n;
}

/** Every line at its target: narrower than this no band may be asked to be, give or take the three readings. */
function mostNarrowed(limit: MassLimit, line: CornerLine): CornerLine {
  const push = pushOf(limit, line.lineId);
  const { loUg, hiUg } = line.band;
  if (limit.direction === 'at-most' && push > 0n)
    return { ...line, band: { loUg, hiUg: massUg(Math.min(hiUg, Math.max(line.targetUg, loUg + 2 * line.stepUg))) } };
  if (limit.direction === 'at-least' && push < 0n)
    return { ...line, band: { loUg: massUg(Math.max(loUg, Math.min(line.targetUg, hiUg - 2 * line.stepUg))), hiUg } };
  return line;
}

describe('worst corner', () => {
  it('is the largest sum over all corners', () => {
    fc.assert(
      fc.property(corners, ({ lines, limits }) => {
        for (const limit of limits) expect(worstSum(limit, lines)).toBe(bruteWorst(limit, lines));
      }),
      runs(200),
    );
  });

  it('narrowed bands hold every limit in every corner, keep three readings and their target, and never widen', () => {
    fc.assert(
      fc.property(corners, ({ lines, limits }) => {
        const narrowed = narrowBands(lines, limits);
        if (!narrowed.ok) return;
        for (const limit of limits) expect(bruteWorst(limit, narrowed.value) <= 0n).toBe(true);
        narrowed.value.forEach((line, index) => {
          const before = lines[index];
          expect(before && line.band.loUg >= before.band.loUg && line.band.hiUg <= before.band.hiUg).toBe(true);
          if (JSON.stringify(before) === JSON.stringify(line)) return;
          expect(readingsIn(line.band, line.stepUg)).toBeGreaterThanOrEqual(3);
          expect(line.targetUg >= line.band.loUg && line.targetUg <= line.band.hiUg).toBe(true);
        });
      }),
      runs(400),
    );
  });

  it('refuses only where the lines of that limit have nothing left to give', () => {
    fc.assert(
      fc.property(corners, ({ lines, limits }) => {
        const narrowed = narrowBands(lines, limits);
        if (narrowed.ok) return;
        const { limit } = narrowed.refusal;
        expect(
          bruteWorst(
            limit,
            lines.map((line) => mostNarrowed(limit, line)),
          ) > 0n,
        ).toBe(true);
      }),
      runs(400),
    );
  });

  it('does not depend on the order of limits', () => {
    fc.assert(
      fc.property(corners, ({ lines, limits }) => {
        const one = narrowBands(lines, limits);
        const other = narrowBands(lines, [...limits].reverse());
        expect(other).toEqual(one);
      }),
      runs(200),
    );
  });
});

const DEMO = aDemoBook();
const PLANS: readonly Plan[] = [...allVariants(DEMO)].flatMap((variant) => {
  const { plan, verdict } = judgeVariant(DEMO, variant, { day: TEST_DAY });
  return plan && verdict.kind === 'permitted' ? [plan] : [];
});

const benches = fc.record({
  plan: fc.constantFrom(...PLANS),
  net: fc.integer({ min: 15, max: 100 }).map(gramsToUg),
  scales: fc.constantFrom(
    [aScaleProfile()],
    [
      aScaleProfile(),
      aScaleProfile({ id: 'fine', code: 'S1', stepUg: massUg(1000), repeatabilityUg: massUg(800), capacityUg: gramsToUg(120) }),
    ],
    [aScaleProfile({ id: 'fine', code: 'S1', stepUg: massUg(1000), repeatabilityUg: massUg(800) })],
  ),
});

function lotsOf(book: Book) {
  const sources = [
    ...book.rulebook.stocks.map((stock) => ({ kind: 'stock', stockId: stock.id }) as const),
    { kind: 'cream' } as const,
    { kind: 'wetting-oil' } as const,
  ];
  return sources.map((source) => aLot(source, { openedOn: null }));
}

const LOTS = lotsOf(DEMO);

function demoCard({
  plan,
  net,
  scales: bench,
}: {
  plan: Plan;
  net: ReturnType<typeof massUg>;
  scales: readonly ReturnType<typeof aScaleProfile>[];
}) {
  const jarSize = aJarSize({ netUg: net, vesselId: DEMO.rulebook.vessels[0]?.id ?? '' });
  const limits = massLimits({ book: DEMO, plan, markets: DEMO.rulebook.markets, day: TEST_DAY });
  return cardFor({
    book: DEMO,
    plan,
    jarSize,
    scales: bench,
    limits,
    lots: LOTS,
    day: TEST_DAY,
    phDue: null,
    fullCleanAfterTags: [],
    warmestC: null,
  });
}

/** Each line at some reading of its band; 0 = the lower end, 1000 = the upper. */
const readAt = (card: Card, places: readonly number[]) =>
  foldReadings(
    card,
    card.lines.map(({ lineNo, loUg, hiUg, scale }, index) => {
      const readings = Math.floor((hiUg - loUg) / scale.stepUg);
      const at = loUg + Math.round((readings * (places[index] ?? 0)) / 1000) * scale.stepUg;
      return { kind: 'reading', seq: index + 1, lineNo, weighingNo: 1, lotId: 'lot', massUg: massUg(at) };
    }),
  );

const places = fc.array(fc.oneof(fc.constantFrom(0, 1000), fc.integer({ min: 0, max: 1000 })), { minLength: 12, maxLength: 12 });

/** Findings that no reading inside the bands may draw; free acid and pH are not linear and may. */
const LINEAR = new Set([
  'law-limit',
  'cap-exceeded',
  'pair-limit-sum',
  'pair-limit-first',
  'pair-limit-second',
  'preservative-too-low',
  'powder-beyond-challenge',
  'swelling-clay-beyond-challenge',
  'allowance-exceeded',
]);

describe('mixing card', () => {
  it('the demonstration has cards to check', () => {
    expect(PLANS.length).toBeGreaterThan(20);
    expect(PLANS.filter((plan) => demoCard({ plan, net: gramsToUg(50), scales: [aScaleProfile()] }).ok).length).toBeGreaterThan(20);
  });

  it('lines sum to the batch, up to the step of the cream; none is off by a full step; lots sum to their line', () => {
    fc.assert(
      fc.property(benches, (bench) => {
        const made = demoCard(bench);
        if (!made.ok) return;
        const { lines, totalUg, batchUg } = made.value;
        const cream = lines.find((line) => line.source.kind === 'cream');
        expect(lines.reduce((sum, line) => sum + line.targetUg, 0)).toBe(totalUg);
        expect(batchUg - totalUg).toBeGreaterThanOrEqual(0);
        expect(batchUg - totalUg).toBeLessThan(cream?.scale.stepUg ?? 0);
        for (const line of lines) {
          if (line !== cream) expect(Math.abs(line.targetUg - Number(line.exactUgText))).toBeLessThan(line.scale.stepUg);
          expect(line.targetUg >= line.loUg && line.targetUg <= line.hiUg).toBe(true);
          expect(line.lots.reduce((sum, lot) => sum + lot.massUg, 0)).toBe(line.targetUg);
        }
        expect(lines.reduce((sum, line) => sum + BigInt(line.shareE12Text), 0n)).toBe(10n ** 12n);
      }),
      runs(150),
    );
  });

  it('no insoluble powder after the first cream line (common practice, no source)', () => {
    fc.assert(
      fc.property(benches, (bench) => {
        const made = demoCard(bench);
        if (!made.ok) return;
        const afterCream = made.value.lines.slice(made.value.lines.findIndex((line) => line.source.kind === 'cream'));
        const kinds = afterCream
          .flatMap(({ source }) => (source.kind === 'stock' ? need(DEMO.stocks, source.stockId).parts : []))
          .map((one) => need(DEMO.materials, one.materialId).kind);
        expect(kinds.filter((kind) => kind === 'insoluble-powder' || kind === 'pigment')).toEqual([]);
      }),
      runs(100),
    );
  });

  it('the same ask gives the same bytes', () => {
    fc.assert(
      fc.property(benches, (bench) => {
        expect(canonicalJson(demoCard(structuredClone(bench)))).toBe(canonicalJson(demoCard(bench)));
      }),
      runs(30),
    );
  });

  it('a jar weighed anywhere inside its bands breaks no linear limit of the verdict', () => {
    fc.assert(
      fc.property(benches, places, (bench, at) => {
        const made = demoCard(bench);
        if (!made.ok) return;
        const amounts = weighedAmounts(made.value, readAt(made.value, at));
        expect(amounts.ok).toBe(true);
        if (!amounts.ok) return;
        const found = judgeWeighed(DEMO, { jar: compose(DEMO, amounts.value), measuredPhX100: null }, { day: TEST_DAY });
        expect(found.filter((one) => LINEAR.has(one.code) && !(one.code === 'cap-exceeded' && one.facts.cap === 'freeAcidPpm'))).toEqual(
          [],
        );
      }),
      runs(200),
    );
  });

  it('nor where caps, the law and the ceiling lie close above the recipe', () => {
    const room = fc.integer({ min: 0, max: 80 });
    const seen = { made: 0, refused: 0 };
    fc.assert(
      fc.property(places, room, room, room, (at, powderRoom, lawRoom, ceilingRoom) => {
        const book = tightBook({ powderRoom, lawRoom, ceilingRoom });
        const ask = fernAsk(book);
        const made = cardFor(ask);
        if (!made.ok) {
          seen.refused += 1;
          expect(made.refusal.map((one) => one.code)).toEqual(['band-too-narrow']);
          return;
        }
        const amounts = weighedAmounts(made.value, readAt(made.value, at));
        if (!amounts.ok) throw new Error('a reading inside its band was not accepted');
        seen.made += 1;
        const found = judgeWeighed(book, { jar: compose(book, amounts.value), measuredPhX100: null }, { day: FERN_DAY });
        expect(found.filter((one) => LINEAR.has(one.code))).toEqual([]);
      }),
      runs(150),
    );
    expect(Math.min(seen.made, seen.refused)).toBeGreaterThan(5);
  });
});

/** The fern jar under limits that lie so many thousandths above it. */
function tightBook({ powderRoom, lawRoom, ceilingRoom }: { powderRoom: number; lawRoom: number; ceilingRoom: number }): Book {
  const plain = fernBook();
  const jar = composePlan(plain, fernPlan(plain));
  const above = (ppm: number, room: number) => sharePpm(Math.ceil((ppm * (1000 + room)) / 1000));
  const base = {
    ...plain.rulebook.base,
    caps: { ...plain.rulebook.base.caps, powderPpm: above(partToPpm(powderPart(plain, jar), jar.whole), powderRoom) },
    ceilingPpm: above(partToPpm(jar.additions, jar.whole), ceilingRoom),
  };
  const limits = plain.rulebook.limits.map((row) =>
    row.kind === 'substance'
      ? { ...row, maxPpm: above(20_000, lawRoom), substances: [{ substanceId: 'niacinamide', factorPpm: factorPpm(WHOLE_PPM) }] }
      : row,
  );
  return openBook({ ...plain.rulebook, base, limits });
}

describe('a batch made larger', () => {
  it('leaves every line inside its new band, adds to every line or leaves it, and holds every limit as weighed', () => {
    const book = fernBook({ stock: { weighedIn: 'vessel' } });
    const ask = fernAsk(book);
    const made = cardFor(ask);
    if (!made.ok) throw new Error('no card');
    const card = made.value;
    const seen = { grown: 0, secondPaste: 0, discarded: 0 };
    fc.assert(
      fc.property(fc.integer({ min: 1, max: card.lines.length }), fc.integer({ min: 1, max: 60 }), places, (heavyNo, over, at) => {
        const full = readAt(card, at);
        const facts = card.lines.slice(0, heavyNo).map((line, index) => {
          const weighed = line.lineNo === heavyNo ? line.hiUg + over * line.scale.stepUg : (full.lines[index]?.weighedUg ?? 0);
          return { kind: 'reading', seq: index + 1, lineNo: line.lineNo, weighingNo: 1, lotId: 'lot', massUg: massUg(weighed) } as const;
        });
        const state = foldReadings(card, facts);
        const [best] = mendOptions({ book, card, state, limits: ask.limits, lots: ask.lots ?? [], day: FERN_DAY }, heavyNo);
        if (best?.kind !== 'grow') {
          seen.discarded += 1;
          expect(best).toMatchObject({ kind: 'discard', growRefusals: [expect.anything()] });
          return;
        }
        const { grown } = best;
        seen.grown += 1;
        if (grown.needsSecondPaste) seen.secondPaste += 1;
        expect(grown.batchUg).toBeGreaterThan(card.batchUg);
        const topUps = grown.lines.flatMap((line, index) =>
          line.topUpUg > 0
            ? [{ kind: 'reading', seq: 100 + index, lineNo: line.lineNo, weighingNo: 2, lotId: 'lot', massUg: line.topUpUg } as const]
            : [],
        );
        const after = foldReadings(card, [...facts, { kind: 'grown', seq: 99, batchUg: grown.batchUg, lines: grown.lines }, ...topUps]);
        expect(after.isAllInBand).toBe(true);
        expect(after.weighedUg).toBe(grown.totalUg);
        const amounts = weighedAmounts(card, after);
        if (!amounts.ok) throw new Error('not all in band');
        const found = judgeWeighed(book, { jar: compose(book, amounts.value), measuredPhX100: null }, { day: FERN_DAY });
        expect(found.filter((one) => LINEAR.has(one.code))).toEqual([]);
        const cream = card.lines.findIndex((line) => line.source.kind === 'cream');
        if ((grown.lines[cream]?.topUpUg ?? 0) > 0) expect(grown.totalUg).toBe(grown.batchUg);
        const isAfterCream = heavyNo > cream;
        if (!isAfterCream) expect(grown.needsSecondPaste).toBe(false);
        for (const [index, line] of grown.lines.entries()) {
          const place = card.lines[index]?.place ?? 'last';
          if (line.into === null || !isInPaste(place)) continue;
          const isLoneOil = isAfterCream && !grown.needsSecondPaste;
          expect(line.into).toBe(isLoneOil ? 'vessel' : isAfterCream ? 'second-paste' : 'paste');
          if (isLoneOil) expect(place).toBe('wetting-oil');
        }
      }),
      runs(300),
    );
    expect(Math.min(seen.grown, seen.secondPaste, seen.discarded)).toBeGreaterThan(10);
  });
});
