// Stopping something at once, and lifting a stop with a second person.
import { z } from 'zod';

const reasonSchema = z.string().trim().min(1, 'say why: it is what everybody at the bench reads').max(300);

export const stopInputSchema = z.strictObject({
  subjectKind: z.enum(['material', 'stock', 'lot', 'pair', 'shade', 'active', 'variant']),
  /** The id in the rulebook or of the lot; two material ids with | between them; the key of a variant. */
  subjectId: z.string().min(1).max(400),
  reason: reasonSchema,
});

export const stopOutputSchema = z.union([
  z.strictObject({
    ok: z.literal(true),
    /** Short codes of open orders that wait because of it. */
    waitingCodes: z.array(z.string()),
  }),
  z.strictObject({
    ok: z.literal(false),
    refusal: z.strictObject({ kind: z.enum(['no-such-subject', 'stopped-already', 'not-open']) }),
  }),
]);

export const liftStopInputSchema = z.strictObject({
  stopId: z.uuid(),
  reason: reasonSchema,
  second: z.strictObject({ code: z.string().min(1).max(60), password: z.string().min(1).max(200) }),
});

export const liftStopOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true) }),
  z.strictObject({
    ok: z.literal(false),
    refusal: z.strictObject({
      kind: z.enum(['no-such-stop', 'lifted-already', 'second-wrong', 'second-locked', 'second-same-person', 'second-role']),
    }),
  }),
]);

export type StopInput = z.input<typeof stopInputSchema>;
export type StopOutput = z.infer<typeof stopOutputSchema>;
export type LiftStopInput = z.input<typeof liftStopInputSchema>;
export type LiftStopOutput = z.infer<typeof liftStopOutputSchema>;
