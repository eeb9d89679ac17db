// One edit of the draft on the wire, and what comes of it. Who judged and when is the server's to say, so those two are not taken from the browser.
import { z } from 'zod';
import { countSchema, moneyMinorSchema, sharePpmSchema } from './quantities.ts';
import { pairLimitSchema } from './rulebook-judgements.ts';
import { materialClassSchema } from './rulebook-materials.ts';
import { idSchema, langSchema, statementSchema } from './words.ts';

const verdictSchema = z.enum(['never', 'limit', 'caution', 'fine']);

const judgedSchema = {
  verdict: verdictSchema,
  limit: pairLimitSchema.optional(),
  cautionId: idSchema.optional(),
  reason: statementSchema,
  source: statementSchema,
};

export const draftChangeSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('set-level'),
    activeId: idSchema,
    levelPpm: sharePpmSchema,
    permitted: z.boolean(),
    priceMinor: moneyMinorSchema,
  }),
  z.strictObject({
    kind: z.literal('judge-pair'),
    firstMaterialId: idSchema,
    secondMaterialId: idSchema,
    ...judgedSchema,
    overridesClassJudgementId: idSchema.optional(),
    evidenceId: idSchema.optional(),
  }),
  z.strictObject({ kind: z.literal('judge-classes'), firstClass: materialClassSchema, secondClass: materialClassSchema, ...judgedSchema }),
  z.strictObject({
    kind: z.literal('set-caution-text'),
    cautionId: idSchema,
    lang: langSchema,
    text: statementSchema,
    labelText: statementSchema.nullable(),
  }),
  z.strictObject({ kind: z.literal('set-caution'), cautionId: idSchema, mustTick: z.boolean() }),
]);

export const changeDraftInputSchema = z.strictObject({ parentRevisionNo: countSchema('revisions'), change: draftChangeSchema });

export const changeDraftOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true), revisionNo: countSchema('revisions') }),
  z.strictObject({
    ok: z.literal(false),
    refusal: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('no-draft') }),
      z.strictObject({ kind: z.literal('blank-words'), cautionId: idSchema }),
      z.strictObject({ kind: z.literal('nothing-to-change'), id: z.string() }),
      z.strictObject({ kind: z.literal('draft-moved'), newestRevisionNo: countSchema('revisions') }),
    ]),
  }),
]);

export type ChangeDraftInput = z.input<typeof changeDraftInputSchema>;
export type DraftChangeWire = z.output<typeof draftChangeSchema>;
export type ChangeDraftOutput = z.infer<typeof changeDraftOutputSchema>;
