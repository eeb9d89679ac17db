// The bench's queue, polled.
import { z } from 'zod';
import type { InstantMs } from '../units/time.ts';
import { instantMs } from '../units/time.ts';
import { layerSchema, stageSchema } from './bench-view.ts';
import { massUgSchema } from './quantities.ts';

const instantSchema: z.ZodType<InstantMs, number> = z.int().min(0).transform(instantMs);

export const queueInputSchema = z.strictObject({});

export const queueOutputSchema = z.strictObject({
  shopName: z.string(),
  benchName: z.string().nullable(),
  zone: z.string(),
  editionNo: z.int().nullable(),
  isMeterFit: z.boolean(),
  scales: z.array(z.strictObject({ code: z.string(), stepUg: massUgSchema, isFit: z.boolean() })).readonly(),
  rows: z
    .array(
      z.strictObject({
        orderId: z.uuid(),
        shortCode: z.string(),
        name: z.string(),
        layers: z.array(layerSchema).readonly(),
        stage: stageSchema,
        netUg: massUgSchema,
        weighingsCount: z.int(),
        checksCount: z.int(),
        hasDust: z.boolean(),
        placedAtMs: instantSchema,
        by: z.string().nullable(),
        isMine: z.boolean(),
        stops: z.array(z.string()).readonly(),
        heldBecause: z.string().nullable(),
        isOfOlderEdition: z.boolean(),
      }),
    )
    .readonly(),
});

export type BenchQueue = z.infer<typeof queueOutputSchema>;
