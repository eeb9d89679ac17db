import { describe, expect, test } from 'vitest';
import type { Head } from '#app/_server/gate.ts';
import { bodyLimitBytes, gate } from '#app/_server/gate.ts';
import { parseServeArguments } from '#app/_server/serve-arguments.ts';
import { startFailure } from '#app/_server/start-failure.ts';

const head = (change: Partial<Head>): Head => ({
  method: 'GET',
  path: '/',
  host: 'localhost:3000',
  contentLength: undefined,
  transferEncoding: undefined,
  ...change,
});
const kindOf = (change: Partial<Head>, names: readonly string[] = []): string | null => gate(head(change), names)?.kind ?? null;

describe('the name a request is addressed to', () => {
  test.each(['localhost', 'localhost:3000', '127.0.0.1:3000', '192.0.2.7', '[::1]:3000', '[2001:db8::1]'])('%s is let in', (host) => {
    expect(kindOf({ host })).toBeNull();
  });

  test.each(['shop.example', 'localhost.evil.example', '127.0.0.1.evil.example', '', undefined])('%s is not', (host) => {
    expect(kindOf({ host })).toBe('wrong-host');
  });

  test('a name given at the start is let in, whatever its case', () => {
    expect(kindOf({ host: 'Till-2.Local:3000' }, ['till-2.local'])).toBeNull();
  });
});

describe('methods and bodies', () => {
  test('only calls take POST, nothing takes more', () => {
    expect(kindOf({ method: 'POST', path: '/kiosk', contentLength: '2' })).toBe('wrong-method');
    expect(kindOf({ method: 'POST', path: '/api/order', contentLength: '2' })).toBeNull();
    for (const method of ['PUT', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE'])
      expect(kindOf({ method, path: '/api/order' })).toBe('wrong-method');
  });

  test('a body states its length and keeps to the limit of its address', () => {
    const post = (change: Partial<Head>) => kindOf({ method: 'POST', path: '/api/order', ...change });
    expect(post({})).toBe('length-required');
    expect(post({ transferEncoding: 'chunked' })).toBe('length-required');
    expect(post({ contentLength: '1048576' })).toBeNull();
    expect(post({ contentLength: '1048577' })).toBe('too-large');
    expect(kindOf({ contentLength: '5' })).toBe('bad-input');
  });

  test('evidence files may be larger', () => {
    expect(bodyLimitBytes('/api/office/evidence')).toBe(32 * 1_048_576);
    expect(bodyLimitBytes('/api/office/evidence-list')).toBe(32 * 1_048_576);
    expect(bodyLimitBytes('/api/kiosk/order')).toBe(1_048_576);
    expect(bodyLimitBytes('/kiosk')).toBe(0);
  });
});

describe('the command line', () => {
  test('defaults to this machine only', () => {
    expect(parseServeArguments([])).toMatchObject({ ok: true, value: { host: '127.0.0.1', port: 3000, isEmpty: false } });
  });

  test('takes both ways of writing a value', () => {
    const both = parseServeArguments(['--host', '0.0.0.0', '--port=4000', '--name', 'Till-2', '--empty']);
    expect(both).toMatchObject({ ok: true, value: { host: '0.0.0.0', port: 4000, isEmpty: true } });
    expect(both.ok && both.value.names).toContain('till-2');
  });

  test.each([
    [['--port', 'abc']],
    [['--port', '70000']],
    [['--port']],
    [['--host', 'shop.example']],
    [['--hots', '1']],
    [['3000']],
    [['--port=']],
  ])('%j is refused in words', (args) => {
    const read = parseServeArguments(args);
    expect(read.ok ? '' : read.refusal).toMatch(/--port|--host|Usage/);
  });
});

describe('why a start failed', () => {
  const place = { dataDir: 'data', host: '127.0.0.1', port: 80 };
  const says = (code: string, more: object = {}) => startFailure(Object.assign(new Error(code), { code, ...more }), place);

  test.each([
    ['EADDRINUSE', { syscall: 'listen' }, /Port 80 .* taken/],
    ['EACCES', { syscall: 'listen' }, /Port 80 may not be used/],
    ['EADDRNOTAVAIL', { syscall: 'listen' }, /no address of this machine/],
    ['EACCES', { syscall: 'mkdir' }, /cannot be written/],
    ['EROFS', { syscall: 'mkdir' }, /cannot be written/],
    ['EEXIST', { syscall: 'mkdir' }, /a file stands in its place/],
    ['ENOSPC', { syscall: 'write' }, /is full/],
    ['SQLITE_FULL', {}, /is full/],
    ['SQLITE_READONLY', {}, /cannot be written/],
    ['SQLITE_NOTADB', {}, /damaged/],
  ])('%s %j', (code, more, sentence) => {
    expect(says(code, more)).toMatch(sentence);
  });

  test('what is not listed is a fault', () => {
    expect(says('SQLITE_CONSTRAINT')).toBeNull();
    expect(startFailure(new TypeError('x is undefined'), place)).toBeNull();
  });
});
