// One way to call the server. Three things can come back: its answer, a problem it names, or nothing at all.
import type { Problem } from '#lib/contracts/problem.ts';

export type Reply<Body> =
  | { readonly kind: 'answer'; readonly body: Body }
  | { readonly kind: 'problem'; readonly problem: Problem }
  | { readonly kind: 'unreachable' };

/** Sends JSON and reads JSON. The server parses its own replies, so a reply of ours has the contract's shape. */
export const send = <Body>(path: string, input: unknown): Promise<Reply<Body>> =>
  ask(path, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(input) });

/** Asks for JSON once. */
export const look = <Body>(path: string): Promise<Reply<Body>> => ask(path, { method: 'GET' });

/**
 * Asks the same again and again. The server is told what was seen last, and answers with nothing while that still holds: then the very
 * same object comes back. The browser itself keeps no reply of ours.
 */
export function lookAgain<Body>(path: string): () => Promise<Reply<Body>> {
  const seen: { etag: string; reply: Reply<Body> | null } = { etag: '', reply: null };
  return async () => {
    const response = await reach(path, { method: 'GET', cache: 'no-store', headers: seen.reply ? { 'if-none-match': seen.etag } : {} });
    if (response === null) return { kind: 'unreachable' };
    if (response.status === NOT_MODIFIED && seen.reply) return seen.reply;
    const reply = await replyOf<Body>(response);
    seen.etag = response.headers.get('etag') ?? '';
    seen.reply = reply.kind === 'answer' && seen.etag !== '' ? reply : null;
    return reply;
  };
}

const NOT_MODIFIED = 304;

async function ask<Body>(path: string, how: RequestInit): Promise<Reply<Body>> {
  const response = await reach(path, how);
  if (response === null) return { kind: 'unreachable' };
  return replyOf(response);
}

/** What is no JSON did not come from the shop, or was cut off on the way: as good as no answer. */
async function replyOf<Body>(response: Response): Promise<Reply<Body>> {
  const body: unknown = await response.json().catch(() => undefined);
  if (body === undefined) return { kind: 'unreachable' };
  return isProblem(body) ? { kind: 'problem', problem: body } : { kind: 'answer', body: body as Body };
}

/** Null where no answer came: the person is told, and nothing is lost. */
async function reach(path: string, how: RequestInit): Promise<Response | null> {
  try {
    return await fetch(path, how);
  } catch {
    return null;
  }
}

const isProblem = (body: unknown): body is Problem =>
  typeof body === 'object' &&
  body !== null &&
  'type' in body &&
  typeof body.type === 'string' &&
  body.type.startsWith('urn:jarwright:problem:');
