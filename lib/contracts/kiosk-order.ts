// One order: the mask by its token, the answers for judging it once more, and the cautions that were ticked.
import { z } from 'zod';
import { badTokenSchema, tokenSchema, visitFields, visitRefusals } from './kiosk-visit.ts';
import { moneyMinorSchema } from './quantities.ts';
import { codeSchema, idSchema } from './words.ts';

export const orderInputSchema = z.strictObject({
  ...visitFields,
  requestKey: z.uuid(),
  token: tokenSchema,
  counterCode: codeSchema,
  tickedCautionIds: z.array(idSchema).max(100),
  hasReadAll: z.boolean(),
});

export const orderOutputSchema = z.union([
  z.strictObject({
    ok: z.literal(true),
    code: z.string(),
    priceMinor: moneyMinorSchema,
    /** Orders that are made before this one. */
    aheadCount: z.int().nonnegative(),
    /** The code as a QR code (ISO/IEC 18004): an SVG path on a square of `sideCount` modules. */
    symbol: z.strictObject({ path: z.string(), sideCount: z.int().positive() }),
  }),
  z.strictObject({
    ok: z.literal(false),
    refusal: z.discriminatedUnion('kind', [
      ...visitRefusals,
      badTokenSchema,
      z.strictObject({ kind: z.literal('other-content') }),
      z.strictObject({ kind: z.literal('not-ticked'), cautionIds: z.array(idSchema).readonly(), hasReadAll: z.boolean() }),
      z.strictObject({ kind: z.literal('no-longer-offered') }),
      z.strictObject({ kind: z.literal('no-counter') }),
    ]),
  }),
]);

export type OrderInput = z.input<typeof orderInputSchema>;
export type OrderOutput = z.output<typeof orderOutputSchema>;
