// From answers to masks: what is shown, what ends a visit, and why the others are not there.
import { describe, expect, test } from 'vitest';
import { findMasks } from '#app/_flows/find-masks.ts';
import { showKiosk } from '#app/_flows/show-kiosk.ts';
import { whatElseFits } from '#app/_flows/what-fits.ts';
import { whyNotOthers } from '#app/_flows/why-not.ts';
import type { StopSubject } from '#db/schema-afterwards.ts';
import { insertStationScaleRemoved } from '#db/stations.ts';
import { insertStop } from '#db/stops.ts';
import type { LimitRow } from '#lib/rulebook/limit.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { sharePpm } from '#lib/units/share.ts';
import { addDays } from '#lib/units/time.ts';
import { TEST_DAY, variantFrom } from '#test/support/a-demo-book.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop, took } from '#test/support/a-shop.ts';
import {
  ACID_MASK,
  answersTo,
  CAREFUL,
  EASY,
  editionHashOf,
  everythingStored,
  MILD_MASK,
  masksShown,
  nextEdition,
  visitAsked,
} from '#test/support/a-visit.ts';
import { freshShop } from '#test/support/shop-db.ts';
import { idOf, later } from '#test/support/shop-facts.ts';

const ONE_DAY_MINUTES = 24 * 60;

const stop = (shop: AShop, subjectKind: StopSubject, subjectId: string): void =>
  shop.db.write((tx) =>
    insertStop(tx, { id: idOf(7), subjectKind, subjectId, reason: 'test', byAccountId: shop.accountId('formulator'), atMs: later(0) }),
  );
const keysShown = (shop: AShop, given = EASY): readonly string[] =>
  masksShown(shop, visitAsked(shop, given)).map(({ variant }) => variantKey(variant));

describe('the page', () => {
  test('shows the edition in force at the counter that it stands at', () => {
    const shop = aShop();
    const { shown, counterCode } = took(showKiosk(shop.asNobody(), { counterCode: 'CS' }));
    expect(counterCode).toBe('CS');
    expect(shown).toMatchObject({ shopName: 'Marlpit Lane', currency: 'GBP', editionNo: 1, editionHash: editionHashOf(shop) });
    expect(shown.questions.map((question) => question.id)).toEqual(['age', 'wish', 'sting', 'today']);
    expect(shown.jarSizes).toEqual([{ id: 'jar-50', netUg: 50_000_000, priceMinor: 1400 }]);
    expect(JSON.stringify(shown)).not.toMatch(/effects|ppm|kaolin/i);
  });

  test('no counter named is the first one, an unknown one is refused; a kiosk that is signed in stands at its own', () => {
    const shop = aShop();
    expect(took(showKiosk(shop.asNobody(), { counterCode: null })).counterCode).toBe('CN');
    for (const counterCode of ['XX', 'B1', '']) {
      expect(showKiosk(shop.asNobody(), { counterCode })).toEqual({ ok: false, refusal: { kind: 'unknown-counter', counterCode } });
    }
    const kiosk = { ...shop.asNobody(), actor: { kind: 'kiosk', stationId: shop.kioskId } as const };
    expect(took(showKiosk(kiosk, { counterCode: 'CS' })).counterCode).toBe('CN');
  });

  test('says what is missing before there is anything to show', () => {
    const flow = { ...aShop().asNobody(), db: freshShop().db };
    expect(showKiosk(flow, { counterCode: null })).toEqual({ ok: false, refusal: { kind: 'no-shop' } });
    const closed = aShop();
    const early = { ...closed.asNobody(), now: later(-1) };
    expect(showKiosk(early, { counterCode: null })).toEqual({ ok: false, refusal: { kind: 'no-edition' } });
  });
});

describe('masks', () => {
  test('say once what two of their actives say alike', () => {
    const alike = aShop('alike', (rulebook) => ({
      ...rulebook,
      actives: rulebook.actives.map((active) =>
        active.claims
          ? { ...active, claims: { ...active.claims, goodTextId: 'good.panthenol', lessGoodTextId: 'less-good.panthenol' } }
          : active,
      ),
    }));
    const [first] = masksShown(alike);
    expect(first?.shown.activeNames).toHaveLength(2);
    expect(first?.shown.good).toEqual([{ text: 'Skin feels softer and less tight.', basis: 'known-for-ingredient' }]);
    expect(first?.shown.lessGood).toEqual(['Can feel a little sticky.']);
  });

  test('come with a role, a price, colours, words, a drawing and every caution, and with nothing of the recipe', () => {
    const shop = aShop();
    const masks = masksShown(shop);
    expect(masks.map(({ shown }) => shown.role)).toEqual(['closest', 'mildest', 'other-colour']);
    const [first] = masks;
    expect(first?.shown).toMatchObject({
      shadeName: 'Chalk Down',
      activeNames: ['Lactic acid', 'Panthenol'],
      chosenFor: ['Less dry or tight', 'Feels smoother'],
      colour: { name: 'Chalk white', isPaler: false },
      good: [
        { text: 'Skin feels smoother and looks brighter.', basis: 'known-for-ingredient' },
        { text: 'Skin feels softer and less tight.', basis: 'known-for-ingredient' },
      ],
      lessGood: ['May tingle. Needs care in the sun.', 'Can feel a little sticky.'],
      lessFor: [],
    });
    expect(first?.shown.colour.wetHex).toMatch(/^#[0-9a-f]{6}$/);
    expect(first?.shown.cautions.map(({ id, mustTick }) => [id, mustTick])).toEqual([
      ['sun', true],
      ['try-first', false],
      ['sting', false],
      ['eyes', false],
      ['broken-skin', false],
      ['time', false],
      ['children', false],
    ]);
    const words = JSON.stringify(masks.map(({ shown }) => shown));
    expect(words).not.toMatch(/ppm|lactic-acid|chalk-down|kaolin-neat|levelPpm|staff-/i);
  });

  test('hold to the answers: excluded tags, the gentle set, and the caution that comes with them', () => {
    const shop = aShop();
    const masks = masksShown(shop, visitAsked(shop, CAREFUL));
    expect(masks.every(({ variant }) => variant.actives.every((chosen) => chosen.activeId !== 'lactic-acid'))).toBe(true);
    expect(masks.every(({ shown }) => shown.cautions.some((caution) => caution.id === 'try-first' && caution.mustTick))).toBe(true);
  });

  test('say of which wishes they do less than the first', () => {
    const shop = aShop();
    const [, milder] = masksShown(shop);
    expect(milder?.shown.role).toBe('mildest');
    expect(milder?.shown.lessFor.length).toBeGreaterThan(0);
    expect(['Less dry or tight', 'Feels smoother']).toEqual(expect.arrayContaining([...(milder?.shown.lessFor ?? [])]));
  });

  test('tell which cautions the jar prints: those of the mask that are due on its label, none that only an answer adds', () => {
    const shop = aShop();
    const onJar = (given: typeof EASY) =>
      masksShown(shop, visitAsked(shop, given)).map(({ shown, variant }) => ({
        key: variantKey(variant),
        ...Object.fromEntries(shown.cautions.map(({ id, isOnJar }) => [id, isOnJar])),
      }));
    for (const mask of onJar(CAREFUL)) expect(mask).toMatchObject({ 'try-first': false, eyes: true, time: true });
    const acid = onJar({ ...EASY, sting: ['sting-sometimes'] }).filter(({ key }) => key.includes('lactic-acid'));
    expect(acid.length).toBeGreaterThan(0);
    for (const mask of acid) expect(mask).toMatchObject({ 'try-first': true, sun: true });
    const hash = nextEdition(shop, (rulebook) => ({
      ...rulebook,
      cautions: rulebook.cautions.map((caution) => (caution.id === 'eyes' ? { ...caution, places: ['kiosk'] } : caution)),
    }));
    const [first] = masksShown(shop, visitAsked(shop, EASY, { editionHash: hash }), 6);
    expect(first?.shown.cautions.find(({ id }) => id === 'eyes')?.isOnJar).toBe(false);
  });

  test('a wish that no active answers gets the base in a colour, and is told so', () => {
    const shop = aShop();
    const found = took(findMasks(shop.asNobody(), visitAsked(shop, { ...CAREFUL, wish: ['wish-rough'] })));
    expect(found).toMatchObject({ kind: 'masks', noActiveFits: true });
  });

  test('leave nothing behind', () => {
    const shop = aShop();
    const before = everythingStored(shop);
    masksShown(shop);
    expect(everythingStored(shop)).toBe(before);
  });

  test.each<[StopSubject, string, RegExp]>([
    ['shade', 'chalk-down', /^chalk-down/],
    ['active', 'panthenol', /panthenol/],
    ['material', 'lactic-acid-50', /lactic-acid/],
    ['stock', 'panthenol-75', /panthenol/],
    ['pair', 'lactic-acid-50|panthenol', /lactic-acid.*panthenol/],
  ])('a stop of a %s is honoured at once', (kind, subject, gone) => {
    const shop = aShop();
    expect(keysShown(shop).some((key) => gone.test(key))).toBe(true);
    stop(shop, kind, subject);
    expect(keysShown(shop).some((key) => gone.test(key))).toBe(false);
  });

  test.each<[string, Pick<LimitRow, 'fromDay' | 'untilDay'>, readonly boolean[]]>([
    ['one that ends opens a choice tomorrow', { untilDay: addDays(TEST_DAY, 1) }, [false, true]],
    ['one that begins tomorrow closes it then', { fromDay: addDays(TEST_DAY, 1) }, [true, false]],
  ])('follow the limits of the day: %s', (_, days, offered) => {
    const shop = aShop();
    const editionHash = nextEdition(shop, (rulebook) => ({
      ...rulebook,
      limits: rulebook.limits.map((row) => (row.id === 'eu-aha-lactic' ? { ...row, ...days, maxPpm: sharePpm(0) } : row)),
    }));
    const shown = [6, 6 + ONE_DAY_MINUTES].map((minutes) => masksShown(shop, visitAsked(shop, EASY, { editionHash }), minutes));
    expect(shown.map((masks) => masks.some(({ variant }) => variantKey(variant).includes('lactic-acid')))).toEqual(offered);
    expect(shown.map((masks) => masks.length)).toEqual([3, 3]);
  });

  test('a stopped lot is as good as gone, and without cream there is no mask', () => {
    const shop = aShop();
    const lotId = shop.sqlite.prepare("SELECT id FROM lot WHERE kind = 'base-cream'").pluck().get() as string;
    stop(shop, 'lot', lotId);
    expect(took(findMasks(shop.asNobody(), visitAsked(shop)))).toEqual({ kind: 'outcome', outcome: 'none', others: [] });
  });

  test('a stop of a variant takes just this one away', () => {
    const shop = aShop();
    const [first = ''] = keysShown(shop);
    stop(shop, 'variant', first);
    expect(keysShown(shop)).not.toContain(first);
    expect(keysShown(shop)).toHaveLength(3);
  });

  test('a bench without a scale has none', () => {
    const shop = aShop();
    const gone = { scaleId: shop.scaleId, byAccountId: shop.accountId('manager'), reason: 'away', atMs: later(0) };
    shop.db.write((tx) => insertStationScaleRemoved(tx, gone));
    expect(took(findMasks(shop.asNobody(), visitAsked(shop)))).toMatchObject({ kind: 'outcome', outcome: 'none' });
  });
});

describe('outcomes', () => {
  test('the worst comes first and the others are named', () => {
    const shop = aShop();
    const asked = visitAsked(shop, { ...EASY, today: ['today-cut', 'today-mole', 'today-rash'] });
    expect(took(findMasks(shop.asNobody(), asked))).toEqual({ kind: 'outcome', outcome: 'mole', others: ['professional', 'wait'] });
  });
});

describe('refusals', () => {
  test('an edition that is no longer in force comes with what to show now', () => {
    const shop = aShop();
    const asked = visitAsked(shop);
    const hash = nextEdition(shop, (rulebook) => ({ ...rulebook, title: 'A second one' }));
    const refused = findMasks(shop.asNobody(6), asked);
    expect(refused).toMatchObject({
      ok: false,
      refusal: { kind: 'edition-moved', changed: [], show: { editionHash: hash, editionNo: 2 } },
    });
  });

  test('says so when the questions are not the same', () => {
    const shop = aShop();
    const asked = visitAsked(shop);
    nextEdition(shop, (rulebook) => ({ ...rulebook, questions: rulebook.questions.slice(0, 3) }));
    expect(findMasks(shop.asNobody(6), asked)).toMatchObject({ refusal: { kind: 'edition-moved', changed: ['questions'] } });
  });

  test('an edition that never was', () => {
    const shop = aShop();
    expect(findMasks(shop.asNobody(), visitAsked(shop, EASY, { editionHash: 'f'.repeat(64) }))).toMatchObject({
      refusal: { kind: 'edition-moved' },
    });
  });

  test('nothing is published yet', () => {
    const shop = aShop();
    const early = { ...shop.asNobody(), now: later(-1) };
    expect(findMasks(early, visitAsked(shop))).toEqual({ ok: false, refusal: { kind: 'not-open' } });
  });

  test('answers that do not fit, with every fault', () => {
    const shop = aShop();
    const asked = visitAsked(shop, EASY, { answers: answersTo({ age: ['age-99'], wish: [] }) });
    const faults = [
      { questionId: 'age', code: 'unknown-option' },
      { questionId: 'wish', code: 'not-answered' },
      { questionId: 'sting', code: 'not-answered' },
      { questionId: 'today', code: 'not-answered' },
    ];
    expect(findMasks(shop.asNobody(), asked)).toEqual({ ok: false, refusal: { kind: 'bad-answers', faults } });
  });

  test.each([
    [{ jarSizeId: 'jar-9' }, 'no-such-size'],
    [{ lang: 'fr' } as const, 'no-such-language'],
  ])('%j is refused as %s', (bend, kind) => {
    const shop = aShop();
    expect(findMasks(shop.asNobody(), visitAsked(shop, EASY, bend))).toEqual({ ok: false, refusal: { kind } });
  });
});

describe('why not', () => {
  test('every shade and active that no shown mask has, with "fits" or reasons; what follows from an answer is marked', () => {
    const shop = aShop();
    const asked = visitAsked(shop, CAREFUL);
    const shown = masksShown(shop, asked).map(({ variant }) => variant);
    const choices = took(whyNotOthers(shop.asNobody(), { ...asked, shown }));
    const all = ['Chalk Down', 'Fern Bank', 'Rust Seam', 'Niacinamide', 'Panthenol', 'Lactic acid'];
    const had = masksShown(shop, asked).flatMap(({ shown: mask }) => [mask.shadeName, ...mask.activeNames]);
    expect(choices.map((choice) => choice.name).sort()).toEqual(all.filter((name) => !had.includes(name)).sort());
    const acid = choices.find((choice) => choice.name === 'Lactic acid');
    expect(acid?.variant).toBeNull();
    expect(acid?.reasons[0]).toMatchObject({ reason: 'avoided', tag: 'acid', isPersonal: true, questionIds: ['sting'] });
  });

  test('what fits comes as a whole mask, priced and cautioned like those that were shown', () => {
    const shop = aShop();
    const choices = took(whyNotOthers(shop.asNobody(), { ...visitAsked(shop), shown: [variantFrom(ACID_MASK)] }));
    expect(choices.every((choice) => (choice.shown === null) === (choice.variant === null))).toBe(true);
    const rust = choices.find((choice) => choice.name === 'Rust Seam')?.shown;
    expect(rust).toMatchObject({ role: 'own-choice', shadeName: 'Rust Seam', activeNames: ['Lactic acid'], priceMinor: 1650 });
    expect(rust?.cautions.filter(({ mustTick }) => mustTick).map(({ id }) => id)).toEqual(['sun']);
  });

  test('what is out of stock says so, and so does a stop', () => {
    const shop = aShop();
    const asked = visitAsked(shop);
    stop(shop, 'shade', 'rust-seam');
    const choices = took(whyNotOthers(shop.asNobody(), { ...asked, shown: [variantFrom(MILD_MASK)] }));
    expect(choices.find((choice) => choice.name === 'Rust Seam')?.reasons).toMatchObject([{ reason: 'stopped', isPersonal: false }]);
  });
});

describe('what fits', () => {
  test('each choice that fits makes a mask that may be ordered; the others say why', () => {
    const shop = aShop();
    const choices = took(whatElseFits(shop.asNobody(), { ...visitAsked(shop), variant: variantFrom(ACID_MASK) }));
    expect(choices.map(({ kind, name, variant }) => [kind, name, variant === null ? null : variantKey(variant)])).toEqual([
      ['shade', 'Fern Bank', 'fern-bank|lactic-acid@5000'],
      ['shade', 'Rust Seam', 'rust-seam|lactic-acid@5000'],
      ['active', 'Niacinamide', null],
      ['active', 'Panthenol', 'chalk-down|lactic-acid@5000+panthenol@3000'],
    ]);
    expect(choices[2]?.reasons.map((reason) => reason.reason)).toContain('acidity');
  });
});
