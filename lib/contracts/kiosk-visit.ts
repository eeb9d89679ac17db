// What every call of a visit sends, and the ways in which any of them can be refused. Sealed tokens name variants; a material id, a level
// or a share never crosses.
import { z } from 'zod';
import { kioskShowSchema } from './kiosk-show.ts';
import { answersSchema } from './variant.ts';
import { idSchema, langSchema } from './words.ts';

export const editionHashSchema = z.string().regex(/^[0-9a-f]{64}$/, 'give the hash of an edition');
export const tokenSchema = z.string().min(1).max(4000);

/** The answers live for one call. */
export const visitFields = { editionHash: editionHashSchema, lang: langSchema, jarSizeId: idSchema, answers: answersSchema };

export const visitRefusals = [
  z.strictObject({ kind: z.literal('not-open') }),
  /** Another edition is in force: what to show from now on, and what is no longer the same. */
  z.strictObject({
    kind: z.literal('edition-moved'),
    show: kioskShowSchema,
    changed: z.array(z.enum(['questions', 'mask', 'price', 'cautions'])).readonly(),
  }),
  z.strictObject({
    kind: z.literal('bad-answers'),
    faults: z.array(z.strictObject({ questionId: z.string(), code: z.string() })).readonly(),
  }),
  z.strictObject({ kind: z.literal('no-such-size') }),
  z.strictObject({ kind: z.literal('no-such-language') }),
] as const;

export const badTokenSchema = z.strictObject({ kind: z.literal('bad-token') });

/** The status of each refusal that is not a plain "no". */
export const visitRefusalStatus = { 'not-open': 409, 'edition-moved': 409, 'no-such-size': 404, 'no-such-language': 404 } as const;
