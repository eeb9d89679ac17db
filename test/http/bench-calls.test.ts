// The calls of the bench over plain requests: who may, what is refused by its form alone, and that a repeated request does nothing twice.
import { describe, expect, test } from 'vitest';
import type { Actor } from '#app/_server/actor.ts';
import type { Route } from '#app/_server/define-route.ts';
import type { Edge } from '#app/_server/edge.ts';
import { hashPassword } from '#app/_server/password.ts';
import type { Services } from '#app/_server/services.ts';
import { sha256 } from '#app/_server/services.ts';
import { POST as claim } from '#app/api/bench/claim/route.ts';
import { POST as fitness } from '#app/api/bench/fitness/route.ts';
import { POST as mend } from '#app/api/bench/mend/route.ts';
import { GET as order } from '#app/api/bench/order/route.ts';
import { GET as queue } from '#app/api/bench/queue/route.ts';
import { POST as reading } from '#app/api/bench/reading/route.ts';
import { POST as step } from '#app/api/bench/step/route.ts';
import { ledgerSeqNo } from '#db/ledger.ts';
import { insertSecretHash } from '#db/people.ts';
import type { BenchOutput } from '#lib/contracts/bench-view.ts';
import type { Problem } from '#lib/contracts/problem.ts';
import { aKey, benchOrder, mixUntil, orderJar } from '#test/support/a-bench-order.ts';
import type { AShop, Person } from '#test/support/a-shop.ts';
import { aShop, PEOPLE } from '#test/support/a-shop.ts';

function edgeOf(shop: AShop, actor: Actor): Edge {
  const flow = shop.asNobody(8);
  const services = { db: shop.db, now: () => flow.now, newId: flow.newId, sha256, editions: flow.editions } as unknown as Services;
  const logFault = ({ error }: { readonly error: unknown }): never => {
    throw error;
  };
  return { services: () => services, readSession: () => actor, logFault, newId: flow.newId };
}

const staff = (shop: AShop, person: Person): Actor => ({
  kind: 'staff',
  accountId: shop.accountId(person),
  role: PEOPLE[person],
  stationId: null,
});

async function post<Body = BenchOutput | Problem>(
  route: Route,
  shop: AShop,
  body: unknown,
  actor: Actor = staff(shop, 'mixer'),
): Promise<{ readonly status: number; readonly body: Body }> {
  const headers = { 'content-type': 'application/json', origin: 'http://shop.test', host: 'shop.test' };
  const response = await route.respond(
    edgeOf(shop, actor),
    new Request('http://shop.test/api', { method: 'POST', headers, body: JSON.stringify(body) }),
    {},
  );
  return { status: response.status, body: (await response.json()) as Body };
}

const get = (route: Route, shop: AShop, query: string, headers: Record<string, string> = {}): Promise<Response> =>
  route.respond(edgeOf(shop, staff(shop, 'mixer')), new Request(`http://shop.test/api${query}`, { headers }), {});

function atFirstPowder() {
  const shop = aShop();
  const orderId = mixUntil(shop, orderJar(shop), { lineNo: 1 });
  const good = {
    requestKey: aKey(),
    orderId,
    lineNo: 1,
    lotCode: 'FRN-B-105',
    massUg: 1_040_000,
    againUg: 1_040_000,
    isPoured: false,
    second: null,
  };
  return { shop, orderId, good };
}

describe('who may', () => {
  test.each<[Actor['kind'] | Person, number]>([
    ['nobody', 401],
    ['kiosk', 403],
    ['formulator', 403],
    ['manager', 403],
    ['checker', 200],
    ['mixer', 200],
  ])('%s: %i', async (who, status) => {
    const shop = aShop();
    const actor: Actor =
      who === 'nobody' ? { kind: 'nobody' } : who === 'kiosk' ? { kind: 'kiosk', stationId: shop.kioskId } : staff(shop, who as Person);
    expect((await post(claim, shop, { requestKey: aKey(), orderId: orderJar(shop) }, actor)).status).toBe(status);
  });
});

describe('a weight that no scale shows', () => {
  test.each([-1, 0, 0.5, null, 'a lot', 1_000_000_000 * 1_000_000])(
    '%j is refused with the field that is wrong, and nothing is written',
    async (massUg) => {
      const { shop, good } = atFirstPowder();
      const before = shop.db.read(ledgerSeqNo);
      const { status, body } = await post<Problem>(reading, shop, { ...good, massUg, againUg: massUg });
      expect(status).toBe(422);
      expect(body.fields.map((field) => field.path)).toEqual(['massUg', 'againUg']);
      expect(shop.db.read(ledgerSeqNo)).toBe(before);
    },
  );

  test('not a number in JavaScript is nothing in JSON', async () => {
    const { shop, good } = atFirstPowder();
    expect((await post<Problem>(reading, shop, { ...good, massUg: Number.NaN })).body.fields[0]?.path).toBe('massUg');
  });

  test.each<[string, Record<string, unknown>]>([
    ['lotCode', { lotCode: ' ' }],
    ['lineNo', { lineNo: 0 }],
    ['requestKey', { requestKey: 'short' }],
    ['second.password', { second: { code: 'checker', password: '', lotCode: 'FRN-B-105', massUg: 1 } }],
  ])('the field %s is named', async (path, bend) => {
    const { shop, good } = atFirstPowder();
    const { status, body } = await post<Problem>(reading, shop, { ...good, ...bend });
    expect([status, body.fields.map((field) => field.path)]).toEqual([422, [path]]);
  });

  test('a tare, a check weight and a waste are held to the same', async () => {
    const { shop, orderId } = atFirstPowder();
    const paths = await Promise.all([
      post<Problem>(step, shop, { requestKey: aKey(), orderId, step: { kind: 'bind-jar', tareUg: 0, againUg: -5 } }),
      post<Problem>(fitness, shop, {
        requestKey: aKey(),
        check: { kind: 'scale', scaleId: shop.scaleId, zeroUg: -10_000, shownUg: [0, 50_000_000] },
      }),
      post<Problem>(mend, shop, { requestKey: aKey(), orderId, mend: { kind: 'take-out', outUg: -1 } }),
    ]);
    expect(paths.map(({ status, body }) => [status, body.fields.map((field) => field.path)])).toEqual([
      [422, ['step.tareUg', 'step.againUg']],
      [422, ['check.shownUg.0']],
      [422, ['mend.outUg']],
    ]);
  });
});

describe('an act', () => {
  test('answers with where the order stands; sent twice it is done once', async () => {
    const { shop, good } = atFirstPowder();
    const first = await post<BenchOutput>(reading, shop, good);
    expect(first).toMatchObject({
      status: 200,
      body: { ok: true, view: { doing: { kind: 'weigh', lineNo: 2 }, lastReading: { massUg: 1_040_000 } } },
    });
    const before = shop.db.read(ledgerSeqNo);
    expect(await post(reading, shop, good)).toEqual(first);
    expect(shop.db.read(ledgerSeqNo)).toBe(before);
    expect(await post(reading, shop, { ...good, massUg: 1_050_000, againUg: 1_050_000 })).toMatchObject({
      status: 409,
      body: { refusal: { kind: 'other-content' } },
    });
  });

  test('for a step that is past: the world moved', async () => {
    const { shop, good } = atFirstPowder();
    await post(reading, shop, good);
    expect(await post(reading, shop, { ...good, requestKey: aKey() })).toMatchObject({
      status: 409,
      body: { refusal: { kind: 'not-this-step' } },
    });
  });

  test('for an order that is not there', async () => {
    const { shop, good } = atFirstPowder();
    expect((await post(reading, shop, { ...good, orderId: shop.benchId })).status).toBe(404);
  });

  test('no weight of another step, and nothing of the rulebook, is in the answer', async () => {
    const { shop, orderId } = atFirstPowder();
    const text = await (await get(order, shop, `?orderId=${orderId}`)).text();
    expect(text).not.toContain(String(benchOrder(shop, orderId).card.lines[2]?.targetUg));
    expect(text).not.toContain('exactUg');
  });
});

describe('the second person', () => {
  async function atFlagged() {
    const shop = aShop();
    const hash = await hashPassword('green-clay-two');
    for (const person of ['checker', 'mixer', 'manager'] as const)
      shop.db.write((tx) => insertSecretHash(tx, { accountId: shop.accountId(person), hash, atMs: shop.asNobody().now }));
    const orderId = mixUntil(shop, orderJar(shop), { lineNo: 4 });
    const seen = { lotCode: 'NIA-N-106', massUg: 1_040_000 };
    const weigh = (second: { readonly code: string; readonly password: string; readonly massUg?: number }) =>
      post<BenchOutput>(reading, shop, {
        requestKey: aKey(),
        orderId,
        lineNo: 4,
        ...seen,
        againUg: seen.massUg,
        isPoured: false,
        second: { ...seen, ...second },
      });
    return { shop, weigh };
  }

  test.each([
    ['a wrong password', { code: 'checker', password: 'green' }, 'second-wrong'],
    ['nobody of that name', { code: 'chekcer', password: 'green-clay-two' }, 'second-wrong'],
    ['the mixer alone', { code: 'mixer', password: 'green-clay-two' }, 'second-same-person'],
    ['somebody who does not weigh', { code: 'manager', password: 'green-clay-two' }, 'second-role'],
    ['another reading', { code: 'checker', password: 'green-clay-two', massUg: 1_050_000 }, 'second-differs'],
  ])('%s is refused', async (_what, second, kind) => {
    const { weigh } = await atFlagged();
    expect((await weigh(second)).body).toMatchObject({ ok: false, refusal: { kind } });
  });

  test('the same reading by somebody else is taken, and tries are on record', async () => {
    const { shop, weigh } = await atFlagged();
    expect((await weigh({ code: 'checker', password: 'green-clay-two' })).body).toMatchObject({
      ok: true,
      view: { doing: { kind: 'weigh', lineNo: 5 } },
    });
    expect(shop.sqlite.prepare('SELECT outcome FROM auth_attempt WHERE account_id = ?').pluck().all(shop.accountId('checker'))).toEqual([
      'passed',
    ]);
  });
});

describe('polling', () => {
  test('the queue is answered with 304 until something happens', async () => {
    const shop = aShop();
    orderJar(shop);
    const first = await get(queue, shop, '');
    const etag = first.headers.get('etag') ?? '';
    expect([first.status, (await first.json()).rows.length]).toEqual([200, 1]);
    expect((await get(queue, shop, '', { 'if-none-match': etag })).status).toBe(304);
    const orderId = orderJar(shop);
    await post(claim, shop, { requestKey: aKey(), orderId });
    const again = await get(queue, shop, '', { 'if-none-match': etag });
    expect([again.status, (await again.json()).rows.length]).toEqual([200, 2]);
  });

  test('one order by its id; an id that is none is refused', async () => {
    const shop = aShop();
    const orderId = orderJar(shop);
    expect((await get(order, shop, `?orderId=${orderId}`)).status).toBe(200);
    expect((await get(order, shop, '?orderId=1')).status).toBe(422);
    expect((await get(order, shop, `?orderId=${shop.benchId}`)).status).toBe(404);
  });
});
