// Linear limits of a jar: each is the verdict's own figure over lines, and the most broken one decides first.
import { describe, expect, it } from 'vitest';
import { phBounds, predictedJarPh } from '#lib/chemistry/jar-ph.ts';
import { composePlan } from '#lib/composition/compose.ts';
import type { Book } from '#lib/rulebook/book.ts';
import { openBook } from '#lib/rulebook/book.ts';
import type { ClassRule } from '#lib/rulebook/judgement.ts';
import type { Stock } from '#lib/rulebook/material.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { massUg } from '#lib/units/mass.ts';
import { loadUnits, mgPer100g, unitsPerPpm } from '#lib/units/material-property.ts';
import { factorPpm, sharePpm } from '#lib/units/share.ts';
import { localDay } from '#lib/units/time.ts';
import { benchLines } from '#lib/weighing/bench-line.ts';
import type { MassLimit } from '#lib/weighing/mass-limit.ts';
import { pushOf } from '#lib/weighing/mass-limit.ts';
import { massLimits } from '#lib/weighing/mass-limits.ts';
import { cardFor } from '#lib/weighing/mixing-card.ts';
import type { CornerLine } from '#lib/weighing/worst-corner.ts';
import { narrowBands, worstSum } from '#lib/weighing/worst-corner.ts';
import { aClassRule, aPairJudgement } from '#test/support/a-judgement.ts';
import { FERN_DAY, fernAsk, fernBook, fernPlan } from '#test/support/fern-jar.ts';

const BOOK = fernBook();
const PLAN = fernPlan(BOOK);
const bent = (bend: Partial<Rulebook>): Book => openBook({ ...BOOK.rulebook, ...bend });
const limitsOf = (book: Book, day = FERN_DAY) => massLimits({ book, plan: PLAN, markets: book.rulebook.markets, day });
const ids = (book: Book, day = FERN_DAY) => limitsOf(book, day).map((limit) => limit.id);

/** What the planned jar holds of a limit, and what it may hold, in ppm (or units). */
function figures(limit: MassLimit, book: Book): { found: number; allowed: number } {
  const lines = benchLines(book, PLAN);
  const sum = (of: 'content' | 'allowed') =>
    lines.reduce((total, line) => total + line.share * (limit.shares.get(line.lineId)?.[of] ?? 0n), 0n);
  const ppm = (total: bigint) => Number((total * 1000n) / (limit.whole * 10n ** 6n)) / 1000;
  return { found: ppm(sum('content')), allowed: ppm(sum('allowed')) };
}

const figuresOf = (id: string, book: Book = BOOK) => {
  const limit = limitsOf(book).find((one) => one.id === id);
  if (!limit) throw new Error(`no limit ${id} among ${ids(book).join(', ')}`);
  return figures(limit, book);
};

describe('where limits come from', () => {
  it('law, caps, preservation and the ceiling of the allowance, as the jar and its rules have them', () => {
    expect(figuresOf('law:eu-phenoxyethanol')).toEqual({ found: 8559, allowed: 10_000 });
    expect(figuresOf('cap:powderPpm')).toEqual({ found: 25_000, allowed: 50_000 });
    expect(figuresOf('cap:pigmentPpm')).toEqual({ found: 1000, allowed: 5000 });
    expect(figuresOf('cap:irritancyUnits')).toEqual({ found: 20_000, allowed: 60_000 });
    expect(figuresOf('preservative:phenoxyethanol')).toEqual({ found: 8559, allowed: 8000 });
    expect(figuresOf('challenge:powder')).toEqual({ found: 25_000, allowed: 50_000 });
    expect(figuresOf('ceiling')).toEqual({ found: 49_000, allowed: 56_000 });
  });

  it('what no line brings gives no limit: there is no swelling clay and no ionic load in this jar', () => {
    expect(ids(BOOK)).not.toContain('cap:swellingClayPpm');
    expect(ids(BOOK)).not.toContain('challenge:swelling-clay');
    expect(ids(BOOK)).not.toContain('cap:ionicUnits');
  });

  it('a load counts units per ppm', () => {
    const materials = BOOK.rulebook.materials.map((one) => (one.id === 'panthenol' ? { ...one, ionicUnitsPerPpm: unitsPerPpm(7) } : one));
    const book = bent({ materials, base: { ...BOOK.rulebook.base, caps: { ...BOOK.rulebook.base.caps, ionicUnits: loadUnits(30_000) } } });
    expect(figuresOf('cap:ionicUnits', book)).toEqual({ found: 21_000, allowed: 30_000 });
  });

  it('a legal limit counts what it is expressed as, in the markets asked and while it is in force', () => {
    const row = BOOK.rulebook.limits.find((one) => one.kind === 'substance');
    if (row?.kind !== 'substance') throw new Error('no substance limit');
    const halves = { ...row, substances: [{ substanceId: 'niacinamide', factorPpm: factorPpm(847_464) }] };
    expect(figuresOf('law:eu-phenoxyethanol', bent({ limits: [halves] }))).toEqual({ found: 16_949.28, allowed: 10_000 });
    expect(ids(bent({ limits: [{ ...halves, fromDay: localDay('2026-11-26') }] }))).not.toContain('law:eu-phenoxyethanol');
    expect(massLimits({ book: BOOK, plan: PLAN, markets: [], day: FERN_DAY }).map((limit) => limit.basis)).not.toContain('law');
  });

  it('what dissolves is held against the water of the jar, and waived where it is meant to stay suspended', () => {
    const soluble = (solubility: Partial<Record<'suspendedEvidence', string>>) =>
      bent({
        substances: BOOK.rulebook.substances.map((one) =>
          one.id === 'niacinamide' ? { ...one, solubility: { neutralMgPer100g: mgPer100g(3000), ...solubility } } : one,
        ),
      });
    // Water: 93.1 % of 95.1 % base and a quarter of 0.4 % panthenol solution; 3 g dissolve in 100 g.
    const water = composePlan(BOOK, PLAN).substances.get('water') ?? 0n;
    const share = Number((water * 10n ** 9n) / composePlan(BOOK, PLAN).whole) / 1e9;
    const { found, allowed } = figuresOf('solubility:niacinamide', soluble({}));
    expect(found).toBe(20_000);
    expect(allowed).toBeCloseTo(share * 30_000, 1);
    expect(share).toBeCloseTo(0.951 * 0.931 + 0.001, 6);
    expect(ids(soluble({ suspendedEvidence: 'stability-1' }))).not.toContain('solubility:niacinamide');
  });

  it('an acid counts as at the lowest pH that the plan may have, rounded up', () => {
    const acid = BOOK.rulebook.substances.map((one) => (one.id === 'niacinamide' ? { ...one, acid: { pkaX1000: 5000 } } : one));
    const book = bent({ substances: acid });
    const bounds = phBounds(predictedJarPh(book, composePlan(book, PLAN)));
    const lowest = bounds.kind === 'known' ? bounds.lowest : expect.fail('no pH');
    const freePpm = Math.ceil(1_000_000 / (1 + 10 ** (lowest - 5)));
    expect(freePpm).toBeGreaterThan(1000);
    expect(figuresOf('cap:freeAcidPpm', book)).toEqual({
      found: (20_000 * freePpm) / 1_000_000,
      allowed: book.rulebook.base.caps.freeAcidPpm,
    });
  });

  it('exposure: the share at which the margin falls to its floor, and the band that keeps clear of it', () => {
    // The worked example of the margin (8 g, a tenth stays, half goes through the skin, 60 kg): 2 % of it at a PoD of 14 mg is 105 of 100.
    const exposure = { systemicPodUgPerKgDay: 14_000, dermalAbsorptionPpm: sharePpm(500_000), source: 'invented for tests' };
    const book = bent({ substances: BOOK.rulebook.substances.map((one) => (one.id === 'niacinamide' ? { ...one, exposure } : one)) });
    expect(figuresOf('exposure:niacinamide', book)).toEqual({ found: 20_000, allowed: 21_000 });
    const highest = (of: Book) => {
      const card = cardFor(fernAsk(of));
      const line = card.ok
        ? card.value.lines.find(({ source }) => source.kind === 'stock' && source.stockId.startsWith('niacinamide'))
        : undefined;
      return line?.hiUg;
    };
    // All other lines at their lower ends weigh 50.26 g: at most 50.26 × 0.021 / 0.979 = 1.078 g of it.
    expect([highest(BOOK), highest(book)]).toEqual([1_090_000, 1_070_000]);
  });

  it('pairs under a limit: sum, first, second', () => {
    const limit = { maxSumPpm: sharePpm(44_000), maxFirstPpm: sharePpm(24_000), maxSecondPpm: sharePpm(21_000) };
    const book = bent({ pairJudgements: [aPairJudgement('kaolin', 'niacinamide', { verdict: 'limit', limit })] });
    const id = (code: string) => `${code}:pair-kaolin-niacinamide:kaolin|niacinamide`;
    expect(figuresOf(id('pair-limit-sum'), book)).toEqual({ found: 39_000, allowed: 44_000 });
    expect(figuresOf(id('pair-limit-first'), book)).toEqual({ found: 19_000, allowed: 24_000 });
    expect(figuresOf(id('pair-limit-second'), book)).toEqual({ found: 20_000, allowed: 21_000 });
    expect(
      ids(bent({ pairJudgements: [aPairJudgement('kaolin', 'niacinamide', { verdict: 'caution', limit })] })).some((one) =>
        one.startsWith('pair'),
      ),
    ).toBe(false);
  });
});

describe('class rules that the recipe passes by a threshold', () => {
  const rule = (clayAbove: number, vitaminAbove: number, overrides: Partial<ClassRule> = {}): Book =>
    bent({
      classRules: [
        aClassRule('clay', 'vitamin', {
          first: { materialClass: 'clay', abovePpm: sharePpm(clayAbove) },
          second: { materialClass: 'vitamin', abovePpm: sharePpm(vitaminAbove) },
          ...overrides,
        }),
      ],
    });
  const ID = 'class-rule:rule-clay-vitamin';

  it('hold down the side that is under its threshold', () => {
    expect(figuresOf(ID, rule(26_000, 10_000))).toEqual({ found: 24_000, allowed: 26_000 });
    expect(figuresOf(ID, rule(10_000, 26_000))).toEqual({ found: 20_000, allowed: 26_000 });
  });
  it('with both under, the side that is further under', () => {
    expect(figuresOf(ID, rule(25_000, 40_000))).toEqual({ found: 20_000, allowed: 40_000 });
    expect(figuresOf(ID, rule(60_000, 21_000))).toEqual({ found: 24_000, allowed: 60_000 });
  });
  it('say nothing where pH alone lets the jar pass, where they only caution, and where a class is absent', () => {
    expect(ids(rule(10_000, 10_000))).not.toContain(ID);
    expect(ids(rule(26_000, 10_000, { then: { kind: 'caution', cautionId: 'eyes' } }))).not.toContain(ID);
    expect(ids(rule(26_000, 10_000, { second: { materialClass: 'acid', abovePpm: sharePpm(0) } }))).not.toContain(ID);
  });
});

describe('the order of work keeps powders out of the cream', () => {
  it('whatever a stock says', () => {
    const places: readonly Stock['addedTo'][] = ['paste', 'cream', 'last'];
    for (const addedTo of places) {
      const lines = benchLines(fernBook({ stock: { addedTo } }), PLAN).map((line) => line.code);
      expect(lines.indexOf('S-12')).toBeLessThan(lines.indexOf('Base R2'));
    }
  });
});

describe('narrowing', () => {
  const line = (lineId: string, target: number, lo: number, hi: number, step = 1): CornerLine => ({
    lineId,
    stepUg: massUg(step),
    targetUg: massUg(target),
    band: { loUg: massUg(lo), hiUg: massUg(hi) },
  });
  const atMost = (
    id: string,
    contents: Readonly<Record<string, number>>,
    allowed: number,
    code: MassLimit['code'] = 'cap-exceeded',
  ): MassLimit => ({
    id,
    code,
    basis: 'cap',
    direction: 'at-most',
    whole: 1000n,
    shares: new Map(Object.entries(contents).map(([lineId, content]) => [lineId, { content: BigInt(content), allowed: BigInt(allowed) }])),
  });
  const hiOf = (lines: readonly CornerLine[]) => lines.map((one) => one.band.hiUg);

  it('pulls in the widest contributing line, the first of equals, one step at a time', () => {
    const lines = [line('a', 10, 8, 12), line('b', 10, 8, 12), line('c', 80, 78, 82)];
    const limit = atMost('p', { a: 1000, b: 1000, c: 0 }, 220);
    // Worst: 12·780 + 12·780 − 78·220 = 1560 over; each step of a or b takes 780 off.
    expect(worstSum(limit, lines)).toBe(1560n);
    const narrowed = narrowBands(lines, [limit]);
    expect(narrowed.ok && hiOf(narrowed.value)).toEqual([11, 11, 82]);
  });

  it('counts width in readings, not in mass', () => {
    const lines = [line('coarse', 100, 80, 120, 10), line('fine', 10, 5, 15), line('cream', 900, 900, 900)];
    const narrowed = narrowBands(lines, [atMost('p', { coarse: 1000, fine: 1000, cream: 0 }, 130)]);
    expect(narrowed.ok && hiOf(narrowed.value)).toEqual([120, 14, 900]);
  });

  it('refuses when three readings or the target are all that is left, naming the squeezed line', () => {
    const limit = atMost('p', { a: 1000, b: 0 }, 100);
    const found = narrowBands([line('a', 10, 9, 11), line('b', 90, 90, 90)], [limit]);
    expect(found).toEqual({ ok: false, refusal: { lineId: 'a', limit } });
  });

  it('a minimum pulls up the lower end of what it protects', () => {
    const limit: MassLimit = { ...atMost('m', { cream: 9, powder: 0 }, 8), direction: 'at-least', code: 'preservative-too-low' };
    const lines = [line('cream', 90, 80, 100), line('powder', 10, 9, 11)];
    expect(pushOf(limit, 'powder')).toBe(8n);
    const narrowed = narrowBands(lines, [limit]);
    // 8·11 ≤ 1·cream: the cream may not be under 88.
    expect(narrowed.ok && narrowed.value.map((one) => one.band)).toEqual([
      { loUg: 88, hiUg: 100 },
      { loUg: 9, hiUg: 11 },
    ]);
  });

  it('the most broken limit decides, ties by code', () => {
    const lines = [line('a', 10, 5, 20), line('b', 10, 5, 20), line('c', 80, 80, 80)];
    const onA = atMost('on-a', { a: 1000, b: 0, c: 0 }, 150);
    const both = atMost('both', { a: 1000, b: 1000, c: 0 }, 250, 'law-limit');
    const found = narrowBands(lines, [onA, both]);
    expect(found).toEqual(narrowBands(lines, [both, onA]));
    expect(found.ok).toBe(true);
    if (!found.ok) return;
    expect([worstSum(onA, found.value) <= 0n, worstSum(both, found.value) <= 0n]).toEqual([true, true]);
  });
});
