// A further account of staff.
import { z } from 'zod';

export const newAccountInputSchema = z.strictObject({
  code: z.string().trim().min(1, 'type the name to sign in with').max(60),
  name: z.string().trim().min(1, 'type the full name').max(120),
  role: z.enum(['mixer', 'checker', 'formulator', 'manager']),
  password: z.string().min(12, 'use at least 12 characters').max(200),
});

export const newAccountOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true) }),
  z.strictObject({ ok: z.literal(false), refusal: z.strictObject({ kind: z.literal('name-taken') }) }),
]);

export type NewAccountInput = z.input<typeof newAccountInputSchema>;
export type NewAccountOutput = z.infer<typeof newAccountOutputSchema>;
