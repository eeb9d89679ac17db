// Filing a complaint about a jar, and what was done about it.
import { z } from 'zod';

export const complaintInputSchema = z.strictObject({
  jarCode: z.string().trim().min(1, 'give the code from the label').max(40),
  kind: z.enum(['reaction', 'look', 'smell', 'separation', 'packaging', 'other']),
  seriousness: z.enum(['not-serious', 'serious']),
  said: z.string().trim().min(1, 'write down what they said').max(2000),
  contact: z.string().trim().max(200),
});

export const complaintOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true), complaintId: z.uuid() }),
  z.strictObject({ ok: z.literal(false), refusal: z.strictObject({ kind: z.enum(['no-jar-code', 'no-such-jar']) }) }),
]);

export const complaintStepInputSchema = z.strictObject({
  complaintId: z.uuid(),
  kind: z.enum(['told-responsible-person', 'told-authority', 'jar-returned', 'sample-kept', 'answered', 'reclassified-serious', 'closed']),
  note: z.string().trim().max(500),
});

export const complaintStepOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true) }),
  z.strictObject({ ok: z.literal(false), refusal: z.strictObject({ kind: z.literal('no-such-complaint') }) }),
]);

export type ComplaintInput = z.input<typeof complaintInputSchema>;
export type ComplaintOutput = z.infer<typeof complaintOutputSchema>;
export type ComplaintStepInput = z.input<typeof complaintStepInputSchema>;
export type ComplaintStepOutput = z.infer<typeof complaintStepOutputSchema>;
