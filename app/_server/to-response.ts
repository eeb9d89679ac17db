// How an outcome becomes a Response: the only place that knows status codes of refusals and what an error may tell.
import type { ProblemKind } from '#lib/contracts/problem.ts';
import { PROBLEM_MEDIA_TYPE, problem, problemStatus } from './problem.ts';

/** Replies change from request to request and may hold personal things: no cache may keep them. */
const NO_STORE = { 'cache-control': 'no-store' } as const;

export function problemResponse(
  kind: ProblemKind,
  detail: Parameters<typeof problem>[1] = {},
  headers: Record<string, string> = {},
): Response {
  return new Response(JSON.stringify(problem(kind, detail)), {
    status: problemStatus(kind),
    headers: { ...NO_STORE, 'content-type': PROBLEM_MEDIA_TYPE, ...headers },
  });
}

export const jsonResponse = (body: unknown, status: number, headers: Record<string, string> = {}): Response =>
  new Response(JSON.stringify(body), { status, headers: { ...NO_STORE, 'content-type': 'application/json', ...headers } });

export type Download = { readonly mediaType: string; readonly fileName: string; readonly body: string | Uint8Array<ArrayBuffer> };

/** A file to save. The name is plain ASCII made by the program, never by a person. */
export const downloadResponse = ({ mediaType, fileName, body }: Download): Response =>
  new Response(body, {
    status: 200,
    headers: { ...NO_STORE, 'content-type': mediaType, 'content-disposition': `attachment; filename="${fileName}"` },
  });

/** Nothing new since the caller's ETag (RFC 9110, 15.4.5). */
export const notModified = (etag: string): Response => new Response(null, { status: 304, headers: { 'cache-control': 'no-cache', etag } });
