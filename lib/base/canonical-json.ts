// Canonical bytes, so that a hash means the same document everywhere: RFC 8785 (JSON Canonicalization Scheme).
// Only finite numbers, strings, booleans, null, arrays and plain objects exist in a document; anything else is a fault.
import { compareText } from './compare.ts';
import { invariant } from './invariant.ts';

export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json | undefined };

/**
 * RFC 8785 text of a value: keys sorted by UTF-16 code units, numbers as ECMAScript prints them, no white space.
 * Keys whose value is undefined are left out, as JSON has no such value.
 * @throws Fault for NaN, infinities, lone surrogates and anything that is not JSON.
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'number') {
    invariant(Number.isFinite(value), 'canonical JSON has no NaN or infinity');
    return JSON.stringify(value);
  }
  if (typeof value === 'string') {
    invariant(value.isWellFormed(), 'canonical JSON has no lone surrogates');
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  invariant(typeof value === 'object' && isPlain(value), 'canonical JSON holds plain data only');
  const entries = Object.entries(value)
    .filter(([, member]) => member !== undefined)
    .sort(([a], [b]) => compareText(a, b));
  return `{${entries.map(([key, member]) => `${canonicalJson(key)}:${canonicalJson(member)}`).join(',')}}`;
}

const isPlain = (value: object): boolean => {
  const prototype = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
};
