// Publishing the draft: what was looked at, why, from when, and the password again. The refusal carries every open point at once.
import { z } from 'zod';
import { countSchema } from './quantities.ts';
import { marketIdSchema } from './words.ts';

export const publishInputSchema = z.strictObject({
  revisionNo: countSchema('revisions'),
  lookedAt: z.array(z.string().max(400)).max(10_000),
  reason: z.string().max(2000),
  effectiveAtMs: z.int().positive().nullable(),
  password: z.string().min(1, 'type your password again').max(200),
});

const openPointSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('unsound'), faultsCount: z.int() }),
  z.strictObject({ kind: z.literal('nothing-changed') }),
  z.strictObject({ kind: z.literal('not-looked-at'), keys: z.array(z.string()).readonly() }),
  z.strictObject({ kind: z.literal('own-work') }),
  z.strictObject({ kind: z.literal('no-reason'), leastWordsCount: z.int() }),
  z.strictObject({ kind: z.literal('no-market') }),
  z.strictObject({ kind: z.literal('nothing-permitted') }),
  z.strictObject({
    kind: z.literal('restricted-without-row'),
    rows: z
      .array(
        z.strictObject({
          marketId: marketIdSchema,
          substanceId: z.string(),
          name: z.string(),
          referenceId: z.string(),
          source: z.string(),
        }),
      )
      .readonly(),
  }),
]);

const noticeSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('market-left-out'), marketId: marketIdSchema, missing: z.array(z.string()).readonly() }),
  z.strictObject({ kind: z.literal('limit-ahead'), limitId: z.string(), fromDay: z.string() }),
  z.strictObject({ kind: z.literal('replaces-edition'), editionNo: z.int() }),
]);

export const publishOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true), editionNo: z.int(), hash: z.string() }),
  z.strictObject({
    ok: z.literal(false),
    refusal: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('no-draft') }),
      z.strictObject({ kind: z.literal('wrong-password') }),
      z.strictObject({ kind: z.literal('locked') }),
      z.strictObject({ kind: z.literal('draft-moved'), newestRevisionNo: z.int() }),
      z.strictObject({ kind: z.literal('already-published'), editionNo: z.int() }),
      z.strictObject({ kind: z.literal('not-counted') }),
      z.strictObject({ kind: z.literal('effective-in-the-past') }),
      z.strictObject({
        kind: z.literal('gate-closed'),
        open: z.array(openPointSchema).readonly(),
        notices: z.array(noticeSchema).readonly(),
      }),
    ]),
  }),
]);

export type PublishInput = z.input<typeof publishInputSchema>;
export type PublishOutput = z.infer<typeof publishOutputSchema>;
