// What a request must be before anything reads it: addressed to a name of ours (a strange site could otherwise point its own name at
// this machine, DNS rebinding), a method we take, and a body whose stated length is within its limit.
import { isIP } from 'node:net';
import type { ProblemKind } from '#lib/contracts/problem.ts';

export type Head = {
  readonly method: string;
  readonly path: string;
  readonly host: string | undefined;
  readonly contentLength: string | undefined;
  readonly transferEncoding: string | undefined;
};

export type GateRefusal = { readonly kind: ProblemKind; readonly detail: string; readonly headers: Readonly<Record<string, string>> };

const MEGABYTE = 1_048_576;

/** Routes that take more than the usual megabyte: evidence files and rulebooks to import. The longest matching beginning counts. */
const BODY_LIMITS = { '/api/': MEGABYTE, '/api/office/evidence': 32 * MEGABYTE, '/api/office/import': 16 * MEGABYTE };

export const bodyLimitBytes = (path: string): number =>
  Math.max(0, ...Object.entries(BODY_LIMITS).map(([beginning, limit]) => (path.startsWith(beginning) ? limit : 0)));

/** Why a request is refused unread, or null. */
export function gate(head: Head, names: readonly string[]): GateRefusal | null {
  const { method, path, host } = head;
  if (!isOurName(host, names)) return no('wrong-host', `start the server with --name to let it answer to ${hostName(host) || 'this name'}`);
  const allowed = path.startsWith('/api/') ? ['GET', 'HEAD', 'POST'] : ['GET', 'HEAD'];
  if (!allowed.includes(method)) return no('wrong-method', `this address takes ${allowed.join(', ')}`, { allow: allowed.join(', ') });
  if (method === 'POST') return bodyRefusal(head);
  return head.transferEncoding !== undefined || Number(head.contentLength ?? 0) > 0 ? no('bad-input', `${method} takes no body`) : null;
}

/** A body without a stated length could only be cut off in the middle; browsers always state it. */
function bodyRefusal({ path, contentLength, transferEncoding }: Head): GateRefusal | null {
  if (transferEncoding !== undefined || contentLength === undefined) return no('length-required', 'send a content-length');
  const limit = bodyLimitBytes(path);
  return Number(contentLength) > limit ? no('too-large', `at most ${limit} bytes`) : null;
}

const no = (kind: ProblemKind, detail: string, headers: Record<string, string> = {}): GateRefusal => ({ kind, detail, headers });

/** The name without its port; the brackets of an IPv6 address stay. */
const hostName = (host: string | undefined): string => (host ?? '').toLowerCase().replace(/:\d+$/, '');

function isOurName(host: string | undefined, names: readonly string[]): boolean {
  const name = hostName(host);
  return name === 'localhost' || isIP(name.replace(/^\[|\]$/g, '')) !== 0 || names.includes(name);
}
