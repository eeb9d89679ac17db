// Where a route's input comes from: the query of a GET, the JSON body or the file of a POST, and the parts of the path, which win.
import type { ProblemKind } from '#lib/contracts/problem.ts';

export type PathParams = Readonly<Record<string, string | readonly string[] | undefined>>;

type RawInput =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: ProblemKind; readonly detail: string };

const MEDIA_TYPES = { json: 'application/json', bytes: 'application/octet-stream' } as const;

/** The input before its shape is checked. */
export async function rawInput(request: Request, params: PathParams, kind: keyof typeof MEDIA_TYPES = 'json'): Promise<RawInput> {
  const query = queryOf(new URL(request.url).searchParams);
  if (request.method !== 'POST') return { ok: true, value: { ...query, ...params } };

  const mediaType = request.headers.get('content-type')?.split(';')[0]?.trim().toLowerCase();
  if (mediaType !== MEDIA_TYPES[kind]) return { ok: false, problem: 'wrong-media-type', detail: `this address takes ${MEDIA_TYPES[kind]}` };
  const body = kind === 'bytes' ? await bytesBody(request) : await jsonBody(request);
  if (body === undefined) return { ok: false, problem: 'bad-json', detail: 'the body broke off or is not JSON' };
  if (body instanceof Uint8Array) return { ok: true, value: { ...query, ...params, bytes: body } };
  const isObject = typeof body === 'object' && body !== null && !Array.isArray(body);
  return { ok: true, value: isObject ? { ...body, ...params } : body };
}

/** undefined when the body broke off. */
async function bytesBody(request: Request): Promise<Uint8Array | undefined> {
  try {
    return await request.bytes();
  } catch {
    return undefined;
  }
}

/** undefined (which JSON cannot say) when the body broke off or does not parse. */
async function jsonBody(request: Request): Promise<unknown> {
  try {
    return JSON.parse(await request.text());
  } catch {
    return undefined;
  }
}

/** A key that is given several times becomes a list, so that a schema for one value refuses it. */
function queryOf(query: URLSearchParams): Record<string, string | string[]> {
  return Object.fromEntries([...new Set(query.keys())].map((key) => [key, listOrOne(query.getAll(key))]));
}

const listOrOne = (values: string[]): string | string[] => (values.length === 1 ? (values[0] ?? '') : values);
