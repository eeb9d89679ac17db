// The kiosk's calls from outside: shapes, statuses, tokens that cannot be made up, and replies that give nothing of a recipe away.
import { describe, expect, test } from 'vitest';
import type { Route } from '#app/_server/define-route.ts';
import type { Edge } from '#app/_server/edge.ts';
import { makeOpenEditions } from '#app/_server/open-editions.ts';
import { runHere } from '#app/_server/run-here.ts';
import { makeSealer } from '#app/_server/seal.ts';
import { sha256 } from '#app/_server/services.ts';
import { POST as masks } from '#app/api/kiosk/masks/route.ts';
import { POST as order } from '#app/api/kiosk/order/route.ts';
import { POST as whatFits } from '#app/api/kiosk/what-fits/route.ts';
import { POST as whyNot } from '#app/api/kiosk/why-not/route.ts';
import type { MasksOutput } from '#lib/contracts/kiosk-masks.ts';
import { aKey } from '#test/support/a-bench-order.ts';
import type { AShop } from '#test/support/a-shop.ts';
import { aShop } from '#test/support/a-shop.ts';
import { CAREFUL, EASY, everythingStored, nextEdition, visitAsked } from '#test/support/a-visit.ts';
import { later } from '#test/support/shop-facts.ts';

type Json = Readonly<Record<string, unknown>>;
type Reply = { readonly status: number; readonly body: Json & { refusal?: Json; fields?: readonly { path: string; message: string }[] } };

const editions = makeOpenEditions();

function edgeOf(shop: AShop, minutes: number): Edge {
  const { newId } = shop.asNobody();
  const services = { db: shop.db, dataDir: '', now: () => later(minutes), newId, sha256, editions, runJob: runHere };
  return {
    services: () => services,
    readSession: () => ({ kind: 'nobody' }),
    logFault: ({ error }) => {
      throw error;
    },
    newId,
  };
}

async function ask(shop: AShop, route: Route, body: unknown, minutes = 0): Promise<Reply> {
  const headers = { 'content-type': 'application/json', origin: 'http://shop.test' };
  const request = new Request('http://shop.test/api/kiosk', { method: 'POST', headers, body: JSON.stringify(body) });
  const response = await route.respond(edgeOf(shop, minutes), request, {});
  return { status: response.status, body: (await response.json()) as Reply['body'] };
}

type Shown = Extract<MasksOutput, { kind: 'masks' }>['masks'];

async function shownMasks(shop: AShop, given = EASY): Promise<Shown> {
  const { body } = await ask(shop, masks, visitAsked(shop, given));
  return (body as unknown as Extract<MasksOutput, { kind: 'masks' }>).masks;
}

async function orderInput(shop: AShop, bend: Json = {}): Promise<Json> {
  const [mask] = await shownMasks(shop);
  const ticks = { tickedCautionIds: mask?.cautions.filter((one) => one.mustTick).map((one) => one.id), hasReadAll: true };
  return { ...visitAsked(shop), requestKey: aKey(), token: mask?.token, counterCode: 'CN', ...ticks, ...bend };
}

/** Tokens are noise in which any letters may stand. */
const withoutTokens = (body: unknown): string => JSON.stringify(body).replaceAll(/"token":"[^"]+"/g, '');

describe('masks', () => {
  test('come with tokens and without a share, a level or the id of a material', async () => {
    const shop = aShop();
    const { status, body } = await ask(shop, masks, visitAsked(shop));
    expect([status, body.ok, body.kind]).toEqual([200, true, 'masks']);
    const text = withoutTokens(body);
    expect(text).not.toMatch(
      /ppm| %|percent|lactic-acid|panthenol-75|kaolin-neat|citrate|staff|"id":"(?!sun|try-first|sting|eyes|broken-skin|time|children|towels)/i,
    );
    const numbers = Array.from(text.matchAll(/"([A-Za-z]+)":(\d+)/g), ([, name]) => name);
    expect(new Set(numbers)).toEqual(new Set(['priceMinor', 'thicknessIndex']));
  });

  test('the same answers give the same bytes, and equal masks equal tokens', async () => {
    const shop = aShop();
    expect((await ask(shop, masks, visitAsked(shop))).body).toEqual((await ask(shop, masks, visitAsked(shop))).body);
  });

  test('an outcome names the others', async () => {
    const shop = aShop();
    const { status, body } = await ask(shop, masks, visitAsked(shop, { ...EASY, age: ['age-under-16'], today: ['today-rash'] }));
    expect([status, body]).toEqual([200, { ok: true, kind: 'outcome', outcome: 'professional', others: ['age'] }]);
  });

  test.each<[string, Json, string]>([
    ['no edition', { editionHash: undefined }, 'editionHash'],
    ['a hash that is none', { editionHash: 'latest' }, 'editionHash'],
    ['a number for a hash', { editionHash: 10 ** 9 }, 'editionHash'],
    ['answers that are no list', { answers: { age: 'age-18' } }, 'answers'],
    ['an answer without options', { answers: [{ questionId: 'age' }] }, 'answers.0.optionIds'],
    ['an option that is a number', { answers: [{ questionId: 'age', optionIds: [10 ** 9] }] }, 'answers.0.optionIds.0'],
    ['an option of markup', { answers: [{ questionId: 'age', optionIds: ['<b>'] }] }, 'answers.0.optionIds.0'],
    ['a thousand answers', { answers: Array.from({ length: 1000 }, () => ({ questionId: 'age', optionIds: [] })) }, 'answers'],
    ['a size that is a path', { jarSizeId: '../jar' }, 'jarSizeId'],
    ['a language nobody speaks', { lang: 'xx' }, 'lang'],
    ['something that was not asked for', { score: 100 }, ''],
  ])('%s is refused with the place', async (_, bend, path) => {
    const shop = aShop();
    const { status, body } = await ask(shop, masks, { ...visitAsked(shop), ...bend });
    expect([status, body.fields?.map((field) => field.path)]).toEqual([422, [path]]);
    expect(body.fields?.[0]?.message).not.toBe('');
  });

  test('an edition that is not in force comes back with the one that is', async () => {
    const shop = aShop();
    const hash = nextEdition(shop, (rulebook) => ({ ...rulebook, title: 'Second' }));
    const { status, body } = await ask(shop, masks, visitAsked(shop), 6);
    expect([status, body.refusal]).toMatchObject([409, { kind: 'edition-moved', changed: [], show: { editionHash: hash, editionNo: 2 } }]);
    expect(JSON.stringify(body)).not.toMatch(/ppm|effects/i);
  });

  test.each([
    [{ jarSizeId: 'jar-9' }, 404, 'no-such-size'],
    [{ lang: 'fr' }, 404, 'no-such-language'],
    [{ answers: [] }, 200, 'bad-answers'],
  ])('%j is answered with %i', async (bend, status, kind) => {
    const shop = aShop();
    const reply = await ask(shop, masks, { ...visitAsked(shop), ...bend });
    expect([reply.status, reply.body.refusal?.kind]).toEqual([status, kind]);
  });
});

describe('tokens', () => {
  const SECRET = 'test'.repeat(12);
  const variant = (levelPpm: number): string => JSON.stringify({ shadeId: 'rust-seam', actives: [{ activeId: 'lactic-acid', levelPpm }] });

  test.each<[string, (hash: string) => string]>([
    ['made up', () => 'c2hhZGU'],
    ['of another shop', (hash) => makeSealer('other'.repeat(12)).seal(hash, variant(5000))],
    ['of another edition', () => makeSealer(SECRET).seal('a'.repeat(64), variant(5000))],
    [
      'bent by one sign',
      (hash) =>
        makeSealer(SECRET)
          .seal(hash, variant(5000))
          .replace(/.$/, (last) => (last === 'A' ? 'B' : 'A'))
          .replace(/^./, 'Z'),
    ],
  ])('%s open nothing, anywhere', async (_, forge) => {
    const shop = aShop();
    const token = forge(visitAsked(shop).editionHash);
    const before = everythingStored(shop);
    const replies = [
      await ask(shop, order, await orderInput(shop, { token })),
      await ask(shop, whyNot, { ...visitAsked(shop), shownTokens: [token] }),
      await ask(shop, whatFits, { ...visitAsked(shop), token }),
    ];
    for (const { status, body } of replies) expect([status, body.refusal]).toEqual([404, { kind: 'bad-token' }]);
    expect(everythingStored(shop)).toBe(before);
  });

  test('with the shop’s own secret still cannot order what is not permitted', async () => {
    const shop = aShop();
    const token = makeSealer(SECRET).seal(visitAsked(shop).editionHash, variant(10_000));
    const { status, body } = await ask(shop, order, await orderInput(shop, { token }));
    expect([status, body.refusal]).toEqual([409, { kind: 'no-longer-offered' }]);
  });
});

describe('why not, and what fits', () => {
  test('list choices with tokens where they fit and plain reasons where they do not', async () => {
    const shop = aShop();
    const shownTokens = (await shownMasks(shop, CAREFUL)).map((mask) => mask.token);
    const { status, body } = await ask(shop, whyNot, { ...visitAsked(shop, CAREFUL), shownTokens });
    expect(status).toBe(200);
    const choices = body.choices as readonly { name: string; mask: Json | null; reasons: readonly Json[] }[];
    expect(choices.every((choice) => (choice.mask === null) === choice.reasons.length > 0)).toBe(true);
    expect(choices.find((choice) => choice.name === 'Lactic acid')?.reasons[0]).toMatchObject({ reason: 'avoided', isPersonal: true });
    expect(withoutTokens(choices.map(({ reasons }) => reasons))).not.toMatch(/ppm|"lactic-acid"|\d/i);
    expect(withoutTokens(body)).not.toMatch(/ppm|"lactic-acid"|kaolin-neat/i);
  });

  test('a mask that fits among the others can be ordered', async () => {
    const shop = aShop();
    const given = { ...EASY, wish: ['wish-dry'] };
    const [mask] = await shownMasks(shop, given);
    const { body } = await ask(shop, whyNot, { ...visitAsked(shop, given), shownTokens: [mask?.token] });
    const fitting = (body.choices as readonly { mask: { token: string } | null }[]).flatMap((choice) => choice.mask ?? []);
    expect(fitting.length).toBeGreaterThan(0);
    for (const { token } of fitting) expect((await ask(shop, order, await orderInput(shop, { token }))).status).toBe(200);
  });

  test('a token of what fits can be ordered', async () => {
    const shop = aShop();
    const visit = visitAsked(shop, { ...EASY, wish: ['wish-dry'] });
    const [mask] = await shownMasks(shop, { ...EASY, wish: ['wish-dry'] });
    const { body } = await ask(shop, whatFits, { ...visit, token: mask?.token });
    const fitting = (body.choices as readonly { token: string | null }[]).filter((choice) => choice.token !== null);
    expect(fitting.length).toBeGreaterThan(1);
    for (const { token } of fitting) {
      const { status } = await ask(shop, order, await orderInput(shop, { ...visit, token, tickedCautionIds: ['sun'] }));
      expect(status).toBe(200);
    }
  });

  test('ask about one to four masks', async () => {
    const shop = aShop();
    expect((await ask(shop, whyNot, { ...visitAsked(shop), shownTokens: [] })).status).toBe(422);
    expect((await ask(shop, whyNot, { ...visitAsked(shop), shownTokens: Array.from({ length: 5 }, () => 'x') })).status).toBe(422);
  });
});

describe('an order', () => {
  test('is answered with its code and the code as a picture', async () => {
    const shop = aShop();
    const { status, body } = await ask(shop, order, await orderInput(shop));
    expect([status, body]).toMatchObject([
      200,
      { ok: true, code: expect.stringMatching(/^[A-Z]\d-001$/), aheadCount: 0, symbol: { sideCount: 21 } },
    ]);
  });

  test('sent twice, also at the same time, is stored once and answered alike', async () => {
    const shop = aShop();
    const input = await orderInput(shop);
    const replies = await Promise.all([ask(shop, order, input), ask(shop, order, input), ask(shop, order, input)]);
    expect(new Set(replies.map((reply) => JSON.stringify(reply))).size).toBe(1);
    expect(replies[0]?.status).toBe(200);
    expect(shop.sqlite.prepare('SELECT count(*) FROM customer_order').pluck().get()).toBe(1);
  });

  test('with the key of another jar is refused', async () => {
    const shop = aShop();
    const input = await orderInput(shop);
    const [, other] = await shownMasks(shop);
    await ask(shop, order, input);
    const { status, body } = await ask(shop, order, { ...input, token: other?.token });
    expect([status, body.refusal]).toEqual([409, { kind: 'other-content' }]);
  });

  test('without its ticks is refused, and says which', async () => {
    const shop = aShop();
    const { status, body } = await ask(shop, order, await orderInput(shop, { tickedCautionIds: [] }));
    expect([status, body.refusal]).toEqual([200, { kind: 'not-ticked', cautionIds: ['sun'], hasReadAll: true }]);
  });

  test('under an edition that has gone says what changed', async () => {
    const shop = aShop();
    const input = await orderInput(shop);
    nextEdition(shop, (rulebook) => ({ ...rulebook, scopes: [] }));
    const { status, body } = await ask(shop, order, input, 6);
    expect([status, body.refusal]).toMatchObject([409, { kind: 'edition-moved', changed: ['mask'] }]);
  });

  test.each<[string, Json, string]>([
    ['a key that is no UUID', { requestKey: '1' }, 'requestKey'],
    ['ticks that are no list', { tickedCautionIds: 'sun' }, 'tickedCautionIds'],
    ['"yes" for read', { hasReadAll: 'yes' }, 'hasReadAll'],
    ['no token', { token: '' }, 'token'],
    ['a token of a megabyte', { token: 'x'.repeat(5000) }, 'token'],
    ['a counter of spaces', { counterCode: '  ' }, 'counterCode'],
    ['a price of one’s own', { priceMinor: 1 }, ''],
  ])('%s is refused with the place', async (_, bend, path) => {
    const shop = aShop();
    const { status, body } = await ask(shop, order, await orderInput(shop, bend));
    expect([status, body.fields?.map((field) => field.path)]).toEqual([422, [path]]);
  });

  test('at a counter that is none', async () => {
    const shop = aShop();
    const { status, body } = await ask(shop, order, await orderInput(shop, { counterCode: 'XX' }));
    expect([status, body.refusal]).toEqual([404, { kind: 'no-counter' }]);
  });

  test('from another site is not read', async () => {
    const shop = aShop();
    const headers = { 'content-type': 'application/json', origin: 'http://evil.test' };
    const request = new Request('http://shop.test/api/kiosk/order', { method: 'POST', headers, body: '{}' });
    expect((await order.respond(edgeOf(shop, 0), request, {})).status).toBe(403);
  });
});
