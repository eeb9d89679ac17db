// Signing in and out, and the first account of an empty shop.
import { z } from 'zod';

const accountCodeSchema = z.string().trim().min(1, 'type your name').max(60);
const passwordSchema = z.string().min(1, 'type your password').max(200);

export const signInInputSchema = z.strictObject({ code: accountCodeSchema, password: passwordSchema, stationId: z.uuid().nullable() });

export const signInOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true), role: z.enum(['mixer', 'checker', 'formulator', 'manager']) }),
  z.strictObject({
    ok: z.literal(false),
    refusal: z.strictObject({ kind: z.enum(['wrong-name-or-password', 'locked', 'unknown-station']) }),
  }),
]);

export const signOutOutputSchema = z.strictObject({ ok: z.literal(true) });

export const firstAccountInputSchema = z.strictObject({
  code: accountCodeSchema,
  name: z.string().trim().min(1, 'type your full name').max(120),
  password: z.string().min(12, 'use at least 12 characters').max(200),
  shop: z.strictObject({
    shopCode: z.string().regex(/^[A-Z]{2}$/, 'use two capital letters'),
    name: z.string().trim().min(1, 'type the name of the shop').max(120),
    /** IANA zone. */
    zone: z.string().min(1, 'choose a time zone').max(60),
  }),
});

export const firstAccountOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true) }),
  z.strictObject({
    ok: z.literal(false),
    refusal: z.strictObject({ kind: z.enum(['accounts-exist', 'name-taken', 'shop-exists', 'unknown-zone']) }),
  }),
]);

export type SignInOutput = z.infer<typeof signInOutputSchema>;
export type FirstAccountOutput = z.infer<typeof firstAccountOutputSchema>;
