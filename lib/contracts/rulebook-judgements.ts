// Judgements, class rules, evidence and scopes on the wire.
import { z } from 'zod';
import { countSchema, phX100Schema, sharePpmSchema } from './quantities.ts';
import { materialClassSchema, phWindowSchema } from './rulebook-materials.ts';
import { idSchema, localDaySchema, statementSchema } from './words.ts';

const verdictSchema = z.enum(['never', 'limit', 'caution', 'fine']);

/** Says who, when and why: none may be left out or blank. */
const grounds = { reason: statementSchema, source: statementSchema, by: statementSchema, on: localDaySchema };

export const pairLimitSchema = z.strictObject({
  maxSumPpm: sharePpmSchema.optional(),
  maxFirstPpm: sharePpmSchema.optional(),
  maxSecondPpm: sharePpmSchema.optional(),
  minPhX100: phX100Schema.optional(),
  maxPhX100: phX100Schema.optional(),
});

export const pairJudgementSchema = z.strictObject({
  id: idSchema,
  firstMaterialId: idSchema,
  secondMaterialId: idSchema,
  verdict: verdictSchema,
  limit: pairLimitSchema.optional(),
  cautionId: idSchema.optional(),
  overridesClassJudgementId: idSchema.optional(),
  evidenceId: idSchema.optional(),
  ...grounds,
});

export const classJudgementSchema = z.strictObject({
  id: idSchema,
  firstClass: materialClassSchema,
  secondClass: materialClassSchema,
  verdict: verdictSchema,
  limit: pairLimitSchema.optional(),
  cautionId: idSchema.optional(),
  ...grounds,
});

const classSideSchema = z.strictObject({ materialClass: materialClassSchema, abovePpm: sharePpmSchema });

export const classRuleSchema = z.strictObject({
  id: idSchema,
  first: classSideSchema,
  second: classSideSchema.optional(),
  unlessPhWithin: phWindowSchema.optional(),
  then: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('refuse') }),
    z.strictObject({ kind: z.literal('caution'), cautionId: idSchema }),
  ]),
  ...grounds,
});

export const evidenceSchema = z.strictObject({
  id: idSchema,
  kind: z.enum(['stability', 'challenge', 'patch', 'drawdown', 'assessment', 'other']),
  on: localDaySchema,
  result: statementSchema,
});

export const scopeSchema = z.strictObject({
  id: idSchema,
  kind: z.enum(['approve', 'refuse']),
  shadeIds: z.array(idSchema),
  actives: z.array(z.strictObject({ activeId: idSchema, levelPpm: sharePpmSchema })),
  mostActivesCount: countSchema('actives'),
  evidenceIds: z.array(idSchema),
  reason: statementSchema,
  by: statementSchema,
  on: localDaySchema,
});
