// One table from the kind of a problem to its status code and words; serve.ts and the routes answer from it alike.
import type { Problem, ProblemKind } from '#lib/contracts/problem.ts';

type Words = { readonly status: number; readonly title: string; readonly isRetryable: boolean };

const WORDS = {
  'bad-json': { status: 400, title: 'The request is not valid JSON', isRetryable: false },
  'wrong-media-type': { status: 415, title: 'The request is of another type than this address takes', isRetryable: false },
  'bad-input': { status: 422, title: 'Some fields are missing or wrong', isRetryable: false },
  'signed-out': { status: 401, title: 'Sign in first', isRetryable: false },
  'wrong-role': { status: 403, title: 'This needs another role', isRetryable: false },
  'cross-site': { status: 403, title: 'The request came from another site', isRetryable: false },
  'not-found': { status: 404, title: 'There is nothing at this address', isRetryable: false },
  'wrong-method': { status: 405, title: 'This address does not take that kind of request', isRetryable: false },
  'too-large': { status: 413, title: 'The request is too large', isRetryable: false },
  'length-required': { status: 411, title: 'The request must state its length', isRetryable: false },
  'wrong-host': { status: 421, title: 'The server does not answer to this name', isRetryable: false },
  starting: { status: 503, title: 'The shop is starting or stopping', isRetryable: true },
  outage: { status: 503, title: 'The shop cannot store anything just now', isRetryable: true },
  fault: { status: 500, title: 'Something went wrong on our side', isRetryable: false },
} as const satisfies Record<ProblemKind, Words>;

type Detail = Partial<Pick<Problem, 'detail' | 'fields' | 'faultId'>>;

export const problemStatus = (kind: ProblemKind): number => WORDS[kind].status;

/** The whole error body of a kind. */
export function problem(kind: ProblemKind, { detail = '', fields = [], faultId = null }: Detail = {}): Problem {
  const { title, isRetryable } = WORDS[kind];
  return { type: `urn:jarwright:problem:${kind}`, kind, title, detail, fields, faultId, isRetryable };
}

export const PROBLEM_MEDIA_TYPE = 'application/problem+json';
