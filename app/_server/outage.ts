// Tells an outage (the disk is full, another process holds the file) from a fault of the program: the first may be tried again.
import { asOutage, Outage } from '#db/outage.ts';

/** The system's own codes, for files beside the database. */
const SYSTEM_CODES = new Set(['ENOSPC', 'EDQUOT', 'EROFS', 'EMFILE', 'ENFILE']);

export function isOutage(error: unknown): boolean {
  if (asOutage(error) instanceof Outage) return true;
  return error instanceof Error && 'code' in error && typeof error.code === 'string' && SYSTEM_CODES.has(error.code);
}
