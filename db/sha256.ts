// The one hash of the house, over UTF-8 text or bytes: SHA-256 (FIPS 180-4) as 64 lower-case hex digits.
import { createHash } from 'node:crypto';

/** SHA-256 as lower-case hex. */
export const sha256 = (bytes: string | Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
