// The label: everything that is printed, nothing that is missing, and nothing that does not fit.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composePlan } from '#lib/composition/compose.ts';
import { batchCode, isBatchCode, parseBatchCode } from '#lib/label/batch-code.ts';
import { cautionsForMarket } from '#lib/label/cautions-for-market.ts';
import type { LabelAsk } from '#lib/label/label-content.ts';
import { labelContent } from '#lib/label/label-content.ts';
import { labelFit } from '#lib/label/label-fit.ts';
import { labelIngredients } from '#lib/law/label-order.ts';
import { openBook } from '#lib/rulebook/book.ts';
import { gramsToUg } from '#lib/units/mass.ts';
import { addDays, localDay } from '#lib/units/time.ts';
import { aCaution, aStaffCaution } from '#test/support/a-questionnaire.ts';
import { textsOf } from '#test/support/a-rulebook.ts';
import { aLabelSize } from '#test/support/an-offer.ts';
import { fernBook, fernPlan } from '#test/support/fern-jar.ts';

const texts = {
  ...textsOf(['caution.eyes.label', 'caution.test.label']),
  'label.product': 'Clay mask',
  'label.directions': 'Leave on for ten minutes.',
};

function book(bend: { readonly texts?: Readonly<Record<string, string>> } = {}) {
  const plain = fernBook();
  return openBook({
    ...plain.rulebook,
    texts: { en: bend.texts ?? texts },
    cautions: [aCaution('eyes'), aCaution('test'), aCaution('kiosk-only', { places: ['kiosk'] }), aStaffCaution('dust')],
  });
}

function ask(overrides: Partial<LabelAsk> = {}): LabelAsk {
  const own = overrides.book ?? book();
  const market = own.rulebook.markets[0];
  if (!market) throw new Error('a book without a market');
  const plan = fernPlan(own);
  return {
    book: own,
    market,
    lang: 'en',
    variant: plan.variant,
    netUg: gramsToUg(50),
    ingredients: labelIngredients(own, composePlan(own, plan), market),
    cautionIds: ['test', 'eyes', 'kiosk-only', 'dust', 'eyes'],
    batchCode: batchCode({ shop: 'ML', day: localDay('2026-11-25'), runningNo: 17 }),
    durability: { kind: 'date', day: localDay('2027-01-30'), monthText: '12/2026' },
    shop: { name: 'Counter North', address: '1 Test Lane, Testtown' },
    ...overrides,
  };
}

describe('what a label says', () => {
  it('everything that is owed, as plain data', () => {
    const made = labelContent(ask());
    expect(made).toMatchObject({
      ok: true,
      value: {
        marketId: 'EU',
        lang: 'en',
        productName: 'Clay mask',
        variantNames: ['fern', 'niacinamide', 'panthenol'],
        netContent: { gramsText: '50', ouncesText: null },
        directions: 'Leave on for ten minutes.',
        responsiblePerson: { name: 'Test House', address: '1 Test Lane, Testtown', contact: 'care@example.test' },
        shop: { name: 'Counter North', address: '1 Test Lane, Testtown' },
        durability: { kind: 'date', day: '2027-01-30', monthText: '12/2026' },
      },
    });
    if (!made.ok) return;
    expect(made.value.ingredientsText).toBe('AQUA, OIL, NIACINAMIDE, KAOLIN, PHENOXYETHANOL, ILLITE, PANTHENOL, CHROMIUM OXIDE');
    expect(made.value.code?.bracketed).toBe(`(17)270130(10)${made.value.batchCode}`);
    expect(JSON.parse(JSON.stringify(made.value))).toEqual(made.value);
  });

  it('cautions due on labels only, each once, in the order of the rulebook', () => {
    const made = labelContent(ask());
    expect(made.ok && made.value.cautions).toEqual([
      { cautionId: 'eyes', text: 'Text of caution.eyes.label.' },
      { cautionId: 'test', text: 'Text of caution.test.label.' },
    ]);
  });

  it('marks nanomaterials behind the name', () => {
    const made = labelContent(ask({ ingredients: [{ name: 'TITANIUM DIOXIDE', nano: true, group: 'ordered', shownPpm: 20_000 }] }));
    expect(made.ok && made.value.ingredientsText).toBe('TITANIUM DIOXIDE (nano)');
  });

  it('without a date the code holds the batch only; a proof has no code', () => {
    const undated = labelContent(ask({ durability: { kind: 'opening-period', openedMonths: 12 } }));
    expect(undated.ok && undated.value.code?.raw).toMatch(/^10ML26329/);
    const proof = labelContent(ask({ batchCode: null }));
    expect(proof.ok && [proof.value.batchCode, proof.value.code]).toEqual([null, null]);
  });

  it('is refused with the name of every text that is missing or empty', () => {
    const own = book({ texts: { ...texts, 'label.directions': ' ', 'caution.eyes.label': '' } });
    expect(labelContent(ask({ book: own }))).toEqual({
      ok: false,
      refusal: { lang: 'en', textIds: ['caution.eyes.label', 'label.directions'] },
    });
    const german = labelContent(ask({ lang: 'de' }));
    expect(!german.ok && german.refusal.textIds).toContain('shade fern');
  });

  it('a caution that another market’s limit asks for stays off this market’s label', () => {
    const own = book();
    const limits = own.rulebook.limits.map((row) => ({ ...row, id: 'us-row', marketId: 'US' as const }));
    const both = openBook({ ...own.rulebook, limits: [...own.rulebook.limits, ...limits.slice(0, 1)] });
    const owed = [
      { cautionId: 'test', ruleId: 'us-row' },
      { cautionId: 'eyes', ruleId: 'always' },
    ];
    expect(cautionsForMarket(both, owed, 'EU')).toEqual(['eyes']);
    expect(cautionsForMarket(both, owed, 'US')).toEqual(['eyes', 'test']);
  });
});

describe('whether it fits', () => {
  const content = (ingredientsText: string, ...cautions: readonly string[]) => ({
    ingredientsText,
    cautions: cautions.map((text) => ({ cautionId: 'eyes', text })),
  });
  const size = aLabelSize({ ingredientsCharCount: 10, cautionsCharCount: 9 });

  it('holds exactly what it holds', () => {
    expect(labelFit(content('0123456789', 'four', 'four'), size)).toEqual([]);
  });
  it('names the size and both counts for each text that is too long', () => {
    const facts = (foundCharCount: number, maxCharCount: number) => ({ labelSizeId: 'label-60', foundCharCount, maxCharCount });
    expect(labelFit(content('01234567890', 'four', 'fives'), size).map((one) => one.facts)).toEqual([facts(11, 10), facts(10, 9)]);
  });
  it('counts letters, not bytes', () => {
    expect(labelFit(content('é€𝄞é€𝄞é€𝄞é'), size)).toEqual([]);
  });
});

describe('batch codes', () => {
  const codes = fc
    .record({
      shop: fc.stringMatching(/^[A-Z]{2}$/),
      offset: fc.integer({ min: 0, max: 27_000 }),
      runningNo: fc.integer({ min: 1, max: 9999 }),
    })
    .map(({ offset, ...rest }) => ({ ...rest, day: addDays(localDay('2026-01-01'), offset) }));

  it('are read back as they were written', () => {
    fc.assert(
      fc.property(codes, (parts) => {
        expect(parseBatchCode(batchCode(parts))).toEqual({ ok: true, value: parts });
      }),
      { seed: 20_261_125, numRuns: 200 },
    );
  });

  it('catch every single wrong character', () => {
    fc.assert(
      fc.property(
        codes,
        fc.integer({ min: 0, max: 11 }),
        fc.constantFrom(...'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ'),
        (parts, at, character) => {
          const code = batchCode(parts);
          fc.pre(code.charAt(at) !== character);
          expect(isBatchCode(`${code.slice(0, at)}${character}${code.slice(at + 1)}`)).toBe(false);
        },
      ),
      { seed: 20_261_125, numRuns: 500 },
    );
  });

  it('say what is wrong with them', () => {
    const code = batchCode({ shop: 'ML', day: localDay('2026-11-25'), runningNo: 17 });
    expect(parseBatchCode('hello')).toEqual({ ok: false, refusal: 'not-a-batch-code' });
    expect(parseBatchCode(code.replace('17', '71'))).toEqual({ ok: false, refusal: 'mistyped' });
    expect(parseBatchCode('ML263660001X').ok || parseBatchCode('ML260000001X').ok).toBe(false);
  });

  it('are refused as faults where they could name no jar', () => {
    const day = localDay('2026-11-25');
    expect(() => batchCode({ shop: 'M1', day, runningNo: 1 })).toThrow(/two capital letters/);
    expect(() => batchCode({ shop: 'ML', day, runningNo: 0 })).toThrow(/running number/);
    expect(() => batchCode({ shop: 'ML', day, runningNo: 10_000 })).toThrow(/running number/);
    expect(() => batchCode({ shop: 'ML', day: localDay('1999-01-01'), runningNo: 1 })).toThrow(/this century/);
  });
});
