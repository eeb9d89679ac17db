// Every "no" of the bench on the wire, with the facts that its sentence needs.
import { z } from 'zod';
import { massUgSchema } from './quantities.ts';

const bare = <const K extends string>(kind: K) => z.strictObject({ kind: z.literal(kind) });
const texts = z.array(z.string()).readonly();

export const benchRefusalSchema = z.discriminatedUnion('kind', [
  bare('no-such-order'),
  bare('other-content'),
  bare('already-claimed'),
  z.strictObject({ kind: z.literal('bench-busy'), shortCode: z.string() }),
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
  bare('under-tare'),
  bare('other-jar'),
  bare('life-over'),
  z.strictObject({ kind: z.literal('label-lacks-text'), textIds: texts }),
  bare('label-not-printed'),
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
  stopped: 409,
} as const;

export type BenchRefusalBody = z.infer<typeof benchRefusalSchema>;
