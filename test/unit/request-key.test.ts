// The layout of a UUID of version 4: RFC 9562, sections 4.1 (variant), 4.2 (version) and 5.4.
import { expect, test, vi } from 'vitest';
import { newRequestKey } from '#app/_client/request-key.ts';

test('every bit is random save those of version and variant', () => {
  const fill = vi.spyOn(crypto, 'getRandomValues');
  const filled = (byte: number): string => {
    fill.mockImplementationOnce((bytes) => (bytes instanceof Uint8Array ? bytes.fill(byte) : bytes) as typeof bytes);
    return newRequestKey();
  };
  expect(filled(0x00)).toBe('00000000-0000-4000-8000-000000000000');
  expect(filled(0xff)).toBe('ffffffff-ffff-4fff-bfff-ffffffffffff');
  fill.mockRestore();
});

test('no key comes twice', () => {
  expect(new Set(Array.from({ length: 1000 }, newRequestKey)).size).toBe(1000);
});
