// One way to call the server. Three things can come back: its answer, a problem it names, or nothing at all.
import type { Problem } from '#lib/contracts/problem.ts';

export type Reply<Body> =
  | { readonly kind: 'answer'; readonly body: Body }
  | { readonly kind: 'problem'; readonly problem: Problem }
  | { readonly kind: 'unreachable' };

/** Sends JSON and reads JSON. The server parses its own replies, so a reply of ours has the contract's shape. */
export const send = <Body>(path: string, input: unknown): Promise<Reply<Body>> =>
  ask(path, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(input) });

/** Asks for JSON. What the server says to be unchanged comes from the browser's own cache. */
export const look = <Body>(path: string): Promise<Reply<Body>> => ask(path, { method: 'GET' });

async function ask<Body>(path: string, how: RequestInit): Promise<Reply<Body>> {
  const response = await reach(path, how);
  if (response === null) return { kind: 'unreachable' };
  const body: unknown = await response.json();
  if (isProblem(body)) return { kind: 'problem', problem: body };
  return { kind: 'answer', body: body as Body };
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
