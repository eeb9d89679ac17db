// Tells an outage (the disk is full, another process holds the file) from a fault of the program: the first may be tried again.

const OUTAGE_CODES = /^(SQLITE_(BUSY|LOCKED|FULL|IOERR|READONLY|CANTOPEN|PROTOCOL|NOMEM)|ENOSPC$|EDQUOT$|EROFS$|EMFILE$|ENFILE$)/;

/** The driver's and the system's errors carry a `code`; nothing else counts as an outage. */
export function isOutage(error: unknown): boolean {
  if (!(error instanceof Error) || !('code' in error)) return false;
  return typeof error.code === 'string' && OUTAGE_CODES.test(error.code);
}
