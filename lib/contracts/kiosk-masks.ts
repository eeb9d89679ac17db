// All answers → up to three masks, or the outcome that ends the visit.
import { z } from 'zod';
import { outcomeSchema } from './kiosk-show.ts';
import { tokenSchema, visitFields, visitRefusals } from './kiosk-visit.ts';
import { moneyMinorSchema } from './quantities.ts';
import { idSchema } from './words.ts';

const hexSchema = z.string().regex(/^#[0-9a-f]{6}$/);

export const masksInputSchema = z.strictObject(visitFields);

const layerSchema = z.strictObject({
  hatch: z.enum(['base-clay', 'tint-clay', 'mineral-colour', 'oil', 'humectant', 'acid', 'botanical', 'preservative', 'cream']),
  name: z.string().nullable(),
  /** How thick it is drawn, in a few coarse steps: a picture, not a recipe. */
  thicknessIndex: z.int().min(1).max(12),
});

const cautionSchema = z.strictObject({ id: idSchema, text: z.string(), short: z.string(), mustTick: z.boolean(), isOnJar: z.boolean() });

export const maskSchema = z.strictObject({
  token: tokenSchema,
  /** `own-choice`: taken by the customer from the others. */
  role: z.enum(['closest', 'mildest', 'other-colour', 'lower-price', 'own-choice']),
  shadeName: z.string(),
  activeNames: z.array(z.string()).readonly(),
  priceMinor: moneyMinorSchema,
  /** `isPaler`: no screen shows the colour in full. */
  colour: z.strictObject({ name: z.string(), wetHex: hexSchema, dryHex: hexSchema, isPaler: z.boolean() }),
  layers: z.array(layerSchema).readonly(),
  chosenFor: z.array(z.string()).readonly(),
  good: z
    .array(z.strictObject({ text: z.string(), basis: z.enum(['tested-on-mask', 'known-for-ingredient', 'look-and-feel']) }))
    .readonly(),
  lessGood: z.array(z.string()).readonly(),
  /** Wishes for which it does less than the first mask. */
  lessFor: z.array(z.string()).readonly(),
  /** All that are owed, those with a tick of their own first, general directions last. */
  cautions: z.array(cautionSchema).readonly(),
});

export const masksOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true), kind: z.literal('masks'), masks: z.array(maskSchema).min(1).max(3), noActiveFits: z.boolean() }),
  z.strictObject({ ok: z.literal(true), kind: z.literal('outcome'), outcome: outcomeSchema, others: z.array(outcomeSchema).readonly() }),
  z.strictObject({ ok: z.literal(false), refusal: z.discriminatedUnion('kind', visitRefusals) }),
]);

export type MaskView = z.output<typeof maskSchema>;
export type MasksInput = z.input<typeof masksInputSchema>;
export type MasksOutput = z.output<typeof masksOutputSchema>;
