// What crosses between kiosk and server. Sealed tokens name variants; no material, level or share is ever in a reply.
import { z } from 'zod';
import { OUTCOMES } from '../rulebook/questionnaire.ts';
import { moneyMinorSchema } from './quantities.ts';
import { answersSchema } from './variant.ts';
import { idSchema } from './words.ts';

const hashSchema = z.string().regex(/^[0-9a-f]{64}$/, 'give the hash of an edition');
const tokenSchema = z.string().min(1).max(4000);
const outcomeSchema = z.enum(OUTCOMES);

export const masksInputSchema = z.strictObject({ editionHash: hashSchema, answers: answersSchema, jarSizeId: idSchema });

const layerSchema = z.strictObject({
  name: z.string(),
  hatch: z.enum(['base-clay', 'tint-clay', 'mineral-colour', 'oil', 'humectant', 'acid', 'botanical', 'preservative', 'cream']),
  /** How thick it is drawn, in a few coarse steps: a picture, not a recipe. */
  thicknessIndex: z.int().min(1).max(12),
});

const cautionSchema = z.strictObject({ id: idSchema, text: z.string(), short: z.string(), mustTick: z.boolean() });

export const maskSchema = z.strictObject({
  token: tokenSchema,
  role: z.enum(['closest', 'mildest', 'other-colour', 'lower-price']),
  name: z.string(),
  priceMinor: moneyMinorSchema,
  colour: z.strictObject({ name: z.string(), wetHex: z.string(), dryHex: z.string() }),
  layers: z.array(layerSchema).readonly(),
  chosenFor: z.array(z.string()).readonly(),
  good: z.strictObject({ text: z.string(), basis: z.enum(['tested-on-mask', 'known-for-ingredient', 'look-and-feel']) }),
  lessGood: z.string(),
  cautions: z.array(cautionSchema).readonly(),
});

export type MaskView = z.infer<typeof maskSchema>;

const editionMovedSchema = z.strictObject({ kind: z.literal('edition-moved') });
const badAnswersSchema = z.strictObject({ kind: z.literal('bad-answers'), faults: z.array(z.strictObject({ questionId: z.string(), code: z.string() })).readonly() });

export const masksOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true), kind: z.literal('masks'), masks: z.array(maskSchema).readonly(), noActiveFits: z.boolean() }),
  z.strictObject({ ok: z.literal(true), kind: z.literal('outcome'), outcome: outcomeSchema, others: z.array(outcomeSchema).readonly() }),
  z.strictObject({ ok: z.literal(false), refusal: z.discriminatedUnion('kind', [editionMovedSchema, badAnswersSchema, z.strictObject({ kind: z.literal('no-such-size') })]) }),
]);

export const whyNotOutputSchema = z.union([
  z.strictObject({
    ok: z.literal(true),
    rows: z.array(z.strictObject({ name: z.string(), part: z.enum(['shade', 'active']), fits: z.boolean(), reasons: z.array(z.strictObject({ code: z.string(), isPersonal: z.boolean() })).readonly() })).readonly(),
  }),
  z.strictObject({ ok: z.literal(false), refusal: z.discriminatedUnion('kind', [editionMovedSchema, badAnswersSchema, z.strictObject({ kind: z.literal('bad-token') })]) }),
]);

export const whyNotInputSchema = z.strictObject({ editionHash: hashSchema, answers: answersSchema, token: tokenSchema });

export const orderInputSchema = z.strictObject({
  requestKey: z.uuid(),
  editionHash: hashSchema,
  token: tokenSchema,
  jarSizeId: idSchema,
  answers: answersSchema,
  tickedCautionIds: z.array(idSchema).max(100),
  hasReadDirections: z.boolean(),
});

export const orderOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true), code: z.string(), priceMinor: moneyMinorSchema }),
  z.strictObject({
    ok: z.literal(false),
    refusal: z.discriminatedUnion('kind', [
      editionMovedSchema,
      badAnswersSchema,
      z.strictObject({ kind: z.literal('bad-token') }),
      z.strictObject({ kind: z.literal('no-such-size') }),
      z.strictObject({ kind: z.literal('other-content') }),
      z.strictObject({ kind: z.literal('not-ticked'), cautionIds: z.array(idSchema).readonly() }),
      z.strictObject({ kind: z.literal('no-longer-permitted') }),
      z.strictObject({ kind: z.literal('no-counter') }),
    ]),
  }),
]);

export type MasksInput = z.input<typeof masksInputSchema>;
export type MasksOutput = z.infer<typeof masksOutputSchema>;
export type WhyNotInput = z.input<typeof whyNotInputSchema>;
export type WhyNotOutput = z.infer<typeof whyNotOutputSchema>;
export type OrderInput = z.input<typeof orderInputSchema>;
export type OrderOutput = z.infer<typeof orderOutputSchema>;
