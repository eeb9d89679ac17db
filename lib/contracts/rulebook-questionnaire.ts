// Concerns, questions, personal caps, cross-contact and cautions on the wire.
import { z } from 'zod';
import { OUTCOMES } from '../rulebook/questionnaire.ts';
import { countSchema, sharePpmSchema } from './quantities.ts';
import { avoidTagSchema, materialClassSchema } from './rulebook-materials.ts';
import { idSchema, statementSchema } from './words.ts';

export const concernSchema = z.strictObject({ id: idSchema, textId: idSchema });

const effectSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('wish'), concernId: idSchema, weightCount: countSchema('points') }),
  z.strictObject({ kind: z.literal('exclude'), tags: z.array(avoidTagSchema) }),
  z.strictObject({ kind: z.literal('cap'), capId: idSchema }),
  z.strictObject({ kind: z.literal('mildest') }),
  z.strictObject({ kind: z.literal('caution'), cautionId: idSchema, mustTick: z.boolean() }),
  z.strictObject({ kind: z.literal('area'), areaId: idSchema }),
  z.strictObject({ kind: z.literal('outcome'), outcome: z.enum(OUTCOMES) }),
]);

const optionSchema = z.strictObject({
  id: idSchema,
  textId: idSchema,
  hintTextId: idSchema.optional(),
  exclusive: z.boolean(),
  isSkip: z.boolean(),
  effects: z.array(effectSchema),
  skipsQuestionIds: z.array(idSchema),
});

export const questionSchema = z.strictObject({
  id: idSchema,
  partTextId: idSchema,
  textId: idSchema,
  whyTextId: idSchema.optional(),
  choose: z.enum(['one', 'many']),
  mostCount: countSchema('answers'),
  options: z.array(optionSchema),
});

export const personCapSchema = z.strictObject({ id: idSchema, materialClass: materialClassSchema, maxPpm: sharePpmSchema });

export const crossContactSchema = z.strictObject({
  tag: avoidTagSchema,
  policy: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('caution'), cautionId: idSchema }),
    z.strictObject({ kind: z.literal('ask-staff') }),
    z.strictObject({ kind: z.literal('none'), reason: statementSchema }),
  ]),
});

const triggerSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('always') }),
  z.strictObject({ kind: z.literal('tag'), tag: avoidTagSchema }),
  z.strictObject({ kind: z.literal('class'), materialClass: materialClassSchema }),
  z.strictObject({ kind: z.literal('material'), materialId: idSchema }),
]);

export const cautionSchema = z.strictObject({
  id: idSchema,
  places: z.array(z.enum(['kiosk', 'card', 'label', 'bench'])),
  audience: z.enum(['customer', 'staff']),
  mustTick: z.boolean(),
  textId: idSchema,
  labelTextId: idSchema.optional(),
  triggers: z.array(triggerSchema),
  source: statementSchema,
});
