// An edition's document, byte for byte: SHA-256 over these bytes is the edition's hash.
import { z } from 'zod';

export const exportEditionInputSchema = z.strictObject({
  hash: z.string().regex(/^[0-9a-f]{64}$/, 'give the 64 hexadecimal digits of the hash'),
});

export const exportEditionOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true), editionNo: z.int(), document: z.string() }),
  z.strictObject({ ok: z.literal(false), refusal: z.strictObject({ kind: z.literal('no-edition') }) }),
]);
