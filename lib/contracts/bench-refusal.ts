// Every "no" of the bench on the wire, with the facts that its sentence needs.
import { z } from 'zod';
import type { FindingCode } from '../base/finding.ts';
import { FINDING_CODES } from '../base/finding.ts';
import type { LocalDay } from '../units/time.ts';
import { isLocalDay, localDay } from '../units/time.ts';
import { massUgSchema } from './quantities.ts';

const bare = <const K extends string>(kind: K) => z.strictObject({ kind: z.literal(kind) });
export const daySchema: z.ZodType<LocalDay, string> = z.string().refine(isLocalDay).transform(localDay);

const isFindingCode = (code: string): code is FindingCode => Object.hasOwn(FINDING_CODES, code);
export const findingCodeSchema: z.ZodType<FindingCode, FindingCode> = z.custom<FindingCode>(
  (code) => typeof code === 'string' && isFindingCode(code),
);
const texts = z.array(z.string()).readonly();

export const benchRefusalSchema = z.discriminatedUnion('kind', [
  bare('no-such-order'),
  bare('other-content'),
  bare('already-claimed'),
  z.strictObject({ kind: z.literal('bench-busy'), shortCode: z.string() }),
  z.strictObject({ kind: z.literal('cannot-make'), findings: z.array(findingCodeSchema).readonly() }),
  bare('no-bench'),
  bare('not-yours'),
  bare('not-this-step'),
  z.strictObject({ kind: z.literal('stopped'), reasons: texts }),
  z.strictObject({ kind: z.literal('not-confirmed'), items: texts }),
  z.strictObject({ kind: z.literal('unfit'), what: z.string() }),
  bare('entries-differ'),
  z.strictObject({ kind: z.literal('between-steps'), stepUg: massUgSchema }),
  z.strictObject({ kind: z.literal('over-capacity'), capacityUg: massUgSchema }),
  z.strictObject({
    kind: z.literal('lot'),
    fault: z.enum(['other-stock', 'not-released', 'stopped', 'expired', 'too-little', 'not-on-card', 'unknown']),
    expectedCode: z.string().nullable(),
    shownCode: z.string(),
  }),
  z.strictObject({ kind: z.literal('too-little'), addUg: massUgSchema }),
  z.strictObject({ kind: z.literal('too-much'), overUg: massUgSchema }),
  bare('second-needed'),
  bare('second-wrong'),
  bare('second-locked'),
  bare('second-same-person'),
  bare('second-role'),
  bare('second-differs'),
  bare('nothing-to-take-back'),
  z.strictObject({
    kind: z.literal('cannot-mend'),
    why: z
      .array(z.enum(['not-permitted', 'bench', 'scale-full', 'limit', 'line-outside-band', 'top-up-too-small', 'oil-short']))
      .readonly(),
  }),
  z.strictObject({ kind: z.literal('correction-too-large'), mostUg: massUgSchema }),
  z.strictObject({ kind: z.literal('correction-too-small'), leastUg: massUgSchema }),
  bare('under-tare'),
  z.strictObject({ kind: z.literal('more-than-mixed'), mostUg: massUgSchema }),
  bare('other-jar'),
  bare('life-over'),
  z.strictObject({ kind: z.literal('past-use-by'), useByDay: daySchema }),
  bare('decider-needed'),
  z.strictObject({ kind: z.literal('label-lacks-text'), textIds: texts }),
  bare('label-not-printed'),
  z.strictObject({ kind: z.literal('order-held'), reason: z.string() }),
  bare('not-ready'),
]);

/** Refusals that say that the world moved, or that there is no such thing; the others are answers like any other. */
export const BENCH_STATUSES = {
  'no-such-order': 404,
  'other-content': 409,
  'already-claimed': 409,
  'bench-busy': 409,
  'not-this-step': 409,
  'not-ready': 409,
  'order-held': 409,
  'cannot-make': 409,
  stopped: 409,
} as const;

export type BenchRefusalBody = z.infer<typeof benchRefusalSchema>;
