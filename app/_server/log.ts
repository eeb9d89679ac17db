// Faults go to stderr, one JSON line each, under the id that the person was shown. Request bodies and addresses with their query
// never do: an answer about somebody's health must not end in a log.

export type FaultEntry = { readonly faultId: string; readonly where: string; readonly error: unknown };

export function logFault({ faultId, where, error }: FaultEntry): void {
  const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
  const cause = error instanceof Error && error.cause !== undefined ? { cause: String(error.cause) } : {};
  process.stderr.write(`${JSON.stringify({ level: 'fault', faultId, where, text, ...cause })}\n`);
}
