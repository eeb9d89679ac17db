// What a mixer sends from the bench. Every act has a key of its own: the same key again is the same act, done once.
// Weights are typed twice, and what a second person read comes with their own sign-in.
import { z } from 'zod';
import { massDifferenceUg, massUg } from '../units/mass.ts';
import { factorPpmSchema, phX100Schema, temperatureCSchema } from './quantities.ts';

/** More than a shop scale can bear; what the scale at hand bears is decided with it. */
const MOST_UG = 9_000_000_000;
const weighed = 'a weight is a whole number of micrograms above 0: read the scale again';

/** A weight that a scale can show. Nothing, less than nothing and tonnes are refused before anything is read. */
const weighedUgSchema = z
  .int({ error: weighed })
  .positive({ error: weighed })
  .max(MOST_UG, { error: 'no scale of a shop weighs so much: read it again' })
  .transform(massUg);
/** What a scale shows for nothing can lie under 0. */
const zeroUgSchema = z.int({ error: weighed }).min(-MOST_UG).max(MOST_UG).transform(massDifferenceUg);
const lotCodeSchema = z.string().trim().min(1, 'scan or type the code of the lot').max(80);
const reasonSchema = z.string().trim().min(3, 'say why in a few words').max(500);
const secondSchema = z.strictObject({
  code: z.string().trim().min(1, 'type the name of the second person').max(60),
  password: z.string().min(1, 'type the password').max(200),
});
const secondSeenSchema = secondSchema.extend({ lotCode: lotCodeSchema, massUg: weighedUgSchema });

const act = { requestKey: z.uuid(), orderId: z.uuid() };

export const claimInputSchema = z.strictObject(act);

export const fitnessInputSchema = z.strictObject({
  requestKey: z.uuid(),
  check: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('scale'), scaleId: z.uuid(), zeroUg: zeroUgSchema, shownUg: z.array(weighedUgSchema).min(1).max(5) }),
    z.strictObject({
      kind: z.literal('ph-meter'),
      shownPhX100: z.array(phX100Schema).length(2, 'measure both buffers'),
      slopePpm: factorPpmSchema,
    }),
  ]),
});

const itemsSchema = z.array(z.string().max(60)).max(20);

export const stepInputSchema = z.strictObject({
  ...act,
  step: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('clearance'), items: itemsSchema }),
    z.strictObject({ kind: z.literal('protection'), items: itemsSchema }),
    z.strictObject({ kind: z.literal('bind-jar'), tareUg: weighedUgSchema, againUg: weighedUgSchema }),
    z.strictObject({ kind: z.literal('paste') }),
    z.strictObject({ kind: z.literal('dissolve') }),
  ]),
});

export const readingInputSchema = z.strictObject({
  ...act,
  lineNo: z.int().min(1).max(99),
  lotCode: lotCodeSchema,
  massUg: weighedUgSchema,
  againUg: weighedUgSchema,
  isPoured: z.boolean(),
  second: secondSeenSchema.nullable(),
});

export const lotInputSchema = z.strictObject({ orderId: z.uuid(), lotCode: lotCodeSchema });

export const voidInputSchema = z.strictObject({ ...act, reason: reasonSchema });

export const mendInputSchema = z.strictObject({
  ...act,
  mend: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('take-out'), outUg: weighedUgSchema }),
    z.strictObject({ kind: z.literal('grow'), second: secondSchema }),
    z.strictObject({ kind: z.literal('discard'), reason: reasonSchema }),
  ]),
});

export const correctionInputSchema = z.strictObject({
  ...act,
  lotCode: lotCodeSchema,
  massUg: weighedUgSchema,
  againUg: weighedUgSchema,
  second: secondSeenSchema,
});

const noteSchema = z.string().trim().max(500);

export const checkInputSchema = z.strictObject({
  ...act,
  check: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('draw-down'), hasPassed: z.boolean(), note: noteSchema }),
    z.strictObject({ kind: z.literal('look'), hasPassed: z.boolean(), note: noteSchema }),
    z.strictObject({ kind: z.literal('temperature'), temperatureC: temperatureCSchema }),
    z.strictObject({ kind: z.literal('ph'), phX100: phX100Schema }),
    z.strictObject({ kind: z.literal('gross'), grossUg: weighedUgSchema, againUg: weighedUgSchema }),
  ]),
});

/** An order changes hands, is closed, or leaves its hold: each says why. */
export const reasonInputSchema = z.strictObject({ ...act, reason: reasonSchema });

/** A held jar is thrown away by two people; a customer who still wants it gets another. */
export const heldJarInputSchema = z.strictObject({ ...act, reason: reasonSchema, wantsAnother: z.boolean(), second: secondSchema });

const jarCodeSchema = z.string().trim().min(1, 'read the code from the jar').max(40);

export const releaseInputSchema = z.strictObject({ ...act, jarCode: jarCodeSchema });
export const labelPrintInputSchema = z.strictObject(act);
export const collectInputSchema = z.strictObject({ ...act, labelCode: jarCodeSchema });

export type ClaimInput = z.input<typeof claimInputSchema>;
export type FitnessInput = z.input<typeof fitnessInputSchema>;
export type StepInput = z.input<typeof stepInputSchema>;
export type ReadingInput = z.input<typeof readingInputSchema>;
export type VoidInput = z.input<typeof voidInputSchema>;
export type MendInput = z.input<typeof mendInputSchema>;
export type CorrectionInput = z.input<typeof correctionInputSchema>;
export type ReasonInput = z.input<typeof reasonInputSchema>;
export type HeldJarInput = z.input<typeof heldJarInputSchema>;
export type CheckInput = z.input<typeof checkInputSchema>;
export type ReleaseInput = z.input<typeof releaseInputSchema>;
export type LabelPrintInput = z.input<typeof labelPrintInputSchema>;
export type CollectInput = z.input<typeof collectInputSchema>;
