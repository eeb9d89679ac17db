// Where a route's input comes from: the query of a GET, the JSON body of a POST, and the parts of the path, which win.
import type { ProblemKind } from '#lib/contracts/problem.ts';

export type PathParams = Readonly<Record<string, string | readonly string[] | undefined>>;

type RawInput =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: ProblemKind; readonly detail: string };

/** The input before its shape is checked. */
export async function rawInput(request: Request, params: PathParams): Promise<RawInput> {
  if (request.method !== 'POST') return { ok: true, value: { ...queryOf(new URL(request.url).searchParams), ...params } };

  const mediaType = request.headers.get('content-type')?.split(';')[0]?.trim().toLowerCase();
  if (mediaType !== 'application/json') return { ok: false, problem: 'wrong-media-type', detail: `not ${mediaType ?? 'without a type'}` };
  const body = await jsonBody(request);
  if (body === undefined) return { ok: false, problem: 'bad-json', detail: 'the body broke off or is not JSON' };
  const isObject = typeof body === 'object' && body !== null && !Array.isArray(body);
  return { ok: true, value: isObject ? { ...body, ...params } : body };
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
