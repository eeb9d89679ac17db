// What the health check says: enough for a monitor and a polling kiosk, nothing about the shop's trade.
import { z } from 'zod';

export const healthSchema = z.strictObject({
  ok: z.literal(true),
  version: z.string(),
  /** The edition on sale, or null before the first is published. */
  editionNo: z.int().positive().nullable(),
  /** The last entry of the ledger; 0 when it is empty. */
  ledgerSeq: z.int().nonnegative(),
  uptimeS: z.int().nonnegative(),
});

export type Health = z.infer<typeof healthSchema>;
