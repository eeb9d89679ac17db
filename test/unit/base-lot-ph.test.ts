// A lot of base cream that came in with another pH: the jar is judged with that lot, and a lot that does not suit is left standing.
import { describe, expect, it } from 'vitest';
import { basePoints } from '#lib/chemistry/base-points.ts';
import { baseShiftX100, predictedJarPh, shownPhX100 } from '#lib/chemistry/jar-ph.ts';
import { composePlan } from '#lib/composition/compose.ts';
import { phX100 } from '#lib/units/chemistry.ts';
import { judgeVariant, judgeWeighed } from '#lib/verdict/judge.ts';
import { cardFor, lotFindings } from '#lib/weighing/mixing-card.ts';
import { aBase } from '#test/support/a-base.ts';
import { aDemoBook, TEST_DAY, variantFrom } from '#test/support/a-demo-book.ts';
import { aBook, aPlannedJar } from '#test/support/a-jar.ts';
import { anAcidityTable, aWindow } from '#test/support/a-material.ts';
import { aLot, fernAsk } from '#test/support/fern-jar.ts';

/** 4 mmol/kg for each pH above a zero. */
const straight = (zeroX100: number) =>
  anAcidityTable(...Array.from({ length: 13 }, (_, index) => Math.round(((300 + 50 * index - zeroX100) / 100) * 4000)));
const bookAt = (zeroX100: number) => aBook({ rest: { base: aBase({ acidity: straight(zeroX100), ph: aWindow(330, 750) }) } });

describe('the table of a measured base', () => {
  it.each([570, 600, 637, 640])('read at %i, it predicts that pH for the base alone', (read) => {
    const book = bookAt(613);
    const shift = baseShiftX100(book, phX100(read)) ?? Number.NaN;
    expect(shift).toBe(read - 613);
    expect(shownPhX100(predictedJarPh(book, aPlannedJar(book), shift))).toBe(read);
  });

  it('not moved, it is the table itself', () => {
    const book = bookAt(613);
    expect(basePoints(book, 0)).toEqual(book.rulebook.base.acidity.umolPerKg.map((value) => BigInt(value) * 1_000_000n));
  });

  it('keeps its end values beyond its ends', () => {
    const points = basePoints(bookAt(600), 80);
    expect([points[0], points[1]]).toEqual([-12_000_000_000n, -12_000_000_000n]);
    expect(points[2]).toBe(-11_200_000_000n); // 4.00 asks the table at 3.20
  });

  it('is not known where the approved base never comes to zero', () => {
    expect(baseShiftX100(bookAt(950), phX100(600))).toBeNull();
    expect(baseShiftX100(bookAt(250), phX100(600))).toBeNull();
    expect(baseShiftX100(bookAt(900), phX100(890))).toBe(-10);
    expect(baseShiftX100(bookAt(300), phX100(310))).toBe(10);
  });
});

describe('lots of cream', () => {
  const book = aDemoBook();
  const plan =
    judgeVariant(book, variantFrom('fern-bank|niacinamide@20000+panthenol@3000'), { day: TEST_DAY }).plan ?? expect.fail('no plan');
  const jarSize = book.rulebook.jarSizes[0] ?? expect.fail('no size');
  const others = [...plan.lines.map(({ stockId }) => aLot({ kind: 'stock', stockId })), aLot({ kind: 'wetting-oil' })];
  const cream = (id: string, read: number | null) =>
    aLot(
      { kind: 'cream' },
      {
        id,
        code: id,
        measuredPhX100: read === null ? null : phX100(read),
      },
    );
  const ask = (...creams: readonly ReturnType<typeof cream>[]) =>
    fernAsk(book, { plan, jarSize, day: TEST_DAY, lots: [...others, ...creams] });
  const found = (...creams: readonly ReturnType<typeof cream>[]) => {
    const { limits, plan: _plan, ...shop } = ask(...creams);
    return lotFindings({ ...shop, limitsOf: () => limits })(plan);
  };
  const approved = shownPhX100(predictedJarPh(book, aPlannedJar(book))) ?? Number.NaN;

  it('not measured, or as approved: no reason', () => {
    expect(found(cream('plain', null))).toEqual([]);
    expect(found(cream('good', approved))).toEqual([]);
  });

  it('off by three: the reason names lot and reading', () => {
    expect(found(cream('off', approved - 300))).toEqual([
      { code: 'base-lot-ph', ruleId: 'off', facts: { lotId: 'off', measuredPhX100: approved - 300 } },
    ]);
  });

  it('a lot that suits is taken instead, and one that is not there at all is said so', () => {
    const card = cardFor(ask(cream('a-off', approved - 300), cream('b-good', approved)));
    expect(card.ok && card.value.lines.find((line) => line.source.kind === 'cream')?.lots.map((lot) => lot.lotId)).toEqual(['b-good']);
    expect(found().map((one) => one.code)).toEqual(['no-lot']);
  });

  it('at release without a reading the lot that was used decides', () => {
    const jar = composePlan(book, plan);
    const codes = (shift: number) =>
      judgeWeighed(book, { jar, measuredPhX100: null, baseShiftX100: shift }, { day: TEST_DAY }).map((one) => one.code);
    expect(codes(0)).toEqual([]);
    expect(codes(-300)).toContain('ph-too-low');
    expect(codes(300)).toContain('ph-too-high');
  });
});
