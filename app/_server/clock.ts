// The one place that reads the machine's clock and makes ids. Everything else is handed an instant or a maker of ids.
import { randomUUIDv7 } from 'node:crypto';
import type { InstantMs } from '#lib/units/time.ts';
import { instantMs } from '#lib/units/time.ts';

export const readClock = (): InstantMs => instantMs(Date.now());

/** A new UUIDv7 (RFC 9562): sorts by the time it was made. */
export const newId = (): string => randomUUIDv7();
