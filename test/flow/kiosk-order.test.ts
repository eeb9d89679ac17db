// Orders of the kiosk: judged again, written whole or not at all, once however often they are sent, and without a trace of an answer.
import { describe, expect, test } from 'vitest';
import type { OrderAsked, OrderRefusal } from '#app/_flows/place-order.ts';
import { placeOrder } from '#app/_flows/place-order.ts';
import { findCard } from '#db/cards.ts';
import { listLedger } from '#db/ledger.ts';
import { findLot } from '#db/lots.ts';
import { findOrderByRequestKey, insertOrderEnd, orderStage } from '#db/orders.ts';
import { listOpenReservations } from '#db/reservations.ts';
import { insertStop } from '#db/stops.ts';
import type { Rulebook } from '#lib/rulebook/rulebook.ts';
import { variantKey } from '#lib/rulebook/variant.ts';
import { moneyMinor } from '#lib/units/money.ts';
import type { Card } from '#lib/weighing/card.ts';
import { aKey, mixUntil } from '#test/support/a-bench-order.ts';
import { variantFrom } from '#test/support/a-demo-book.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop, took } from '#test/support/a-shop.ts';
import { ACID_MASK, answersTo, CAREFUL, EASY, everythingStored, MILD_MASK, nextEdition, orderAsked } from '#test/support/a-visit.ts';
import { idOf, later, stampAt } from '#test/support/shop-facts.ts';

const storedOrder = (shop: AShop, { requestKey }: Pick<OrderAsked, 'requestKey'>) =>
  shop.db.read((tx) => findOrderByRequestKey(tx, requestKey));
const refusalOf = (shop: AShop, asked: OrderAsked, minutes = 0): OrderRefusal | null => {
  const placed = placeOrder(shop.asNobody(minutes), asked);
  return placed.ok ? null : placed.refusal;
};

describe('an order', () => {
  test('is written with its card, its promised lots and its fact in the ledger', () => {
    const shop = aShop();
    const asked = orderAsked(shop, { variant: variantFrom(ACID_MASK) });
    const receipt = took(placeOrder(shop.asNobody(1), asked));
    expect(receipt).toEqual({ code: expect.stringMatching(/^[A-Z]\d-001$/), priceMinor: 1400 + 150, aheadCount: 0 });
    const view = storedOrder(shop, asked);
    expect(view?.order).toMatchObject({
      shortCode: receipt.code,
      editionHash: asked.editionHash,
      variantKey: variantKey(asked.variant),
      jarSizeId: 'jar-50',
      priceMinor: 1550,
      lang: 'en',
      wasPersonalCautionShown: false,
      placedAtMs: later(1),
    });
    expect(view && orderStage(view)).toBe('placed');
    const orderId = view?.order.id ?? '';
    const card = JSON.parse(shop.db.read((tx) => findCard(tx, orderId))?.body ?? '{}') as Card;
    const promised = shop.db.read((tx) => listOpenReservations(tx, orderId));
    const shares = card.lines.flatMap((line) => line.lots);
    expect(promised.map((one) => [one.lotId, one.massUg]).sort()).toEqual(shares.map((one) => [one.lotId, one.massUg]).sort());
    expect(promised.reduce((sum, one) => sum + one.massUg, 0)).toBe(card.totalUg);
    const [fact] = shop.db.read((tx) => listLedger(tx, 0, 1000)).slice(-1);
    expect(fact?.row).toMatchObject({ kind: 'order-placed', editionHash: asked.editionHash });
    expect(JSON.parse(fact?.body ?? '')).toMatchObject({ orderId, shortCode: receipt.code });
  });

  test('is placed at the counter that it names', () => {
    const shop = aShop();
    const [north, south] = [orderAsked(shop, { counterCode: 'CN' }), orderAsked(shop, { counterCode: 'CS' })];
    for (const asked of [north, south]) took(placeOrder(shop.asNobody(), asked));
    const stationOf = (asked: OrderAsked) => storedOrder(shop, asked)?.order.stationId;
    expect(stationOf(north)).toBe(shop.kioskId);
    expect(stationOf(south)).not.toBe(shop.kioskId);
  });

  test('takes from its lots what the next one cannot have, until there is not enough', () => {
    const shop = aShop();
    const placed = Array.from({ length: 120 }, () => placeOrder(shop.asNobody(), orderAsked(shop)));
    const refused = placed.filter((one) => !one.ok);
    expect(placed.length - refused.length).toBeGreaterThan(50);
    expect(refused.length).toBeGreaterThan(0);
    expect(new Set(refused.map((one) => (one.ok ? '' : one.refusal.kind)))).toEqual(new Set(['no-longer-offered']));
    const lotIds = shop.sqlite.prepare<[], string>('SELECT DISTINCT lot_id FROM reservation').pluck().all();
    expect(lotIds.every((id) => (shop.db.read((tx) => findLot(tx, id))?.leftUg ?? -1) >= 0)).toBe(true);
  });

  test('says how many of the day are made before it', () => {
    const shop = aShop();
    const [first, second] = [orderAsked(shop), orderAsked(shop)];
    for (const asked of [first, second]) took(placeOrder(shop.asNobody(), asked));
    expect(took(placeOrder(shop.asNobody(), orderAsked(shop))).aheadCount).toBe(2);
    mixUntil(shop, storedOrder(shop, first)?.order.id ?? '', 'bind-jar');
    const end = {
      orderId: storedOrder(shop, second)?.order.id ?? '',
      kind: 'cancelled',
      reason: 'test',
      byAccountId: null,
      ...stampAt(2),
    } as const;
    shop.db.write((tx) => insertOrderEnd(tx, end));
    expect(took(placeOrder(shop.asNobody(), orderAsked(shop))).aheadCount).toBe(2);
  });
});

describe('the same key', () => {
  test('again is the same order with the same receipt, even when the world has moved', () => {
    const shop = aShop();
    const asked = orderAsked(shop);
    const receipt = took(placeOrder(shop.asNobody(), asked));
    const stored = everythingStored(shop);
    nextEdition(shop, (rulebook) => ({ ...rulebook, shades: rulebook.shades.slice(1), scopes: [] }));
    const again = placeOrder(shop.asNobody(9), { ...asked, answers: answersTo(CAREFUL), tickedCautionIds: [], hasReadAll: false });
    expect(again).toEqual({ ok: true, value: receipt });
    expect(everythingStored(shop)).toBe(stored);
  });

  test.each<[string, Partial<OrderAsked>]>([
    ['another mask', { variant: variantFrom('fern-bank|panthenol@7500') }],
    ['another level', { variant: variantFrom('chalk-down|panthenol@3000') }],
    ['another size', { jarSizeId: 'jar-100' }],
    ['another edition', { editionHash: 'a'.repeat(64) }],
  ])('for %s is refused', (_, bend) => {
    const shop = aShop();
    const asked = orderAsked(shop);
    took(placeOrder(shop.asNobody(), asked));
    const stored = everythingStored(shop);
    expect(refusalOf(shop, { ...asked, ...bend })).toEqual({ kind: 'other-content' });
    expect(everythingStored(shop)).toBe(stored);
  });

  test('after a refusal is still free', () => {
    const shop = aShop();
    const asked = orderAsked(shop);
    expect(refusalOf(shop, { ...asked, hasReadAll: false })?.kind).toBe('not-ticked');
    took(placeOrder(shop.asNobody(), { ...asked, variant: variantFrom('fern-bank|panthenol@7500') }));
  });

  test('of the same actives in another order is the same order', () => {
    const shop = aShop();
    const asked = orderAsked(shop, { variant: variantFrom('fern-bank|niacinamide@20000+panthenol@3000') });
    const receipt = took(placeOrder(shop.asNobody(), asked));
    expect(placeOrder(shop.asNobody(), { ...asked, variant: variantFrom('fern-bank|panthenol@3000+niacinamide@20000') })).toEqual({
      ok: true,
      value: receipt,
    });
  });
});

describe('nothing is written when an order is refused', () => {
  const cases: readonly (readonly [string, Partial<OrderAsked>, object])[] = [
    [
      'a caution without its tick',
      { variant: variantFrom(ACID_MASK), tickedCautionIds: [] },
      { kind: 'not-ticked', cautionIds: ['sun'], hasReadAll: true },
    ],
    [
      'a personal caution without its tick',
      { answers: answersTo(CAREFUL), tickedCautionIds: ['sun'] },
      { kind: 'not-ticked', cautionIds: ['try-first'], hasReadAll: true },
    ],
    ['directions unread', { hasReadAll: false }, { kind: 'not-ticked', cautionIds: [], hasReadAll: false }],
    ['a mask that the answers rule out', { variant: variantFrom(ACID_MASK), answers: answersTo(CAREFUL) }, { kind: 'no-longer-offered' }],
    ['answers that end the visit', { answers: answersTo({ ...EASY, today: ['today-rash'] }) }, { kind: 'no-longer-offered' }],
    ['a mask that was never permitted', { variant: variantFrom('rust-seam|lactic-acid@10000') }, { kind: 'no-longer-offered' }],
    ['a shade that is not there', { variant: variantFrom('moon-dust|') }, { kind: 'no-longer-offered' }],
    ['an unknown counter', { counterCode: 'XX' }, { kind: 'no-counter' }],
    ['a bench for a counter', { counterCode: 'B1' }, { kind: 'no-counter' }],
    ['an unknown size', { jarSizeId: 'jar-9' }, { kind: 'no-such-size' }],
    ['a language that is not on sale', { lang: 'ar' }, { kind: 'no-such-language' }],
    ['half of the answers', { answers: answersTo({ age: ['age-18'] }) }, { kind: 'bad-answers' }],
  ];
  test.each(cases)('%s', (_, bend, refusal) => {
    const shop = aShop();
    const before = everythingStored(shop);
    expect(refusalOf(shop, orderAsked(shop, bend))).toMatchObject(refusal);
    expect(everythingStored(shop)).toBe(before);
  });

  test('a part that is on stop', () => {
    const shop = aShop();
    const stopped = {
      id: idOf(7),
      subjectKind: 'shade',
      subjectId: 'chalk-down',
      reason: 'test',
      byAccountId: shop.accountId('formulator'),
      atMs: later(0),
    } as const;
    shop.db.write((tx) => insertStop(tx, stopped));
    expect(refusalOf(shop, orderAsked(shop))).toEqual({ kind: 'no-longer-offered' });
  });

  test('a fault halfway: the order goes with its card', () => {
    const shop = aShop();
    const before = everythingStored(shop);
    shop.sqlite.exec("CREATE TEMP TRIGGER broken BEFORE INSERT ON reservation BEGIN SELECT raise(ABORT, 'the disk is on fire'); END");
    expect(() => placeOrder(shop.asNobody(), orderAsked(shop))).toThrow('the disk is on fire');
    expect(everythingStored(shop)).toBe(before);
  });
});

describe('a new edition between choice and order', () => {
  const priced = (rulebook: Rulebook): Rulebook => ({
    ...rulebook,
    jarSizes: rulebook.jarSizes.map((size) => ({ ...size, priceMinor: moneyMinor(1500) })),
  });
  const reworded = (rulebook: Rulebook): Rulebook => ({
    ...rulebook,
    texts: { en: { ...rulebook.texts.en, 'caution.eyes': 'Keep it well out of your eyes.' } },
  });
  const dearerAcid = (rulebook: Rulebook): Rulebook => ({
    ...rulebook,
    actives: rulebook.actives.map((active) =>
      active.id === 'lactic-acid'
        ? { ...active, levels: active.levels.map((level) => ({ ...level, priceMinor: moneyMinor(900) })) }
        : active,
    ),
  });

  test('stands where mask, price and cautions are the same, under the edition in force', () => {
    const shop = aShop();
    const asked = orderAsked(shop);
    const hash = nextEdition(shop, dearerAcid);
    took(placeOrder(shop.asNobody(6), asked));
    expect(storedOrder(shop, asked)?.order.editionHash).toBe(hash);
  });

  test.each<[string, (rulebook: Rulebook) => Rulebook, readonly string[]]>([
    ['another price', priced, ['price']],
    ['another caution', reworded, ['cautions']],
    ['both', (rulebook) => priced(reworded(rulebook)), ['price', 'cautions']],
    ['no such mask any more', (rulebook) => ({ ...rulebook, scopes: [] }), ['mask']],
    [
      'a question more',
      (rulebook) => ({ ...rulebook, questions: [...rulebook.questions, { ...rulebook.questions[0]!, id: 'age-again' }] }),
      ['questions'],
    ],
  ])('%s: says what changed, shows what is now, and writes nothing', (_, bend, changed) => {
    const shop = aShop();
    const asked = orderAsked(shop);
    const hash = nextEdition(shop, bend);
    const before = everythingStored(shop);
    expect(refusalOf(shop, asked, 6)).toMatchObject({ kind: 'edition-moved', changed, show: { editionHash: hash } });
    expect(everythingStored(shop)).toBe(before);
  });

  test('an edition that this shop never had was never seen', () => {
    const shop = aShop();
    expect(refusalOf(shop, orderAsked(shop, { editionHash: 'f'.repeat(64) }))).toMatchObject({
      kind: 'edition-moved',
      changed: ['questions', 'mask'],
    });
  });
});

describe('answers', () => {
  test('decide and are gone: two visits with other answers leave the same bytes', () => {
    const order = (given: Readonly<Record<string, readonly string[]>>): string => {
      const shop = aShop();
      const asked = { ...orderAsked(shop, { answers: answersTo(given) }), requestKey: '00000000-0000-4000-8000-00000000abcd' };
      took(placeOrder(shop.asNobody(), asked));
      return everythingStored(shop);
    };
    const plain = order(EASY);
    expect(order({ age: ['age-16'], wish: ['wish-calm'], sting: ['sting-never'], today: ['today-sun-soon'] })).toBe(plain);
  });

  test('that add cautions leave only that some were shown, never which', () => {
    const shop = aShop();
    const asked = orderAsked(shop, { answers: answersTo({ ...EASY, sting: ['sting-skip'], today: ['today-skip'] }) });
    took(placeOrder(shop.asNobody(), asked));
    const order = storedOrder(shop, asked)?.order;
    expect(order).toMatchObject({ wasPersonalCautionShown: true, variantCautionIds: ['broken-skin', 'children', 'eyes', 'time'] });
    const stored = everythingStored(shop);
    const given = asked.answers.flatMap((answer) => [`"${answer.questionId}"`, ...answer.optionIds]);
    for (const answer of [...given, 'try-first', 'sting-', 'today-']) expect(stored.includes(answer), answer).toBe(false);
    const json = [JSON.stringify(asked.answers), JSON.stringify(answersTo(EASY))];
    for (const text of json) expect(stored).not.toContain(shop.asNobody().sha256(text));
  });

  test('are not needed to repeat a request: its hash covers edition, variant and size alone', () => {
    const shop = aShop();
    const asked = orderAsked(shop, { requestKey: aKey() });
    took(placeOrder(shop.asNobody(), asked));
    const { sha256 } = shop.asNobody();
    const known = { editionHash: asked.editionHash, jarSizeId: asked.jarSizeId, variant: MILD_MASK };
    const row = shop.sqlite.prepare('SELECT sha256 FROM request WHERE key = ?').pluck().get(asked.requestKey);
    expect(row).toBe(sha256(JSON.stringify(known)));
  });
});
