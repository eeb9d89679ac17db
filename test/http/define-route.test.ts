import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import type { Actor, RouteRole } from '#app/_server/actor.ts';
import type { RouteDefinition } from '#app/_server/define-route.ts';
import { defineRoute } from '#app/_server/define-route.ts';
import type { Edge } from '#app/_server/edge.ts';
import type { FaultEntry } from '#app/_server/log.ts';
import type { Services } from '#app/_server/services.ts';
import { problemSchema } from '#lib/contracts/problem.ts';
import { instantMs } from '#lib/units/time.ts';

const NOBODY: Actor = { kind: 'nobody' };
const KIOSK: Actor = { kind: 'kiosk', stationId: 'station-1' };
const MIXER: Actor = { kind: 'staff', accountId: 'account-1', role: 'mixer', stationId: 'station-2' };
const NOW = instantMs(1_795_600_000_000);

/** The outside of one call: a fixed clock and id, and a list of what was logged. */
function edgeFor(actor: Actor): { edge: Edge; logged: FaultEntry[]; clockReads: { count: number } } {
  const logged: FaultEntry[] = [];
  const clockReads = { count: 0 };
  const now = () => {
    clockReads.count += 1;
    return NOW;
  };
  const services = { now, newId: () => 'id-1' } as Services;
  return {
    edge: {
      services: () => services,
      readSession: ({ now: sessionNow }) => {
        sessionNow();
        return actor;
      },
      logFault: (entry) => logged.push(entry),
      newId: () => 'fault-1',
    },
    logged,
    clockReads,
  };
}

const input = z.strictObject({ lineNo: z.int().positive(), note: z.string().optional() });
const output = z.discriminatedUnion('ok', [
  z.strictObject({ ok: z.literal(true), doubled: z.int() }),
  z.strictObject({
    ok: z.literal(false),
    refusal: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('edition-moved') }),
      z.strictObject({ kind: z.literal('too-heavy') }),
    ]),
  }),
]);

type Weigh = RouteDefinition<typeof input, typeof output>;
const weigh = (change: Partial<Weigh> = {}) =>
  defineRoute<typeof input, typeof output>({
    method: 'POST',
    roles: ['mixer'],
    input,
    output,
    handle: (_context, { lineNo }) => ({ ok: true, doubled: lineNo * 2 }),
    refusalStatus: { 'edition-moved': 409 },
    ...change,
  });

const HEADERS = { 'content-type': 'application/json', origin: 'http://shop.test', host: 'shop.test' };
const post = (body: string, headers: Record<string, string> = HEADERS): Request =>
  new Request('http://shop.test/api/weigh', { method: 'POST', body, headers });

async function call(route: ReturnType<typeof weigh>, request: Request, actor: Actor = MIXER) {
  const outside = edgeFor(actor);
  const response = await route.respond(outside.edge, request, {});
  return { ...outside, status: response.status, response, body: response.status === 304 ? null : await response.json() };
}

const problemOf = async (request: Request, actor?: Actor) => {
  const { status, response, body } = await call(weigh(), request, actor);
  expect(response.headers.get('content-type')).toBe('application/problem+json');
  const { kind, fields } = problemSchema.parse(body);
  return { status, kind, fields };
};

describe('a call that is let through', () => {
  test('gets its checked input, one reading of the clock, and may not be cached', async () => {
    const { status, body, response, clockReads, logged } = await call(weigh(), post('{"lineNo": 3}'));
    expect({ status, body }).toEqual({ status: 200, body: { ok: true, doubled: 6 } });
    expect(response.headers.get('cache-control')).toBe('no-store');
    expect(clockReads.count).toBe(1);
    expect(logged).toEqual([]);
  });

  test('an expected no is a plain 200, and 409 where the world moved', async () => {
    const refusing = (kind: 'edition-moved' | 'too-heavy') => weigh({ handle: () => ({ ok: false, refusal: { kind } }) });
    expect(await call(refusing('too-heavy'), post('{"lineNo": 3}'))).toMatchObject({
      status: 200,
      body: { ok: false, refusal: { kind: 'too-heavy' } },
    });
    expect(await call(refusing('edition-moved'), post('{"lineNo": 3}'))).toMatchObject({ status: 409 });
  });

  test('cookies that the call sets are on the reply', async () => {
    const route = weigh({
      handle: ({ setCookie }) => {
        setCookie('a=1');
        setCookie('b=2');
        return { ok: true, doubled: 2 };
      },
    });
    const { response } = await call(route, post('{"lineNo": 1}'));
    expect(response.headers.getSetCookie()).toEqual(['a=1', 'b=2']);
  });

  test('the parts of the path win over the body, and over the query of a GET', async () => {
    const echo = defineRoute({
      method: 'GET',
      roles: ['anyone'],
      input: z.strictObject({ code: z.string(), page: z.string() }),
      output: z.strictObject({ code: z.string(), page: z.string() }),
      handle: (_context, given) => given,
    });
    const response = await echo.respond(edgeFor(NOBODY).edge, new Request('http://shop.test/api/jar?page=2&code=forged'), { code: 'ML-1' });
    expect(await response.json()).toEqual({ code: 'ML-1', page: '2' });
    const twice = await echo.respond(edgeFor(NOBODY).edge, new Request('http://shop.test/api/jar?page=2&page=3'), { code: 'ML-1' });
    expect(twice.status).toBe(422);
  });

  test('a file comes as bytes beside the query', async () => {
    const upload = defineRoute({
      method: 'POST',
      roles: ['anyone'],
      body: 'bytes',
      input: z.strictObject({ name: z.string(), bytes: z.instanceof(Uint8Array) }),
      output: z.strictObject({ name: z.string(), bytesCount: z.int() }),
      handle: (_context, { name, bytes }) => ({ name, bytesCount: bytes.length }),
    });
    const send = (type: string) =>
      new Request('http://shop.test/api/evidence?name=patch-study', {
        method: 'POST',
        body: new Uint8Array([0, 255, 13]),
        headers: { ...HEADERS, 'content-type': type },
      });
    const response = await upload.respond(edgeFor(NOBODY).edge, send('application/octet-stream'), {});
    expect(await response.json()).toEqual({ name: 'patch-study', bytesCount: 3 });
    expect((await upload.respond(edgeFor(NOBODY).edge, send('application/json'), {})).status).toBe(415);
  });

  test('a poll with the same etag is answered without the call', async () => {
    const handled: number[] = [];
    const poll = defineRoute({
      method: 'GET',
      roles: ['anyone'],
      input: z.strictObject({}),
      output: z.strictObject({ queueCount: z.int() }),
      etag: () => 'ledger-7',
      handle: () => ({ queueCount: handled.push(1) }),
    });
    const first = await poll.respond(edgeFor(NOBODY).edge, new Request('http://shop.test/api/queue'), {});
    expect([first.status, first.headers.get('etag'), handled.length]).toEqual([200, '"ledger-7"', 1]);
    const again = new Request('http://shop.test/api/queue', { headers: { 'if-none-match': '"ledger-7"' } });
    const second = await poll.respond(edgeFor(NOBODY).edge, again, {});
    expect([second.status, handled.length]).toEqual([304, 1]);
  });

  test('a download is made from the checked output', async () => {
    const csv = defineRoute({
      method: 'GET',
      roles: ['anyone'],
      input: z.strictObject({}),
      output: z.strictObject({ rows: z.array(z.string()) }),
      handle: () => ({ rows: ['a', 'b'] }),
      download: ({ rows }) => ({ mediaType: 'text/csv', fileName: 'lots.csv', body: rows.join('\r\n') }),
    });
    const response = await csv.respond(edgeFor(NOBODY).edge, new Request('http://shop.test/api/lots'), {});
    expect(response.headers.get('content-disposition')).toBe('attachment; filename="lots.csv"');
    expect(await response.text()).toBe('a\r\nb');
  });
});

describe('what is refused before the call', () => {
  test('a wrong media type, bad JSON and a wrong shape, each in its own way', async () => {
    expect(await problemOf(post('lineNo=3', { ...HEADERS, 'content-type': 'text/plain' }))).toMatchObject({
      status: 415,
      kind: 'wrong-media-type',
    });
    expect(await problemOf(post('{"lineNo": '))).toMatchObject({ status: 400, kind: 'bad-json' });
    expect(await problemOf(post('{"lineNo": -1, "extra": true}'))).toMatchObject({ status: 422, kind: 'bad-input' });
    expect(await problemOf(post('[3]'))).toMatchObject({ status: 422, kind: 'bad-input' });
  });

  test('a wrong shape names the fields', async () => {
    const { fields } = await problemOf(post('{"lineNo": "three"}'));
    expect(fields.map(({ path }) => path)).toEqual(['lineNo']);
  });

  test.each([
    ['another site by its origin', { ...HEADERS, origin: 'http://evil.test' }],
    ['another port of this host', { ...HEADERS, origin: 'http://shop.test:81' }],
    ['an opaque origin', { ...HEADERS, origin: 'null' }],
    ['no origin at all', { 'content-type': 'application/json', host: 'shop.test' }],
    ['a cross-site fetch that names our origin', { ...HEADERS, 'sec-fetch-site': 'cross-site' }],
    ['a same-site fetch from a neighbour', { ...HEADERS, 'sec-fetch-site': 'same-site' }],
  ])('a write from %s', async (_case, headers) => {
    expect(await problemOf(post('{"lineNo": 3}', headers))).toMatchObject({ status: 403, kind: 'cross-site' });
  });

  test('someone unknown is told to sign in, someone else that it is not theirs', async () => {
    expect(await problemOf(post('{"lineNo": 3}'), NOBODY)).toMatchObject({ status: 401, kind: 'signed-out' });
    expect(await problemOf(post('{"lineNo": 3}'), KIOSK)).toMatchObject({ status: 403, kind: 'wrong-role' });
    expect(await problemOf(post('{"lineNo": 3}'), { ...MIXER, role: 'manager' })).toMatchObject({ status: 403, kind: 'wrong-role' });
  });

  test('the session is asked before the body is read', async () => {
    expect(await problemOf(post('not json'), NOBODY)).toMatchObject({ status: 401 });
  });

  test('another method', async () => {
    const { status, response } = await call(weigh(), new Request('http://shop.test/api/weigh'));
    expect([status, response.headers.get('allow')]).toEqual([405, 'POST']);
  });

  test('a route for nobody but the kiosk does not admit staff, and one for anyone admits all', async () => {
    const cases: [RouteRole[], Actor, number][] = [
      [['kiosk'], MIXER, 403],
      [['kiosk'], KIOSK, 200],
      [['anyone'], NOBODY, 200],
      [[], MIXER, 403],
      [[], NOBODY, 401],
    ];
    for (const [roles, actor, status] of cases) expect((await call(weigh({ roles }), post('{"lineNo": 3}'), actor)).status).toBe(status);
  });
});

describe('what goes wrong inside', () => {
  const throwing = (error: unknown) =>
    weigh({
      handle: () => {
        throw error;
      },
    });

  test('a fault shows its id only; the text goes to the log', async () => {
    const { status, body, logged } = await call(throwing(new Error('kaolin 1.90 % of Base R2')), post('{"lineNo": 3}'));
    expect(status).toBe(500);
    expect(problemSchema.parse(body)).toMatchObject({ kind: 'fault', faultId: 'fault-1', isRetryable: false });
    expect(JSON.stringify(body)).not.toContain('kaolin');
    expect(logged).toMatchObject([{ faultId: 'fault-1', where: 'POST /api/weigh', error: { message: 'kaolin 1.90 % of Base R2' } }]);
  });

  test('an output with something more than its schema is a fault, so nothing leaks by accident', async () => {
    const leaking = weigh({ handle: () => ({ ok: true, doubled: 2, recipe: 'kaolin' }) as { ok: true; doubled: number } });
    const { status, body, logged } = await call(leaking, post('{"lineNo": 3}'));
    expect(status).toBe(500);
    expect(JSON.stringify(body)).not.toContain('kaolin');
    expect(logged).toHaveLength(1);
  });

  test.each(['SQLITE_BUSY', 'SQLITE_FULL', 'SQLITE_IOERR_WRITE', 'ENOSPC'])('%s is an outage that may be tried again', async (code) => {
    const { status, body, response, logged } = await call(throwing(Object.assign(new Error('driver'), { code })), post('{"lineNo": 3}'));
    expect([status, response.headers.get('retry-after')]).toEqual([503, '1']);
    expect(problemSchema.parse(body)).toMatchObject({ kind: 'outage', isRetryable: true, faultId: null });
    expect(logged).toEqual([]);
  });

  test('a broken constraint is a fault, not an outage', async () => {
    expect(
      await call(throwing(Object.assign(new Error('driver'), { code: 'SQLITE_CONSTRAINT_UNIQUE' })), post('{"lineNo": 3}')),
    ).toMatchObject({ status: 500 });
  });
});

test('a route tells its method and roles to whoever walks over all routes', () => {
  expect(weigh().definition).toEqual({ method: 'POST', roles: ['mixer'] });
});
