// An outage is the world's doing (disk full, file busy or read-only): it may pass and be tried again. All other database errors are faults.

export type OutageKind = 'busy' | 'locked' | 'full' | 'readonly' | 'unreachable';

const KINDS: readonly (readonly [RegExp, OutageKind])[] = [
  [/^SQLITE_BUSY/, 'busy'],
  [/^SQLITE_LOCKED/, 'locked'],
  [/^SQLITE_FULL/, 'full'],
  [/^SQLITE_(READONLY|PERM)/, 'readonly'],
  [/^SQLITE_(IOERR|CANTOPEN|PROTOCOL|NOMEM)/, 'unreachable'],
];

/** The driver's own error stays the cause; `code` is SQLite's result code. */
export class Outage extends Error {
  override readonly name = 'Outage';
  readonly kind: OutageKind;
  readonly code: string;

  constructor(kind: OutageKind, code: string, cause: unknown) {
    super(`the database is ${kind}`, { cause });
    this.kind = kind;
    this.code = code;
  }
}

/** SQLite's extended result code of a driver error, or of the error that wraps it. */
export function sqliteCode(error: unknown): string | null {
  if (!(error instanceof Error)) return null;
  if ('code' in error && typeof error.code === 'string' && error.code.startsWith('SQLITE_')) return error.code;
  return sqliteCode(error.cause);
}

/** The error as an Outage where it is one, otherwise the same error. */
export function asOutage(error: unknown): unknown {
  const code = sqliteCode(error);
  const kind = code === null ? undefined : KINDS.find(([pattern]) => pattern.test(code))?.[1];
  return code === null || kind === undefined || error instanceof Outage ? error : new Outage(kind, code, error);
}
