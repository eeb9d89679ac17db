// A whole rulebook put in the draft's place. The document itself is read by its own contract, so that every wrong place can be named at once.
import { z } from 'zod';
import { countSchema } from './quantities.ts';

export const importDraftInputSchema = z.strictObject({
  /** The revision that was looked at; null where there is no draft yet. */
  parentRevisionNo: countSchema('revisions').nullable(),
  document: z.json({ error: 'must be a rulebook as JSON' }),
});

const faultSchema = z.strictObject({ place: z.string(), code: z.string(), message: z.string() });

export const importDraftOutputSchema = z.union([
  z.strictObject({ ok: z.literal(true), revisionNo: countSchema('revisions') }),
  z.strictObject({
    ok: z.literal(false),
    refusal: z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('unsound'), faults: z.array(faultSchema) }),
      z.strictObject({ kind: z.literal('draft-moved'), newestRevisionNo: countSchema('revisions') }),
    ]),
  }),
]);

export type ImportDraftInput = z.input<typeof importDraftInputSchema>;
export type ImportDraftOutput = z.infer<typeof importDraftOutputSchema>;
