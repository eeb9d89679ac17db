// The one shape of every error body, after RFC 9457 (problem details): the browser reads `kind`, a person reads `title` and `detail`.
// Every member is always there; RFC 9457's advisory copy of the status code is left out, since the status line says it.
import { z } from 'zod';

export const PROBLEM_KINDS = [
  'bad-json',
  'wrong-media-type',
  'bad-input',
  'signed-out',
  'wrong-role',
  'cross-site',
  'not-found',
  'wrong-method',
  'too-large',
  'length-required',
  'wrong-host',
  'starting',
  'outage',
  'fault',
] as const;

export type ProblemKind = (typeof PROBLEM_KINDS)[number];

export const problemSchema = z.strictObject({
  /** RFC 9457 `type`: `urn:jarwright:problem:` and the kind. */
  type: z.string().startsWith('urn:jarwright:problem:'),
  kind: z.enum(PROBLEM_KINDS),
  title: z.string().min(1),
  detail: z.string(),
  /** For `bad-input`: where the input is wrong, as a path like `lines.0.readingUg`, and how. */
  fields: z.array(z.strictObject({ path: z.string(), message: z.string() })),
  /** For `fault`: what a person quotes so that the log entry is found. */
  faultId: z.string().nullable(),
  /** Whether the same request may be sent again as it is. */
  isRetryable: z.boolean(),
});

export type Problem = z.infer<typeof problemSchema>;
