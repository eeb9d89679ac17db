import type { IncomingMessage, OutgoingHttpHeaders, Server } from 'node:http';
import { request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { connect } from 'node:net';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Handle } from '#app/_server/http-server.ts';
import { makeHttpServer } from '#app/_server/http-server.ts';
import { problemSchema } from '#lib/contracts/problem.ts';

const live: { handle: Handle | null; port: number; server: Server | null } = { handle: null, port: 0, server: null };
const faults: unknown[] = [];

/** Reads the whole body and says how long it was, and which policy the request carried. */
const echo: Handle = async (incoming, response) => {
  let bytes = 0;
  for await (const chunk of incoming) bytes += (chunk as Buffer).length;
  response.setHeader('x-policy-seen', String(incoming.headers['content-security-policy']));
  response.end(JSON.stringify({ bytes }));
};

beforeAll(async () => {
  const server = makeHttpServer({ names: ['till-2'], handler: () => live.handle, onFault: (error) => faults.push(error) });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  live.server = server;
  live.port = (server.address() as AddressInfo).port;
  live.handle = echo;
});

afterAll(() => live.server?.closeAllConnections());
afterAll(() => live.server?.close());

type Reply = { status: number; headers: IncomingMessage['headers']; body: string };
type Ask = { method?: string; path?: string; headers?: OutgoingHttpHeaders; body?: Buffer | string };

function ask({ method = 'GET', path = '/', headers = {}, body }: Ask): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const outgoing = request({ port: live.port, host: '127.0.0.1', method, path, headers }, (incoming) => {
      const chunks: Buffer[] = [];
      incoming.on('data', (chunk: Buffer) => chunks.push(chunk));
      incoming.on('end', () =>
        resolve({ status: incoming.statusCode ?? 0, headers: incoming.headers, body: Buffer.concat(chunks).toString() }),
      );
    });
    outgoing.once('error', reject);
    outgoing.end(body);
  });
}

const kindOf = ({ body }: Reply): string => problemSchema.parse(JSON.parse(body)).kind;

describe('every reply', () => {
  test('carries the policy, and the request carries the same one to Next', async () => {
    const { headers } = await ask({});
    expect(headers['content-security-policy']).toMatch(/script-src 'self' 'nonce-[A-Za-z0-9+/]{22}=='/);
    expect(headers['content-security-policy']).not.toContain('unsafe');
    expect(headers['x-policy-seen']).toBe(headers['content-security-policy']);
    expect(headers).toMatchObject({ 'x-content-type-options': 'nosniff', 'referrer-policy': 'same-origin', 'cache-control': 'no-store' });
    expect(headers['content-security-policy']).toContain("frame-ancestors 'none'");
    expect(headers['permissions-policy']).toContain('serial=(self)');
  });

  test('has a nonce of its own', async () => {
    const [a, b] = [await ask({}), await ask({})];
    expect(a.headers['content-security-policy']).not.toBe(b.headers['content-security-policy']);
  });

  test('a sender cannot choose the policy that Next sees', async () => {
    const { headers } = await ask({ headers: { 'content-security-policy': "script-src 'nonce-mine'" } });
    expect(headers['x-policy-seen']).toBe(headers['content-security-policy']);
  });

  test('files named by their hash are left to be kept', async () => {
    const { headers } = await ask({ path: '/_next/static/chunks/a.js' });
    expect(headers['cache-control']).toBeUndefined();
  });
});

describe('bodies', () => {
  test('a megabyte gets through', async () => {
    const { status, body } = await ask({ method: 'POST', path: '/api/x', body: Buffer.alloc(1_048_576) });
    expect([status, body]).toEqual([200, '{"bytes":1048576}']);
  });

  test('ten megabytes are refused, and the sender sees the reply', async () => {
    const reply = await ask({ method: 'POST', path: '/api/x', body: Buffer.alloc(10 * 1_048_576, 'x') });
    expect([reply.status, kindOf(reply), reply.headers.connection]).toEqual([413, 'too-large', 'close']);
  });

  test('the same through fetch, as a browser would', async () => {
    const reply = await fetch(`http://127.0.0.1:${live.port}/api/x`, { method: 'POST', body: new Uint8Array(10 * 1_048_576) });
    expect([reply.status, problemSchema.parse(await reply.json()).kind]).toEqual([413, 'too-large']);
  });

  test('a body without a stated length is refused', async () => {
    const reply = await ask({ method: 'POST', path: '/api/x', headers: { 'transfer-encoding': 'chunked' }, body: 'x'.repeat(10) });
    expect([reply.status, kindOf(reply)]).toEqual([411, 'length-required']);
  });

  test('a sender that asks first is told at once, without sending', async () => {
    const reply = await ask({
      method: 'POST',
      path: '/api/x',
      headers: { expect: '100-continue', 'content-length': 20_000_000 },
      body: '',
    });
    expect(reply.status).toBe(413);
  });
});

describe('requests that are not for us', () => {
  test('a strange name, a strange method', async () => {
    const strange = await ask({ headers: { host: 'shop.evil.example' } });
    expect([strange.status, kindOf(strange)]).toEqual([421, 'wrong-host']);
    const put = await ask({ method: 'PUT', path: '/api/x', body: 'x' });
    expect([put.status, put.headers.allow]).toEqual([405, 'GET, HEAD, POST']);
    expect((await ask({ headers: { host: `till-2:${live.port}` } })).status).toBe(200);
  });

  test('headers over 16 kB', async () => {
    expect((await ask({ headers: { 'x-long': 'x'.repeat(17_000) } })).status).toBe(431);
  });

  test('what is no HTTP at all', async () => {
    const text = await new Promise<string>((resolve, reject) => {
      const socket = connect(live.port, '127.0.0.1', () => socket.write('hello?\r\n\r\n'));
      socket.setEncoding('utf8').on('data', resolve);
      socket.once('error', reject);
    });
    expect(text).toMatch(/^HTTP\/1.1 400/);
  });
});

describe('when there is no answer', () => {
  test('before everything is ready a request is told to come back', async () => {
    live.handle = null;
    const reply = await ask({});
    live.handle = echo;
    expect([reply.status, kindOf(reply), reply.headers['retry-after']]).toEqual([503, 'starting', '1']);
  });

  test('a sender who goes away in the middle is no fault', async () => {
    const before = faults.length;
    const socket = connect(live.port, '127.0.0.1', () =>
      socket.write('POST /api/x HTTP/1.1\r\nhost: localhost\r\ncontent-length: 9\r\n\r\nhalf'),
    );
    const gone = new Promise((resolve) => live.server?.once('connection', (taken) => taken.once('close', resolve)));
    setTimeout(() => socket.destroy(), 50);
    await gone;
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(faults.length).toBe(before);
  });

  test('a handler that fails ends its own request and is reported, and the next one is served', async () => {
    live.handle = () => Promise.reject(new Error('planted'));
    await expect(ask({})).rejects.toThrow(/socket hang up|ECONNRESET/);
    live.handle = echo;
    expect(faults).toMatchObject([{ message: 'planted' }]);
    expect((await ask({})).status).toBe(200);
  });
});
