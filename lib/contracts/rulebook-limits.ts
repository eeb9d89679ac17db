// Legal limits and markets on the wire.
import { z } from 'zod';
import { factorPpmSchema, sharePpmSchema } from './quantities.ts';
import { idSchema, localDaySchema, marketIdSchema, statementSchema, textSchema } from './words.ts';

const productKindSchema = z.enum(['rinse-off', 'leave-on']);

const rowOrigin = {
  id: idSchema,
  marketId: marketIdSchema,
  source: statementSchema,
  status: z.enum(['verified', 'from-memory', 'house']),
  fromDay: localDaySchema.optional(),
  untilDay: localDaySchema.optional(),
};

export const limitRowSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('substance'),
    ...rowOrigin,
    productKinds: z.array(productKindSchema),
    substances: z.array(z.strictObject({ substanceId: idSchema, factorPpm: factorPpmSchema })),
    maxPpm: sharePpmSchema,
    expressedAs: statementSchema,
    cautionId: idSchema.optional(),
  }),
  z.strictObject({ kind: z.literal('colourant'), ...rowOrigin, substanceId: idSchema, conditions: statementSchema }),
]);

export const marketSchema = z.strictObject({
  id: marketIdSchema,
  productKind: productKindSchema,
  colourantsListed: z.enum(['pigments', 'all-colouring']),
  responsiblePerson: z.strictObject({ name: textSchema, address: textSchema, contact: textSchema }),
  safetyReport: z.strictObject({ id: idSchema, on: localDaySchema, assessor: statementSchema, scope: statementSchema }).optional(),
  notificationReference: statementSchema.optional(),
  makerMandate: statementSchema.optional(),
});
