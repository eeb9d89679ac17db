// What the kiosk is told and says: no effect of an answer, no number of a recipe, and a plain sentence for every reason.
import { describe, expect, it } from 'vitest';
import { orderCode } from '#app/_flows/order-code.ts';
import { codeSymbol } from '#app/_server/code-symbol.ts';
import { en as kioskEn } from '#app/_ui/text/kiosk/en.ts';
import { en as reasonsEn } from '#app/_ui/text/kiosk-reasons/en.ts';
import { cautionWords } from '#app/kiosk/caution-words.ts';
import { reasonWords } from '#app/kiosk/reason-words.ts';
import { customerReasons, REASONS } from '#lib/answers/customer-reason.ts';
import { kioskQuestions } from '#lib/answers/kiosk-questions.ts';
import type { Person } from '#lib/answers/person.ts';
import { FINDING_CODES, finding } from '#lib/base/finding.ts';
import { avoidTagSchema } from '#lib/contracts/rulebook-materials.ts';
import { addDays } from '#lib/units/time.ts';
import { drawnLayers } from '#lib/variants/drawn-layers.ts';
import { claimsShown, concernsServed } from '#lib/variants/mask-words.ts';
import { aDemoBook, aDemoRulebook, TEST_DAY, variantFrom } from '#test/support/a-demo-book.ts';

const book = aDemoBook();
const BECAUSE = { questionId: 'sting', optionId: 'sting-often' };
const person: Person = {
  wishes: new Map([['dry', 3]]),
  excluded: new Map([['acid', [BECAUSE]]]),
  capIds: new Map([['acid-low', [{ questionId: 'age', optionId: 'age-16' }]]]),
  mildest: [BECAUSE],
  areaFactorPpm: null,
  cautions: [],
  outcomes: [],
};

describe('the questionnaire of the browser', () => {
  const questions = kioskQuestions(aDemoRulebook(), 'en');

  it('has words and, of what answers do, only where a visit ends and what is skipped', () => {
    const keys = new Set(questions.flatMap((question) => question.options.flatMap((option) => Object.keys(option))));
    expect([...keys].sort()).toEqual(['ends', 'exclusive', 'hint', 'id', 'isSkip', 'skips', 'text']);
    expect(JSON.stringify(questions)).not.toMatch(/effects|exclude|retinoid|mildest"|weightCount|acid-low/);
    const ends = Object.fromEntries(questions.flatMap(({ options }) => options.flatMap(({ id, ends: end }) => (end ? [[id, end]] : []))));
    expect(ends).toEqual({
      'age-under-16': 'age',
      'age-skip': 'age',
      'today-cut': 'wait',
      'today-sunburn': 'wait',
      'today-rash': 'professional',
      'today-mole': 'mole',
    });
  });

  it('a missing text is a fault, never a blank', () => {
    const { 'question.wish': _, ...texts } = aDemoRulebook().texts.en ?? {};
    expect(() => kioskQuestions({ ...aDemoRulebook(), texts: { en: texts } }, 'en')).toThrow('question.wish');
  });
});

describe('a mask for its customer', () => {
  const both = variantFrom('fern-bank|niacinamide@20000+panthenol@15000');

  it('speaks of the wishes that it answers, with the claims of the active that answers them most', () => {
    expect(concernsServed(book, both, person.wishes)).toEqual(['dry']);
    const goodOf = (wishes: Person['wishes']) => claimsShown(book, both, wishes).map(({ goodTextId }) => goodTextId);
    expect(goodOf(person.wishes)).toEqual(['good.panthenol']);
    expect(goodOf(new Map([['oil', 1]]))).toEqual(['good.niacinamide']);
  });

  it('of which no active answers a wish speaks of its shade', () => {
    expect(claimsShown(book, both, new Map([['rough', 3]])).map(({ goodTextId }) => goodTextId)).toEqual(['good.fern-bank']);
    expect(concernsServed(book, variantFrom('fern-bank|'), person.wishes)).toEqual([]);
  });

  it('is drawn as cream, oil, powders and actives, in thicknesses that no share can be read from', () => {
    const layers = drawnLayers(book, 'en', both);
    expect(layers.map(({ hatch, thicknessIndex }) => [hatch, thicknessIndex])).toEqual([
      ['cream', 12],
      ['oil', 5],
      ['base-clay', 4],
      ['tint-clay', 2],
      ['mineral-colour', 1],
      ['humectant', 4],
      ['humectant', 4],
    ]);
    expect(drawnLayers(book, 'en', variantFrom('chalk-down|lactic-acid@5000')).at(-1)).toEqual({
      hatch: 'acid',
      name: 'Lactic acid',
      thicknessIndex: 2,
    });
    expect(JSON.stringify(layers)).not.toMatch(/ppm|000/i);
  });
});

describe('reasons', () => {
  const told = (...codes: Parameters<typeof customerReasons>[2]) => customerReasons(book, 'en', codes, person);
  const excluded = finding('person-excluded', 'acid', { tag: 'acid' });
  const never = finding('pair-never', 'x', { firstMaterialId: 'niacinamide', secondMaterialId: 'kaolin' });

  it('come once each, what follows from an answer first, with the question behind it', () => {
    const [first, ...others] = told(
      never,
      never,
      excluded,
      finding('person-cap', 'acid-low', { capId: 'acid-low', foundPpm: 3, maxPpm: 1 }),
    );
    expect(first).toEqual({ reason: 'avoided', names: [], tag: 'acid', isPersonal: true, questionIds: ['sting'] });
    expect(others.map(({ reason, isPersonal, questionIds }) => [reason, isPersonal, questionIds])).toEqual([
      ['capped', true, ['age']],
      ['clash', false, []],
    ]);
  });

  it('name two things that clash, and no number', () => {
    const [clash] = told(never);
    expect(clash?.names).toHaveLength(2);
    expect(reasonWords({ ...clash!, tag: null }, 'en')).toBe(`${clash?.names[0]} and ${clash?.names[1]} do not go well together.`);
    expect(JSON.stringify(told(finding('allowance-exceeded', 'r2', { foundPpm: 50_001, maxPpm: 50_000 })))).not.toMatch(/\d/);
  });

  it('call an active by its own name, not by that of the material as bought', () => {
    const [clash] = told(finding('pair-never', 'x', { firstMaterialId: 'lactic-acid-50', secondMaterialId: 'niacinamide' }));
    expect(clash?.names).toEqual(['Lactic acid', 'Niacinamide']);
  });

  it('are marked as personal exactly where the check of the person speaks', () => {
    const personal = Object.entries(FINDING_CODES).filter(([, { check }]) => check === 13);
    const facts = { tag: 'acid', capId: 'acid-low', foundPpm: 1, maxPpm: 1, foundUnits: 1, maxUnits: 1 };
    for (const [code] of personal) expect(told(finding(code as 'person-excluded', 'r', facts))[0]?.isPersonal, code).toBe(true);
    expect(told(never, finding('no-lot', 'k', { stockId: 'k', neededUg: 1 })).some((reason) => reason.isPersonal)).toBe(false);
  });

  it('have a sentence each, and one for every tag that somebody may avoid', () => {
    const plain = { names: [], tag: null, isPersonal: false, questionIds: [] };
    for (const reason of REASONS) if (reason !== 'avoided') expect(reasonWords({ ...plain, reason }, 'en')).toMatch(/^[A-Z].*\.$/);
    for (const tag of avoidTagSchema.options) expect(reasonWords({ ...plain, reason: 'avoided', tag }, 'en')).toMatch(/^It .*\.$/);
    expect(() => reasonWords({ ...plain, reason: 'avoided', tag: null }, 'en')).toThrow('no words');
  });
});

describe('words', () => {
  // Words of promise, alarm or diagnosis that a cosmetic may not use: Regulation (EU) No 655/2013, and house style.
  const BANNED =
    /\b(treats?|heal|cures?|repair|therapy|clinical|anti-inflammatory|antibacterial|detox|acne|eczema|rosacea|dermatitis|diagnosis|hypoallergenic|chemical-free|free from|proven|guaranteed|flaw|anti-ageing|danger|unfortunately|invalid)\b|!/i;

  it.each(Object.entries({ ...kioskEn, ...reasonsEn }))('%s promises nothing and alarms nobody', (_, words) => {
    expect(words.replace('treatment', '')).not.toMatch(BANNED);
  });

  it('a caution keeps every word: its first sentence is its title', () => {
    const { title, rest } = cautionWords('Keep it out of your eyes. If some gets in, rinse. Get help.', 'en');
    expect([title, rest]).toEqual(['Keep it out of your eyes', 'If some gets in, rinse. Get help.']);
    expect(cautionWords('Only this', 'en')).toEqual({ title: 'Only this', rest: '' });
  });
});

describe('the code', () => {
  it('says the day by two signs and the order by its number, and no day comes again for 140', () => {
    const codes = Array.from({ length: 140 }, (_, days) => orderCode(addDays(TEST_DAY, days), 7));
    expect(codes.every((code) => /^[A-Z][2-9]-007$/.test(code))).toBe(true);
    expect(new Set(codes).size).toBe(140);
    expect(orderCode(addDays(TEST_DAY, 140), 7)).toBe(codes[0]);
    expect(orderCode(TEST_DAY, 1204)).toMatch(/-1204$/);
  });

  // ISO/IEC 18004:2015, 5.3: version 1 has 21 modules a side; finder patterns stand in three corners, with a light separator beside them.
  it('is drawn as a QR code of version 1 with its three finder patterns', () => {
    const { path, sideCount } = codeSymbol('K7-204');
    expect(sideCount).toBe(21);
    const dark = new Set(Array.from(path.matchAll(/M(\d+) (\d+)h1v1h-1z/g), ([, x, y]) => `${x},${y}`));
    const finder = (left: number, top: number): boolean =>
      Array.from({ length: 49 }, (_, index) => [index % 7, Math.floor(index / 7)] as const).every(([x, y]) => {
        const ring = Math.max(Math.abs(x - 3), Math.abs(y - 3));
        return dark.has(`${left + x},${top + y}`) === (ring !== 2);
      });
    expect([finder(0, 0), finder(14, 0), finder(0, 14), finder(14, 14)]).toEqual([true, true, true, false]);
    expect(path.replaceAll(/M\d+ \d+h1v1h-1z/g, '')).toBe('');
    expect(codeSymbol('K7-205').path).not.toBe(path);
  });
});
