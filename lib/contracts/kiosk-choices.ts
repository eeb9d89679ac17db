// "Why not the others?" and "what else fits?": shades and actives beside a mask, each with "fits" or plain reasons.
import { z } from 'zod';
import { maskSchema } from './kiosk-masks.ts';
import { badTokenSchema, tokenSchema, visitFields, visitRefusals } from './kiosk-visit.ts';

const reasonSchema = z.strictObject({
  reason: z.enum([
    'avoided',
    'capped',
    'mildest',
    'cross-contact',
    'clash',
    'less-together',
    'too-many',
    'not-approved',
    'too-much',
    'acidity',
    'wetting',
    'law',
    'not-checked',
    'not-here',
    'out-of-stock',
    'stopped',
  ]),
  names: z.array(z.string()).readonly(),
  tag: z.string().nullable(),
  /** Follows from an answer: kept covered until somebody asks. */
  isPersonal: z.boolean(),
  questionIds: z.array(z.string()).readonly(),
});

/** Token of the mask with this choice, where it fits; reasons where it does not. */
const choiceSchema = z.strictObject({
  kind: z.enum(['shade', 'active']),
  name: z.string(),
  token: tokenSchema.nullable(),
  reasons: z.array(reasonSchema).readonly(),
});

const refused = z.strictObject({ ok: z.literal(false), refusal: z.discriminatedUnion('kind', [...visitRefusals, badTokenSchema]) });
const choices = z.strictObject({ ok: z.literal(true), choices: z.array(choiceSchema).readonly() });

/** One of the others: the whole mask where it fits, so that it can be chosen at once. */
const otherSchema = z.strictObject({ ...choiceSchema.omit({ token: true }).shape, mask: maskSchema.nullable() });
const others = z.strictObject({ ok: z.literal(true), choices: z.array(otherSchema).readonly() });

/** Up to three masks that were found, and one of the customer's own choice. */
export const whyNotInputSchema = z.strictObject({ ...visitFields, shownTokens: z.array(tokenSchema).min(1).max(4) });
export const whyNotOutputSchema = z.union([others, refused]);

export const whatFitsInputSchema = z.strictObject({ ...visitFields, token: tokenSchema });
export const whatFitsOutputSchema = z.union([choices, refused]);

export type WhyNotInput = z.input<typeof whyNotInputSchema>;
export type WhyNotOutput = z.output<typeof whyNotOutputSchema>;
export type OtherView = z.output<typeof otherSchema>;
export type ReasonView = z.output<typeof reasonSchema>;
