// A variant and a visit's answers, as commands and calls of staff name them. The kiosk never does: it holds sealed tokens.
import { z } from 'zod';
import { sharePpmSchema } from './quantities.ts';
import { idSchema } from './words.ts';

export const variantSchema = z.strictObject({
  shadeId: idSchema,
  actives: z.array(z.strictObject({ activeId: idSchema, levelPpm: sharePpmSchema })).max(20),
});

export const answersSchema = z.array(z.strictObject({ questionId: idSchema, optionIds: z.array(idSchema).max(50) })).max(100);
