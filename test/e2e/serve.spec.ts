// The server as a process of its own: how it starts, what it refuses, how it ends.
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import type { IncomingMessage } from 'node:http';
import { request as httpRequest } from 'node:http';
import type { AddressInfo } from 'node:net';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { prepareData } from '#app/_server/prepare-data.ts';
import { fillSmallShop } from '#test/support/small-shop/fill-small-shop.ts';
import type { Shop } from '#test/support/start-shop.ts';
import { runServer, startShop } from '#test/support/start-shop.ts';

const shopUrl = (): string => process.env.JARWRIGHT_SHOP_URL ?? '';

/** A name for a data folder that is not there yet. */
function newFolder(): { readonly parent: string; readonly dataDir: string } {
  const parent = mkdtempSync(join(tmpdir(), 'jarwright-data-'));
  return { parent, dataDir: join(parent, 'data') };
}

const start = (dataDir: string, args: readonly string[] = []): Promise<Shop> => startShop({ args, env: { JARWRIGHT_DATA: dataDir } });
const failStart = (dataDir: string, args: readonly string[] = []) =>
  runServer({ args: ['--port', '0', ...args], env: { JARWRIGHT_DATA: dataDir } });

test.describe('pages and limits', () => {
  test('every script of a page carries the nonce of its policy, and no markup is styled inline', async () => {
    const response = await fetch(`${shopUrl()}/`);
    const nonce = /'nonce-([^']+)'/.exec(response.headers.get('content-security-policy') ?? '')?.[1];
    const html = await response.text();
    const scripts = html.match(/<script\b[^>]*>/g) ?? [];
    expect(scripts.length).toBeGreaterThan(0);
    expect(scripts.filter((tag) => !tag.includes(`nonce="${nonce}"`))).toEqual([]);
    expect(response.headers.get('cache-control')).toContain('no-store');
  });

  test('the health check says what runs', async () => {
    const response = await fetch(`${shopUrl()}/api/health`);
    expect(response.status).toBe(200);
    expect(await response.json()).toMatchObject({ ok: true, ledgerSeq: expect.any(Number), uptimeS: expect.any(Number) });
  });

  test('ten megabytes are refused with a reply that is seen', async () => {
    const response = await fetch(`${shopUrl()}/api/sign-in`, { method: 'POST', body: new Uint8Array(10 * 1_048_576) });
    expect(response.status).toBe(413);
    expect(await response.json()).toMatchObject({ kind: 'too-large' });
  });

  test('a write from another site is refused before it is read', async () => {
    const headers = { 'content-type': 'application/json', origin: 'http://evil.example' };
    const response = await fetch(`${shopUrl()}/api/sign-in`, { method: 'POST', headers, body: 'not json' });
    expect([response.status, (await response.json()).kind]).toEqual([403, 'cross-site']);
  });
});

test.describe('a start that cannot be', () => {
  test('the port is taken: one sentence, and no folder is made', async () => {
    const { parent, dataDir } = newFolder();
    const taken = createServer().listen(0, '127.0.0.1');
    await new Promise((resolve) => taken.once('listening', resolve));
    const { port } = taken.address() as AddressInfo;
    const ended = await failStart(dataDir, ['--port', String(port)]);
    taken.close();
    expect(ended).toMatchObject({
      code: 1,
      stdout: '',
      stderr: `jarwright: Port ${port} on 127.0.0.1 is taken: stop what uses it, or choose another with --port.\n`,
    });
    expect(readdirSync(parent)).toEqual([]);
    rmSync(parent, { recursive: true });
  });

  test('the folder is held: the sentence names who holds it, and the first shop goes on', async () => {
    const { parent, dataDir } = newFolder();
    const shop = await start(dataDir, ['--empty']);
    const ended = await failStart(dataDir);
    expect(ended.code).toBe(1);
    expect(ended.stderr).toMatch(
      /^jarwright: The data folder .* is in use by the shop at 127\.0\.0\.1:\d+ \(process \d+\): stop that first\.\n$/,
    );
    expect((await fetch(`${shop.url}/api/health`)).status).toBe(200);
    expect((await shop.stop()).code).toBe(0);
    rmSync(parent, { recursive: true });
  });

  test('a file stands in the place of the folder, or above it', async () => {
    const { parent, dataDir } = newFolder();
    writeFileSync(dataDir, 'mine');
    for (const place of [dataDir, join(dataDir, 'deeper')]) {
      expect(await failStart(place)).toMatchObject({
        code: 1,
        stderr: `jarwright: The data folder ${place} cannot be used: a file stands in its place.\n`,
      });
    }
    rmSync(parent, { recursive: true });
  });

  test('the file is no shop: it is left as it is', async () => {
    const { parent, dataDir } = newFolder();
    mkdirSync(dataDir);
    writeFileSync(join(dataDir, 'shop.db'), 'a shopping list, by chance of the same name'.repeat(200));
    const ended = await failStart(dataDir);
    expect(ended.code).toBe(1);
    expect(ended.stderr).toMatch(/^jarwright: .*(damaged|not a shop's file).*\n$/);
    expect(readdirSync(dataDir).filter((name) => !name.startsWith('shop.lock'))).toEqual(['shop.db']);
    rmSync(parent, { recursive: true });
  });

  test('a flag that is not known, and an address that is not ours', async () => {
    const { parent, dataDir } = newFolder();
    expect((await failStart(dataDir, ['--hots', 'x'])).stderr).toContain('"--hots" is not understood');
    expect((await failStart(dataDir, ['--host', '192.0.2.1'])).stderr).toContain('192.0.2.1 is no address of this machine');
    expect(readdirSync(parent)).toEqual([]);
    rmSync(parent, { recursive: true });
  });
});

test.describe('the data folder', () => {
  test('an empty start makes no demonstration; a half-made one from a start that was cut off is cleared away', async () => {
    const { parent, dataDir } = newFolder();
    mkdirSync(join(dataDir, 'being-made'), { recursive: true });
    writeFileSync(join(dataDir, 'being-made', 'shop.db'), 'half');
    const shop = await start(dataDir, ['--empty']);
    expect(await (await fetch(`${shop.url}/api/health`)).json()).toMatchObject({ editionNo: null, ledgerSeq: 0 });
    expect(readdirSync(dataDir)).not.toContain('being-made');
    expect((await shop.stop()).stdout).not.toContain('person');
    rmSync(parent, { recursive: true });
  });

  test('a shop goes on after kill -9 as after SIGTERM, under the same facts', async () => {
    const { parent, dataDir } = newFolder();
    (await prepareData({ dataDir, holder: 'a test', fill: fillSmallShop })).release();
    const first = await start(dataDir);
    const health = async (shop: Shop) => (await (await fetch(`${shop.url}/api/health`)).json()).ledgerSeq;
    const seq = await health(first);
    expect(seq).toBeGreaterThan(0);
    expect((await first.stop('SIGKILL')).signal).toBe('SIGKILL');
    const second = await start(dataDir);
    expect(await health(second)).toBe(seq);
    const ended = await second.stop();
    expect(ended).toMatchObject({ code: 0, stderr: '' });
    expect(ended.stdout).toContain('person');
    expect(readdirSync(dataDir).filter((name) => /-wal$|-shm$|lock\.txt$/.test(name))).toEqual([]);
    rmSync(parent, { recursive: true });
  });
});

type SlowPost = { readonly push: (text: string) => void; readonly reply: Promise<IncomingMessage> };

/** A POST whose body arrives only as far as it is pushed; begun once the server has said that it handles it. */
function slowPost(url: string, bodyBytes: number): Promise<SlowPost> {
  const outgoing = httpRequest(`${url}/api/sign-in`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', 'content-length': bodyBytes, origin: url, expect: '100-continue' },
  });
  const reply = new Promise<IncomingMessage>((resolve, reject) => {
    outgoing.once('response', resolve);
    outgoing.once('error', reject);
  });
  outgoing.flushHeaders();
  return new Promise((resolve, reject) => {
    outgoing.once('continue', () => resolve({ push: (text) => void outgoing.write(text), reply }));
    reply.catch(reject);
  });
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

test.describe('the end', () => {
  test('a request that runs when SIGTERM comes is answered, then the process ends with 0', async () => {
    const shop = await startShop({ args: ['--empty'] });
    const body = JSON.stringify({ nonsense: true });
    const slow = await slowPost(shop.url, body.length);
    slow.push(body.slice(0, 5));
    const ended = shop.stop();
    await pause(300);
    await expect(fetch(`${shop.url}/api/health`)).rejects.toThrow();
    slow.push(body.slice(5));
    const reply = await slow.reply;
    expect(reply.statusCode).toBe(422);
    expect(await ended).toMatchObject({ code: 0, stderr: '' });
  });

  test('a request that never ends is cut off after five seconds', async () => {
    const shop = await startShop({ args: ['--empty'] });
    const slow = await slowPost(shop.url, 100);
    const cutOff = expect(slow.reply).rejects.toThrow();
    slow.push('{');
    const beganMs = Date.now();
    expect(await shop.stop()).toMatchObject({ code: 0 });
    const tookMs = Date.now() - beganMs;
    await cutOff;
    expect(tookMs).toBeGreaterThan(4_500);
    expect(tookMs).toBeLessThan(8_000);
  });

  test('a shop leaves its build marked only while it runs', async () => {
    const shop = await startShop({ args: ['--empty'] });
    const build = process.env.JARWRIGHT_BUILD ?? '';
    const marks = (): number => readdirSync(build).filter((name) => name.startsWith('used-by-')).length;
    const running = marks();
    await shop.stop();
    expect(existsSync(build)).toBe(true);
    expect(marks()).toBe(running - 1);
  });
});
